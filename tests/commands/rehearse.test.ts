import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { afterAll, describe, expect, it } from 'vitest';
import type { RunSheet } from '../../source/batch/run-sheet.js';
import { findCookOrRehearsal } from '../../source/commands/cooks-shelf.js';
import { run } from '../../source/commands/rehearse.js';
import type { World } from '../../source/commands/world.js';

const kitchen = ['--kitchen', 'recipes/kitchens/hill-hall.yaml'];

const home = mkdtempSync(join(tmpdir(), 'kettlehand-rehearse-'));
afterAll(() => rmSync(home, { recursive: true }));

const rehearses = async (...argv: readonly string[]) => {
  let [out, err] = ['', ''];
  const world: World = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: { KETTLEHAND_HOME: home },
    // Nobody types: the input ends at once.
    stdin: new PassThrough().end() as unknown as NodeJS.ReadStream,
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

  it('is held against the run sheet of its plan, which travels in the first event', async () => {
    const { out } = await rehearses('--auto', '--headless', '--json', '--seed', '7', ...kitchen);
    const { journal, verdict } = JSON.parse(out) as {
      journal: readonly { runSheet?: RunSheet }[];
      verdict: {
        phases: readonly { phase: string; seconds: number; planned: { high: number } | null }[];
        pulling: { at: number; plannedAt: number };
      };
    };
    const sheet = journal[0]?.runSheet;
    expect(sheet?.phases[0]).toMatchObject({ phase: 'mix', startsAt: 0 });
    expect(verdict.pulling.plannedAt).toBe(sheet?.pullsAt);
    expect(verdict.pulling.at).toBeGreaterThan(30 * 60);
    for (const { phase, planned } of verdict.phases)
      expect(planned, phase).toEqual(sheet?.phases.find((one) => one.phase === phase)?.seconds ?? null);
  });

  it('tells clock times where the real pulling has one', async () => {
    const rehearse = (...more: readonly string[]) =>
      rehearses('--auto', '--headless', '--seed', '7', ...kitchen, ...more);
    expect((await rehearse()).out).toMatch(/Hands on it after \d.*; the plan has them after 5\d min/);
    const { out } = await rehearse('--at', 'tomorrow 3pm');
    expect(out).toMatch(/Hands on it at \d{1,2}:\d\d pm; the plan has them at 3:00 pm: /);
  });

  it('prints the result alone for programs, whoever typed', async () => {
    const { code, out, err } = await rehearses('--json', '--seed', '7', ...kitchen);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ rehearsal: true, seed: 7, verdict: { ended: false } });
    expect(err).toMatch(/^REHEARSAL of /);
  });

  it('left on the way says so; it is listed among the rehearsals and told by its id', async () => {
    const { out } = await rehearses('--seed', '7', ...kitchen);
    const text = out.replaceAll(/\s+/g, ' ');
    expect(text).toContain('not rehearsed yet');
    expect(text).not.toContain('do it like this');
    const id = /kettlehand debrief (\S+)/.exec(out)?.[1] ?? '';
    const found = await findCookOrRehearsal({ KETTLEHAND_HOME: home }, id);
    expect(found).toMatchObject({ id });
    expect(await findCookOrRehearsal({ KETTLEHAND_HOME: home }, 'nothing')).toHaveProperty('problem');
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
    [['--at', '2020-01-01 15:00'], 'For another day type for example --at "tomorrow 15:00".'],
    [['--at', 'three'], '"three" is no time of day.'],
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
