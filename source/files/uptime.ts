import { readFileSync } from 'node:fs';
import { uptime } from 'node:os';

/**
 * Seconds since this machine was started, the time asleep included; does not jump when the wall clock is set.
 * Linux: first number of /proc/uptime, the boot-time clock, 10 ms steps (Linux manual page proc_uptime(5)).
 * Elsewhere `os.uptime()`: Windows counts ticks with the sleep included; macOS takes wall clock minus boot time,
 * whole seconds, where setting the wall clock may move both (libuv's behaviour, from memory; not measured).
 */
export const uptimeSeconds = (): number => {
  if (process.platform === 'linux') {
    try {
      const seconds = Number.parseFloat(readFileSync('/proc/uptime', 'latin1'));
      if (Number.isFinite(seconds)) return seconds;
    } catch {
      // No /proc here (a bare container): the fallback asks the same clock another way.
    }
  }
  return uptime();
};
