import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { spoken } from '../../source/commands/language.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { kitchenToYaml } from '../../source/kitchen/write.js';

let home = '';
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'kettlehand-language-'));
});
afterAll(() => rm(home, { recursive: true, force: true }));

const asked = async (argv: readonly string[], env: Record<string, string> = {}) =>
  spoken(argv, { env: { KETTLEHAND_HOME: home, ...env } });
const kitchenFile = async (text: string): Promise<string> => {
  const path = join(home, 'hall.yaml');
  await writeFile(path, text);
  return path;
};

describe('the language of a command', () => {
  it('is English where nothing is said', async () => {
    expect(await asked(['cook'])).toEqual({ language: 'en', argv: ['cook'] });
  });

  it.each([
    [
      ['--language', 'de', 'plan', 'mint-pull'],
      ['plan', 'mint-pull'],
    ],
    [
      ['plan', 'mint-pull', '--language=de', '--json'],
      ['plan', 'mint-pull', '--json'],
    ],
    [
      ['plan', '--language', 'DE', 'mint-pull'],
      ['plan', 'mint-pull'],
    ],
    [['plan', '--language', 'en', '--language', 'de'], ['plan']],
  ])('is what the option says, wherever it stands: %j', async (argv, rest) => {
    expect(await asked(argv, { LANG: 'en_GB.UTF-8' })).toEqual({ language: 'de', argv: rest });
  });

  it('is the one of the kitchen file that is used', async () => {
    const path = await kitchenFile('kettlehand-kitchen: 1\nlanguage: de # for the hall\nunit: C\n');
    expect(await asked(['plan', 'mint-pull', '--kitchen', path])).toMatchObject({ language: 'de' });
    expect(await asked(['plan', `--kitchen=${path}`, '--json'])).toMatchObject({ language: 'de' });
    expect(await asked(['plan', '--kitchen', path, '--language', 'en'])).toMatchObject({ language: 'en' });
  });

  it.each([
    [{ LANG: 'de_AT.UTF-8' }, 'de'],
    [{ LANG: 'en_GB.UTF-8', LC_MESSAGES: 'de_CH.UTF-8' }, 'de'],
    [{ LANG: 'de_DE.UTF-8', LC_ALL: 'C' }, 'en'],
    [{ LANG: 'fr_FR.UTF-8' }, 'en'],
  ])('follows the locale: %j', async (env, language) => {
    expect(await asked(['cook'], env)).toMatchObject({ language });
  });

  it('stays English for a program, whatever the locale, unless a language is asked for', async () => {
    expect(await asked(['plan', '--json'], { LANG: 'de_DE.UTF-8' })).toMatchObject({ language: 'en' });
    expect(await asked(['plan', '--json', '--language', 'de'])).toMatchObject({ language: 'de' });
  });

  it.each(['klingon', '', 'd'])('that does not exist is said, with those that do: %j', async (named) => {
    expect(await asked(['cook', `--language=${named}`])).toEqual({
      problem: { id: 'command.unknown-language', values: { found: named, names: ['en', 'de'] } },
    });
  });

  it('is not taken from a kitchen file that names another; the file itself says so when it is read', async () => {
    const text = 'kettlehand-kitchen: 1\nlanguage: klingon\n';
    expect(await asked(['cook', '--kitchen', await kitchenFile(text)])).toMatchObject({ language: 'en' });
    const parsed = parseKitchen(text, 'hall.yaml');
    expect(parsed).toMatchObject({ problems: [{ line: 2, field: 'language' }] });
  });
});

describe('the language of a kitchen', () => {
  it('is kept when the file is written again', () => {
    const read = parseKitchen('kettlehand-kitchen: 1\nlanguage: de\n', 'hall.yaml');
    if ('problems' in read) throw new Error('not read');
    expect(read.kitchen.language).toBe('de');
    expect(kitchenToYaml(read.kitchen)).toContain('language: de');
  });
});
