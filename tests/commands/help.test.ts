import { execFile, execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { helpOf as helpOfPage } from '../../source/texts/help.js';
import { scratch } from '../journal/sample.js';
import { eventsOf, fair } from '../lessons/cooks-told.js';
import { journalLines } from './cooks-home.js';

const folder = scratch();
const program = resolve('bin/kettlehand.mjs');

/** The cooks that the examples name. */
const earlier = ['2026-11-25-143502-9f2c', '2026-12-02-150000-1a2b'];

type Ended = { readonly code: number; readonly out: string; readonly err: string };

const script = (name: string, body: string): void =>
  writeFileSync(join(folder, name), `#!/bin/sh\n${body}\n`, { mode: 0o755 });

/** A folder with the files that the examples name, and earlier cooks of their days. */
const desk = (name: string): string => {
  const path = join(folder, name);
  const cooks = join(path, 'home', 'cooks');
  mkdirSync(cooks, { recursive: true });
  copyFileSync('recipes/mint-pull.yaml', join(path, 'mine.yaml'));
  copyFileSync('recipes/kitchens/hill-hall.yaml', join(path, 'hall.yaml'));
  writeFileSync(join(path, 'typed.txt'), '{"t":0,"typed":"done"}\n');
  writeFileSync(join(path, 'readings.txt'), '60f\n');
  const journal = Buffer.concat(journalLines(eventsOf(fair), '2026-11-25T14:35:02.000Z'));
  for (const file of ['fair.jsonl', ...earlier.map((id) => `home/cooks/${id}.jsonl`)])
    writeFileSync(join(path, file), journal);
  return path;
};

const shell = (line: string, cwd: string): Promise<Ended> =>
  new Promise((done) => {
    const env = {
      ...process.env,
      KETTLEHAND_HOME: join(cwd, 'home'),
      PATH: `${folder}${delimiter}${process.env.PATH}`,
    };
    const child = execFile('sh', ['-c', line], { cwd, env, maxBuffer: 2 ** 24 }, (error, out, err) =>
      done({ code: error === null ? 0 : Number(error.code), out, err }),
    );
    child.stdin?.end();
  });

/** The commands of the examples: from the dollar to the blanks before what they do. */
const examplesIn = (help: string): readonly string[] =>
  help.split('\n').flatMap((line) => /^\s*\$ (.*?)(?:\s{2,}.*)?$/.exec(line)?.[1] ?? []);

/**
 * A full screen needs a terminal, which tests/terminal has; here the same words are led line by line. An onlooker
 * waits for as long as it takes: here it looks once.
 */
const withoutScreen = (example: string): string => {
  if (/^kettlehand watch(\s|$)/.test(example) && !example.includes('--once')) return `${example} --once`;
  return /^kettlehand cook(\s|$)/.test(example) && !example.includes('--plain')
    ? `${example} --plain`
    : example;
};

/** What an example says where it has been done already, or where nobody can be asked. */
const expected: Readonly<Record<string, string>> = {
  'kettlehand watch': 'No cook is running.',
  'kettlehand watch --once': 'No cook is running.',
  'kettlehand watch --plain': 'No cook is running.',
  'kettlehand watch 2026-11-25': 'That cook is over: Hill hall ginger pull.',
  'kettlehand cooks import fair.kettlehand-cook': 'is here already, the very same. Nothing was written.',
  'kettlehand cooks delete 2026-11-25-143502-9f2c': 'Nobody can be asked here.',
};

const helpOf = (...words: readonly string[]): string =>
  execFileSync(process.execPath, [program, ...words, '--help'], { encoding: 'utf8' });

const commands =
  /Commands\n([\s\S]*?);/
    .exec(helpOf())?.[1]
    ?.split(',')
    .map((name) => name.trim()) ?? [];

script('kettlehand', `exec "${process.execPath}" "${program}" "$@"`);
script('my-logging-thermometer', 'echo 60f; echo 70f');

describe('what --help shows works', () => {
  it('names every command', () => {
    expect(commands.length).toBeGreaterThanOrEqual(11);
  });

  it('has a page for every command in each language, with the same examples and options', () => {
    for (const command of ['program', ...commands]) {
      const [en, de] = [helpOfPage(command, 'en'), helpOfPage(command, 'de')];
      expect(de).not.toBe(en);
      expect(examplesIn(de)).toEqual(examplesIn(en));
      const options = (page: string): readonly string[] => [...new Set(page.match(/--[a-z-]+/g))].sort();
      expect(options(de)).toEqual(options(en));
      for (const line of [...en.split('\n'), ...de.split('\n')]) expect(line.length).toBeLessThanOrEqual(80);
    }
    expect(
      execFileSync(process.execPath, [program, 'plan', '--help', '--language', 'de'], { encoding: 'utf8' }),
    ).toBe(helpOfPage('plan', 'de'));
  });

  it.concurrent.each(['', ...commands])(
    'kettlehand %s --help: each example',
    async (command) => {
      const examples = examplesIn(command === '' ? helpOf() : helpOf(command));
      expect(examples.length).toBeGreaterThan(1);
      const cwd = desk(`at-${command}`);
      for (const example of examples) {
        const { code, err } = await shell(withoutScreen(example), cwd);
        const failed = code === 0 || err.includes(expected[example] ?? 'no such word') ? '' : err;
        expect({ example, failed }).toEqual({ example, failed: '' });
      }
    },
    120_000,
  );

  it.concurrent.each([
    ['plann', 'There is no command "plann". Did you mean "kettlehand plan"?'],
    [
      'plan mint-pull --guets 3',
      '"kettlehand plan" has no option "--guets". Did you mean --guests? "kettlehand plan --help" explains them.',
    ],
    ['cook --no-colour', '"kettlehand cook" has no option "--no-colour". Did you mean --no-color?'],
    ['recipes -x', '"kettlehand recipes" has no option "-x". It has --json'],
    ['cook mint-pull extra', '"extra" is one word too many for "kettlehand cook".'],
  ])('kettlehand %s says what to type instead', async (line, sentence) => {
    const { code, err } = await shell(`kettlehand ${line}`, folder);
    expect(code).toBe(2);
    expect(err).toContain(sentence);
  });
});
