import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type LockAnswer, takeLock } from '../../source/files/lock.js';
import { ownIdentity } from '../../source/files/process.js';

const root = mkdtempSync(join(tmpdir(), 'kettlehand-test-'));
const program = join(root, 'holder.mjs');
const children: ChildProcess[] = [];

beforeAll(() => {
  const entryPoints = [join(import.meta.dirname, 'holder.ts')];
  buildSync({ entryPoints, bundle: true, platform: 'node', format: 'esm', outfile: program });
});
afterAll(() => {
  for (const child of children) child.kill('SIGKILL');
  rmSync(root, { recursive: true, force: true });
});

const holder = async (path: string): Promise<{ child: ChildProcess; said: string }> => {
  const child = spawn(process.execPath, [program, path], { stdio: ['ignore', 'pipe', 'inherit'] });
  children.push(child);
  const [chunk] = (await once(child.stdout ?? child, 'data')) as [Buffer];
  return { child, said: chunk.toString().trim() };
};

const kill = async (child: ChildProcess): Promise<void> => {
  child.kill('SIGKILL');
  await once(child, 'exit');
};

const lockOf = (answer: LockAnswer) => {
  if (!('lock' in answer)) throw new Error(JSON.stringify(answer));
  return answer.lock;
};

const sheet = (path: string): Record<string, unknown> =>
  JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;

describe('the lock', () => {
  it('holds pid, host and process start, for the owner only, and leaves nothing behind', async () => {
    const path = join(root, 'a.lock');
    const lock = lockOf(await takeLock(path));
    expect(sheet(path)).toMatchObject({
      pid: process.pid,
      host: hostname(),
      start: (await ownIdentity()).start,
    });
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(root).filter((name) => name.includes('a.lock'))).toEqual(['a.lock']);
    expect(await lock.isHeld()).toBe(true);
    await lock.release();
    expect(existsSync(path)).toBe(false);
    expect(await lock.isHeld()).toBe(false);
  });

  it('is held while the process lives, stopped and a year old or not, and taken over at once when it is killed', async () => {
    const path = join(root, 'b.lock');
    const { child, said } = await holder(path);
    expect(said).toBe(`took ${child.pid}`);
    utimesSync(path, new Date(0), new Date(0));
    expect(await takeLock(path)).toMatchObject({ heldBy: { pid: child.pid }, sameHost: true });
    child.kill('SIGSTOP');
    expect(await takeLock(path)).toMatchObject({ heldBy: { pid: child.pid } });
    await kill(child);
    const lock = lockOf(await takeLock(path));
    expect(sheet(path).pid).toBe(process.pid);
    await lock.release();
  });

  it.skipIf(process.platform !== 'linux')(
    'is taken over from a dead process that nobody has collected yet',
    async () => {
      const path = join(root, 'zombie.lock');
      // The shell turns into a program that never asks after its child.
      const command = `"${process.execPath}" "${program}" "${path}" & exec sleep 60`;
      const parent = spawn('sh', ['-c', command], { stdio: ['ignore', 'pipe', 'inherit'] });
      children.push(parent);
      const [chunk] = (await once(parent.stdout, 'data')) as [Buffer];
      const pid = Number(chunk.toString().slice(5));
      process.kill(pid, 'SIGKILL');
      while (!readFileSync(`/proc/${pid}/stat`, 'latin1').includes(') Z ')) {
        await new Promise((resolve) => setTimeout(resolve, 5));
      }
      await lockOf(await takeLock(path)).release();
    },
  );

  it('is taken over when its number now belongs to another process, or the machine was started again', async () => {
    const path = join(root, 'c.lock');
    const own = await ownIdentity();
    for (const start of [`${own.start}9`, 'another-boot:1']) {
      const since = new Date().toISOString();
      writeFileSync(path, JSON.stringify({ ...own, pid: process.ppid, start, since, token: 'x' }));
      await lockOf(await takeLock(path)).release();
    }
  });

  it('stays with another machine whatever its age, and with this one under another name', async () => {
    const path = join(root, 'd.lock');
    const elsewhere = {
      pid: 999_999,
      host: 'another-laptop',
      start: 'other-boot:77',
      since: '2001-01-01T00:00:00.000Z',
      token: 'x',
    };
    writeFileSync(path, JSON.stringify(elsewhere));
    utimesSync(path, new Date(0), new Date(0));
    expect(await takeLock(path)).toMatchObject({ heldBy: { host: 'another-laptop' }, sameHost: false });
    expect(sheet(path)).toEqual(elsewhere);

    const { child } = await holder(join(root, 'e.lock'));
    const renamed = { ...sheet(join(root, 'e.lock')), host: 'name-in-another-network' };
    writeFileSync(path, JSON.stringify(renamed));
    if (process.platform === 'linux') {
      expect(await takeLock(path)).toMatchObject({ heldBy: { pid: child.pid }, sameHost: true });
      await kill(child);
      await lockOf(await takeLock(path)).release();
    }
  });

  it('that names nobody, after a power cut, holds nothing', async () => {
    const path = join(root, 'f.lock');
    for (const content of ['', '{', '\0\0\0\0', '[]', '{"pid":-1}', 'null', 'x'.repeat(10_000)]) {
      writeFileSync(path, content);
      await lockOf(await takeLock(path)).release();
    }
  });

  it('does not follow a link, and does not remove what is not its own', async () => {
    const path = join(root, 'g.lock');
    const precious = join(root, 'precious');
    writeFileSync(precious, 'mine');
    symlinkSync(precious, path);
    expect(await takeLock(path)).toMatchObject({ problem: { id: 'files.notAFile' } });
    expect(readFileSync(precious, 'utf8')).toBe('mine');
    rmSync(path);
    const lock = lockOf(await takeLock(path));
    writeFileSync(path, JSON.stringify({ ...(await ownIdentity()), since: 'x', token: 'of another' }));
    await lock.release();
    expect(existsSync(path)).toBe(true);
    expect(await takeLock(join(root, 'no', 'folder.lock'))).toMatchObject({
      problem: { id: 'files.notWritten', values: { trouble: 'missing' } },
    });
  });

  it('goes to exactly one of several that find a dead one at the same moment', async () => {
    for (let round = 0; round < 15; round += 1) {
      const path = join(root, `race-${round}.lock`);
      const { child } = round === 0 ? await holder(path) : { child: null };
      if (child !== null) await kill(child);
      else {
        const dead = { ...(await ownIdentity()), pid: process.pid, start: 'another-boot:1' };
        writeFileSync(path, JSON.stringify({ ...dead, since: 'x', token: 'dead' }));
      }
      const answers = await Promise.all(Array.from({ length: 8 }, () => takeLock(path)));
      expect(answers.filter((answer) => 'lock' in answer).length).toBe(1);
      expect(answers.filter((answer) => 'heldBy' in answer).length).toBe(7);
      expect(readdirSync(root).filter((name) => name.includes(`race-${round}.`))).toEqual([
        `race-${round}.lock`,
      ]);
    }
  });

  it('goes to exactly one of several programs, too', async () => {
    const path = join(root, 'programs.lock');
    const { child } = await holder(path);
    await kill(child);
    const said = (await Promise.all([1, 2, 3, 4, 5].map(() => holder(path)))).map((one) => one.said);
    const winners = said.filter((line) => line.startsWith('took '));
    expect(winners.length).toBe(1);
    const winner = winners[0]?.slice(5) ?? '';
    expect(said.filter((line) => line === `held by ${winner}`).length).toBe(4);
  });
});
