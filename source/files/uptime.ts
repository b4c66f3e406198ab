import { uptime } from 'node:os';

/**
 * Seconds since this machine was started, the time asleep included; does not jump when the wall clock is set.
 * Linux: the first number of /proc/uptime, the boot-time clock in steps of 10 ms (Linux manual page proc_uptime(5)), which
 * Node reads itself, seven times as fast as a file read from here: this is asked with every frame. Windows counts ticks
 * with the sleep included; macOS takes wall clock minus boot time, whole seconds, where setting the wall clock may move
 * both (libuv's behaviour, from memory; not measured).
 */
export const uptimeSeconds: () => number = uptime;
