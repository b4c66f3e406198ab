import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { run } from '../../source/commands/rehearse.js';
import type { World } from '../../source/commands/world.js';

const kitchen = ['--kitchen', 'recipes/kitchens/hill-hall.yaml'];

const rehearses = async (...argv: readonly string[]) => {
  let [out, err] = ['', ''];
  const world: World = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: { KETTLEHAND_HOME: '/nowhere' },
    stdin: new PassThrough() as unknown as NodeJS.ReadStream,
    stdout: process.stdout,
    version: 'test',
  };
  const code = await run(argv, world);
  return { code, out, err };
};

describe('kettlehand rehearse --auto --headless', () => {
  it('prints the journal and the verdict as one JSON object', async () => {
    const { code, out } = await rehearses('--auto', '--headless', '--json', '--seed', '7', ...kitchen);
    expect(code).toBe(0);
    const said = JSON.parse(out) as {
      rehearsal: boolean;
      seed: number;
      journal: readonly { kind: string; seed?: number }[];
      verdict: { ended: boolean; changes: readonly { text: string }[] };
    };
    expect(said).toMatchObject({ version: 1, rehearsal: true, seed: 7, surprise: null });
    expect(said.journal[0]).toMatchObject({ kind: 'opened', seed: 7 });
    expect(said.verdict.ended).toBe(true);
    expect(said.verdict.changes[0]?.text).not.toBe('');
  });

  it('says it in words, headed as a rehearsal', async () => {
    const { code, out } = await rehearses(
      '--auto',
      '--headless',
      '--seed',
      '7',
      '--surprise',
      'early-touch',
      ...kitchen,
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^REHEARSAL: Hill hall ginger pull, seed 7, surprise early-touch/);
    expect(out).toContain('the hand that touched too early showed at');
    expect(out).toContain('What to change:');
    expect(out).not.toMatch(/undefined|NaN|Infinity|\[object/);
  });
});

describe('bad input gets one clear sentence and exit code 2', () => {
  it.each([
    [['--seed', 'seven'], '"seven" is not a seed. Type a whole number'],
    [['--seed', '1.5'], '"1.5" is not a seed.'],
    [['--seed', '99999999999'], 'is not a seed.'],
    [['--pace', '0'], '"0" is not a pace. Type a number from 1'],
    [['--pace', '61'], '"61" is not a pace.'],
    [['--pace', 'fast'], '"fast" is not a pace.'],
    [['--surprise', 'fome-over'], 'Did you mean "--surprise foam-over"?'],
    [['--surprise', 'xyzzyxyzzy'], 'There is no surprise "xyzzyxyzzy". There are foam-over,'],
    [['--headless'], 'add --auto'],
    [['--json'], 'add --auto --headless'],
    [['no-such-recipe'], 'no-such-recipe'],
    [['mint-pull', 'again'], 'one word too many'],
  ])('%j', async (argv, said) => {
    const { code, out, err } = await rehearses(...argv);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(said);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
