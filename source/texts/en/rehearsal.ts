import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { wallTime } from '../../units/wall-clock.js';
import { capital } from '../capital.js';
import { quotedUpTo } from '../quoted.js';

const quoted = quotedUpTo(60);

type Name =
  | 'foam-over'
  | 'hot-hob'
  | 'weak-hob'
  | 'thermometer-off'
  | 'interruption'
  | 'grains'
  | 'overshoot'
  | 'power-cut'
  | 'early-touch'
  | 'burning-smell';

const called: Readonly<Record<Name, string>> = {
  'foam-over': 'the foam',
  'hot-hob': 'a hob hotter than thought',
  'weak-hob': 'a hob weaker than thought',
  'thermometer-off': 'a thermometer that is off',
  interruption: 'the interruption',
  grains: 'graining on the wall',
  overshoot: 'the knob that somebody turned up',
  'power-cut': 'the power cut',
  'early-touch': 'the hand that touched too early',
  'burning-smell': 'the smell of burning',
};

/** What to do about each, first things first. */
const remedy: Readonly<Record<Name, string>> = {
  'foam-over': 'say it (trouble foam), heat down and slide it off, and back on only when it has sunk',
  'hot-hob': 'turn the heat down when the numbers run',
  'weak-hob': 'turn the heat up when the time to go stops shrinking',
  'thermometer-off': 'hold it in boiling water before the cook, and test in cold water',
  interruption: 'say it (trouble away), heat off and pot off, and only then go',
  grains: 'say it (trouble grains), leave it unstirred, wash the wall',
  overshoot: 'pot off the ring first, the rest afterwards',
  'power-cut': 'say it (trouble power), knob off, and low heat first when it comes back',
  'early-touch': 'say it (trouble burn), cool running water at once, 20 minutes',
  'burning-smell': 'say it (trouble scorched), off the heat, leave it alone',
};

/** What stands and cannot be missed, in capitals: nobody types it for the person. */
const standing = {
  'called-away': 'SOMEBODY IN THE AUDIENCE NEEDS YOU, FOR FOUR MINUTES.',
  touched: 'A HELPER HAS TOUCHED THE MASS AND CRIES OUT.',
  'power-gone': 'THE LIGHT IS OUT, AND THE HOB WITH IT.',
  smell: 'IT SMELLS OF BURNING.',
  smokes: 'IT IS DARK AND SMOKES.',
  grains: 'GRAINS OF SUGAR GLITTER ON THE WALL.',
} as const;

