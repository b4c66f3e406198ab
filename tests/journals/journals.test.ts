import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { advise } from '../../source/cook/advise.js';
import { readEvent } from '../../source/cook/read-event.js';
import { fold } from '../../source/cook/step.js';
import { recover } from '../../source/journal/recover.js';
import { readEntries, startKept } from '../../source/session/start.js';

const folder = mkdtempSync(join(tmpdir(), 'kettlehand-journals-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Written by the released programs themselves and never changed: where each cook stands when it is taken up again. */
const stands: Readonly<Record<string, string>> = {
  '0.1.0/a-whole-cook.jsonl': 'over',
  '0.1.0/undone-and-in-trouble.jsonl': 'dissolve',
  '0.1.0/by-cold-water-alone.jsonl': 'test',
  '0.1.0/stopped.jsonl': 'clean',
  '0.1.0/opened-at-the-pull.jsonl': 'pull',
  '0.1.0/killed.jsonl': 'boil',
  '0.1.0/taken-up-after-an-absence.jsonl': 'boil',
};

const files = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((release) => release.isDirectory())
  .flatMap(({ name }) => readdirSync(join(import.meta.dirname, name)).map((file) => `${name}/${file}`));

describe('a journal of every release', () => {
  it('is here, none forgotten', () => {
    expect([...files].sort()).toEqual(Object.keys(stands).sort());
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(files.map((file) => file.split('/')[0])).toContain(version);
  });

  it.each(files)('%s is taken up where it stood, every event understood, and goes on', async (file) => {
    const path = join(import.meta.dirname, file);
    const recovered = recover(readFileSync(path));
    expect(recovered).toMatchObject({ damaged: [], torn: false });
    expect(recovered.entries.filter((entry) => readEvent(entry) === null)).toEqual([]);
    const read = readEntries(recovered.entries);
    const cook = fold(read?.events ?? []);
    expect(advise(cook, cook.t).phase).toBe(stands[file]);

    const copy = join(folder, file.replace('/', '-'));
    copyFileSync(path, copy);
    const { last } = read ?? { last: { t: 0, up: 0, at: '' } };
    const clock = { up: () => (last.up ?? 0) + 30, wall: () => Date.parse(last.at) + 30_000 };
    const started = await startKept(copy, null, clock);
    if ('problem' in started) throw new Error(started.problem.id);
    expect(started.session.now()).toBeCloseTo(last.t + 30, 3);
    expect(await started.session.type('note still here')).toMatchObject({ kind: 'event', saved: 'saved' });
    await started.session.close();
    expect(recover(readFileSync(copy)).entries).toHaveLength(recovered.entries.length + 1);
  });
});
