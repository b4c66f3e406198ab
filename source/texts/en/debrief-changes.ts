import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';

/** Troubles as a person says them. */
export const troubleWords: Readonly<Record<string, string>> = {
  foam: 'foam rising',
  overflow: 'boiled over',
  scorched: 'scorched',
  burn: 'hot sugar on skin',
  grains: 'grains',
  overshoot: 'past the window',
  soft: 'too soft',
  stiff: 'too stiff',
  thermometer: 'thermometer in doubt',
  glass: 'broken glass',
  spill: 'spilled syrup',
  fire: 'fire',
  power: 'power cut',
  choking: 'choking',
  allergy: 'allergy',
  away: 'pot left alone',
};
export const troubleName = (name: string): string => troubleWords[name] ?? escapeForTerminal(name);

const firstActs: Readonly<Record<string, string>> = {
  foam: 'heat down and pot off the ring; never water',
  overflow: 'knob off first, then slide the pot off; never water',
  scorched: 'off the heat and leave it; never water',
  fire: 'lid on, heat off; never move the pot, never water',
  overshoot: 'off the ring first, then boiling water by the spoon',
};
const actWords: Readonly<Record<string, string>> = {
  'heat down': 'heat down',
  'heat off': 'heat off',
  'pot off': 'pot off',
  'lid on': 'lid on',
  water: 'water in',
  measure: 'measured',
  test: 'tested in cold water',
  check: 'thermometer checked',
  'give up': 'given up',
};
export const actWord = (act: string): string => actWords[act] ?? act;

type Span = { readonly low: number; readonly high: number };

const degreesEach = (value: number): string => String(Number(value.toFixed(2)));

