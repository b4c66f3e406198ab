import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { wallTime } from '../../units/wall-clock.js';
import { toTheMinute } from '../measures.js';
import { quotedUpTo } from '../quoted.js';

const quoted = quotedUpTo(40);

type Span = readonly [low: number, high: number];
type Spread = { readonly low: number; readonly typical: number; readonly high: number };
/** Seconds since midnight of the day of the pulling, and whether people here say am and pm. */
type At = { readonly at: number; readonly twelve: boolean };

const spanOf = ({ low, high }: Pick<Spread, 'low' | 'high'>): string =>
  Math.round(low / 60) === Math.round(high / 60)
    ? `${Math.round(low / 60)} min`
    : `${Math.round(low / 60)} to ${Math.round(high / 60)} min`;

/** The run sheet: what is done when, counted back from the pulling, and what is said meanwhile. */
export const runSheetTexts = {
  drift: ({ seconds }: { seconds: number }, p: Printer) => {
    if (Math.abs(seconds) < 60) return 'on time';
    return `${p.time(Math.max(90, Math.abs(seconds)))} ${seconds > 0 ? 'ahead' : 'behind'}`;
  },

  'run.title': ({ name, date, ...pull }: At & { name: string; date: string }) =>
    `${escapeForTerminal(name)}: hands on it at ${wallTime(pull.at, pull.twelve)}, ${date}`,
  'run.lead': (
    v: {
      setOut: number;
      end: number;
      twelve: boolean;
      spareSeconds: number;
      batches: number;
      everySeconds: number | null;
      crew: 'several' | 'alone';
    },
    p: Printer,
  ) =>
    [
      `Set out at ${wallTime(v.setOut, v.twelve)}; the last piece is wrapped near ${wallTime(v.end, v.twelve)}.`,
      `The last ${toTheMinute(v.spareSeconds, p)} before the pulling are kept free.`,
      ...(v.crew === 'several' && v.everySeconds !== null
        ? [
            `${v.batches} batches on one hob, ${toTheMinute(v.everySeconds, p)} apart: two adults, one who does nothing but the pot and one at the slab, and hands that wrap.`,
          ]
        : []),
      ...(v.crew === 'alone' && v.everySeconds !== null
        ? [
            `${v.batches} batches for one pair of hands, ${toTheMinute(v.everySeconds, p)} apart: the pot is never left, so nothing else is done until a batch is cut, and the next is mixed when this one is wrapped. The pot is washed while the pieces rest.`,
          ]
        : []),
      ...(v.crew === 'alone'
        ? ['Alone: no talking from the quiet on, and somebody else keeps children and audience back.']
        : []),
    ].join(' '),
  'run.paced': ({ from }: { from: 'trade' | 'kitchen' }) =>
    from === 'kitchen'
      ? 'Times: what this kitchen showed, and what is usual where it has shown nothing.'
      : 'Times: what is usual, and for the boil the heat of this batch over a home burner. The hob decides: go by what happens.',
  'run.short-notice': ({ late, soonest }: { late: number; soonest: At }, p: Printer) =>
    `Setting out should have begun ${toTheMinute(late, p)} ago. Begin now with everything at hand, or have the pulling at ${wallTime(soonest.at, soonest.twelve)}.`,
  'run.batch': ({ batch }: { batch: number }) => `batch ${batch}`,
  'run.at': ({ at, twelve }: At) => wallTime(at, twelve),
  'run.between': ({ from, to, twelve }: { from: number; to: number; twelve: boolean }) =>
    `Earliest ${wallTime(from, twelve)}, latest ${wallTime(to, twelve)}.`,
  'run.say': ({ cue }: { cue: string }) => `Say: "${escapeForTerminal(cue)}"`,

  'run.set-out': 'Set out, weigh, grease, cut papers, fill test cups. Who does what, said aloud.',
  'run.set-out.why': ({ dial }: { dial: boolean }) =>
    dial
      ? 'Then the thermometer in boiling water, and the list before heat read aloud.'
      : 'No thermometer: six cups of cold water. Then the list before heat read aloud.',
  'run.mix': 'Mix cold, stove off.',
  'run.mix.why': 'Sugar scraped off the wall of the pot.',
  'run.light': 'Light the hob, low to medium. Stir.',
  'run.light.why': ({ starts }: { starts: number }, p: Printer) =>
    `Until there is no grit on the bottom; it boils from about ${p.dial(starts)}.`,
  'run.still': ({ late }: { late: boolean }) =>
    late ? 'It boils. Stir on slowly, along the bottom.' : 'It boils. Spoon out: nobody stirs from here on.',
  'run.still.why': ({ care, seconds }: { care: 'lid' | 'brush' | 'none-late-stir'; seconds: Spread }) => {
    const wall = {
      lid: 'Lid on for 2-3 min, opened away from the face. ',
      brush: 'Damp brush on the wall, once. ',
      'none-late-stir': 'No lid: it would foam. ',
    };
    return `${wall[care]}Boils for ${spanOf(seconds)}; one adult at the pot all the time.`;
  },
  'run.list': 'Read the list before pouring aloud.',
  'run.list.why': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    dial
      ? `About ${p.dial(celsius)}. Path clear, slab ready, who pours, who stands back.`
      : 'At the first firm ball. Path clear, slab ready, who pours, who stands back.',
  'run.quiet': 'Quiet: the presenter says nothing until the pot is empty.',
  'run.quiet.why': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    dial
      ? `From ${p.dial(celsius)} on. Lower heat; read every half minute; tell the audience beforehand.`
      : 'From the first firm ball on. Lower heat; a test every minute or two; tell the audience beforehand.',
  'run.off': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    dial
      ? `The window opens: off the heat at ${p.dial(celsius)}, onto the trivet.`
      : 'The window opens: off the heat, onto the trivet.',
  'run.off.why': ({ feels }: { feels: string }) =>
    `Tested in cold water: ${feels}. Short of it: back on, low. Then bubbling sunk, flavour in.`,
  'run.pour': 'Path clear, slab ready? Pour, low and away from you.',
  'run.pour.why': 'The emptied pot stands on the trivet, then hot water down its wall.',
  'run.fold': 'Talk again. Leave it, then fold the edges in, two or three times. Tools only.',
  'run.fold.why': ({ limit, dial }: { limit: number; dial: boolean }, p: Printer) =>
    dial
      ? `Hands when the middle measures ${p.degrees(limit)} or less and the list before hands is read.`
      : 'No hands before 20 min for 1 cm, 45 min for more, and a crumb from the middle touched by an adult.',
  'run.second': 'A second batch, if a helper poured one: out of the warm, onto a greased tray, folded once.',
  'run.second.why': (
    v: { keep: Span; from: number; to: number; twelve: boolean; limit: number },
    p: Printer,
  ) =>
    `Poured between ${wallTime(v.from, v.twelve)} and ${wallTime(v.to, v.twelve)}, kept covered at ${p.degrees(v.keep[0]).replace(/ .*/, '')} to ${p.degrees(v.keep[1])}. Its middle is measured again before hands: ${p.degrees(v.limit)} or less.`,
  'run.pull': 'HANDS: the pulling begins in front of the audience.',
  'run.pull.why': ({ seconds, limit }: { seconds: Spread; limit: number }, p: Printer) =>
    `Middle measured (${p.degrees(limit)} or less) and list read before. Takes ${spanOf(seconds)}.`,
  'run.cut': 'Roll ropes and cut. Adults cut.',
  'run.cut.why': ({ seconds }: { seconds: Spread }) =>
    `It hardens fast: somebody cuts while others still pull. Takes ${spanOf(seconds)}.`,
  'run.rest': 'The pieces rest apart.',
  'run.rest.why': ({ seconds }: { seconds: Spread }) =>
    `${spanOf(seconds)}: wrapped warm they sweat and stick.`,
  'run.wrap': ({ damp }: { damp: boolean }) => (damp ? 'Wrap at once: the air is damp.' : 'Wrap.'),
  'run.wrap.why': ({ pieces, seconds }: { pieces: number; seconds: Spread }, p: Printer) =>
    `${p.count(pieces, 'piece', 'pieces')}: ${spanOf(seconds)} for one person. Seated to eat; nobody under four; say the allergens.`,
  'run.end': 'All wrapped. Box closed, hob and slab clean.',

  'run.late.heading': 'If it runs late (look when it comes off the heat)',
  'run.late': ({ minutes, pull, planned }: { minutes: number; pull: At; planned: At }) =>
    pull.at === planned.at
      ? `${minutes} min: nothing changes, the time kept free covers it.`
      : `${minutes} min: the pulling begins at ${wallTime(pull.at, pull.twelve)}. A second batch is there: it is pulled at ${wallTime(planned.at, planned.twelve)}, this one after it. There is none: cold-water cups for the audience, hands washed and greased meanwhile.`,
  'run.late.batches': 'Every later batch waits as long: its hob is lit when the slab will be free.',
  'run.late.never': 'Never: a hotter ring for the last degrees, or hands before the middle is measured.',
  'run.early': 'Early: leave it folded on the slab, covered, and measure it again before hands.',
  'run.alone': (v: { apartSeconds: number; end: number; twelve: boolean }, p: Printer) =>
    `Alone: one pair of hands cannot wrap or pull beside a pot that is never left. The batches then stand ${toTheMinute(v.apartSeconds, p)} apart and end near ${wallTime(v.end, v.twelve)}; --alone prints that sheet.`,
  'run.with-help': (v: { apartSeconds: number; end: number; twelve: boolean }, p: Printer) =>
    `With a second adult and somebody who wraps: ${toTheMinute(v.apartSeconds, p)} apart, ended near ${wallTime(v.end, v.twelve)}.`,

  'run.bad.time': ({ found }: { found: string }) =>
    `${quoted(found)} is no time of day. Type for example --at 15:00, --at 3:30pm, --at "tomorrow 15:00", --at "Saturday 15:00" or --at "2026-11-28 15:00".`,
  'run.bad.past': ({ ago, ...pull }: At & { ago: number }, p: Printer) =>
    `${wallTime(pull.at, pull.twelve)} ${ago < 90 ? 'is now' : `was ${toTheMinute(ago, p)} ago`}. For another day type for example --at "tomorrow ${wallTime(pull.at, pull.twelve)}".`,
  'run.bad.too-soon': (
    {
      away,
      needs,
      soonest,
      ...pull
    }: At & { away: number; needs: number; soonest: At & { tomorrow: boolean } },
    p: Printer,
  ) =>
    `${wallTime(pull.at, pull.twelve)} is ${toTheMinute(away, p)} away, and from the cold pot to the pulling it takes ${toTheMinute(needs, p)} at the quickest. Type --at "${soonest.tomorrow ? 'tomorrow ' : ''}${wallTime(soonest.at, soonest.twelve)}" or later, or pull a batch that was poured before.`,
  'run.bad.batches': ({ found, most }: { found: string; most: number }) =>
    `--batches needs a whole number from 1 to ${most}, and ${quoted(found)} is none. Type for example --batches 2.`,
  'run.bad.alone': ({ option }: { option: string }) =>
    `--${option} belongs to ${option === 'html' ? '--card' : '--at'}. Type for example ${option === 'html' ? '--card --html' : `--at 15:00 ${option === 'alone' ? '--alone' : '--batches 2'}`}.`,
} as const;
