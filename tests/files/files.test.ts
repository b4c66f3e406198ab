import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { homedir, tmpdir, uptime } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { configFolder, dataFolder, makeFolder } from '../../source/files/folder.js';
import { isPlainName, pathInside, shownPath } from '../../source/files/names.js';
import { bounds, readNamedFile } from '../../source/files/read.js';
import { readProblem, writeProblem } from '../../source/files/trouble.js';
import { uptimeSeconds } from '../../source/files/uptime.js';
import { writeWhole } from '../../source/files/write.js';
import { words } from '../../source/texts/message.js';
import type { Printer } from '../../source/units/printer.js';
import { canMount, onSmallDisk } from './small-disk.js';

const root = mkdtempSync(join(tmpdir(), 'kettlehand-test-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

const printer = { language: 'en' } as Printer;
const problemId = (answer: object): unknown =>
  'problem' in answer ? Reflect.get(Object(answer.problem), 'id') : null;

describe('where files live', () => {
  it.skipIf(process.platform !== 'linux')(
    'follows KETTLEHAND_HOME, then absolute XDG folders, then the home folder',
    () => {
      expect(dataFolder({ KETTLEHAND_HOME: '/somewhere/else', XDG_DATA_HOME: '/x' })).toBe('/somewhere/else');
      expect(configFolder({ KETTLEHAND_HOME: '/somewhere/else' })).toBe('/somewhere/else');
      expect(dataFolder({ KETTLEHAND_HOME: '', XDG_DATA_HOME: '/x' })).toBe('/x/kettlehand');
      expect(dataFolder({ XDG_DATA_HOME: 'relative', HOME: '/home/cook' })).toBe(
        '/home/cook/.local/share/kettlehand',
      );
      expect(configFolder({ XDG_CONFIG_HOME: '../up', HOME: '/home/cook' })).toBe(
        '/home/cook/.config/kettlehand',
      );
      expect(configFolder({})).toBe(join(homedir(), '.config', 'kettlehand'));
    },
  );

  it('makes folders that only the owner can enter, and leaves one that is there as it is', async () => {
    const path = join(root, 'made', 'deep');
    expect(await makeFolder(path)).toBe('made');
    expect(statSync(path).mode & 0o777).toBe(0o700);
    expect(statSync(join(root, 'made')).mode & 0o777).toBe(0o700);
    chmodSync(path, 0o755);
    expect(await makeFolder(path)).toBe('made');
    expect(statSync(path).mode & 0o777).toBe(0o755);
    writeFileSync(join(root, 'a-file'), '');
    expect(problemId(Object(await makeFolder(join(root, 'a-file'))))).toBe('files.notAFolder');
    expect(problemId(Object(await makeFolder(join(root, 'a-file', 'below'))))).toBe('files.notWritten');
  });
});

describe('names', () => {
  it('are shown on one line with nothing hidden', () => {
    expect(shownPath('a\nb\u001b[31mc\u202ed\u200be')).not.toMatch(
      /[\u0000-\u001f\u007f-\u009f\u200b\u202a-\u202e]/,
    );
    expect(shownPath('/home/cook/Würze 糖.yaml')).toBe('/home/cook/Würze 糖.yaml');
    expect(shownPath('x'.repeat(5000)).length).toBeLessThanOrEqual(300);
  });

  it('stay inside the folder', () => {
    expect(pathInside('/data', 'cook 1.jsonl')).toBe('/data/cook 1.jsonl');
    for (const name of [
      '..',
      '../x',
      '/x',
      'a/b',
      'a\\b',
      'a\nb',
      'a\0',
      '.x',
      '-x',
      '',
      'a..b',
      'a\u202e',
      'C:x',
    ]) {
      expect(isPlainName(name)).toBe(false);
      expect(pathInside('/data', name)).toBeNull();
    }
  });
});

describe('reading a file that a person named', () => {
  const file = (name: string, content: string | Uint8Array): string => {
    const path = join(root, name);
    writeFileSync(path, content);
    return path;
  };

  it('gives its text, without a byte order mark, up to the bound', async () => {
    expect(await readNamedFile(file('ok', '\ufeffname: Würze\n'), 100)).toEqual({ text: 'name: Würze\n' });
    expect(await readNamedFile(file('just', 'x'.repeat(100)), 100)).toEqual({ text: 'x'.repeat(100) });
    expect(problemId(await readNamedFile(file('over', 'x'.repeat(101)), 100))).toBe('files.tooLarge');
  });

  it('does not read a huge file, nor one that claims to be empty and is not', async () => {
    const huge = file('huge', '');
    truncateSync(huge, 100 * 1024 * 1024);
    const before = process.memoryUsage().rss;
    expect(problemId(await readNamedFile(huge, bounds.recipe))).toBe('files.tooLarge');
    expect(process.memoryUsage().rss - before).toBeLessThan(20 * 1024 * 1024);
    if (process.platform === 'linux') {
      expect(statSync('/proc/kallsyms').size).toBe(0);
      expect(problemId(await readNamedFile('/proc/kallsyms', 1000))).toBe('files.tooLarge');
    }
  });

  it('says in which line the bytes are no text', async () => {
    const broken = Buffer.concat([
      Buffer.from('a: 1\nb: ½\nc: '),
      Buffer.from([0xc3, 0x28]),
      Buffer.from('\nd: 1\n'),
    ]);
    expect(await readNamedFile(file('broken', broken), 1000)).toMatchObject({
      problem: { id: 'files.notUtf8', values: { line: 3 } },
    });
    expect(await readNamedFile(file('cut', Buffer.from([0x61, 0x0a, 0xe2, 0x82])), 1000)).toMatchObject({
      problem: { values: { line: 2 } },
    });
  });

  it('refuses folders, devices and pipes, and does not wait for them', async () => {
    expect(problemId(await readNamedFile(root, 1000))).toBe('files.notAFile');
    expect(problemId(await readNamedFile('/dev/zero', 1000))).toBe('files.notAFile');
    const pipe = join(root, 'pipe');
    execFileSync('mkfifo', [pipe]);
    expect(problemId(await readNamedFile(pipe, 1000))).toBe('files.notAFile');
    const asked = readNamedFile(pipe, 1000, { pipe: true });
    writeFileSync(pipe, 'name: piped\n');
    expect(await asked).toEqual({ text: 'name: piped\n' });
  });

  it('tells a missing file, a loop of links and a hostile name apart, harmlessly', async () => {
    const loop = join(root, 'loop');
    symlinkSync(loop, loop);
    const missing = await readNamedFile(join(root, 'no\n\u001b[2Jthing'), 10);
    expect(missing).toMatchObject({ problem: { id: 'files.notRead', values: { trouble: 'missing' } } });
    expect('problem' in missing && words(missing.problem, printer)).not.toMatch(/[\u0000-\u001f]/);
    expect(await readNamedFile(loop, 10)).toMatchObject({ problem: { values: { trouble: 'link' } } });
    expect(problemId(await readNamedFile('a\0b', 10))).toBe('files.notRead');
    expect(problemId(await readNamedFile('x'.repeat(5000), 10))).toBe('files.notRead');
  });
});

describe('writing a file whole or not at all', () => {
  const folder = join(root, 'out');
  mkdirSync(folder);
  const path = join(folder, 'plan.txt');

  it('replaces the old text, for the owner only, and leaves nothing beside it', async () => {
    expect(await writeWhole(path, 'first\n')).toBe('saved');
    expect(await writeWhole(path, 'second ½\n')).toBe('saved');
    expect(readFileSync(path, 'utf8')).toBe('second ½\n');
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder)).toEqual(['plan.txt']);
  });

  it('does not write through a link, nor over a folder, nor where there is no folder', async () => {
    const precious = join(root, 'precious');
    writeFileSync(precious, 'mine');
    symlinkSync(precious, join(folder, 'link'));
    mkdirSync(join(folder, 'sub'));
    expect(problemId(Object(await writeWhole(join(folder, 'link'), 'x')))).toBe('files.notAFile');
    expect(problemId(Object(await writeWhole(join(folder, 'sub'), 'x')))).toBe('files.notAFile');
    expect(await writeWhole(join(folder, 'no', 'where'), 'x')).toMatchObject({
      problem: { id: 'files.notWritten', values: { trouble: 'missing' } },
    });
    expect(readFileSync(precious, 'utf8')).toBe('mine');
    expect(readdirSync(folder).sort()).toEqual(['link', 'plan.txt', 'sub']);
  });

  it.skipIf(!canMount)('keeps the old text and no scraps when the disk is full', async () => {
    await onSmallDisk(64, async (small) => {
      expect(await writeWhole(join(small, 'a'), 'old')).toBe('saved');
      expect(await writeWhole(join(small, 'a'), 'x'.repeat(200_000))).toMatchObject({
        problem: { values: { trouble: 'full' } },
      });
      expect(readFileSync(join(small, 'a'), 'utf8')).toBe('old');
      expect(readdirSync(small)).toEqual(['a']);
    });
  });

  it('has a sentence for every trouble, which says what to do', () => {
    for (const code of [
      'ENOSPC',
      'EDQUOT',
      'EROFS',
      'EACCES',
      'ENOENT',
      'EIO',
      'ELOOP',
      'EISDIR',
      'EWHATEVER',
    ]) {
      for (const problem of [writeProblem({ code }, '/a/b'), readProblem({ code }, '/a/b')]) {
        expect(words(problem, printer)).toMatch(/^\/a\/b could not be (read|written): .+\. .+\.$/);
      }
    }
    expect(words(writeProblem('odd', '/a/b'), printer)).toContain('unknown');
  });
});

describe('the up-time', () => {
  it('is that of the machine and does not run backwards', () => {
    const first = uptimeSeconds();
    const told =
      process.platform === 'linux' ? Number.parseFloat(readFileSync('/proc/uptime', 'latin1')) : uptime();
    expect(Math.abs(first - told)).toBeLessThan(5);
    expect(uptimeSeconds()).toBeGreaterThanOrEqual(first);
  });
});
