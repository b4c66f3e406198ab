import { escapeForTerminal } from '../../units/escape.js';
import { wallTime } from '../../units/wall-clock.js';
import type { rehearsalTexts } from '../en/rehearsal.js';
import { quotedUpTo } from '../quoted.js';
import type { Translated } from '../texts.js';
import { phaseWord, stageWord } from './words.js';

const quoted = quotedUpTo(60);

type Name = Parameters<(typeof rehearsalTexts)['rehearsal.change.order']>[0]['surprise'];

/** As the subject of a sentence. */
const called: Readonly<Record<Name, string>> = {
  'foam-over': 'der Schaum',
  'hot-hob': 'ein unerwartet starker Herd',
  'weak-hob': 'ein unerwartet schwacher Herd',
  'thermometer-off': 'ein falsch zeigendes Thermometer',
  interruption: 'die Unterbrechung',
  grains: 'die Körner an der Wand',
  overshoot: 'der heimlich aufgedrehte Knopf',
  'power-cut': 'der Stromausfall',
  'early-touch': 'der zu frühe Griff in die Masse',
  'burning-smell': 'der Brandgeruch',
};

/** What to do about each, first things first. */
const remedy: Readonly<Record<Name, string>> = {
  'foam-over': 'sag es (trouble foam), kleiner und vom Herd schieben, und erst zurück, wenn er gesunken ist',
  'hot-hob': 'schalt kleiner, wenn die Zahlen rennen',
  'weak-hob': 'schalt höher, wenn die Restzeit nicht mehr schrumpft',
  'thermometer-off': 'halt es vor dem Kochen in kochendes Wasser, und mach die Wasserprobe',
  interruption: 'sag es (trouble away), Hitze aus und Topf vom Herd, und erst dann geh',
  grains: 'sag es (trouble grains), nicht rühren, die Wand abwaschen',
  overshoot: 'zuerst den Topf vom Herd, dann das Übrige',
  'power-cut': 'sag es (trouble power), Knopf aus, und zuerst klein, wenn er wiederkommt',
  'early-touch': 'sag es (trouble burn), sofort kühles fließendes Wasser, 20 Minuten',
  'burning-smell': 'sag es (trouble scorched), vom Herd, stehen lassen',
};

/** What stands and cannot be missed, in capitals: nobody types it for the person. */
const standing = {
  'called-away': 'JEMAND IM PUBLIKUM BRAUCHT DICH, VIER MINUTEN LANG.',
  touched: 'JEMAND HAT DIE MASSE ANGEFASST UND SCHREIT AUF.',
  'power-gone': 'DAS LICHT IST AUS, UND DER HERD AUCH.',
  smell: 'ES RIECHT VERBRANNT.',
  smokes: 'ES IST DUNKEL UND RAUCHT.',
  grains: 'ZUCKERKÖRNER GLITZERN AN DER WAND.',
} as const;

const alreadyPlural: readonly Name[] = ['grains'];
const verb = (surprise: Name, one: string, many: string): string =>
  alreadyPlural.includes(surprise) ? many : one;

