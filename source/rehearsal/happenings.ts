import { type Chance, chanceFrom } from './chance.js';
import type { SurpriseName } from './surprises.js';

/** What can be seen, smelt or heard at the pot and the slab. */
export const sights = [
  'dissolved',
  'boils',
  'foam-half',
  'foam-high',
  'foam-over',
  'foam-sunk',
  'smell',
  'smell-gone',
  'smokes',
  'grains',
  'grains-gone',
  'power-gone',
  'power-back',
  'called-away',
  'back',
  'touched',
  'tended',
] as const;
export type Sight = (typeof sights)[number];
export type Notice = { readonly t: number; readonly sight: Sight };

/** What a surprise may look at, and what it may do to the pot. */
export type Scene = {
  readonly t: number;
  readonly boilingSince: number | null;
  readonly celsius: number;
  readonly kelvinPerSecond: number;
  readonly takeOffCelsius: number;
  readonly ceilingCelsius: number;
  /** Syrup and foam over the height of the pot. */
  readonly fullShare: number;
  readonly poured: number | null;
  readonly onTheHeat: boolean;
  /** Since when it is off the ring, or the burner is off. */
  readonly calmSince: number | null;
};

/** The state of the one surprise of a rehearsal. Seconds since the opening. */
export type Course = {
  /** It is there, whether or not anything shows. */
  readonly beganAt: number | null;
  /** The moment from which somebody could know. */
  readonly showedAt: number | null;
  readonly endedAt: number | null;
};

export type Happening = {
  readonly course: () => Course;
  /** Looks at the scene, every second or so; what can be noticed comes back. */
  look(scene: Scene): readonly Sight[];
  /** A person has done about it what the table says: the wall washed, the burn cooled. */
  tend(t: number): void;
  foamTimes(): number;
  /** Null: the knob decides. 0: no power. 1: somebody turned it all the way up. */
  burner(): 0 | 1 | null;
};

/** Seconds and kelvin of each surprise. Our judgement. */
const timing = {
  foamAfter: [100, 240],
  foamTimes: 6,
  foamFades: 25,
  grainsAfter: [240, 480],
  grainsTendedAfter: 40,
  powerAfter: [240, 600],
  powerLasts: 300,
  interruptionBelow: [4, 6],
  interruptionLasts: 240,
  overshootBelow: [3, 5],
  overshootLasts: 50,
  smellBelow: [10, 14],
  smellGoneAfter: 60,
  touchAfter: [180, 300],
  hotRate: 4 / 60,
  hotWithin: 8,
  weakAfter: 600,
  weakRate: 0.5 / 60,
} as const;

const within = (chance: Chance, [low, high]: readonly [number, number]): number =>
  low + (high - low) * chance.even();

const shown = 0.7;

