import { escapeForTerminal } from '../../units/escape.js';
import type { typedTexts } from '../en/typed.js';
import { quotedBeginning } from '../quoted.js';
import type { Translated } from '../texts.js';
import { everyday } from './everyday.js';

/** What is said of a line that could not be taken. Typed words stay English: they are what has to be typed. */
export const deTyped = {
  'typed.nothing':
    'Es wurde nichts getippt. Ziffern sind eine Ablesung; "done" heißt erledigt; "help" zeigt die Wörter.',
  'typed.unknown': (v) => {
    const instead =
      everyday(v.typed, v.nearest) ??
      (v.nearest === null
        ? 'Tipp eine Ablesung (238), "done" (erledigt) oder "help" für die Wörter.'
        : `Meintest du ${quotedBeginning(v.nearest)}?`);
    return `${quotedBeginning(v.typed)} ist nicht zu verstehen. ${instead}`;
  },
  'typed.too-long': (v) =>
    `Eine Zeile von ${v.length} Zeichen kann nicht gemeint sein. Tipp eines nach dem anderen.`,
  'typed.reading': (v) =>
    `${quotedBeginning(v.typed)} ist keine Temperatur. Tipp Ziffern, wenn nötig mit f oder c: 238, 238f, 114.5c.`,
  'typed.middle': (v) => `${quotedBeginning(v.typed)} ist keine Temperatur. Tipp den Kern so: middle 47c.`,
  'typed.check': (v) =>
    `${quotedBeginning(v.typed)} ist keine Temperatur. Tipp, was das Thermometer zeigt: ${v.word === 'ice' ? 'ice 0.5c' : 'boils 95c'}.`,
  'typed.room': (v) => `${quotedBeginning(v.typed)} sagt nicht, wie der Raum ist. Tipp es so: room 19c 60%.`,
  'typed.heat': (v, p) =>
    `${quotedBeginning(v.typed)} steht nicht auf diesem Knopf. Tipp heat und eines von ${p.list(v.allowed.map(escapeForTerminal))}${v.nearest === null ? '.' : `; meintest du ${quotedBeginning(`heat ${v.nearest}`)}?`}`,
  'typed.on-off': (v) =>
    v.word === 'pot'
      ? 'Steht der Topf auf dem Herd oder daneben? Tipp "pot on" (darauf) oder "pot off" (daneben).'
      : 'Ist der Deckel drauf oder ab? Tipp "lid on" (drauf) oder "lid off" (ab).',
  'typed.water': (v) => `${quotedBeginning(v.typed)} ist keine Menge Wasser. Tipp es so: water 30ml.`,
  'typed.hands': (v) =>
    `${quotedBeginning(v.typed)}: wessen Hände? Tipp "hands visitors" (zum ersten Mal), "hands bare" (geübte Erwachsene), "hands gloved" (Handschuhe) oder "hands children" (Kinder).`,
  'typed.portion': (v) =>
    `${quotedBeginning(v.typed)} ist keine Anzahl Portionen. Tipp es so: portion 3 (1 bis 50).`,
  'typed.trouble': (v, p) =>
    `${quotedBeginning(v.typed)} ist kein bekanntes Problem. ${v.nearest === null ? `Tipp trouble und eines von ${p.list(v.allowed)}.` : `Meintest du "trouble ${v.nearest}"?`}`,
  'typed.over': (v, p) =>
    v.open.length === 0
      ? 'Es ist kein Problem offen.'
      : v.open.length === 1
        ? `Nur dieses ist offen. Tipp "over ${v.open.join()}".`
        : `Welches ist vorbei? Tipp "over" und eines von ${p.list(v.open)}.`,
  'typed.phase': (v, p) =>
    `${quotedBeginning(v.typed)} ist keine Phase. ${v.nearest === null ? `Tipp at und eines von ${p.list(v.allowed)}.` : `Meintest du "at ${v.nearest}"?`}`,
  'typed.weigh': (v) =>
    `${quotedBeginning(v.typed)} ist kein Gewicht. Tipp es so: weigh 512g, oder weigh 70g of 10 (zehn Stück).`,
  'typed.count': (v) => `${quotedBeginning(v.typed)} ist keine Anzahl Stücke. Tipp es so: count 63.`,
  'typed.no-question': (v) => `"${v.answer}" antwortet auf nichts: gerade ist keine Frage offen.`,
  'typed.too-early': (v, p) =>
    `Noch nicht: das wird in ${p.time(v.seconds)} gefragt. Bis dahin ${v.question === 'clean.cool' ? 'kein Wasser hinein' : 'nur Werkzeug'}.`,
  'typed.not-an-answer': (v, p) =>
    `"${v.answer}" antwortet darauf nicht. Tipp eines von ${p.list(v.answers)}.`,
  'typed.safety': (v) =>
    `Das ist eine Sicherheitsfrage: "done" antwortet darauf nicht. Lies laut vor, dann tipp ${v.answers.map((one) => `"${one}"`).join(' oder ')}.`,
  'typed.not-done':
    'Das endet durch das, was geschieht, nicht durch "done". Tipp, was du liest oder fühlst; "help" zeigt die Wörter.',
  'typed.no-warning': (v) =>
    v.id === null
      ? 'Keine Warnung wartet auf Antwort.'
      : `Keine Warnung namens ${quotedBeginning(v.id)} ist offen.`,
  'typed.no-undo': 'Es gibt nichts zurückzunehmen.',
  'typed.note': 'Eine Notiz braucht Wörter: note es wurde voll.',
  'typed.mark': 'Was soll markiert werden? Tipp es so: mark recording (Aufnahme läuft).',
  'typed.reading-kept': (v) =>
    ({
      'out of range': 'Das kann Sirup im Topf nicht haben. Behalten, und nachgefragt.',
      'too hot so soon': 'Heißer, als es jetzt sein sollte. Behalten, und nachgefragt.',
      jump: 'Schneller, als ein Herd heizt. Behalten, und nachgefragt.',
      fall: 'Schneller, als ein Topf auf dem Herd abkühlt. Behalten, und nachgefragt.',
      'too cold to boil': 'Zu kalt für kochenden Sirup. Behalten, und nachgefragt.',
      'colder than the room': 'Kälter als der Raum, in dem es liegt. Behalten, und nachgefragt.',
      'other scale': 'Auf der anderen Skala passte es. Behalten, und nachgefragt.',
    })[v.because] ?? 'Behalten, und nachgefragt.',
  'typed.time': (v) =>
    `Die Zeit ${v.t} s liegt vor ${v.before} s: Zeit läuft nie zurück. Schick eine spätere.`,
  'typed.feed-line':
    'Diese Zeile ist kein {"t": Sekunden, "typed": "..."}. Schick JSON-Zeilen oder einfache Zeilen, nicht beides.',
} as const satisfies Translated<typeof typedTexts>;
