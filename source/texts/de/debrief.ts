import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { capital } from '../capital.js';
import type { debriefTexts } from '../en/debrief.js';
import { percentInBrackets, phaseTime } from '../measures.js';
import type { Translated } from '../texts.js';
import { deCooks } from './cooks.js';
import { actCalled, deDebriefChanges, troubleCalled } from './debrief-changes.js';
import { deLines } from './lines.js';
import { firmnessWord, phaseWord, stageWord } from './words.js';

const phaseTitles: Readonly<Record<string, string>> = {
  mix: 'Wiegen und mischen, kalt',
  dissolve: 'Den Zucker lösen',
  boil: 'Kochen',
  test: 'Wasserprobe',
  flavour: 'Aroma, neben dem Herd',
  pour: 'Gießen',
  fold: 'Abkühlen und falten',
  pull: 'Ziehen',
  cut: 'Strang und Schnitt',
  wrap: 'Ruhen und einwickeln',
  clean: 'Den Topf putzen',
  over: 'Fertig',
};

const verdicts: Readonly<Record<string, string>> = {
  short: 'noch nicht',
  there: 'so weit',
  past: 'zu weit',
  again: 'unsicher',
};

const dialBasis: Readonly<Record<string, string>> = {
  'two points': 'Eis und kochendem Wasser',
  ice: 'Eis',
  'boiling water': 'kochendem Wasser',
};

const signals: Readonly<Record<string, string>> = {
  DANGER: deLines['signal.DANGER'],
  WARNING: deLines['signal.WARNING'],
  CAUTION: deLines['signal.CAUTION'],
};

const orders: Readonly<Record<string, string>> = { right: 'richtig', wrong: 'falsch' };

/** What people reported, and what the program warned of by itself. */
const wentWrong = ({ troubles, warnings }: { troubles: number; warnings: number }, p: Printer): string => {
  const reported =
    troubles === 0 ? 'kein Problem gemeldet' : `${p.count(troubles, 'Problem', 'Probleme')} gemeldet`;
  return warnings === 0 ? reported : `${reported}, ${p.count(warnings, 'Warnung', 'Warnungen')} ausgelöst`;
};