/** One surprise, from its beginning to its end; null: nothing happens. */
export const happeningOf = (name: SurpriseName | null, seed: number): Happening => {
  const chance = chanceFrom(seed ^ 0x77aa);
  const after = { foam: within(chance, timing.foamAfter), grains: within(chance, timing.grainsAfter) };
  const power = within(chance, timing.powerAfter);
  const touch = within(chance, timing.touchAfter);
  const interruption = within(chance, timing.interruptionBelow);
  const overshoot = within(chance, timing.overshootBelow);
  const smell = within(chance, timing.smellBelow);

  let beganAt: number | null = null;
  let showedAt: number | null = null;
  let endedAt: number | null = null;
  let tendedAt: number | null = null;

  const begin = (t: number, shows = true): void => {
    beganAt = t;
    if (shows) showedAt = t;
  };
  const boiledFor = (scene: Scene): number =>
    scene.boilingSince === null ? -1 : scene.t - scene.boilingSince;
  const running = (): boolean => beganAt !== null && endedAt === null;
  /** Seconds since it began, as long as it goes on. */
  const runningFor = (t: number): number => (beganAt === null || endedAt !== null ? -1 : t - beganAt);
  const near = (scene: Scene, below: number): boolean =>
    scene.onTheHeat && scene.poured === null && scene.celsius > scene.takeOffCelsius - below;

  const looks: Readonly<Record<SurpriseName, (scene: Scene) => readonly Sight[]>> = {
    'foam-over': (scene) => {
      if (beganAt === null && scene.onTheHeat && boiledFor(scene) > after.foam) begin(scene.t, false);
      if (!running()) return [];
      if (showedAt === null && scene.fullShare > shown) showedAt = scene.t;
      if (scene.calmSince !== null && scene.t - scene.calmSince > timing.foamFades) {
        endedAt = scene.t;
        return ['foam-sunk'];
      }
      return [];
    },
    'hot-hob': (scene) => {
      beganAt ??= 0;
      const fast = scene.onTheHeat && scene.kelvinPerSecond > timing.hotRate;
      if (fast && near(scene, timing.hotWithin)) showedAt ??= scene.t;
      return [];
    },
    'weak-hob': (scene) => {
      beganAt ??= 0;
      const slow = scene.onTheHeat && scene.kelvinPerSecond < timing.weakRate;
      if (slow && boiledFor(scene) > timing.weakAfter && scene.poured === null) showedAt ??= scene.t;
      return [];
    },
    'thermometer-off': (scene) => {
      beganAt ??= 0;
      // Boiling is the first moment at which a number can be held against what is seen.
      if (boiledFor(scene) >= 0) showedAt ??= scene.t;
      return [];
    },
    interruption: (scene) => {
      if (beganAt === null && near(scene, interruption)) {
        begin(scene.t);
        return ['called-away'];
      }
      if (runningFor(scene.t) > timing.interruptionLasts) {
        endedAt = scene.t;
        return ['back'];
      }
      return [];
    },
    grains: (scene) => {
      if (beganAt === null && scene.onTheHeat && boiledFor(scene) > after.grains) {
        begin(scene.t);
        return ['grains'];
      }
      if (running() && tendedAt !== null && scene.t - tendedAt > timing.grainsTendedAfter) {
        endedAt = scene.t;
        return ['grains-gone'];
      }
      return [];
    },
    overshoot: (scene) => {
      if (beganAt === null && near(scene, overshoot)) begin(scene.t, false);
      if (beganAt !== null && showedAt === null && scene.celsius > scene.takeOffCelsius) showedAt = scene.t;
      if (runningFor(scene.t) > timing.overshootLasts) endedAt = scene.t;
      return [];
    },
    'power-cut': (scene) => {
      if (beganAt === null && scene.onTheHeat && boiledFor(scene) > power) {
        begin(scene.t);
        return ['power-gone'];
      }
      if (runningFor(scene.t) > timing.powerLasts) {
        endedAt = scene.t;
        return ['power-back'];
      }
      return [];
    },
    'early-touch': (scene) => {
      if (beganAt === null && scene.poured !== null && scene.t - scene.poured > touch) {
        begin(scene.t);
        return ['touched'];
      }
      if (running() && tendedAt !== null) {
        endedAt = scene.t;
        return ['tended'];
      }
      return [];
    },
    'burning-smell': (scene) => {
      if (beganAt === null && near(scene, smell)) {
        begin(scene.t);
        return ['smell'];
      }
      if (running() && scene.calmSince !== null && scene.t - scene.calmSince > timing.smellGoneAfter) {
        endedAt = scene.t;
        return ['smell-gone'];
      }
      return [];
    },
  };

  return {
    course: () => ({ beganAt, showedAt, endedAt }),
    look: (scene) => (name === null ? [] : looks[name](scene)),
    tend: (t) => {
      tendedAt ??= t;
    },
    foamTimes: () => (name === 'foam-over' && running() ? timing.foamTimes : 1),
    burner: () => {
      if (name === 'power-cut' && running()) return 0;
      return name === 'overshoot' && running() ? 1 : null;
    },
  };
};