/** What a rehearsal says: before it, at the simulated pot, and after it. */
export const rehearsalTexts = {
  'rehearsal.opened': (v: { recipe: string; seed: number; pace: number }) =>
    `REHEARSAL of ${escapeForTerminal(v.recipe)}, seed ${v.seed}, ${v.pace} times as fast, slower while you have a list to read or something to do at once. Nothing is on the stove. "look" says what the dial shows and what is to be seen, "skip" goes to the next thing to do, "pause" and "go" stop and start the clock.`,
  'rehearsal.paused': 'Paused. The same again goes on.',
  'rehearsal.going': 'The clock runs.',
  'rehearsal.skipped': (v: { seconds: number }, p: Printer) => `Skipped ${p.time(v.seconds)}.`,
  'rehearsal.nothing-to-skip': 'There is something to do now.',
  'rehearsal.look': (
    v: {
      paused: boolean;
      wrong: readonly (keyof typeof standing)[];
      dial: { value: number; unit: string } | null;
      poured: boolean;
      boils: boolean;
      dissolved: boolean;
      fullShare: number;
      fingers: string | null;
      rope: 'stiff' | 'droops' | 'holds' | null;
      crumbIsComfortable: boolean | null;
    },
    p: Printer,
  ) => {
    const filled = `foam and syrup fill ${p.percent(Math.min(1, v.fullShare))} of the pot.`;
    const foam =
      v.fullShare >= 1 ? 'SYRUP RUNS OVER THE RIM.' : v.fullShare > 0.75 ? `FOAM CLIMBS: ${filled}` : null;
    const pot = v.boils
      ? (foam ?? `It bubbles; ${filled}`)
      : v.dissolved
        ? (foam ?? 'Clear, and no bubbles.')
        : 'Still gritty.';
    return [
      ...(v.paused ? ['PAUSED.'] : []),
      ...v.wrong.map((one) => standing[one]),
      v.dial === null
        ? 'No thermometer.'
        : `${v.poured ? 'The middle' : 'The dial'} shows ${v.dial.value} °${v.dial.unit}.`,
      ...(v.poured ? [] : [pot]),
      ...(v.fingers === null ? [] : [`A drop in cold water: ${v.fingers}.`]),
      ...(v.rope === null
        ? []
        : [{ stiff: 'Satin, and tough.', droops: 'It droops.', holds: 'It holds.' }[v.rope]]),
      ...(v.crumbIsComfortable === null
        ? []
        : [v.crumbIsComfortable ? 'A crumb is comfortable to touch.' : 'A crumb is too hot to touch.']),
    ].join(' ');
  },

  'rehearsal.sees.dissolved': 'No grit is left on the bottom.',
  'rehearsal.sees.boils': 'Bubbles all over: it boils.',
  'rehearsal.sees.foam-half': 'The foam stands half way up the pot.',
  'rehearsal.sees.foam-high': 'The foam climbs: three quarters of the pot.',
  'rehearsal.sees.foam-over': 'Syrup runs over the rim.',
  'rehearsal.sees.foam-sunk': 'The foam has sunk.',
  'rehearsal.sees.smell': 'It smells of burning.',
  'rehearsal.sees.smell-gone': 'The smell is gone; it is only a little dark.',
  'rehearsal.sees.smokes': 'It turns dark and smokes: off the heat, nothing into it, windows open.',
  'rehearsal.sees.grains': 'Grains of sugar glitter on the wall of the pot.',
  'rehearsal.sees.grains-gone': 'The wall is clean again.',
  'rehearsal.sees.power-gone': 'The light goes out, and the hob with it.',
  'rehearsal.sees.power-back': 'The power is back.',
  'rehearsal.sees.called-away': 'Somebody in the audience needs you, now, for four minutes.',
  'rehearsal.sees.back': 'You can turn to the pot again.',
  'rehearsal.sees.touched': 'A helper has put a finger into the mass and cries out.',
  'rehearsal.sees.tended': 'The finger is under running water.',

  'rehearsal.bad.seed': (v: { found: string }) =>
    `${quoted(v.found)} is not a seed. Type a whole number from 0 to 4294967295, say --seed 7.`,
  'rehearsal.bad.pace': (v: { found: string }) =>
    `${quoted(v.found)} is not a pace. Type a number from 1 (as long as the real cook) to 60, say --pace 30.`,
  'rehearsal.bad.surprise': (
    v: { found: string; nearest: string | null; names: readonly string[] },
    p: Printer,
  ) =>
    v.nearest === null
      ? `There is no surprise ${quoted(v.found)}. There are ${p.list(v.names)}, and any.`
      : `There is no surprise ${quoted(v.found)}. Did you mean "--surprise ${v.nearest}"?`,
  'rehearsal.bad.headless':
    'A rehearsal without a screen has nobody to type: add --auto, and a simulated person does.',

  'rehearsal.title': (v: { recipe: string; seed: number | null; surprise: Name | null }) =>
    `REHEARSAL: ${escapeForTerminal(v.recipe)}, seed ${v.seed ?? 'unknown'}, ${v.surprise === null ? 'no surprise' : `surprise ${v.surprise}`}. No candy was made.`,
  'rehearsal.took': (v: { seconds: number; ended: boolean; stopped: boolean }, p: Printer) =>
    `${p.time(v.seconds)} of cooking${v.stopped ? ', given up' : v.ended ? ', to wrapped pieces' : ', not to the end'}.`,
  'rehearsal.phase': (
    v: {
      phase: string;
      seconds: number;
      planned: { low: number; typical: number; high: number } | null;
      late: boolean;
    },
    p: Printer,
  ) =>
    `${v.phase.padEnd(10)}${p.time(v.seconds).padEnd(12)}${v.planned === null ? '' : `planned ${p.about(v.planned)}`}${v.late ? '  late' : ''}`,
  /** `clock`: when the real pulling is to be, seconds since midnight. */
  'rehearsal.pulling': (
    v: { at: number; plannedAt: number; clock: { at: number; twelve: boolean } | null },
    p: Printer,
  ) => {
    const ahead = v.plannedAt - v.at;
    const against =
      Math.abs(ahead) < 60 ? 'on time' : `${p.time(Math.abs(ahead))} ${ahead > 0 ? 'ahead' : 'behind'}`;
    return v.clock === null
      ? `Hands on it after ${p.time(v.at)}; the plan has them after ${p.time(v.plannedAt)}: ${against}.`
      : `Hands on it at ${wallTime(v.clock.at - ahead, v.clock.twelve)}; the plan has them at ${wallTime(v.clock.at, v.clock.twelve)}: ${against}.`;
  },
  'rehearsal.rest': (
    v: { celsius: number; windowCelsius: readonly [number, number]; stage: string; wanted: string },
    p: Printer,
  ) =>
    `The syrup came to rest at ${p.dial(v.celsius)} (${v.stage}); the window is ${p.dialSpan(...v.windowCelsius)} (${v.wanted}).`,
  'rehearsal.hands': (v: { middleCelsius: number; limitCelsius: number }, p: Printer) =>
    `Hands went in at ${p.degrees(v.middleCelsius)} in the middle; the limit is ${p.degrees(v.limitCelsius)}.`,
  'rehearsal.answered': (
    v: {
      surprise: Name;
      showedAt: number | null;
      afterSeconds: number | null;
      withinSeconds: number;
      inTime: boolean;
      inOrder: boolean;
    },
    p: Printer,
  ) => {
    const what = called[v.surprise];
    if (v.showedAt === null) return `Surprise: ${what} never showed.`;
    if (v.afterSeconds === null)
      return `Surprise: ${what} showed at ${p.clock(v.showedAt)} and was not answered.`;
    return `Surprise: ${what} showed at ${p.clock(v.showedAt)}, answered after ${p.time(v.afterSeconds)} (there are ${p.time(v.withinSeconds)}): ${v.inTime ? 'in time' : 'late'}, ${v.inOrder ? 'in the right order' : 'not in the right order'}.`;
  },
  'rehearsal.warning': (
    v: { name: string; at: number; stoodSeconds: number | null; late: boolean },
    p: Printer,
  ) =>
    `${p.clock(v.at)}  ${v.name}${v.stoodSeconds === null ? ', to the end' : `, for ${p.time(v.stoodSeconds)}`}${v.late ? ': late' : ''}`,
  'rehearsal.warnings': 'Warnings met:',
  'rehearsal.no-warnings': 'No warning was met.',
  'rehearsal.changes': 'What to change:',

  'rehearsal.kept': (v: { id: string }) =>
    `Reading by reading: kettlehand debrief ${escapeForTerminal(v.id)}`,
  'rehearsal.change.unfinished': (v: { phase: string }) =>
    `It was left at ${v.phase}: what comes after it is not rehearsed yet.`,
  'rehearsal.change.unanswered': (v: { surprise: Name }) =>
    `Nothing was done about ${called[v.surprise]}. Next time: ${remedy[v.surprise]}.`,
  'rehearsal.change.slow': (v: { surprise: Name; seconds: number; withinSeconds: number }, p: Printer) =>
    `${p.time(v.seconds)} until ${called[v.surprise]} was answered, and there are ${p.time(v.withinSeconds)}: ${remedy[v.surprise]}.`,
  'rehearsal.change.order': (v: { surprise: Name }) => `The order counts: ${remedy[v.surprise]}.`,
  'rehearsal.change.ran-over': 'It ran over: lower the heat when foam stands half way, or take a larger pot.',
  'rehearsal.change.grained': 'Grains fell in: say what you see at once, and wash the wall.',
  'rehearsal.change.short': (v: { kelvin: number }, p: Printer) =>
    `It came off ${p.rise(v.kelvin)} below the window: test in cold water before it is poured.`,
  'rehearsal.change.by-fingers': (
    v: { kelvin: number; isBelow: boolean; stage: string; wanted: string },
    p: Printer,
  ) =>
    `It came off ${p.rise(v.kelvin)} ${v.isBelow ? 'below' : 'above'} the window, ${
      v.stage === v.wanted
        ? `and the drop felt right: fingers tell the stage (${v.stage}), not where in it. A borrowed thermometer does.`
        : `and what was felt as ${v.wanted} was ${v.stage}: a fresh cup of cold water, ten seconds, and feel it twice.`
    }`,
  'rehearsal.change.past': (v: { kelvin: number }, p: Printer) =>
    `It went ${p.rise(v.kelvin)} past the window: lower heat for the last degrees, and nobody talks to the one at the pot.`,
  'rehearsal.change.hot-hands': (v: { middleCelsius: number; limitCelsius: number }, p: Printer) =>
    `Hands went in at ${p.degrees(v.middleCelsius)}: measure the thickest place, limit ${p.degrees(v.limitCelsius)}.`,
  'rehearsal.change.late-warning': (
    v: { hazard: string; name: string; seconds: number | null; withinSeconds: number | null },
    p: Printer,
  ) =>
    `"${v.name}" stood for ${v.seconds === null ? 'the rest of the cook' : p.time(v.seconds)}${v.withinSeconds === null ? '' : `; there are ${p.time(v.withinSeconds)}`}.`,
  'rehearsal.change.late-phase': (v: { phase: string; seconds: number; mostSeconds: number }, p: Printer) =>
    `${capital(v.phase)} took ${p.time(v.seconds)}, and the plan has ${p.time(v.mostSeconds)} at most: begin earlier, or find what held it up.`,
  'rehearsal.change.nothing': 'Nothing: do it like this.',
} as const;
