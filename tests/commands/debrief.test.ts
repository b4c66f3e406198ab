import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as cooksRun } from '../../source/commands/cooks-command.js';
import { run } from '../../source/commands/debrief-command.js';
import { scratch } from '../journal/sample.js';
import { home, ids, runIn } from './cooks-home.js';

const { path, cooks } = home();
const debrief = (...argv: readonly string[]) => runIn(path, run, ...argv);
const journal = (id: string): string => join(cooks, `${id}.jsonl`);

describe('kettlehand debrief', () => {
  it('tells the last cook when none is named', async () => {
    const { code, out, err } = await debrief();
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^\*\*\* REHEARSAL/);
  });

  it('finds a cook by its id, by a part that only one has, and by path', async () => {
    for (const name of [ids.whole, '9f2c', '2026-11-25', journal(ids.whole)]) {
      const { code, out } = await debrief(name);
      expect(code).toBe(0);
      expect(out).toContain('112 pieces, 804 g');
    }
  });

  it('tells an unfinished cook as far as it went', async () => {
    const { code, out } = await debrief('ab12');
    expect(code).toBe(0);
    expect(out).toContain('This cook is not finished: it stood at boil');
  });

  it.each([
    ['--markdown', /^# What happened: Hill hall ginger pull/],
    ['--html', /^<!doctype html>\n<html lang="en">/],
    ['--csv', /^seq,seconds,clock,/],
    ['--chapters', /^0:00:00 Weigh and mix/],
  ])('prints %s', async (option, begins) => {
    const { code, out } = await debrief('9f2c', option);
    expect(code).toBe(0);
    expect(out).toMatch(begins);
  });

  it('prints JSON with the id and the wall clock', async () => {
    const { out } = await debrief('9f2c', '--json');
    expect(JSON.parse(out)).toMatchObject({
      version: 1,
      id: ids.whole,
      startedAt: '2026-11-25T13:35:02.000Z',
      state: 'finished',
      rehearsal: false,
      damage: [],
    });
  });

  it('says where chapters count from when no recording was marked', async () => {
    const { err } = await debrief('9f2c', '--chapters');
    expect(err).toContain('mark recording');
  });

  it('offers the nearest id, and says what could be meant', async () => {
    const unknown = await debrief('2026-11-24');
    expect(unknown).toMatchObject({ code: 2, out: '' });
    expect(unknown.err).toContain(`Did you mean "${ids.whole}"?`);
    const several = await debrief('2026-12');
    expect(several.code).toBe(2);
    expect(several.err).toContain('Type more of it');
  });

  it('wants one form at a time', async () => {
    const { code, err } = await debrief('9f2c', '--json', '--csv');
    expect(code).toBe(2);
    expect(err).toContain('--json and --csv');
  });

  it('says so where there is no cook at all', async () => {
    const { code, err } = await runIn(scratch(), run);
    expect(code).toBe(1);
    expect(err).toContain('There is no cook yet');
  });

  it('keeps what can be read of a damaged journal, and says which line is lost', async () => {
    const folder = scratch();
    mkdirSync(join(folder, 'cooks'));
    const bytes = readFileSync(journal(ids.whole));
    const lines = bytes.toString('latin1').split('\n');
    // A flipped bit in the line of the first reading.
    const broken = lines.findIndex((line) => line.includes('"kind":"reading"'));
    lines[broken] = (lines[broken] ?? '').replace('"value":77', '"value":76');
    const file = join(folder, 'damaged.jsonl');
    writeFileSync(file, lines.join('\n'), 'latin1');
    const { code, out } = await debrief(file);
    expect(code).toBe(0);
    expect(out).toContain(`damaged in line ${broken + 1}`);
    expect(out).toContain('112 pieces');
    const csv = await debrief(file, '--csv');
    expect(csv.err).toContain(`damaged in line ${broken + 1}`);
  });

  it('says what is kept where recipe and kitchen are lost', async () => {
    const file = join(scratch(), 'lost.jsonl');
    const lines = readFileSync(journal(ids.whole), 'utf8').split('\n');
    writeFileSync(file, lines.slice(2).join('\n'));
    const { code, out, err } = await debrief(file);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(/first line.*damaged\. \d+ other events can still be read/);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('takes no other file for a cook', async () => {
    const { code, err } = await debrief('./package.json');
    expect(code).toBe(1);
    expect(err).toContain('is no cook');
    expect((await debrief('./not-there.jsonl')).code).toBe(1);
  });

  it('reads an exported cook as it is', async () => {
    const file = join(scratch(), 'fair.kettlehand-cook');
    await runIn(path, cooksRun, 'export', '9f2c', '--to', file);
    expect((await debrief(file)).out).toContain('112 pieces, 804 g');
  });
});
