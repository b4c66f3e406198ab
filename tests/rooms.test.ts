import { execFile } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const colours = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');

/** The check as `npm run lint` runs it, on any tree. */
const cruise = (root: string): Promise<{ code: number; said: string }> =>
  new Promise((resolve) => {
    execFile('npx', ['depcruise', root], { env: { ...process.env, ROOMS_ROOT: root } }, (error, out, err) =>
      resolve({
        code: typeof error?.code === 'number' ? error.code : 0,
        said: `${out}${err}`.replaceAll(colours, ''),
      }),
    );
  });

describe('the order of the rooms', () => {
  it('holds in the source, all of it looked at', async () => {
    const { code, said } = await cruise('source');
    expect(said).toContain('no dependency violations found');
    expect(Number(/\((\d+) modules/.exec(said)?.[1])).toBeGreaterThan(100);
    expect(code).toBe(0);
  });

  it('is broken by a small tree in five ways, and each is named', async () => {
    const { code, said } = await cruise('tests/fixtures/rooms');
    const tree = 'tests/fixtures/rooms';
    expect(said).toContain(`order-units: ${tree}/units/upside-down.ts → ${tree}/cook/candy.ts`);
    expect(said).toMatch(`pure-rooms: ${tree}/cook/candy.ts → `);
    expect(said).toContain(`screen-sees-no-physics: ${tree}/screen/nosy.ts → ${tree}/files/folder.ts`);
    expect(said).toMatch(`chosen-packages: ${tree}/units/tool.ts → `);
    expect(said).toMatch(/no-circles: \S+\/(circle|other)\.ts/);
    // What is in order is not complained of.
    expect(said).not.toContain('right.ts');
    expect(code).toBeGreaterThan(0);
  });
});
