import { escapeForTerminal } from '../../units/escape.js';
import { wallTime } from '../../units/wall-clock.js';
import type { runSheetTexts } from '../en/run-sheet.js';
import { toTheMinute } from '../measures.js';
import { quotedUpTo } from '../quoted.js';
import type { Translated } from '../texts.js';
import { stageWord } from './words.js';

const quoted = quotedUpTo(40);

type Spread = { readonly low: number; readonly typical: number; readonly high: number };

const spanOf = ({ low, high }: Pick<Spread, 'low' | 'high'>): string =>
  Math.round(low / 60) === Math.round(high / 60)
    ? `${Math.round(low / 60)} min`
    : `${Math.round(low / 60)} bis ${Math.round(high / 60)} min`;

/** The run sheet: what is done when, counted back from the pulling, and what is said meanwhile. */
export const deRunSheet = {
  drift: ({ seconds }, p) => {
    if (Math.abs(seconds) < 60) return 'im Plan';
    return `${p.time(Math.max(90, Math.abs(seconds)))} ${seconds > 0 ? 'voraus' : 'zurück'}`;
  },

  'run.title': ({ name, date, ...pull }) =>
    `${escapeForTerminal(name)}: Hände daran um ${wallTime(pull.at, pull.twelve)}, ${date}`,
  'run.lead': (v, p) =>
    [
      `Bereitstellen um ${wallTime(v.setOut, v.twelve)}; das letzte Stück ist gegen ${wallTime(v.end, v.twelve)} eingewickelt.`,
      `Die letzten ${toTheMinute(v.spareSeconds, p)} vor dem Ziehen bleiben frei.`,
      ...(v.crew === 'several' && v.everySeconds !== null
        ? [
            `${v.batches} Ansätze auf einem Herd, im Abstand von ${toTheMinute(v.everySeconds, p)}: zwei Erwachsene, einer, der nichts tut als den Topf, und einer an der Platte, und Hände, die einwickeln.`,
          ]
        : []),
      ...(v.crew === 'alone' && v.everySeconds !== null
        ? [
            `${v.batches} Ansätze für ein Paar Hände, im Abstand von ${toTheMinute(v.everySeconds, p)}: der Topf bleibt nie allein, also geschieht nichts anderes, bis ein Ansatz geschnitten ist, und der nächste wird gemischt, wenn dieser eingewickelt ist. Der Topf wird gewaschen, während die Stücke ruhen.`,
          ]
        : []),
      ...(v.crew === 'alone'
        ? ['Allein: ab der Stille nicht reden, und jemand anderes hält Kinder und Publikum zurück.']
        : []),
    ].join(' '),
  'run.paced': ({ from }) =>
    from === 'kitchen'
      ? 'Zeiten: was diese Küche gezeigt hat, und das Übliche, wo sie nichts gezeigt hat.'
      : 'Zeiten: das Übliche, und fürs Kochen die Wärme dieses Ansatzes über einem Haushaltsherd. Der Herd entscheidet: geh nach dem, was geschieht.',
  'run.short-notice': ({ late, soonest }, p) =>
    `Das Bereitstellen hätte vor ${toTheMinute(late, p)} beginnen sollen. Beginn jetzt, wenn alles zur Hand ist, oder zieh um ${wallTime(soonest.at, soonest.twelve)}.`,
  'run.batch': ({ batch }) => `Ansatz ${batch}`,
  'run.at': ({ at, twelve }) => wallTime(at, twelve),
  'run.between': ({ from, to, twelve }) =>
    `Frühestens ${wallTime(from, twelve)}, spätestens ${wallTime(to, twelve)}.`,
  'run.say': ({ cue }) => `Sag: "${escapeForTerminal(cue)}"`,

  'run.set-out':
    'Bereitstellen, wiegen, fetten, Papiere schneiden, Probebecher füllen. Wer was tut, laut gesagt.',
  'run.set-out.why': ({ dial }) =>
    dial
      ? 'Dann das Thermometer in kochendes Wasser, und die Liste vor der Hitze laut vorlesen.'
      : 'Kein Thermometer: sechs Becher kaltes Wasser. Dann die Liste vor der Hitze laut vorlesen.',
  'run.mix': 'Kalt mischen, Herd aus.',
  'run.mix.why': 'Zucker von der Topfwand gestreift.',
  'run.light': 'Herd an, klein bis mittel. Rühren.',
  'run.light.why': ({ starts }, p) =>
    `Bis am Boden nichts mehr knirscht; es kocht ab etwa ${p.dial(starts)}.`,
  'run.still': ({ late }) =>
    late
      ? 'Es kocht. Langsam weiterrühren, am Boden entlang.'
      : 'Es kocht. Löffel heraus: ab hier rührt niemand.',
  'run.still.why': ({ care, seconds }) => {
    const wall = {
      lid: 'Deckel drauf, 2-3 min, vom Gesicht weg geöffnet. ',
      brush: 'Feuchter Pinsel an die Wand, einmal. ',
      'none-late-stir': 'Kein Deckel: es würde schäumen. ',
    };
    return `${wall[care]}Kocht ${spanOf(seconds)}; ein Erwachsener die ganze Zeit am Topf.`;
  },
  'run.list': 'Die Liste vor dem Gießen laut vorlesen.',
  'run.list.why': ({ celsius, dial }, p) =>
    dial
      ? `Etwa ${p.dial(celsius)}. Weg frei, Platte bereit, wer gießt, wer zurücktritt.`
      : 'Beim ersten festen Ballen. Weg frei, Platte bereit, wer gießt, wer zurücktritt.',
  'run.quiet': 'Stille: wer vorführt, sagt nichts, bis der Topf leer ist.',
  'run.quiet.why': ({ celsius, dial }, p) =>
    dial
      ? `Ab ${p.dial(celsius)}. Kleinere Hitze; jede halbe Minute ablesen; sag es dem Publikum vorher.`
      : 'Ab dem ersten festen Ballen. Kleinere Hitze; alle ein, zwei Minuten eine Probe; sag es dem Publikum vorher.',
  'run.off': ({ celsius, dial }, p) =>
    dial
      ? `Der Zielbereich beginnt: bei ${p.dial(celsius)} vom Herd, auf den Untersetzer.`
      : 'Der Zielbereich beginnt: vom Herd, auf den Untersetzer.',
  'run.off.why': ({ feels }) =>
    `Wasserprobe: ${stageWord(feels)}. Noch darunter: zurück, klein. Dann Blubbern gesunken, Aroma dazu.`,
  'run.pour': 'Weg frei, Platte bereit? Gießen, tief und von dir weg.',
  'run.pour.why': 'Der leere Topf steht auf dem Untersetzer, dann heißes Wasser an seine Wand.',
  'run.fold': 'Wieder reden. Liegen lassen, dann die Ränder einfalten, zwei-, dreimal. Nur Werkzeug.',
  'run.fold.why': ({ limit, dial }, p) =>
    dial
      ? `Hände, wenn der Kern ${p.degrees(limit)} oder weniger misst und die Liste vor den Händen gelesen ist.`
      : 'Keine Hände vor 20 min bei 1 cm, 45 min bei mehr, und ein Krümel aus dem Kern von einem Erwachsenen angefasst.',
  'run.second':
    'Ein zweiter Ansatz, wenn jemand einen gegossen hat: aus der Wärme, auf ein gefettetes Blech, einmal falten.',
  'run.second.why': (v, p) =>
    `Gegossen zwischen ${wallTime(v.from, v.twelve)} und ${wallTime(v.to, v.twelve)}, zugedeckt gehalten bei ${p.degrees(v.keep[0]).replace(/ .*/, '')} bis ${p.degrees(v.keep[1])}. Sein Kern wird vor den Händen noch einmal gemessen: ${p.degrees(v.limit)} oder weniger.`,
  'run.pull': 'HÄNDE: das Ziehen beginnt vor dem Publikum.',
  'run.pull.why': ({ seconds, limit }, p) =>
    `Vorher Kern gemessen (${p.degrees(limit)} oder weniger) und Liste gelesen. Dauert ${spanOf(seconds)}.`,
  'run.cut': 'Stränge rollen und schneiden. Erwachsene schneiden.',
  'run.cut.why': ({ seconds }) =>
    `Es wird schnell hart: jemand schneidet, während andere noch ziehen. Dauert ${spanOf(seconds)}.`,
  'run.rest': 'Die Stücke ruhen getrennt.',
  'run.rest.why': ({ seconds }) => `${spanOf(seconds)}: warm eingewickelt schwitzen sie und kleben.`,
  'run.wrap': ({ damp }) => (damp ? 'Sofort einwickeln: die Luft ist feucht.' : 'Einwickeln.'),
  'run.wrap.why': ({ pieces, seconds }, p) =>
    `${p.count(pieces, 'Stück', 'Stück')}: ${spanOf(seconds)} für eine Person. Im Sitzen essen; niemand unter vier; Allergene nennen.`,
  'run.end': 'Alles eingewickelt. Dose zu, Herd und Platte sauber.',

  'run.late.heading': 'Wenn es später wird (sieh nach, wenn es vom Herd kommt)',
  'run.late': ({ minutes, pull, planned }) =>
    pull.at === planned.at
      ? `${minutes} min: nichts ändert sich, die freie Zeit deckt es.`
      : `${minutes} min: das Ziehen beginnt um ${wallTime(pull.at, pull.twelve)}. Ein zweiter Ansatz ist da: er wird um ${wallTime(planned.at, planned.twelve)} gezogen, dieser danach. Es ist keiner da: Wasserproben fürs Publikum, inzwischen Hände waschen und fetten.`,
  'run.late.batches':
    'Jeder spätere Ansatz wartet ebenso lange: sein Herd geht an, wenn die Platte frei sein wird.',
  'run.late.never': 'Nie: mehr Hitze für die letzten Grade, oder Hände, bevor der Kern gemessen ist.',
  'run.early': 'Früher: lass es gefaltet und zugedeckt auf der Platte, und miss vor den Händen noch einmal.',
  'run.alone': (v, p) =>
    `Allein: ein Paar Hände kann nicht einwickeln oder ziehen neben einem Topf, der nie allein bleibt. Die Ansätze liegen dann ${toTheMinute(v.apartSeconds, p)} auseinander und enden gegen ${wallTime(v.end, v.twelve)}; --alone druckt dieses Blatt.`,
  'run.with-help': (v, p) =>
    `Mit einem zweiten Erwachsenen und jemandem, der einwickelt: ${toTheMinute(v.apartSeconds, p)} Abstand, Ende gegen ${wallTime(v.end, v.twelve)}.`,

  'run.bad.time': ({ found }) =>
    `${quoted(found)} ist keine Uhrzeit. Tipp zum Beispiel --at 15:00, --at 3:30pm, --at "morgen 15:00", --at "Samstag 15:00" oder --at "2026-11-28 15:00".`,
  'run.bad.past': ({ ago, ...pull }, p) =>
    `${wallTime(pull.at, pull.twelve)} ${ago < 90 ? 'ist jetzt' : `war vor ${toTheMinute(ago, p)}`}. Für einen anderen Tag tipp zum Beispiel --at "morgen ${wallTime(pull.at, pull.twelve)}".`,
  'run.bad.too-soon': ({ away, needs, soonest, ...pull }, p) =>
    `${wallTime(pull.at, pull.twelve)} ist in ${toTheMinute(away, p)}, und vom kalten Topf bis zum Ziehen dauert es mindestens ${toTheMinute(needs, p)}. Tipp --at "${soonest.tomorrow ? 'morgen ' : ''}${wallTime(soonest.at, soonest.twelve)}" oder später, oder zieh einen Ansatz, der vorher gegossen wurde.`,
  'run.bad.batches': ({ found, most }) =>
    `--batches braucht eine ganze Zahl von 1 bis ${most}, und ${quoted(found)} ist keine. Tipp zum Beispiel --batches 2.`,
  'run.bad.alone': ({ option }) =>
    `--${option} gehört zu ${option === 'html' ? '--card' : '--at'}. Tipp zum Beispiel ${option === 'html' ? '--card --html' : `--at 15:00 ${option === 'alone' ? '--alone' : '--batches 2'}`}.`,
} as const satisfies Translated<typeof runSheetTexts>;
