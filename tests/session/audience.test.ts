import { appendFileSync, mkdirSync, unlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeLock } from '../../source/files/lock.js';
import { encodeLine } from '../../source/journal/line.js';
import { Audience } from '../../source/session/audience.js';
import type { Clock } from '../../source/session/clock.js';
import { Onlooker } from '../../source/session/onlooker.js';
import { opened } from '../cook/play.js';
import { scratch } from '../journal/sample.js';

const clock: Clock = { up: () => 100, wall: () => Date.parse('2026-11-25T10:00:00.000Z') };

/** A folder of cooks as consoles leave it; each cook is led until it is left. */
const hall = () => {
  const folder = join(scratch(), 'cooks');
  mkdirSync(folder);
  const at = (id: string): string => join(folder, `${id}.jsonl`);
  const write = (id: string, ...events: readonly object[]): void => {
    for (const [nth, event] of events.entries())
      appendFileSync(
        at(id),
        encodeLine({
          seq: nth + 1,
          t: nth,
          at: '2026-11-25T10:00:00.000Z',
          up: 100 + nth,
          ...event,
        } as never) ?? '',
      );
  };
  const lead = async (id: string): Promise<() => Promise<void>> => {
    const answer = await takeLock(`${at(id)}.lock`);
    if (!('lock' in answer)) throw new Error(`${hostname()} holds it already`);
    return () => answer.lock.release();
  };
  return { folder, at, write, lead };
};

const first = { ...opened({}), kind: 'opened' };

const seen = async (audience: Audience, isSo: () => boolean): Promise<void> => {
  for (let looks = 0; looks < 400 && !isSo(); looks += 1) await new Promise((go) => setTimeout(go, 5));
  expect(isSo()).toBe(true);
  expect(audience.sight).toBeDefined();
};

describe('who looks on from the room', () => {
  it('stays with the cook that is led, and goes on to another only when nobody leads this one', async () => {
    const { folder, at, write, lead } = hall();
    write('2026-11-25-100000-aaaa', first);
    const leave = await lead('2026-11-25-100000-aaaa');
    const audience = new Audience({ folders: [folder], path: null, clock, lookMilliseconds: 5 });
    let told = 0;
    audience.onChange(() => {
      told += 1;
    });
    const looking = audience.run();
    await seen(audience, () => audience.sight.path === at('2026-11-25-100000-aaaa') && audience.sight.isLed);
    write('2026-11-26-100000-bbbb', first);
    const leaveOther = await lead('2026-11-26-100000-bbbb');
    await new Promise((go) => setTimeout(go, 60));
    expect(audience.sight.path).toBe(at('2026-11-25-100000-aaaa'));
    await leave();
    await seen(audience, () => audience.sight.path === at('2026-11-26-100000-bbbb'));
    expect(told).toBeGreaterThan(1);
    await leaveOther();
    await seen(audience, () => !audience.sight.isLed);
    audience.end();
    await looking;
  });

  it('ends at once when it is told to, even before it has found anything', async () => {
    const { folder } = hall();
    const audience = new Audience({ folders: [folder], path: null, clock, lookMilliseconds: 60_000 });
    const looking = audience.run();
    audience.end();
    await looking;
    expect(audience.sight).toMatchObject({ path: null, cook: null });
    const named = new Audience({ folders: [], path: join(folder, 'none.jsonl'), clock, lookMilliseconds: 5 });
    named.end();
    await named.run();
    expect(named.sight.cook).toBeNull();
  });

  it('is told when the cook that was named cannot be read', async () => {
    const { folder } = hall();
    mkdirSync(join(folder, 'folder.jsonl'));
    const audience = new Audience({ folders: [], path: join(folder, 'folder.jsonl'), clock });
    await expect(audience.run()).rejects.toMatchObject({ trouble: 'notAFile' });
  });

  it('sees a journal that is written anew as another', async () => {
    const { folder, at, write } = hall();
    write('a', first, { kind: 'done', step: 'mix.set-out' });
    const audience = new Audience({ folders: [folder], path: at('a'), clock, lookMilliseconds: 5 });
    const looking = audience.run();
    await seen(audience, () => (audience.sight.cook?.log.length ?? 0) > 0);
    unlinkSync(at('a'));
    writeFileSync(at('a'), '');
    write('a', first);
    await seen(audience, () => audience.sight.cook?.log.length === 0 || audience.sight.cook?.t === 0);
    audience.end();
    await looking;
  });
});

describe('an onlooker', () => {
  const entry = (seq: number, event: object) =>
    ({ what: 'entry', entry: { ...event, seq, t: seq, at: '2026-11-25T10:00:00.000Z', up: 100 } }) as never;

  it('passes over what is no event, and what comes before the opening', () => {
    const onlooker = new Onlooker(clock);
    expect(onlooker.now()).toBe(0);
    for (const one of [
      { kind: 'done', step: 'mix.set-out' },
      { kind: 'dance' },
      { kind: 'reading', value: 'hot' },
    ])
      onlooker.hear(entry(1, one));
    onlooker.hear({ what: 'upToDate' });
    expect(onlooker.cook).toBeNull();
    onlooker.hear(entry(2, { ...first, boot: 'abcd1234' }));
    expect(onlooker.hear({ what: 'upToDate' })).toBe(true);
    expect(onlooker.hear({ what: 'upToDate' })).toBe(false);
    expect(onlooker.hear({ what: 'damaged', line: 3, why: 'checksum' } as never)).toBe(false);
    expect(onlooker.cook).not.toBeNull();
    expect(onlooker.now()).toBeGreaterThanOrEqual(2);
  });
});
