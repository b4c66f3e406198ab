/** What a session reads of the world's time. `up` counts sleep and never runs backwards while the machine stays on. */
export type Clock = {
  /** Machine up-time, seconds. */
  up(): number;
  /** Wall clock, milliseconds since 1970. */
  wall(): number;
  /** Names this run of the machine; null or missing: not known. */
  readonly boot?: string | null;
  /** Run again and again, every so many seconds of the machine being awake; returns how to stop. */
  every?(seconds: number, run: () => void): () => void;
};

export type LastStamp = {
  readonly t: number;
  readonly up: number | null;
  readonly at: string;
  readonly boot?: string | null;
};

/** The machine's clocks disagree by less than this without anything having happened, seconds. */
const agreeWithinSeconds = 90;

/**
 * Seconds since a cook's last event, when it is taken up again. The up-time is right as long as the machine stayed
 * on, whatever became of the wall clock; after a restart only the wall clock is left, and the person should be asked.
 */
export const secondsSince = (
  last: LastStamp,
  clock: Clock,
): { readonly seconds: number; readonly sure: boolean } => {
  const byUp = last.up === null ? -1 : clock.up() - last.up;
  const byWall = (clock.wall() - Date.parse(last.at)) / 1000;
  const wall = Number.isFinite(byWall) ? Math.max(0, byWall) : 0;
  if (byUp < 0) return { seconds: wall, sure: false };
  if (last.boot && clock.boot)
    return last.boot === clock.boot ? { seconds: byUp, sure: true } : { seconds: wall, sure: false };
  // Up-time behind the wall clock: restarted meanwhile, or the wall clock was set forward. The longer one is safer.
  if (wall > byUp + agreeWithinSeconds) return { seconds: wall, sure: false };
  return { seconds: byUp, sure: true };
};

/** Seconds since the cook opened, from a clock that never falls. */
export const cookClock = (clock: Clock, startedAtSeconds: number): (() => number) => {
  const upAtStart = clock.up();
  let latest = startedAtSeconds;
  return () => {
    latest = Math.max(latest, startedAtSeconds + clock.up() - upAtStart);
    return latest;
  };
};

/** What every event is stamped with, beside its own time. */
export const stampOf = (clock: Clock): { at: string; up: number; boot?: string } => ({
  at: new Date(clock.wall()).toISOString(),
  up: clock.up(),
  ...(clock.boot ? { boot: clock.boot } : {}),
});
