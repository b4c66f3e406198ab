import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { Typist } from './typist.js';

const homes: string[] = [];
const freshHome = (): string => {
  const home = Typist.home();
  homes.push(home);
  return home;
};
afterEach(() => {
  for (const home of homes.splice(0)) rmSync(home, { recursive: true, force: true });
});

const hall = ['--kitchen', 'recipes/kitchens/hill-hall.yaml'];
const journalOf = (home: string): readonly { kind: string; value?: number; step?: string }[] => {
  const [file = ''] = readdirSync(join(home, 'cooks')).filter((name) => name.endsWith('.jsonl'));
  const lines = readFileSync(join(home, 'cooks', file), 'utf8')
    .trimEnd()
    .split('\n');
  return lines.map((line) => JSON.parse(line));
};

describe('the line mode in a real terminal', () => {
  it('asks at most three questions on a first run, each with a default, and says who comes first', async () => {
    const cook = Typist.cooks(freshHome());
    // Both may come in one piece: waited for together.
    await cook.sees(/trained first aid come before anything this program says.*How high.*> $/);
    await cook.types('', /What does the pot stand on.*> $/);
    await cook.types('', /Which thermometer.*> $/);
    await cook.types('', /Set everything out before any heat.*> $/);
    cook.key('leave\r');
    await cook.sees('The cook is kept');
    expect(await cook.ended).toBe(0);
  });

  it('leads from the checklist to wrapped pieces', async () => {
    const home = freshHome();
    const cook = Typist.cooks(home, ['hill-hall-ginger-pull', ...hall]);
    await cook.sees('Set everything out');
    await cook.types('done', 'Say aloud who does what');
    await cook.types('done', 'Read this aloud');
    await cook.types('done', '"done" does not answer it');
    await cook.types('yes', 'Stir the dry things together');
    await cook.types('done', 'Add the rest');
    await cook.types('done', 'Scrape the sugar');
    await cook.types('done', 'Turn the heat');
    await cook.types('heat medium', 'no grit');
    await cook.types('done', 'Spoon out');
    await cook.types('done', 'steady boil');
    await cook.types('done', 'damp long-handled brush');
    await cook.types('done', 'thermometer');
    await cook.types('done', 'Leave it still');
    await cook.types('hard ball', 'Pot off the heat for good');
    await cook.types('done', 'One more drop, a fresh cup: still hard ball');
    await cook.types('done', 'flavour');
    await cook.types('done', 'before pouring');
    await cook.types('yes', 'Pour low');
    await cook.types('done', 'Leave it two to three minutes');
    await cook.types('done', 'fold the edges');
    await cook.types('done', 'Hot tap water');
    await cook.types('done', 'Fold again');
    await cook.types('done', 'Measure the middle');
    await cook.types('middle 60c', 'still too hot');
    await cook.types('middle 44c', 'before any hand');
    await cook.types('yes', 'take a piece');
    await cook.types('done', 'Pull long');
    await cook.types('done', 'Droops');
    await cook.types('done', 'too tough');
    await cook.types('done', 'Roll ropes');
    await cook.types('done', 'Cut every');
    await cook.types('done', /rest/i);
    await cook.types('done', 'Wrap each piece');
    await cook.types('done', 'Weigh and count');
    await cook.types('count 103', 'Weigh and count');
    await cook.types('done', 'Before anyone eats');
    await cook.types('done', 'Fill the pot with hot water');
    await cook.types('done', 'Scraper');
    await cook.types('done', 'Ring off');
    await cook.types('done', 'Done: 103 pieces');
    cook.key('\x04');
    expect(await cook.ended).toBe(0);
    expect(journalOf(home).at(-1)).toMatchObject({ kind: 'done', step: 'clean.hob' });
  });

  it('tells the second console who holds the cook', async () => {
    const home = freshHome();
    const first = Typist.cooks(home, ['mint-pull', ...hall]);
    await first.sees('Set everything out');
    const second = Typist.cooks(home, ['mint-pull', ...hall]);
    await second.sees(new RegExp(`${first.pid}`));
    first.kill('SIGTERM');
    expect(await first.ended).toBe(143);
    second.kill('SIGINT');
    expect(await second.ended).toBe(130);
  });

  it('goes on when nothing can be saved, and says so', async () => {
    const home = freshHome();
    mkdirSync(join(home, 'cooks'));
    // A folder that cannot be written does not stop root, a file in its place does.
    rmSync(join(home, 'cooks'), { recursive: true });
    writeFileSync(join(home, 'cooks'), '');
    const cook = Typist.cooks(home, ['mint-pull', ...hall]);
    await cook.sees('NOTHING IS BEING SAVED');
    await cook.types('done', 'Held in memory');
    rmSync(join(home, 'cooks'));
    await cook.sees('Saving works again');
    cook.key('leave\r');
    expect(await cook.ended).toBe(0);
    expect(journalOf(home).map(({ kind }) => kind)).toEqual(['opened', 'opened', 'done']);
  });
});

const run = (args: readonly string[], input = '', home = freshHome()) => {
  const result = spawnSync(process.execPath, ['bin/kettlehand.mjs', ...args], {
    input,
    encoding: 'utf8',
    env: { ...process.env, KETTLEHAND_HOME: home },
  });
  return { code: result.status, out: result.stdout, err: result.stderr };
};

describe('what a person gets who types it wrong', () => {
  it.each([
    [['cook'], 2, 'needs a terminal to type in'],
    [['cook', '--plain', 'hill-hall-ginger-pul'], 2, 'Did you mean hill-hall-ginger-pull'],
    [['follow'], 2, 'Which recipe?'],
    [['follow', 'mint-pull', '--from', 'boilng'], 2, 'is not a phase'],
    [['coook'], 2, 'Did you mean "kettlehand cook"'],
    [['plan', 'mint-pull', '--altitude', '384400 km'], 2, 'is no altitude for a kitchen'],
    [['plan', './nowhere.yaml'], 1, 'could not be read'],
  ] as const)('%j ends with %i and a sentence', (args, code, words) => {
    const got = run([...args]);
    expect(got.code).toBe(code);
    expect(got.err).toContain(words);
    expect(got.err).not.toMatch(/\n\s+at /);
    expect(got.out).toBe('');
  });

  it('shows a hostile recipe name harmlessly', () => {
    const home = freshHome();
    const path = join(home, 'hostile.yaml');
    const text = readFileSync('recipes/mint-pull.yaml', 'utf8').replace(
      /^name: .*$/m,
      'name: "Mint\\e[2J\\e]0;owned\\a pull"',
    );
    writeFileSync(path, text);
    chmodSync(path, 0o600);
    const got = run(['cook', '--plain', path], 'done\n', home);
    expect(got.code).toBe(0);
    expect(got.out).toContain('Mint\\x1b[2J');
    expect(got.out).not.toContain('\x1b');
  });

  it('leads over a pipe with --plain', () => {
    const got = run(['cook', '--plain', 'mint-pull'], 'done\nnonsense\n');
    expect(got.code).toBe(0);
    expect(got.out).toContain('Say aloud who does what');
    expect(got.out).toContain('"nonsense" is not understood');
  });

  it('answers --version and --help at once', () => {
    expect(execFileSync(process.execPath, ['bin/kettlehand.mjs', '--version'], { encoding: 'utf8' })).toMatch(
      /^\d+\.\d+\.\d+\n$/,
    );
    const help = execFileSync(process.execPath, ['bin/kettlehand.mjs', '--help'], { encoding: 'utf8' });
    expect(help.trimStart()).toMatch(/^Examples/);
    expect(help).toContain('come before anything this program says');
  });
});
