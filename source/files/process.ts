import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { promisify } from 'node:util';
import { codeOf } from './trouble.js';

/** One run of one program on one machine; a process number alone is given out again. */
export type ProcessIdentity = {
  readonly pid: number;
  readonly host: string;
  /** When it started, in this machine's own terms: equal text, same process. Null where the system does not say. */
  readonly start: string | null;
};

/** Linux: field 22 of /proc/PID/stat, clock ticks since boot, and field 3, the state (manual page proc_pid_stat(5)). */
const linuxProcess = async (pid: number): Promise<{ start: string; ended: boolean }> => {
  const [boot, stat] = await Promise.all([
    readFile('/proc/sys/kernel/random/boot_id', 'latin1').catch(() => ''),
    readFile(`/proc/${pid}/stat`, 'latin1'),
  ]);
  // The second field is the program's name in brackets and may itself hold spaces and brackets.
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return { start: `${boot.trim()}:${fields[19] ?? ''}`, ended: fields[0] === 'Z' || fields[0] === 'X' };
};

const run = promisify(execFile);

const psStart = async (pid: number): Promise<string | null> => {
  const env = { ...process.env, LC_ALL: 'C', TZ: 'UTC0' };
  const { stdout } = await run('ps', ['-o', 'lstart=', '-p', String(pid)], { env, timeout: 5000 });
  return stdout.trim() || null;
};

/** When `pid` started and whether it has ended but is not yet collected; null where it cannot be found out. */
const look = async (pid: number): Promise<{ start: string | null; ended: boolean } | null> => {
  try {
    if (process.platform === 'linux') return await linuxProcess(pid);
    return process.platform === 'win32' ? null : { start: await psStart(pid), ended: false };
  } catch {
    return null;
  }
};

export const ownIdentity = async (): Promise<ProcessIdentity> => ({
  pid: process.pid,
  host: hostname(),
  start: (await look(process.pid))?.start ?? null,
});

const answers = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it is there and belongs to somebody else.
    return codeOf(error) !== 'ESRCH';
  }
};

const bootOf = (start: string | null): string => start?.split(':')[0] ?? '';

/** A laptop's host name changes with the network it is in; the boot id does not. */
export const isThisMachine = (other: ProcessIdentity, own: ProcessIdentity): boolean =>
  other.host === own.host ||
  (process.platform === 'linux' && bootOf(own.start) !== '' && bootOf(other.start) === bootOf(own.start));

/** Whether that process has certainly ended. In doubt it has not: age proves nothing, a laptop may be asleep. */
export const hasEnded = async (other: ProcessIdentity, own: ProcessIdentity): Promise<boolean> => {
  if (!isThisMachine(other, own)) return false;
  if (!answers(other.pid)) return true;
  const found = await look(other.pid);
  if (found === null) return false;
  return found.ended || (other.start !== null && found.start !== null && found.start !== other.start);
};