/** What a rehearsal says: before it, at the simulated pot, and after it. */
export const deRehearsal = {
  'rehearsal.opened': (v) =>
    `PROBELAUF von ${escapeForTerminal(v.recipe)}, Seed ${v.seed}, ${v.pace}-mal so schnell, langsamer, solange du eine Liste zu lesen oder gleich etwas zu tun hast. Auf dem Herd steht nichts. "look" sagt, was das Thermometer zeigt und was zu sehen ist, "skip" geht zum Nächsten, was zu tun ist, "pause" und "go" halten die Uhr an und lassen sie laufen.`,
  'rehearsal.paused': 'Angehalten. Dasselbe noch einmal geht weiter.',
  'rehearsal.going': 'Die Uhr läuft.',
  'rehearsal.skipped': (v, p) => `${p.time(v.seconds)} übersprungen.`,
  'rehearsal.nothing-to-skip': 'Jetzt ist etwas zu tun.',
  'rehearsal.look': (v, p) => {
    const filled = `Schaum und Sirup füllen ${p.percent(Math.min(1, v.fullShare))} des Topfs.`;
    const foam =
      v.fullShare >= 1
        ? 'SIRUP LÄUFT ÜBER DEN RAND.'
        : v.fullShare > 0.75
          ? `SCHAUM STEIGT: ${filled}`
          : null;
    const pot = v.boils
      ? (foam ?? `Es blubbert; ${filled}`)
      : v.dissolved
        ? (foam ?? 'Klar, und keine Blasen.')
        : 'Knirscht noch.';
    return [
      ...(v.paused ? ['ANGEHALTEN.'] : []),
      ...v.wrong.map((one) => standing[one]),
      v.dial === null
        ? 'Kein Thermometer.'
        : `${v.poured ? 'Der Kern' : 'Das Thermometer'} zeigt ${v.dial.value} °${v.dial.unit}.`,
      ...(v.poured ? [] : [pot]),
      ...(v.fingers === null ? [] : [`Ein Tropfen in kaltem Wasser: ${stageWord(v.fingers)}.`]),
      ...(v.rope === null
        ? []
        : [{ stiff: 'Seidig, und zäh.', droops: 'Er hängt durch.', holds: 'Er hält.' }[v.rope]]),
      ...(v.crumbIsComfortable === null
        ? []
        : [
            v.crumbIsComfortable
              ? 'Ein Krümel ist angenehm anzufassen.'
              : 'Ein Krümel ist zu heiß zum Anfassen.',
          ]),
    ].join(' ');
  },

  'rehearsal.sees.dissolved': 'Am Boden knirscht nichts mehr.',
  'rehearsal.sees.boils': 'Überall Blasen: es kocht.',
  'rehearsal.sees.foam-half': 'Der Schaum steht auf halber Topfhöhe.',
  'rehearsal.sees.foam-high': 'Der Schaum steigt: drei Viertel des Topfs.',
  'rehearsal.sees.foam-over': 'Sirup läuft über den Rand.',
  'rehearsal.sees.foam-sunk': 'Der Schaum ist gesunken.',
  'rehearsal.sees.smell': 'Es riecht verbrannt.',
  'rehearsal.sees.smell-gone': 'Der Geruch ist weg; es ist nur etwas dunkel.',
  'rehearsal.sees.smokes': 'Es wird dunkel und raucht: vom Herd, nichts hinein, Fenster auf.',
  'rehearsal.sees.grains': 'Zuckerkörner glitzern an der Topfwand.',
  'rehearsal.sees.grains-gone': 'Die Wand ist wieder sauber.',
  'rehearsal.sees.power-gone': 'Das Licht geht aus, und der Herd auch.',
  'rehearsal.sees.power-back': 'Der Strom ist wieder da.',
  'rehearsal.sees.called-away': 'Jemand im Publikum braucht dich, jetzt, vier Minuten lang.',
  'rehearsal.sees.back': 'Du kannst dich wieder dem Topf zuwenden.',
  'rehearsal.sees.touched': 'Jemand hat einen Finger in die Masse gesteckt und schreit auf.',
  'rehearsal.sees.tended': 'Der Finger ist unter fließendem Wasser.',

  'rehearsal.bad.seed': (v) =>
    `${quoted(v.found)} ist kein Seed. Tipp eine ganze Zahl von 0 bis 4294967295, etwa --seed 7.`,
  'rehearsal.bad.pace': (v) =>
    `${quoted(v.found)} ist kein Tempo. Tipp eine Zahl von 1 (so lang wie in echt) bis 60, etwa --pace 30.`,
  'rehearsal.bad.surprise': (v, p) =>
    v.nearest === null
      ? `Eine Überraschung ${quoted(v.found)} gibt es nicht. Es gibt ${p.list(v.names)}, und any (irgendeine).`
      : `Eine Überraschung ${quoted(v.found)} gibt es nicht. Meintest du "--surprise ${v.nearest}"?`,
  'rehearsal.bad.headless':
    'In einem Probelauf ohne Bildschirm tippt niemand: nimm --auto dazu, dann tut es eine simulierte Person.',

  'rehearsal.title': (v) =>
    `PROBELAUF: ${escapeForTerminal(v.recipe)}, Seed ${v.seed ?? 'unbekannt'}, ${v.surprise === null ? 'keine Überraschung' : `Überraschung ${v.surprise}`}. Bonbon wurde keines gemacht.`,
  'rehearsal.took': (v, p) =>
    `${p.time(v.seconds)} gekocht${v.stopped ? ', aufgegeben' : v.ended ? ', bis zu eingewickelten Stücken' : ', nicht bis zum Ende'}.`,
  'rehearsal.phase': (v, p) =>
    `${v.phase.padEnd(10)}${p.time(v.seconds).padEnd(12)}${v.planned === null ? '' : `geplant ${p.about(v.planned)}`}${v.late ? '  zu spät' : ''}`,
  'rehearsal.pulling': (v, p) => {
    const ahead = v.plannedAt - v.at;
    const against =
      Math.abs(ahead) < 60 ? 'im Plan' : `${p.time(Math.abs(ahead))} ${ahead > 0 ? 'voraus' : 'zurück'}`;
    return v.clock === null
      ? `Hände daran nach ${p.time(v.at)}; der Plan hat sie nach ${p.time(v.plannedAt)}: ${against}.`
      : `Hände daran um ${wallTime(v.clock.at - ahead, v.clock.twelve)}; der Plan hat sie um ${wallTime(v.clock.at, v.clock.twelve)}: ${against}.`;
  },
  'rehearsal.rest': (v, p) =>
    `Der Sirup kam bei ${p.dial(v.celsius)} zur Ruhe (${stageWord(v.stage)}); der Zielbereich ist ${p.dialSpan(...v.windowCelsius)} (${stageWord(v.wanted)}).`,
  'rehearsal.hands': (v, p) =>
    `Hände kamen bei ${p.degrees(v.middleCelsius)} im Kern daran; die Grenze ist ${p.degrees(v.limitCelsius)}.`,
  'rehearsal.answered': (v, p) => {
    const what = called[v.surprise];
    if (v.showedAt === null)
      return `Überraschung: ${what} ${verb(v.surprise, 'zeigte', 'zeigten')} sich nie.`;
    const showed = `Überraschung: ${what} ${verb(v.surprise, 'zeigte', 'zeigten')} sich bei ${p.clock(v.showedAt)}`;
    if (v.afterSeconds === null) return `${showed}, und nichts wurde dagegen getan.`;
    return `${showed}, beantwortet nach ${p.time(v.afterSeconds)} (es gibt ${p.time(v.withinSeconds)}): ${v.inTime ? 'rechtzeitig' : 'zu spät'}, ${v.inOrder ? 'in der richtigen Reihenfolge' : 'nicht in der richtigen Reihenfolge'}.`;
  },
  'rehearsal.warning': (v, p) =>
    `${p.clock(v.at)}  ${v.name}${v.stoodSeconds === null ? ', bis zum Ende' : `, ${p.time(v.stoodSeconds)} lang`}${v.late ? ': zu spät' : ''}`,
  'rehearsal.warnings': 'Warnungen unterwegs:',
  'rehearsal.no-warnings': 'Keine Warnung unterwegs.',
  'rehearsal.changes': 'Was zu ändern ist:',

  'rehearsal.kept': (v) => `Ablesung für Ablesung: kettlehand debrief ${escapeForTerminal(v.id)}`,
  'rehearsal.change.unfinished': (v) =>
    `Verlassen bei ${phaseWord(v.phase)}: was danach kommt, ist noch nicht geprobt.`,
  'rehearsal.change.unanswered': (v) =>
    `Nichts getan, obwohl es da war: ${called[v.surprise]}. Nächstes Mal: ${remedy[v.surprise]}.`,
  'rehearsal.change.slow': (v, p) =>
    `${p.time(v.seconds)} bis zur Antwort (${called[v.surprise]}), und es gibt ${p.time(v.withinSeconds)}: ${remedy[v.surprise]}.`,
  'rehearsal.change.order': (v) => `Die Reihenfolge zählt: ${remedy[v.surprise]}.`,
  'rehearsal.change.ran-over':
    'Es lief über: schalt kleiner, wenn der Schaum auf halber Höhe steht, oder nimm einen größeren Topf.',
  'rehearsal.change.grained': 'Körner fielen hinein: sag sofort, was du siehst, und wasch die Wand ab.',
  'rehearsal.change.short': (v, p) =>
    `Es kam ${p.rise(v.kelvin)} unter dem Zielbereich vom Herd: Wasserprobe, bevor es gegossen wird.`,
  'rehearsal.change.by-fingers': (v, p) =>
    `Es kam ${p.rise(v.kelvin)} ${v.isBelow ? 'unter' : 'über'} dem Zielbereich vom Herd, ${
      v.stage === v.wanted
        ? `und der Tropfen fühlte sich richtig an: Finger spüren die Stufe (${stageWord(v.stage)}), nicht die Stelle darin. Ein geliehenes Thermometer zeigt sie.`
        : `und was nach ${stageWord(v.wanted)} aussah, war ${stageWord(v.stage)}: frischer Becher kaltes Wasser, zehn Sekunden, und zweimal fühlen.`
    }`,
  'rehearsal.change.past': (v, p) =>
    `Es ging ${p.rise(v.kelvin)} über den Zielbereich: kleiner für die letzten Grade, und niemand spricht mit der Person am Topf.`,
  'rehearsal.change.hot-hands': (v, p) =>
    `Hände kamen bei ${p.degrees(v.middleCelsius)} daran: miss die dickste Stelle, Grenze ${p.degrees(v.limitCelsius)}.`,
  'rehearsal.change.late-warning': (v, p) =>
    `"${v.name}" stand ${v.seconds === null ? 'bis zum Ende' : `${p.time(v.seconds)} lang`}${v.withinSeconds === null ? '' : `; es gibt ${p.time(v.withinSeconds)}`}.`,
  'rehearsal.change.late-phase': (v, p) =>
    `${phaseWord(v.phase)} dauerte ${p.time(v.seconds)}, und der Plan hat höchstens ${p.time(v.mostSeconds)}: beginn früher, oder finde, was es aufhielt.`,
  'rehearsal.change.nothing': 'Nichts: mach es so.',
} as const satisfies Translated<typeof rehearsalTexts>;
