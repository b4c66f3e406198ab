import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cooks } from '../../source/commands/cooks.js';
import { run } from '../../source/commands/cooks-command.js';
import { cooksFolder, findCook, findId } from '../../source/commands/cooks-shelf.js';
import { takeLock } from '../../source/files/lock.js';
import { lockPath } from '../../source/journal/journal.js';
import { scratch } from '../journal/sample.js';
import { home, ids, runIn } from './cooks-home.js';

const at = (path: string, id: string): string => join(path, 'cooks', `${id}.jsonl`);

describe('the list', () => {
  const { path } = home();
  const list = async (...argv: readonly string[]) => {
    const { code, out } = await runIn(path, run, ...argv, '--json');
    expect(code).toBe(0);
    return (JSON.parse(out) as { cooks: { id: string }[] }).cooks.map(({ id }) => id);
  };

  it('has all cooks, the newest first, with what became of them', async () => {
    const { code, out } = await runIn(path, run);
    expect(code).toBe(0);
    expect(
      out
        .trimEnd()
        .split('\n')
        .map((line) => line.split(/ {2,}/).at(-1)),
    ).toEqual(['finished, rehearsal', 'unfinished', 'finished']);
  });

  it('is narrowed by recipe, date, unfinished and rehearsals', async () => {
    expect(await list()).toEqual([ids.rehearsal, ids.half, ids.whole]);
    expect(await list('--recipe', 'ginger')).toHaveLength(3);
    expect(await list('--recipe', 'mint')).toEqual([]);
    expect(await list('--since', '2026-12-01')).toEqual([ids.rehearsal, ids.half]);
    expect(await list('--unfinished')).toEqual([ids.half]);
    expect(await list('--rehearsals')).toEqual([ids.rehearsal]);
  });

  it('says what to type instead of a wrong date, and where nothing is found', async () => {
    const wrong = await runIn(path, run, '--since', 'december');
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain('--since 2026-11-25');
    expect((await runIn(path, run, '--recipe', 'mint')).out).toContain('No cook fits');
    expect((await runIn(scratch(), run)).out).toContain('No cooks yet');
  });

  it('does not filter what is named by id', async () => {
    expect((await runIn(path, run, 'compare', 'ab12', '9f2c', '--unfinished')).code).toBe(2);
    const misspelt = await runIn(path, run, 'exprot');
    expect(misspelt).toMatchObject({ code: 2 });
    expect(misspelt.err).toContain('"export"');
  });
});

describe('side by side', () => {
  const { path } = home();

  it('compares two cooks by parts of their ids', async () => {
    const { code, out } = await runIn(path, run, 'compare', '9f2c', 'ab12');
    expect(code).toBe(0);
    expect(out).toMatch(/\* state\s+finished\s+unfinished/);
    const { out: json } = await runIn(path, run, 'compare', '9f2c', 'ab12', '--json');
    expect(JSON.parse(json)).toMatchObject({ version: 1, sameRecipe: true });
  });

  it('wants two to four', async () => {
    expect((await runIn(path, run, 'compare', '9f2c')).code).toBe(2);
    expect((await runIn(path, run, 'compare', '9f2c', 'nobody')).code).toBe(2);
  });
});

