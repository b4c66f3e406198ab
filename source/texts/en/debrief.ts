import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { capital } from '../capital.js';
import { percentInBrackets, phaseTime } from '../measures.js';
import { cooksTexts } from './cooks.js';
import { actWord, debriefChangeTexts, troubleName } from './debrief-changes.js';

type Pair = readonly [number, number];
type Spread = { readonly low: number; readonly typical: number; readonly high: number };

const phaseTitles: Readonly<Record<string, string>> = {
  mix: 'Weigh and mix, cold',
  dissolve: 'Dissolve the sugar',
  boil: 'Boil',
  test: 'Test in cold water',
  flavour: 'Flavour, off the heat',
  pour: 'Pour',
  fold: 'Cool and fold',
  pull: 'Pull',
  cut: 'Rope and cut',
  wrap: 'Rest and wrap',
  clean: 'Clean the pot',
  over: 'Done',
};

const verdicts: Readonly<Record<string, string>> = {
  short: 'not yet',
  there: 'there',
  past: 'past it',
  again: 'unsure',
};

/** What people reported, and what the program warned of by itself. */
const wentWrong = ({ troubles, warnings }: { troubles: number; warnings: number }, p: Printer): string => {
  const reported =
    troubles === 0 ? 'no trouble was reported' : `${p.count(troubles, 'trouble', 'troubles')} reported`;
  return warnings === 0 ? reported : `${reported}, ${p.count(warnings, 'warning', 'warnings')} raised`;
};

