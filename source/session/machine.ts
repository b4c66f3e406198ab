import { bootId } from '../files/boot.js';
import { uptimeSeconds } from '../files/uptime.js';
import type { Clock } from './clock.js';

/** The clocks of this machine. */
export const machineClock: Clock = {
  up: uptimeSeconds,
  wall: () => Date.now(),
  boot: bootId(),
  every: (seconds, run) => {
    const timer = setInterval(run, seconds * 1000);
    // It listens for sleep; it is no reason to stay.
    timer.unref();
    return () => clearInterval(timer);
  },
};
