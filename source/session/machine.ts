import { uptimeSeconds } from '../files/uptime.js';
import type { Clock } from './clock.js';

/** The clocks of this machine. */
export const machineClock: Clock = { up: uptimeSeconds, wall: () => Date.now() };