/** The debrief: what happened in a cook. */
export const debriefTexts = {
  ...debriefChangeTexts,
  ...cooksTexts,

  'debrief.title': (v: { name: string }) => `What happened: ${shown(v.name)}`,
  'debrief.when': (v: { date: string | null; seconds: number }, p: Printer) =>
    v.date === null ? p.time(v.seconds) : `${v.date}, ${p.time(v.seconds)}`,
  'debrief.place': (v: { altitudeMetres: number | null; boils: number; from: string }, p: Printer) =>
    v.from === 'assumed sea level'
      ? `taken as at sea level (nobody said otherwise): water boils at ${p.degrees(v.boils)}`
      : `${v.altitudeMetres === null ? '' : `${p.metres(v.altitudeMetres)}, `}water boils at ${p.degrees(v.boils)}`,
  'debrief.dial': (v: { id: string | null; unit: string; basis: string }) =>
    v.id === null
      ? 'no thermometer; temperatures as a right one would show them'
      : `temperatures as "${shown(v.id)}" shows them, ${v.basis === 'taken as right' ? 'unchecked' : `corrected by ${v.basis}`}`,
  'debrief.rehearsal': 'REHEARSAL: a simulated pot, no candy was made',
  'debrief.rehearsal.short': 'REHEARSAL',
  'debrief.from': (v: { phase: string }) =>
    `It was opened at ${v.phase}: everything before it was taken as done, and nothing is known of it.`,
  'debrief.lost': (v: { seconds: number; sure: boolean; t: number }, p: Printer) =>
    `From ${p.clock(v.t)} back, ${v.sure ? '' : 'by the wall clock '}${p.time(v.seconds)} went unseen: the program was not running.`,
  'debrief.unfinished': (v: { phase: string; seconds: number }, p: Printer) =>
    `This cook is not finished: it stood at ${v.phase} when it was last heard of, after ${p.time(v.seconds)}. What there is:`,

  'debrief.lead.finished': (
    v: {
      pieces: number | null;
      grams: number | null;
      firmness: string | null;
      moisture: number | null;
      seconds: number;
      troubles: number;
      warnings: number;
    },
    p: Printer,
  ) => {
    const made = [
      ...(v.pieces === null ? [] : [p.count(v.pieces, 'piece', 'pieces')]),
      ...(v.grams === null ? [] : [p.grams(v.grams)]),
    ];
    const is =
      v.firmness === null || v.moisture === null
        ? []
        : [`${v.firmness} by the numbers, about ${p.percent(v.moisture)} water`];
    const all = [...made, ...is].join(', ');
    return `${all === '' ? 'Cooked to the end' : capital(all)}. ${capital(wentWrong(v, p))}.`;
  },
  'debrief.lead.given-up': (
    v: { phase: string; seconds: number; troubles: number; warnings: number },
    p: Printer,
  ) => `Given up after ${p.time(v.seconds)}; ${wentWrong(v, p)}.`,

  'debrief.heading.curve': 'The curve',
  'debrief.forecast.unheld':
    'It came off the heat before its time, so the forecast cannot be held against what came.',
  'debrief.heading.forecast': 'What the forecast said',
  'debrief.heading.result': 'What came of it',
  'debrief.heading.phases': 'Minutes',
  'debrief.heading.tests': 'In cold water',
  'debrief.heading.warnings': 'Warnings',
  'debrief.heading.troubles': 'What went wrong',
  'debrief.heading.remarks': 'Remarks',
  'debrief.heading.changes': 'Next time',

  'debrief.no-curve': 'Nothing was read and nothing was tested in cold water, so there is no curve.',
  'debrief.plot.reading': 'reading',
  'debrief.plot.doubted': 'doubted reading',
  'debrief.plot.believed': 'believed',
  'debrief.plot.test': 'cold-water test',
  'debrief.plot.warning': 'warning',
  'debrief.plot.trouble': 'trouble or warning',
  'debrief.plot.middle': 'middle of the mass',
  'debrief.plot.off': 'off the heat',
  'debrief.plot.poured': 'poured',
  'debrief.plot.window': 'the window',
  'debrief.plot.for-hands': 'for hands',
  'debrief.plot.boils': 'boils',
  'debrief.plot.break': 'finer scale above this line',
  'debrief.plot.axis': 'minutes since the cook opened',
  'debrief.plot.foreseen': 'minutes to the take-off, as foreseen at that time; shaded: 8 times in 10',
  'debrief.plot.text-foreseen': 'minutes to the take-off, as foreseen at that time',
  'debrief.plot.band': '8 times in 10',
  'debrief.plot.came': 'what it turned out to be',
  'debrief.plot.unit': (v: { unit: string }) => `°${v.unit}`,
  'debrief.plot.alt': (v: { peak: number | null; window: Pair; minutes: number }, p: Printer) =>
    `Temperature against time over ${p.count(v.minutes, 'minute', 'minutes')}${v.peak === null ? '' : `, peaking at ${p.dial(v.peak)}`}; the window is ${p.dialSpan(v.window[0], v.window[1])}. The numbers are in the tables below.`,
  'debrief.plot.forecast-alt':
    'Foreseen minutes to the take-off against what they turned out to be; the table below has the numbers.',
  'debrief.source.run-sheet':
    'Planned: by the run sheet that this cook was opened with, with how far each phase may spread.',
  'debrief.source.trade':
    'Usual: what the trade takes, collected from books, and the boil from its heat; no run sheet was made for this cook. Wrapping is counted for one person.',

  'debrief.off.label': 'Off the heat',
  'debrief.off': (
    v: {
      t: number;
      celsius: number | null;
      wanted: number;
      askedAt: number | null;
      implied: boolean;
      offs: number;
    },
    p: Printer,
  ) => {
    const at = v.celsius === null ? `at ${p.clock(v.t)}` : `at ${p.clock(v.t)}, ${p.dial(v.celsius)}`;
    const asked =
      v.askedAt === null
        ? `before it was asked for (${p.dial(v.wanted)})`
        : v.t - v.askedAt < 1
          ? 'as soon as it was asked for'
          : `${p.time(v.t - v.askedAt)} after it was asked for (${p.dial(v.wanted)})`;
    const often =
      v.offs > 1
        ? `; the ${['', 'first', 'second', 'third', 'fourth', 'fifth'][v.offs] ?? `${v.offs}th`} time`
        : '';
    return `${at}, ${asked}${often}${v.implied ? '; nobody said so, what followed shows it' : ''}`;
  },
  'debrief.off.blind': (v: { t: number; offs: number }, p: Printer) =>
    `at ${p.clock(v.t)}${v.offs > 1 ? `, the last of ${v.offs} times` : ''}`,
  'debrief.off.none': 'nobody said when',
  'debrief.peak.label': 'Hottest',
  'debrief.peak': (
    v: { celsius: number; between: Pair; window: Pair; outside: number; t: number | null; open: boolean },
    p: Printer,
  ) => {
    const where =
      v.open && v.outside < 0
        ? `so far; the window is ${p.dialSpan(...v.window)}`
        : v.outside === 0
          ? `within the window of ${p.dialSpan(...v.window)}`
          : `${p.rise(Math.abs(v.outside))} ${v.outside > 0 ? 'above' : 'short of'} the window of ${p.dialSpan(...v.window)}`;
    return `${p.dial(v.celsius)} (${p.dialNumber(v.between[0])}-${p.dialNumber(v.between[1])})${v.t === null ? '' : ` at ${p.clock(v.t)}`}, ${where}`;
  },
  'debrief.peak.fingers': (v: { between: Pair; window: Pair }, p: Printer) =>
    `somewhere in ${p.dialSpan(...v.between)} by cold water alone; the window is ${p.dialSpan(...v.window)}`,
  'debrief.moisture.label': 'Water left',
  'debrief.moisture': (v: { moisture: number; between: Pair }, p: Printer) =>
    `about ${p.percent(v.moisture)}${percentInBrackets(v.between, p)}, computed from the hottest`,
  'debrief.texture.label': 'Texture',
  'debrief.texture': (v: { firmness: string; range: readonly [string, string]; room: number }, p: Printer) =>
    `${v.firmness}${v.range[0] === v.range[1] ? '' : ` (${v.range[0]} to ${v.range[1]})`} at ${p.degrees(v.room)}, computed`,
  'debrief.yield.label': 'Weighed',
  'debrief.yield': (v: { weighed: number; cooked: number; share: number; expected: Spread }, p: Printer) =>
    `${p.grams(v.weighed)}, ${p.percent(v.share)} of the ${p.grams(v.cooked)} computed in the pot; ${p.grams(v.expected.low)} to ${p.grams(v.expected.high)} was expected`,
  'debrief.yield.none': (v: { expected: Spread }, p: Printer) =>
    `not weighed; ${p.grams(v.expected.low)} to ${p.grams(v.expected.high)} was expected`,
  'debrief.pieces.label': 'Pieces',
  'debrief.pieces': (
    v: { counted: number; expected: Spread; mean: number | null; wanted: number },
    p: Printer,
  ) =>
    `${v.counted}, expected ${v.expected.low}-${v.expected.high}${v.mean === null ? '' : `; ${p.grams(v.mean)} each, ${p.grams(v.wanted)} wanted`}`,
  'debrief.pieces.none': (v: { expected: Spread; mean: number | null; wanted: number }, p: Printer) =>
    `not counted; ${v.expected.low}-${v.expected.high} was expected${v.mean === null ? '' : `; ${p.grams(v.mean)} each, ${p.grams(v.wanted)} wanted`}`,
  'debrief.spread.label': 'Spread',
  'debrief.spread': (v: { between: Pair; handfuls: number; variation: number | null }, p: Printer) =>
    `${v.handfuls} handfuls averaged ${p.grams(v.between[0])} to ${p.grams(v.between[1])} a piece${v.variation === null ? '; a third tells how single pieces vary' : `; single pieces vary by about ${p.percent(v.variation)}`}`,
  'debrief.spread.none': 'not known: weigh a few handfuls of ten ("weigh 70g of 10"), three or more',

  'debrief.column.phase': 'phase',
  'debrief.column.began': 'began',
  'debrief.column.took': 'took',
  'debrief.column.usual': 'usual',
  'debrief.column.planned': 'planned',
  'debrief.column.judged': '',
  'debrief.column.at': 'at',
  'debrief.column.felt': 'felt like',
  'debrief.column.dial': 'thermometer',
  'debrief.column.verdict': 'verdict',
  'debrief.column.before': 'before it',
  'debrief.column.said': 'it said',
  'debrief.column.held': '80 % band held',
  'debrief.column.what': 'what',
  'debrief.column.answered': 'answered',
  'debrief.column.first': 'first act after',
  'debrief.column.order': 'order',
  'debrief.column.over': 'over after',

  'debrief.phase.name': (v: { phase: string; times: number }) =>
    `${v.phase}${v.times > 1 ? ` (${v.times} times)` : ''}`,
  'debrief.clock': (v: { t: number }, p: Printer) => p.clock(v.t),
  'debrief.time': (v: { seconds: number }, p: Printer) => phaseTime(v.seconds, p),
  'debrief.time.exact': (v: { seconds: number }, p: Printer) => p.time(v.seconds),
  'debrief.span': (v: Spread, p: Printer) => p.about(v).replace(/^about /, ''),
  'debrief.nothing': '-',
  'debrief.against.quicker': 'quicker',
  'debrief.against.slower': 'slower',
  'debrief.against.planned': '',
  'debrief.whole': 'the whole',
  'debrief.felt': (v: { outcome: string }) => v.outcome,
  'debrief.verdict': (v: { verdict: string }) => verdicts[v.verdict] ?? v.verdict,
  'debrief.at-dial': (v: { celsius: number }, p: Printer) => p.dial(v.celsius),
  'debrief.yes': 'yes',
  'debrief.no': 'no',
  'debrief.said': (v: Spread, p: Printer) => p.about(v),
  'debrief.forecast.none': 'no forecast was made: it takes two readings in the boil',
  'debrief.warning': (v: { signal: string | null; cause: string }) =>
    `${v.signal === null ? '' : `${v.signal}: `}${v.cause}`,
  'debrief.warnings.none': 'none',
  'debrief.answered': (
    v: {
      seconds: number | null;
      by: 'answered' | 'cause gone' | null;
      inTime: boolean | null;
      within: number | null;
    },
    p: Printer,
  ) => {
    if (v.seconds === null) return 'stood until the end';
    const how = v.by === 'answered' ? 'answered' : 'cause gone';
    const late = v.inTime === false && v.within !== null ? `, ${p.time(v.within)} allowed` : '';
    return `${how} after ${p.time(v.seconds)}${late}`;
  },
  'debrief.trouble': (v: { name: string; phase: string }) => `${troubleName(v.name)} (${v.phase})`,
  'debrief.trouble.first': (
    v: { seconds: number | null; within: number | null; inTime: boolean | null },
    p: Printer,
  ) =>
    v.seconds === null
      ? 'not said'
      : `${p.time(v.seconds)}${v.inTime === false && v.within !== null ? ` (${p.time(v.within)} allowed)` : ''}`,
  'debrief.trouble.order': (v: { order: string; acts: readonly string[] }, p: Printer) => {
    const acts = v.acts.length === 0 ? '' : `: ${p.list(v.acts.map(actWord))}`;
    return v.order === 'not seen' ? `not to be seen${acts}` : `${v.order}${acts}`;
  },
  'debrief.remark': (v: { t: number; text: string }, p: Printer) => `${p.clock(v.t)}  ${shown(v.text)}`,
  'debrief.changes.none': ({ state }: { state: string }) =>
    state === 'unfinished'
      ? 'Nothing so far that the numbers show; what came of it counts when it is over.'
      : 'Nothing that the numbers show. The same again.',
  'debrief.foot': 'Moisture, texture and the hottest are computed, with what they are known to in brackets.',
  'debrief.foot.defer':
    'The person in charge, local rules for kitchens and children, food law and trained first aid come before anything this page says.',

  'debrief.chapter.phase': (v: { phase: string; again: boolean }) =>
    `${phaseTitles[v.phase] ?? v.phase}${v.again ? ' on' : ''}`,
  'debrief.chapter.test': (v: { outcome: string; verdict: string }) =>
    `Cold water: ${v.outcome}${v.verdict === 'again' || v.verdict === 'there' ? '' : `, ${verdicts[v.verdict]}`}`,
  'debrief.chapter.off': (v: { celsius: number | null }, p: Printer) =>
    v.celsius === null ? 'Off the heat' : `Off the heat at ${p.dial(v.celsius)}`,
  'debrief.chapter.hands': (v: { celsius: number }, p: Printer) =>
    `Cool enough for hands: ${p.degrees(v.celsius)}`,
  'debrief.chapter.trouble': (v: { name: string }) => `Trouble: ${troubleName(v.name)}`,
  'debrief.chapter.remark': (v: { text: string }) => capital(shown(v.text)),
  'debrief.chapters.unmarked':
    'No recording was marked, so the times count from the opening of the cook. Type "mark recording" when it starts.',
  'debrief.chapters.recording': (v: { number: number }) => `Recording ${v.number}`,

  'debrief.bad.format': (v: { found: readonly string[] }, p: Printer) =>
    `One kind of output at a time: ${p.list(v.found.map((one) => `--${one}`))} were given.`,
  'debrief.bad.no-cooks': (v: { folder: string }) =>
    `There is no cook yet in ${shown(v.folder)}. "kettlehand cook" makes one, "kettlehand rehearse" a rehearsal; a journal elsewhere is named by its path.`,
  'debrief.bad.unknown': (v: { found: string; nearest: string | null }) =>
    v.nearest === null
      ? `There is no cook "${shown(v.found)}". "kettlehand cooks" lists them; a journal elsewhere is named by its path.`
      : `There is no cook "${shown(v.found)}". Did you mean "${shown(v.nearest)}"? "kettlehand cooks" lists them.`,
  'debrief.bad.ambiguous': (v: { found: string; names: readonly string[] }, p: Printer) =>
    `"${shown(v.found)}" could be ${p.list(v.names.map(shown))}. Type more of it.`,
  'debrief.bad.not-a-journal': (v: { path: string }) =>
    `${shown(v.path)} is no cook: neither a journal nor an exported one. "kettlehand cooks" lists those there are.`,
  'debrief.bad.lost': (v: { path: string; kept: number; damaged: number }, p: Printer) =>
    `${shown(v.path)} holds no cook that can be told: its first line, the recipe and the kitchen, is damaged. ${v.kept === 0 ? 'Nothing else in it can be read.' : `${p.count(v.kept, 'other event', 'other events')} can still be read and ${v.kept === 1 ? 'is' : 'are'} left as ${v.kept === 1 ? 'it is' : 'they are'}.`}`,
} as const;
