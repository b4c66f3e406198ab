import { readFileSync } from 'node:fs';

/**
 * Names this run of the machine: another text after every restart; null where the system does not say.
 * Linux: /proc/sys/kernel/random/boot_id (Linux manual page random(4)); the first eight digits are enough.
 */
export const bootId = (): string | null => {
  if (process.platform !== 'linux') return null;
  try {
    return readFileSync('/proc/sys/kernel/random/boot_id', 'latin1').trim().slice(0, 8) || null;
  } catch {
    return null;
  }
};
