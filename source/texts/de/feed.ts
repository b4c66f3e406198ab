import type { feedTexts } from '../en/feed.js';
import { quotedLine, quotedPath } from '../quoted.js';
import type { Translated } from '../texts.js';

/** What is said of a thermometer that writes its readings beside the keyboard. */
export const deFeed = {
  'feed.badge': 'FÜHLER',
  'feed.reads': (v) =>
    `Ablesungen kommen auch aus ${quotedPath(v.path)}. Alles andere tippst du wie immer; auch Ablesungen, jederzeit.`,
  'feed.missing': (v) =>
    `Die Quelle ${quotedPath(v.path)} gibt es noch nicht. Tipp, was das Thermometer zeigt; sie wird gelesen, sobald sie da ist.`,
  'feed.gone': (v) =>
    `Die Quelle ${quotedPath(v.path)} ist weg. Lies das Thermometer ab und tipp es ein; sie wird gelesen, sobald sie wieder da ist.`,
  'feed.no-writer': (v) =>
    `In ${quotedPath(v.path)} schreibt noch niemand. Tipp, was das Thermometer zeigt; gelesen wird, sobald es beginnt.`,
  'feed.ended': (v) =>
    `Die Quelle ist zu Ende: in ${quotedPath(v.path)} schreibt niemand mehr. Lies das Thermometer ab und tipp es ein.`,
  'feed.silent': (v, p) =>
    `Seit ${p.time(v.seconds)} kam nichts aus der Quelle. Lies das Thermometer ab und tipp es ein.`,
  'feed.stalled': (v, p) =>
    `Die Quelle stockt: seit ${p.time(v.seconds)} nichts, wo sonst alle ${p.time(Math.max(1, v.usualSeconds))} eine Zeile kommt. Lies das Thermometer ab und tipp es ein.`,
  'feed.rubbish': (v, p) =>
    `${p.count(v.count, 'Zeile', 'Zeilen')} der Quelle ausgelassen: ${quotedLine(v.first)} ist keine Temperatur von Sirup${v.unfinished ? ', denn die Zeile hat kein Ende' : ''}. Eine Zeile ist 238, 238f oder 114.5c.`,
  'feed.only-rubbish': (v, p) =>
    `Nur Unbrauchbares aus der Quelle: ${p.count(v.count, 'Zeile', 'Zeilen')} wie ${quotedLine(v.first)}. Eine Zeile ist 238, 238f oder 114.5c. Tipp, was das Thermometer zeigt.`,
  'feed.jumped': (v, p) =>
    `Die Quelle sprang auf ${p.dial(v.celsius)}. Es zählt erst, wenn die nächste Zeile dazu passt. Sieh nach, ob der Fühler im Sirup steht.`,
  'feed.begins': (v, p) => `Die Quelle hat begonnen: ${p.dial(v.celsius)}.`,
  'feed.back': (v, p) => `Die Quelle ist wieder da: ${p.dial(v.celsius)}.`,
  'feed.often':
    'Die Quelle schickt mehr als nötig: Alle 10 s wird eine Ablesung behalten, früher, wenn sie sich um ein Grad ändert.',
  'feed.poured':
    'Gegossen: die Quelle wird nicht mehr gelesen. Der Kern der Masse wird von Hand gemessen und getippt.',
  'feed.no-thermometer':
    'Kein Thermometer mehr, wie getippt: die Quelle wird nicht gelesen. Nach der nächsten getippten Ablesung wieder.',
  'feed.started-over': 'Die Datei der Quelle wurde geleert oder ausgetauscht. Sie wird von vorn gelesen.',
  'feed.skipped': 'In der Quelle stand viel auf einmal. Das Alte wird übergangen.',
  'feed.bad.empty': '--feed braucht den Pfad einer Datei oder benannten Pipe: --feed readings.txt.',
  'feed.bad.kind': (v) =>
    `${quotedPath(v.path)} ist weder Datei noch benannte Pipe. Schreib die Zeilen eines Geräts in eine Datei und nenn diese mit --feed.`,
} as const satisfies Translated<typeof feedTexts>;