describe('deleting', () => {
  it('is refused where nobody can be asked, and done with --yes', async () => {
    const { path } = home();
    const refused = await runIn(path, run, 'delete', '9f2c');
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(existsSync(at(path, ids.whole))).toBe(true);
    expect((await runIn(path, run, 'delete', '9f2c', '--yes')).code).toBe(0);
    expect(existsSync(at(path, ids.whole))).toBe(false);
    expect(existsSync(at(path, ids.half))).toBe(true);
    expect(existsSync(lockPath(at(path, ids.whole)))).toBe(false);
  });

  it('never takes a cook that a console is leading', async () => {
    const { path } = home();
    const lock = await takeLock(lockPath(at(path, ids.half)));
    const { code, err } = await runIn(path, run, 'delete', 'ab12', '--yes');
    expect(code).toBe(1);
    expect(err).toContain('open in another console');
    expect(existsSync(at(path, ids.half))).toBe(true);
    if ('lock' in lock) await lock.lock.release();
  });

  it('takes no path', async () => {
    const { path } = home();
    const { code } = await runIn(path, run, 'delete', at(path, ids.half), '--yes');
    expect(code).toBe(2);
    expect(existsSync(at(path, ids.half))).toBe(true);
  });

  it.each([
    ['yes', true],
    ['no', false],
    ['', false],
    ['9f2c', false],
  ])('asks, and "%s" deletes: %s', async (answer, deletes) => {
    const { path } = home();
    const folder = cooksFolder({ KETTLEHAND_HOME: path });
    let removed = 0;
    let asked = '';
    const code = await cooks(
      ['delete', '9f2c'],
      { unfinished: false, rehearsals: false, yes: false, json: false },
      {
        out: () => undefined,
        err: () => undefined,
        folder,
        version: '0.1.0',
        most: 200,
        now: () => new Date(0),
        list: async () => [],
        find: (typed) => findCook(folder, typed),
        findId: (typed) => findId(folder, typed),
        remove: async () => {
          removed += 1;
          return 'deleted';
        },
        readFile: async () => ({ bytes: Buffer.alloc(0) }),
        writeNew: async () => 'saved',
        place: async () => null,
        ask: async (question) => {
          asked = question;
          return answer;
        },
      },
    );
    expect(code).toBe(0);
    expect(asked).toContain('Hill hall ginger pull');
    expect(removed).toBe(deletes ? 1 : 0);
  });
});

describe('carrying a cook elsewhere', () => {
  const exported = async (): Promise<{ path: string; file: string }> => {
    const { path } = home();
    const file = join(scratch(), 'fair.kettlehand-cook');
    expect((await runIn(path, run, 'export', '9f2c', '--to', file)).code).toBe(0);
    return { path, file };
  };
  const importInto = (path: string, file: string) => runIn(path, run, 'import', file);

  it('gives the same journal, byte for byte', async () => {
    const { path, file } = await exported();
    const elsewhere = scratch();
    const { code, out } = await importInto(elsewhere, file);
    expect(code).toBe(0);
    expect(out).toContain(`${ids.whole} is imported`);
    expect(readFileSync(at(elsewhere, ids.whole))).toEqual(readFileSync(at(path, ids.whole)));
  });

  it('writes over nothing: no file, no cook', async () => {
    const { path, file } = await exported();
    const again = await runIn(path, run, 'export', 'ab12', '--to', file);
    expect(again.code).toBe(1);
    expect(again.err).toContain('left as it is');
    const same = await importInto(path, file);
    expect(same.code).toBe(1);
    expect(same.err).toContain('the very same');
    writeFileSync(at(path, ids.whole), readFileSync(at(path, ids.half)));
    const other = await importInto(path, file);
    expect(other.err).toContain('another cook');
    expect(readFileSync(at(path, ids.whole))).toEqual(readFileSync(at(path, ids.half)));
  });

  it.each([
    ['is cut off', (text: string) => text.slice(0, -200)],
    ['has something added', (text: string) => `${text}more\n`],
    ['was changed or damaged', (text: string) => text.replace('"value":238', '"value":239')],
    ['made by a newer program', (text: string) => text.replace('"kettlehandCook":1', '"kettlehandCook":2')],
    ['is no exported cook', (text: string) => text.slice(text.indexOf('\n') + 1)],
    ['is no exported cook', () => ''],
    ['was changed or damaged', (text: string) => text.replace(ids.whole, '../../evil')],
  ])('says in one sentence that a file %s, and writes nothing', async (says, spoil) => {
    const { file } = await exported();
    writeFileSync(file, spoil(readFileSync(file, 'utf8')));
    const elsewhere = scratch();
    const { code, out, err } = await importInto(elsewhere, file);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(says);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(existsSync(join(elsewhere, 'cooks'))).toBe(false);
  });

  it('goes to standard output for "-"', async () => {
    const { path } = home();
    const { code, out } = await runIn(path, run, 'export', '9f2c', '--to', '-');
    expect(code).toBe(0);
    expect(JSON.parse(out.slice(0, out.indexOf('\n')))).toMatchObject({ kettlehandCook: 1, id: ids.whole });
  });
});