/** The debrief: what happened in a cook. */
export const deDebrief = {
  ...deDebriefChanges,
  ...deCooks,

  'debrief.title': (v) => `Was geschah: ${shown(v.name)}`,
  'debrief.when': (v, p) => (v.date === null ? p.time(v.seconds) : `${v.date}, ${p.time(v.seconds)}`),
  'debrief.place': (v, p) =>
    v.from === 'assumed sea level'
      ? `als Meereshöhe genommen (niemand sagte anderes): Wasser kocht bei ${p.degrees(v.boils)}`
      : `${v.altitudeMetres === null ? '' : `${p.metres(v.altitudeMetres)}, `}Wasser kocht bei ${p.degrees(v.boils)}`,
  'debrief.dial': (v) =>
    v.id === null
      ? 'kein Thermometer; Temperaturen, wie ein richtiges sie zeigte'
      : `Temperaturen, wie "${shown(v.id)}" sie zeigt, ${v.basis === 'taken as right' ? 'ungeprüft' : `korrigiert mit ${dialBasis[v.basis] ?? v.basis}`}`,
  'debrief.rehearsal': 'PROBELAUF: ein simulierter Topf, Bonbon wurde keines gemacht',
  'debrief.rehearsal.short': 'PROBELAUF',
  'debrief.from': (v) =>
    `Begonnen bei ${phaseWord(v.phase)}: alles davor galt als erledigt, und davon ist nichts bekannt.`,
  'debrief.lost': (v, p) =>
    `Bis ${p.clock(v.t)} blieben ${v.sure ? '' : 'nach der Wanduhr '}${p.time(v.seconds)} ungesehen: das Programm lief nicht.`,
  'debrief.unfinished': (v, p) =>
    `Dieser Kochgang ist nicht fertig: er stand bei ${phaseWord(v.phase)}, als er zuletzt von sich hören ließ, nach ${p.time(v.seconds)}. Was es gibt:`,

  'debrief.lead.finished': (v, p) => {
    const made = [
      ...(v.pieces === null ? [] : [p.count(v.pieces, 'Stück', 'Stück')]),
      ...(v.grams === null ? [] : [p.grams(v.grams)]),
    ];
    const is =
      v.firmness === null || v.moisture === null
        ? []
        : [`nach den Zahlen ${firmnessWord(v.firmness)}, etwa ${p.percent(v.moisture)} Wasser`];
    const all = [...made, ...is].join(', ');
    return `${all === '' ? 'Bis zum Ende gekocht' : capital(all)}. ${capital(wentWrong(v, p))}.`;
  },
  'debrief.lead.given-up': (v, p) => `Aufgegeben nach ${p.time(v.seconds)}; ${wentWrong(v, p)}.`,

  'debrief.heading.curve': 'Die Kurve',
  'debrief.forecast.unheld': 'Er kam vor seiner Zeit vom Herd: die Vorhersage ist nicht zu messen.',
  'debrief.heading.forecast': 'Was die Vorhersage sagte',
  'debrief.heading.result': 'Was daraus wurde',
  'debrief.heading.phases': 'Minuten',
  'debrief.heading.tests': 'Wasserproben',
  'debrief.heading.warnings': 'Warnungen',
  'debrief.heading.troubles': 'Was schiefging',
  'debrief.heading.remarks': 'Bemerkungen',
  'debrief.heading.changes': 'Nächstes Mal',

  'debrief.no-curve': 'Nichts wurde abgelesen und nichts in kaltem Wasser geprobt, also gibt es keine Kurve.',
  'debrief.plot.reading': 'Ablesung',
  'debrief.plot.doubted': 'bezweifelte Ablesung',
  'debrief.plot.believed': 'angenommen',
  'debrief.plot.test': 'Wasserprobe',
  'debrief.plot.warning': 'Warnung',
  'debrief.plot.trouble': 'Problem oder Warnung',
  'debrief.plot.middle': 'Kern der Masse',
  'debrief.plot.off': 'vom Herd',
  'debrief.plot.poured': 'gegossen',
  'debrief.plot.window': 'der Zielbereich',
  'debrief.plot.for-hands': 'für Hände',
  'debrief.plot.boils': 'kocht',
  'debrief.plot.break': 'feinere Skala über dieser Linie',
  'debrief.plot.axis': 'Minuten seit der Eröffnung',
  'debrief.plot.foreseen':
    'Minuten, bis er vom Herd muss, wie damals vorhergesehen; schattiert: 8 von 10 Malen',
  'debrief.plot.text-foreseen': 'Minuten, bis er vom Herd muss, wie damals vorhergesehen',
  'debrief.plot.band': '8 von 10 Malen',
  'debrief.plot.came': 'was daraus wurde',
  'debrief.plot.unit': (v) => `°${v.unit}`,
  'debrief.plot.alt': (v, p) =>
    `Temperatur über der Zeit, ${p.count(v.minutes, 'Minute', 'Minuten')}${v.peak === null ? '' : `, am heißesten ${p.dial(v.peak)}`}; der Zielbereich ist ${p.dialSpan(v.window[0], v.window[1])}. Die Zahlen stehen in den Tabellen darunter.`,
  'debrief.plot.forecast-alt':
    'Vorhergesehene Minuten, bis er vom Herd muss, gegen das, was daraus wurde; die Tabelle darunter hat die Zahlen.',
  'debrief.source.run-sheet':
    'Geplant: nach dem Ablaufplan, mit dem dieser Kochgang begann, und wie weit jede Phase streuen darf.',
  'debrief.source.trade':
    'Üblich: was es im Handwerk dauert, aus Büchern gesammelt, und das Kochen aus seiner Wärme; für diesen Kochgang gab es keinen Ablaufplan. Einwickeln ist für eine Person gerechnet.',

  'debrief.off.label': 'Vom Herd',
  'debrief.off': (v, p) => {
    const at = v.celsius === null ? `bei ${p.clock(v.t)}` : `bei ${p.clock(v.t)}, ${p.dial(v.celsius)}`;
    const asked =
      v.askedAt === null
        ? `bevor es verlangt wurde (${p.dial(v.wanted)})`
        : v.t - v.askedAt < 1
          ? 'sobald es verlangt wurde'
          : `${p.time(v.t - v.askedAt)}, nachdem es verlangt wurde (${p.dial(v.wanted)})`;
    const often =
      v.offs > 1
        ? `; das ${['', 'erste', 'zweite', 'dritte', 'vierte', 'fünfte'][v.offs] ?? `${v.offs}.`} Mal`
        : '';
    return `${at}, ${asked}${often}${v.implied ? '; niemand sagte es, das Folgende zeigt es' : ''}`;
  },
  'debrief.off.blind': (v, p) => `bei ${p.clock(v.t)}${v.offs > 1 ? `, das letzte von ${v.offs} Malen` : ''}`,
  'debrief.off.none': 'niemand sagte, wann',
  'debrief.peak.label': 'Am heißesten',
  'debrief.peak': (v, p) => {
    const where =
      v.open && v.outside < 0
        ? `bisher; der Zielbereich ist ${p.dialSpan(...v.window)}`
        : v.outside === 0
          ? `im Zielbereich von ${p.dialSpan(...v.window)}`
          : `${p.rise(Math.abs(v.outside))} ${v.outside > 0 ? 'über' : 'unter'} dem Zielbereich von ${p.dialSpan(...v.window)}`;
    return `${p.dial(v.celsius)} (${p.dialNumber(v.between[0])}-${p.dialNumber(v.between[1])})${v.t === null ? '' : ` bei ${p.clock(v.t)}`}, ${where}`;
  },
  'debrief.peak.fingers': (v, p) =>
    `irgendwo in ${p.dialSpan(...v.between)}, nach der Wasserprobe allein; der Zielbereich ist ${p.dialSpan(...v.window)}`,
  'debrief.moisture.label': 'Rest Wasser',
  'debrief.moisture': (v, p) =>
    `etwa ${p.percent(v.moisture)}${percentInBrackets(v.between, p)}, aus dem Heißesten gerechnet`,
  'debrief.texture.label': 'Biss',
  'debrief.texture': (v, p) =>
    `${firmnessWord(v.firmness)}${v.range[0] === v.range[1] ? '' : ` (${firmnessWord(v.range[0])} bis ${firmnessWord(v.range[1])})`} bei ${p.degrees(v.room)}, gerechnet`,
  'debrief.yield.label': 'Gewogen',
  'debrief.yield': (v, p) =>
    `${p.grams(v.weighed)}, ${p.percent(v.share)} der im Topf gerechneten ${p.grams(v.cooked)}; ${p.grams(v.expected.low)} bis ${p.grams(v.expected.high)} waren zu erwarten`,
  'debrief.yield.none': (v, p) =>
    `nicht gewogen; ${p.grams(v.expected.low)} bis ${p.grams(v.expected.high)} waren zu erwarten`,
  'debrief.pieces.label': 'Stücke',
  'debrief.pieces': (v, p) =>
    `${v.counted}, zu erwarten ${v.expected.low}-${v.expected.high}${v.mean === null ? '' : `; je ${p.grams(v.mean)}, gewollt ${p.grams(v.wanted)}`}`,
  'debrief.pieces.none': (v, p) =>
    `nicht gezählt; ${v.expected.low}-${v.expected.high} waren zu erwarten${v.mean === null ? '' : `; je ${p.grams(v.mean)}, gewollt ${p.grams(v.wanted)}`}`,
  'debrief.spread.label': 'Streuung',
  'debrief.spread': (v, p) =>
    `${v.handfuls} Handvolle hatten im Mittel ${p.grams(v.between[0])} bis ${p.grams(v.between[1])} das Stück${v.variation === null ? '; eine dritte sagt, wie einzelne Stücke schwanken' : `; einzelne Stücke schwanken um etwa ${p.percent(v.variation)}`}`,
  'debrief.spread.none': 'nicht bekannt: wieg ein paar Handvolle zu zehn ("weigh 70g of 10"), drei oder mehr',

  'debrief.column.phase': 'Phase',
  'debrief.column.began': 'begann',
  'debrief.column.took': 'dauerte',
  'debrief.column.usual': 'üblich',
  'debrief.column.planned': 'geplant',
  'debrief.column.judged': '',
  'debrief.column.at': 'bei',
  'debrief.column.felt': 'gefühlt',
  'debrief.column.dial': 'Thermometer zeigt',
  'debrief.column.verdict': 'Urteil',
  'debrief.column.before': 'davor',
  'debrief.column.said': 'sie sagte',
  'debrief.column.held': '80-%-Band hielt',
  'debrief.column.what': 'was',
  'debrief.column.answered': 'beantwortet',
  'debrief.column.first': 'erste Tat nach',
  'debrief.column.order': 'Reihenfolge',
  'debrief.column.over': 'vorbei nach',

  'debrief.phase.name': (v) => `${phaseWord(v.phase)}${v.times > 1 ? ` (${v.times}-mal)` : ''}`,
  'debrief.clock': (v, p) => p.clock(v.t),
  'debrief.time': (v, p) => phaseTime(v.seconds, p),
  'debrief.time.exact': (v, p) => p.time(v.seconds),
  'debrief.span': (v, p) => p.about(v).replace(/^etwa /, ''),
  'debrief.nothing': '-',
  'debrief.against.quicker': 'schneller',
  'debrief.against.slower': 'langsamer',
  'debrief.against.planned': '',
  'debrief.whole': 'das Ganze',
  'debrief.felt': (v) => stageWord(v.outcome),
  'debrief.verdict': (v) => verdicts[v.verdict] ?? v.verdict,
  'debrief.at-dial': (v, p) => p.dial(v.celsius),
  'debrief.yes': 'ja',
  'debrief.no': 'nein',
  'debrief.said': (v, p) => p.about(v),
  'debrief.forecast.none': 'keine Vorhersage: sie braucht zwei Ablesungen beim Kochen',
  'debrief.warning': (v) => `${v.signal === null ? '' : `${signals[v.signal] ?? v.signal}: `}${v.cause}`,
  'debrief.warnings.none': 'keine',
  'debrief.answered': (v, p) => {
    if (v.seconds === null) return 'stand bis zum Ende';
    const how = v.by === 'answered' ? 'beantwortet' : 'Ursache weg';
    const late = v.inTime === false && v.within !== null ? `, ${p.time(v.within)} erlaubt` : '';
    return `${how} nach ${p.time(v.seconds)}${late}`;
  },
  'debrief.trouble': (v) => `${troubleCalled(v.name)} (${phaseWord(v.phase)})`,
  'debrief.trouble.first': (v, p) =>
    v.seconds === null
      ? 'nicht gesagt'
      : `${p.time(v.seconds)}${v.inTime === false && v.within !== null ? ` (${p.time(v.within)} erlaubt)` : ''}`,
  'debrief.trouble.order': (v, p) => {
    const acts = v.acts.length === 0 ? '' : `: ${p.list(v.acts.map(actCalled))}`;
    return v.order === 'not seen' ? `nicht zu sehen${acts}` : `${orders[v.order] ?? v.order}${acts}`;
  },
  'debrief.remark': (v, p) => `${p.clock(v.t)}  ${shown(v.text)}`,
  'debrief.changes.none': ({ state }) =>
    state === 'unfinished'
      ? 'Bisher nichts, was die Zahlen zeigen; was daraus wurde, zählt, wenn es vorbei ist.'
      : 'Nichts, was die Zahlen zeigen. Noch einmal genauso.',
  'debrief.foot':
    'Rest Wasser, Biss und das Heißeste sind gerechnet; in Klammern, wie genau sie bekannt sind.',
  'debrief.foot.defer':
    'Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das Lebensmittelrecht und ausgebildete Erste Hilfe gehen allem vor, was diese Seite sagt.',

  'debrief.chapter.phase': (v) => `${phaseTitles[v.phase] ?? v.phase}${v.again ? ', weiter' : ''}`,
  'debrief.chapter.test': (v) =>
    `Wasserprobe: ${stageWord(v.outcome)}${v.verdict === 'again' || v.verdict === 'there' ? '' : `, ${verdicts[v.verdict]}`}`,
  'debrief.chapter.off': (v, p) => (v.celsius === null ? 'Vom Herd' : `Vom Herd bei ${p.dial(v.celsius)}`),
  'debrief.chapter.hands': (v, p) => `Kühl genug für Hände: ${p.degrees(v.celsius)}`,
  'debrief.chapter.trouble': (v) => `Problem: ${troubleCalled(v.name)}`,
  'debrief.chapter.remark': (v) => capital(shown(v.text)),
  'debrief.chapters.unmarked':
    'Keine Aufnahme wurde markiert, also zählen die Zeiten ab der Eröffnung des Kochgangs. Tipp "mark recording", wenn sie beginnt.',
  'debrief.chapters.recording': (v) => `Aufnahme ${v.number}`,

  'debrief.bad.format': (v, p) =>
    `Eine Art Ausgabe auf einmal: angegeben waren ${p.list(v.found.map((one) => `--${one}`))}.`,
  'debrief.bad.no-cooks': (v) =>
    `In ${shown(v.folder)} gibt es noch keinen Kochgang. "kettlehand cook" macht einen, "kettlehand rehearse" einen Probelauf; ein Protokoll anderswo nennst du mit seinem Pfad.`,
  'debrief.bad.unknown': (v) =>
    v.nearest === null
      ? `Einen Kochgang "${shown(v.found)}" gibt es nicht. "kettlehand cooks" zählt sie auf; ein Protokoll anderswo nennst du mit seinem Pfad.`
      : `Einen Kochgang "${shown(v.found)}" gibt es nicht. Meintest du "${shown(v.nearest)}"? "kettlehand cooks" zählt sie auf.`,
  'debrief.bad.ambiguous': (v, p) =>
    `"${shown(v.found)}" könnte ${p.list(v.names.map(shown))} sein. Tipp mehr davon.`,
  'debrief.bad.not-a-journal': (v) =>
    `${shown(v.path)} ist kein Kochgang: weder ein Protokoll noch ein ausgeführter. "kettlehand cooks" zählt auf, welche es gibt.`,
  'debrief.bad.lost': (v, p) =>
    `${shown(v.path)} enthält keinen Kochgang, der sich erzählen lässt: die erste Zeile, Rezept und Küche, ist beschädigt. ${v.kept === 0 ? 'Sonst lässt sich nichts darin lesen.' : `${p.count(v.kept, 'anderes Ereignis lässt sich', 'andere Ereignisse lassen sich')} noch lesen und ${v.kept === 1 ? 'bleibt, wie es ist' : 'bleiben, wie sie sind'}.`}`,
} as const satisfies Translated<typeof debriefTexts>;
