import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const mount = (kilobytes: number, folder: string): boolean => {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', folder], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
};

/** Do `work` on a disk of so many kilobytes of its own. Needs the right to mount. */
export const onSmallDisk = async (
  kilobytes: number,
  work: (folder: string) => Promise<void>,
): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'kettlehand-disk-'));
  if (!mount(kilobytes, folder)) throw new Error('no right to mount');
  try {
    await work(folder);
  } finally {
    execFileSync('umount', ['-l', folder]);
    rmSync(folder, { recursive: true });
  }
};

const tryMount = (): boolean => {
  const folder = mkdtempSync(join(tmpdir(), 'kettlehand-disk-'));
  const mounted = process.platform === 'linux' && mount(16, folder);
  if (mounted) execFileSync('umount', [folder]);
  rmSync(folder, { recursive: true });
  return mounted;
};

/** Whether this account may mount a small disk; the tests that need one are shown as skipped where it may not. */
export const canMount = tryMount();