/** What to do otherwise next time; beside each, why and the number behind it. */
export const debriefChangeTexts = {
  'debrief.change.burn':
    'Long sleeves and dry mitts from the boil on, and show everybody where the cool water runs.',
  'debrief.because.burn': (v: { phase: string; at: number; first: number | null }, p: Printer) =>
    `Hot sugar reached skin at ${p.clock(v.at)} (${v.phase})${v.first === null ? '; the journal does not say what was done first' : `; ${p.time(v.first)} until the first thing was done`}. Cool running water starts at once and runs 20 minutes.`,
  'debrief.change.hands-too-hot':
    'Tools only until the middle has been measured below the limit, each time it was warmed.',
  'debrief.because.hands-too-hot': (
    v: { at: number; celsius: number | null; limitCelsius: number },
    p: Printer,
  ) =>
    `At ${p.clock(v.at)} hands were let in while the middle read ${v.celsius === null ? 'above' : `${p.degrees(v.celsius)}, above`} their limit of ${p.degrees(v.limitCelsius)}.`,
  'debrief.change.wrong-order': (v: { name: string }) =>
    `Rehearse "${troubleName(v.name)}" once: ${firstActs[v.name] ?? 'the first act first'}.`,
  'debrief.because.wrong-order': (v: { name: string; at: number; acts: readonly string[] }, p: Printer) =>
    `What was done from ${p.clock(v.at)} on, in order: ${p.list(v.acts.map(actWord))}.`,
  'debrief.change.slow-answer': (v: { name: string }) =>
    `Say before the cook who acts first on "${troubleName(v.name)}", and rehearse it.`,
  'debrief.because.slow-answer': (v: { name: string; seconds: number; within: number }, p: Printer) =>
    `The first answer came after ${p.time(v.seconds)}; there are ${p.time(v.within)}.`,
  'debrief.change.unattended':
    'One adult at the pot who does nothing else; whoever types asks for a reading.',
  'debrief.because.unattended': (v: { times: number; seconds: number }, p: Printer) =>
    `Silence while the pot was on raised a warning ${v.times === 1 ? 'once' : `${v.times} times`}${v.seconds < 10 ? '' : `; the longest went on for ${p.time(v.seconds)} after it`}.`,
  'debrief.change.boil-over': (v: { litres: number | null }, p: Printer) =>
    v.litres === null
      ? 'Lower the heat when the foam is half way up the pot, and butter the rim.'
      : `Take a pot of ${p.litres(v.litres)} or more, or cook two smaller batches.`,
  'debrief.because.boil-over': (
    v: { name: string; at: number; neededLitres: number; haveLitres: number | null },
    p: Printer,
  ) =>
    `It ${v.name === 'overflow' ? 'ran over' : 'foamed up'} at ${p.clock(v.at)}; with its foam this batch wants ${p.litres(v.neededLitres)}${v.haveLitres === null ? '' : ` and the pot holds ${p.litres(v.haveLitres)}${v.haveLitres < v.neededLitres ? '' : ': large enough, so it was the heat'}`}.`,
  'debrief.change.scorched': (v: { late: boolean }) =>
    v.late
      ? 'Lower heat from half way on, and scrape the bottom as you stir.'
      : 'Lower heat for the last third, and a pot with a thicker base.',
  'debrief.because.scorched': (v: { at: number; peakCelsius: number | null }, p: Printer) =>
    `It smelled or looked scorched at ${p.clock(v.at)}${v.peakCelsius === null ? '' : `; the syrup itself never read above ${p.dial(v.peakCelsius)}, so it was the bottom`}.`,
  'debrief.change.past-window': (v: { late: boolean; offCelsius: number }, p: Printer) =>
    v.late
      ? `Stand with a hand on the pot from the last list on, and take it off the moment it is asked for, at ${p.dial(v.offCelsius)}.`
      : `Take it off at ${p.dial(v.offCelsius)}, that much earlier.`,
  'debrief.because.past-window': (
    v: { peakCelsius: number; ceilingCelsius: number; pastKelvin: number; lateSeconds: number },
    p: Printer,
  ) =>
    `It peaked at ${p.dial(v.peakCelsius)}, ${p.rise(v.pastKelvin)} above the window's top of ${p.dial(v.ceilingCelsius)}${v.lateSeconds >= 1 ? `, and came off ${p.time(v.lateSeconds)} after it was asked for` : ''}.`,
  'debrief.change.short': (v: { floorCelsius: number }, p: Printer) =>
    `Boil on until it reads ${p.dial(v.floorCelsius)} or cold water says so.`,
  'debrief.because.short': (v: { peakCelsius: number; shortKelvin: number }, p: Printer) =>
    `It peaked at ${p.dial(v.peakCelsius)}, ${p.rise(v.shortKelvin)} short of the window.`,
  'debrief.change.late-off': (v: { offCelsius: number }, p: Printer) =>
    `Mitts on and trivet ready from the last list on: off at ${p.dial(v.offCelsius)}, at once.`,
  'debrief.because.late-off': (v: { seconds: number }, p: Printer) =>
    `It came off ${p.time(v.seconds)} after it was asked for; it stayed in the window this time.`,
  'debrief.change.fast-end': (v: { fromCelsius: number }, p: Printer) =>
    `Turn the heat down one mark when it reads ${p.dial(v.fromCelsius)}.`,
  'debrief.because.fast-end': (v: { kelvinPerSecond: number; mostPerSecond: number }, p: Printer) =>
    `The last degrees ran at ${p.rate(v.kelvinPerSecond)}; below ${p.rate(v.mostPerSecond)} there is time to act.`,
  'debrief.change.few-readings': (v: { fromCelsius: number }, p: Printer) =>
    `From ${p.dial(v.fromCelsius)} on read every 20 s.`,
  'debrief.because.few-readings': (v: { seconds: number; readings: number }, p: Printer) =>
    `Near the end there ${v.readings === 1 ? 'was one reading' : `were ${v.readings} readings`}, and once none for ${p.time(v.seconds)}.`,
  'debrief.change.stiff': (v: { portions: number }) =>
    `Pull it in ${v.portions} portions, the rest kept warm, or with more pairs of hands.`,
  'debrief.because.stiff': (
    v: { armsOut: boolean; portions: number; gramsEach: number; mostGrams: number },
    p: Printer,
  ) =>
    `${v.armsOut ? 'Arms gave out' : 'It set before it was pulled'} with ${p.grams(v.gramsEach)} a portion; such hands manage about ${p.grams(v.mostGrams)}.`,
  'debrief.change.grains': (v: { missingGrams: number; wall: boolean }, p: Printer) =>
    v.missingGrams >= 1
      ? `Add syrup with ${p.grams(v.missingGrams)} more of dry solids (glucose or corn syrup).`
      : v.wall
        ? 'Wash the wall down once before it thickens, then keep the spoon out.'
        : 'Stir gently along the bottom only, and never scrape the pot.',
  'debrief.because.grains': (v: { phase: string; at: number; doctorRatio: number | null }, p: Printer) =>
    `Grains showed at ${p.clock(v.at)} (${v.phase})${v.doctorRatio === null ? '' : `, with ${degreesEach(v.doctorRatio)} g of syrup solids to 1 g of sugar`}.`,
  'debrief.change.soft': (v: { offCelsius: number }, p: Printer) =>
    `Boil a little further: off at ${p.dial(v.offCelsius)}; and let it cool more before pulling.`,
  'debrief.because.soft': (v: { droops: number; moisture: number | null }, p: Printer) =>
    `The rope drooped ${v.droops === 1 ? 'once' : `${v.droops} times`}${v.moisture === null ? '' : `; about ${p.percent(v.moisture)} of it was water`}.`,
  'debrief.change.fingers-and-dial': (v: { boils: number }, p: Printer) =>
    `Hold the thermometer in boiling water before the cook; here that is ${p.degrees(v.boils)}.`,
  'debrief.because.fingers-and-dial': (v: { stages: number }) =>
    `Cold water felt ${Math.abs(v.stages)} stages ${v.stages > 0 ? 'harder' : 'softer'} than the thermometer read.`,
  'debrief.change.short-tests': (v: { fromCelsius: number | null; feels: string }, p: Printer) =>
    v.fromCelsius === null
      ? `Wait longer before the first test for ${v.feels}.`
      : `First test for ${v.feels} at ${p.dial(v.fromCelsius)}, not before.`,
  'debrief.because.short-tests': (v: { tests: number; firstCelsius: number | null }, p: Printer) =>
    `${v.tests} tests were short of the mark${v.firstCelsius === null ? '' : `, the first at ${p.dial(v.firstCelsius)}`}; each costs a minute or two off the ring.`,
  'debrief.change.no-readings': 'Borrow a thermometer, even a bad one, and test it in boiling water.',
  'debrief.because.no-readings': (v: { between: readonly [number, number] | null }, p: Printer) =>
    v.between === null
      ? 'Nothing was read and nothing tested, so nothing can be said of the water left.'
      : `By cold water alone it ended somewhere in ${p.dialSpan(...v.between)}.`,
  'debrief.change.unchecked-dial': (v: { boils: number }, p: Printer) =>
    `Check the thermometer in boiling water (here ${p.degrees(v.boils)}) and type what it shows: "boils ...".`,
  'debrief.because.unchecked-dial': (v: { sdKelvin: number }, p: Printer) =>
    `Unchecked it is known to about ${p.rise(v.sdKelvin)} only.`,
  'debrief.change.boil-time': (v: { waterGrams: number }, p: Printer) =>
    `A stronger setting until the last degrees, or less water at the start: ${p.grams(v.waterGrams)} had to boil away.`,
  'debrief.because.boil-time': (v: { seconds: number; high: number }, p: Printer) =>
    `It boiled for ${p.time(v.seconds)} on the ring; more than ${p.time(v.high)} is rare.`,
  'debrief.change.slow-fold': 'Pour it out wider: a thinner layer cools sooner.',
  'debrief.because.slow-fold': (v: { seconds: number; high: number }, p: Printer) =>
    `Cooling and folding took ${p.time(v.seconds)}; up to ${p.time(v.high)} is usual.`,
  'debrief.change.heat-left-on': 'Knob off as the pot leaves the ring, and say it aloud.',
  'debrief.because.heat-left-on': (v: { seconds: number }, p: Printer) =>
    `The bare ring stayed on for ${p.time(v.seconds)}.`,
  'debrief.change.stirred-in-the-boil':
    'Lower heat while it dissolves, and the spoon out at the first bubbles.',
  'debrief.because.stirred-in-the-boil': (v: { seconds: number }, p: Printer) =>
    `It boiled for ${p.time(v.seconds)} while it was still stirred.`,
  'debrief.change.piece-size': (v: { now: number; better: number }, p: Printer) =>
    `Cut ${p.millimetres(v.better)} long instead of ${p.millimetres(v.now)}.`,
  'debrief.because.piece-size': (v: { meanGrams: number; wantedGrams: number }, p: Printer) =>
    `A piece weighed ${p.grams(v.meanGrams)}; the recipe wants ${p.grams(v.wantedGrams)}.`,
  'debrief.change.uneven-pieces': 'Mark the length on the board, and roll the rope evenly before cutting.',
  'debrief.because.uneven-pieces': (
    v: { variation: number; between: readonly [number, number] },
    p: Printer,
  ) =>
    `Pieces vary by about ${p.percent(v.variation)}; handfuls averaged from ${p.grams(v.between[0])} to ${p.grams(v.between[1])}.`,
  'debrief.change.yield': (v: { more: boolean }) =>
    v.more
      ? 'Check the scale and what stood on it: more came out than went in.'
      : 'Scrape slab and hands onto the rope while it is warm, and grease them thinner.',
  'debrief.because.yield': (v: { share: number; weighedGrams: number; cookedGrams: number }, p: Printer) =>
    `${p.grams(v.weighedGrams)} was weighed of ${p.grams(v.cookedGrams)} that the pot held: ${p.percent(v.share)}.`,
  'debrief.change.slow-wrap': (v: { people: number }) => `${v.people} people wrap.`,
  'debrief.because.slow-wrap': (v: { seconds: number; high: number }, p: Printer) =>
    `Wrapping took ${p.time(v.seconds)}; one person needs up to ${p.time(v.high)} with the rest before it.`,
  'debrief.change.weigh-and-count': (v: { weigh: boolean; count: boolean }) =>
    `${v.weigh ? 'Weigh the whole ("weigh 512g")' : ''}${v.weigh && v.count ? ' and count' : ''}${!v.weigh && v.count ? 'Count' : ''}${v.count ? ' the pieces ("count 63")' : ''}.`,
  'debrief.because.weigh-and-count': (
    v: { weigh: boolean; grams: Span; count: boolean; pieces: Span },
    p: Printer,
  ) =>
    `Without it the next plan can only guess again: ${p.list([
      ...(v.weigh ? [`${p.grams(v.grams.low)} to ${p.grams(v.grams.high)}`] : []),
      ...(v.count ? [`${Math.round(v.pieces.low)} to ${Math.round(v.pieces.high)} pieces`] : []),
    ])}.`,
} as const;
