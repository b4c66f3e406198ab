import { escapeForTerminal as shown } from '../../units/escape.js';
import type { screenTexts } from '../en/screen.js';
import { quoted } from '../quoted.js';
import type { Translated } from '../texts.js';
import { eventWord, wordMeant } from './words.js';

/** What the full-screen console says of itself. Typed words stay English, with what they mean beside them. */
export const deScreen = {
  'key.digits': 'Ablesung',
  'key.enter': 'nehmen',
  'key.done': 'erledigt',
  'key.yes': 'ja',
  'key.no': 'nein',
  'key.ok': 'gesehen',
  'key.test': 'Wasserprobe',
  'key.felt': 'gefühlt',
  'key.heat': 'Hitze',
  'key.pot': 'Topf ab/drauf',
  'key.pot.off': 'Topf ab',
  'key.pot.on': 'Topf drauf',
  'key.lid': 'Deckel drauf/ab',
  'key.lid.off': 'Deckel ab',
  'key.lid.on': 'Deckel drauf',
  'key.middle': 'Kern messen',
  'key.rope': 'Strang',
  'key.weigh': 'wiegen',
  'key.count': 'zählen',
  'key.over': 'vorbei',
  'key.trouble': 'Problem',
  'key.undo': 'zurück',
  'key.bell': 'Klingel an/aus',
  'key.bell.off': 'Klingel aus',
  'key.bell.on': 'Klingel an',
  'key.words': 'Wörter tippen',
  'key.help': 'Tasten',
  'key.skip': 'vorspulen',
  'key.pause': 'anhalten',
  'key.leave': 'verlassen',
  'key.space': 'Leertaste',
  'key.0-9': '0-9',
  'key.close': 'jede andere Taste schließt',
  'key.list.head': '| Taste | tut | wie getippt | wann |\n|---|---|---|---|',
  'key.list.rehearsed': 'im Probelauf',
  'key.list.always': 'immer',
  'key.list.asked': 'wenn eine Frage offen ist',
  'key.list.warned': 'wenn eine Warnung offen ist',
  'key.list.troubled': 'wenn ein Problem offen ist',
  'key.list.undoable': 'wenn sich etwas zurücknehmen lässt',
  'key.list.step': 'wenn ein Schritt darauf wartet',

  // Welche Skala zuerst gelesen wird.
  'key.scale': '°C oder °F zuerst',
  'key.scale.C': '°C zuerst',
  'key.scale.F': '°F zuerst',
  'scale.now': ({ shown: first, bare }) =>
    first === bare
      ? `°${first} zuerst, wie am Thermometer.`
      : `°${first} zuerst. Eine bloße Zahl bleibt °${bare}; ${first === 'C' ? '114c' : '238f'} ist °${first}.`,
  'scale.differs': ({ shown: first, bare }) => `°${first} zuerst; Thermometer und getippte Zahlen °${bare}`,

  // Choosers.
  'choose.test': 'Wie fühlte es sich an? Ein Buchstabe.',
  'choose.heat': 'Wie steht die Hitze? Ein Buchstabe.',
  'choose.trouble': 'Was stimmt nicht? Ein Buchstabe.',
  'choose.over': 'Welches Problem ist vorbei? Ein Buchstabe.',
  'choose.rope': 'Was tut der Strang? Ein Buchstabe.',
  'choose.settle': 'Was ist jetzt wahr? Ein Buchstabe.',
  'choose.keys': 'ein Buchstabe wählt; Rücktaste geht zurück; Ziffern sind eine Ablesung',
  'choose.ring': 'Die Kochstelle unter dem abgehobenen Topf ist brennend heiß.',
  'choose.off-since': (v, p) => `seit ${p.clock(v.seconds)} neben dem Herd`,
  'choose.word': (v) => shown(wordMeant(v.word)),
  'choose.trouble.one': (v) => `${v.name.padEnd(12)}${v.cause}`,
  'choose.droops': 'droops: läuft oder hängt durch, weiterziehen',
  'choose.holds': 'holds: hält die Form',
  'choose.arms-out': 'arms out: niemand kann mehr ziehen',

  // What is typed.
  'entry.reading': (v) => `°${v.unit} des Sirups; Enter nimmt es`,
  'entry.middle': (v) => `°${v.unit} des Kerns; Enter nimmt es`,
  'entry.takes': 'Enter nimmt es',
  'entry.words': 'Enter nimmt es, Rücktaste verbessert, Esc verwirft.',
  'entry.pasted': 'Eingefügt, noch nicht genommen. Enter nimmt es, Esc verwirft.',
  'entry.burst':
    'Mehrere Tasten auf einmal: nichts wurde getan. Ein Wort tippst du hinter einem Doppelpunkt.',
  'entry.no-key': (v) =>
    `${quoted(v.key)} ist jetzt keine Taste. Das Fragezeichen zeigt die Tasten; ein Wort tippst du hinter einem Doppelpunkt.`,

  // Leaving.
  'leave.say': 'Jetzt verlassen?',
  'leave.kept':
    'Der Stand bleibt erhalten und geht von hier weiter, wenn du zurückkommst. Der Topf wartet nicht: zuerst Hitze aus.',
  'leave.not-kept':
    'Nicht alles ist gespeichert: was nicht auf der Platte steht, geht verloren. Der Topf wartet nicht: zuerst Hitze aus.',
  'leave.rehearsal':
    'Ein Probelauf endet, wenn du ihn verlässt, und sein Ergebnis wird ausgegeben. Auf dem Herd steht nichts.',
  'leave.keys': 'y verlässt   jede andere bleibt   nochmal Strg+C verlässt',

  // The frame.
  'screen.too-small': (v) => `braucht 80x24, hat ${v.columns}x${v.rows}`,
  'screen.too-small.keys': 'mach es größer, oder q verlässt',
  'screen.clock': ({ minutes }) =>
    minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`,
  'screen.rehearsal': 'PROBELAUF',
  'screen.from': (v) => `begonnen bei ${v.phase}, Früheres gilt als erledigt`,
  'screen.not-saved': (v, p) => `NICHT GESPEICHERT: ${p.count(v.count, 'Ereignis', 'Ereignisse')}`,
  'screen.not-saved.block': 'NICHT GESPEICHERT',
  'screen.bell-off': 'Klingel aus',
  'screen.rang.look': '((!)) JETZT HINSEHEN',
  'screen.rang.next': '(.) Nächstes fällig',
  'screen.reading': 'jetzt',
  'screen.ghost': 'in 1 min',
  'screen.target': 'Ziel',
  'screen.hands-limit': 'Hände',
  'screen.middle': 'Kern',
  'screen.take-off': (v) => `vom Herd in ${v.about}`,
  'screen.take-off.now': 'jetzt vom Herd',
  'screen.reached': 'Ziel erreicht',
  'screen.share': (v, p) => `${p.percent(v.fraction)} gekocht`,
  'screen.read-again': (v, p) =>
    v.seconds <= 0 ? 'jetzt wieder ablesen' : `in ${p.time(v.seconds)} wieder ablesen`,
  'screen.next': 'danach',
  'screen.sight': 'Topf',
  'screen.watch': 'achte',
  'screen.cue': 'sag',
  'screen.also-open': (v, p) => `auch offen: ${p.list(v.names)}`,
  'screen.more-warnings': (v, p) =>
    `${p.count(v.count, 'weitere Warnung', 'weitere Warnungen')}; o antwortet auf die erste`,
  'screen.more': '...',
  'screen.due': 'FÄLLIG',
  'screen.level.now': 'JETZT TUN',
  'screen.level.soon': 'ACHTUNG',
  'screen.level.note': 'HINWEIS',
  'screen.since': (v, p) => `vor ${p.clock(v.seconds)}`,
  'screen.big.now': (v, p) =>
    v.ago === null ? 'noch nicht abgelesen' : v.ago < 5 ? 'eben abgelesen' : `vor ${p.time(v.ago)} abgelesen`,
  'screen.big.target': 'Ziel',
  'screen.big.time': 'vom Herd in etwa',
  'screen.big.time.off': 'vom Herd',
  'screen.big.limit': 'Hände unter',
  'screen.big.middle': 'Kern',
  'screen.help': 'Tasten jetzt',
  'screen.help.words': 'Wörter',
  'screen.help.line': 'Ein Doppelpunkt, dann eines davon, dann Enter. Eine Taste ist nur kurz für ihr Wort.',
  'screen.wait': 'speichert ...',

  // The last events.
  'event.reading': (v) => `${v.value} ${v.unit}`,
  'event.middle': (v) => `Kern ${v.value} ${v.unit}`,
  'event.check': (v) => `${v.of === 'ice' ? 'Eis' : 'kocht'} ${v.value} ${v.unit}`,
  'event.room': 'Raum',
  'event.weigh': (v, p) => `gewogen ${p.grams(v.grams)}${v.pieces === null ? '' : ` von ${v.pieces}`}`,
  'event.water': (v, p) => `Wasser ${p.grams(v.grams)}`,
  'event.word': (v) => shown(eventWord(v.word)),

  // First run, unfinished cook.
  'questions.title': 'Drei kurze Fragen, einmal',
  'questions.count': (v) => `${v.number} von ${v.of}`,
  'questions.keys': 'Enter nimmt es. Strg+C verlässt.',
  'wait.disk': 'Suche nach früheren Kochgängen: die Festplatte ist langsam.',
  'choice.continue': 'Weiter.',
  'choice.unfinished': (v, p) =>
    `Ein offener Kochgang: ${shown(v.recipe)}, bei ${v.phase}, vor ${p.time(v.seconds)} verlassen.`,
  'choice.go-on': 'Damit weiter.',
  'choice.next': (v, p) => `Den nicht; ${p.count(v.others, 'anderer ist', 'andere sind')} auch noch offen.`,
  'choice.leave': 'Verlassen.',
  'choice.new': 'Neu beginnen; der andere bleibt erhalten.',
  'choice.keys': 'ein Buchstabe, oder Enter für das erste',
} as const satisfies Translated<typeof screenTexts>;
