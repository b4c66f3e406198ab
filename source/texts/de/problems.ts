import { escapeForTerminal } from '../../units/escape.js';
import type { problemTexts } from '../en/problems.js';
import type { FileTrouble } from '../file-trouble.js';
import { bytesInWords, momentOf } from '../measures.js';
import type { Translated } from '../texts.js';
import { deKitchenProblems } from './kitchens.js';
import { deFiles, deRecipeProblems } from './recipes.js';
import { deUnits } from './units.js';

const troubleWords: Readonly<Record<FileTrouble, (code: string) => string>> = {
  full: () => 'die Festplatte ist voll',
  quota: () => 'der Anteil dieses Kontos an der Festplatte ist verbraucht',
  readOnly: () => 'die Festplatte ist nur lesbar',
  notAllowed: () => 'dieses Konto hat dort keine Rechte',
  missing: () => 'die Datei oder ihr Ordner ist nicht da',
  device: () => 'die Festplatte meldet einen Fehler',
  link: () => 'an ihrer Stelle steht ein symbolischer Link',
  notAFile: () => 'an ihrer Stelle steht ein Ordner oder Gerät',
  gone: () => 'die Datei wurde gelöscht',
  replaced: () => 'die Datei wurde von einem anderen Programm geändert',
  taken: () => 'eine andere Konsole hat diesen Kochgang geöffnet',
  slow: () => 'die Festplatte antwortet nicht',
  other: (code) => `das System hat abgelehnt (${code})`,
};

const readAdvice: Readonly<Partial<Record<FileTrouble, string>>> = {
  missing: 'Prüf den Namen, oder gib den ganzen Pfad an.',
  notAllowed: 'Ändere die Rechte, oder nenn eine andere Datei.',
  link: 'Nenn die Datei selbst.',
};

const writeAdvice: Readonly<Partial<Record<FileTrouble, string>>> = {
  full: 'Schaff dort etwas Platz.',
  quota: 'Lösch einige deiner Dateien.',
  notAllowed: 'Ändere die Rechte des Ordners, oder setz KETTLEHAND_HOME auf einen anderen.',
  missing: 'Stell den Ordner wieder her, oder setz KETTLEHAND_HOME auf einen anderen.',
  device: 'Prüf das Laufwerk oder sein Kabel.',
  link: 'Entfern den Link.',
  replaced: 'Schieb jene Datei beiseite.',
  taken: 'Schließ ihn dort.',
};

export const deProblems = {
  ...deUnits,
  ...deFiles,
  ...deRecipeProblems,
  ...deKitchenProblems,
  // files and journal
  'files.notAFile': ({ path }) =>
    `${escapeForTerminal(path)} ist keine gewöhnliche Datei (dort steht ein Ordner, ein Link oder ein Gerät). Nenn eine Datei.`,
  'files.notAFolder': ({ path }) =>
    `${escapeForTerminal(path)} ist eine Datei, und dort wird ein Ordner gebraucht. Schieb sie beiseite, oder setz KETTLEHAND_HOME auf einen Ordner.`,
  'files.tooLarge': ({ path, maxBytes }) =>
    `${escapeForTerminal(path)} ist größer als ${bytesInWords(maxBytes)}, mehr wird von so einer Datei nicht gelesen. Prüf, ob es die richtige ist.`,
  'files.notUtf8': ({ path, line }) =>
    `${escapeForTerminal(path)} ist kein UTF-8-Text: Zeile ${line} hat Bytes, die kein Zeichen sind. Speicher sie im Editor als UTF-8.`,
  'files.notRead': ({ path, trouble, code }) =>
    `${escapeForTerminal(path)} ließ sich nicht lesen: ${troubleWords[trouble](code)}. ${readAdvice[trouble] ?? 'Versuch es noch einmal, oder nenn eine andere Datei.'}`,
  'files.notWritten': ({ path, trouble, code }) =>
    `${escapeForTerminal(path)} ließ sich nicht schreiben: ${troubleWords[trouble](code)}. ${writeAdvice[trouble] ?? 'Nenn einen anderen Ort dafür.'}`,
  'journal.notSaved': ({ path, trouble, code }) =>
    `NICHTS WIRD GESPEICHERT: ${troubleWords[trouble](code)} (${escapeForTerminal(path)}). Es geht weiter; was geschieht, wird behalten und gespeichert, sobald es geht. ${writeAdvice[trouble] ?? 'Lass das Programm laufen.'}`,
  'journal.heldElsewhere': ({ pid, host, since, sameHost }, p) =>
    sameHost
      ? `Dieser Kochgang ist in einer anderen Konsole offen: Prozess ${pid} auf diesem Rechner, seit ${momentOf(since, p)}. Mach dort weiter, oder schließ sie zuerst; „kettlehand watch“ sieht von hier aus zu.`
      : `Dieser Kochgang ist auf einem anderen Rechner offen: Prozess ${pid} auf ${escapeForTerminal(host)}, seit ${momentOf(since, p)}. Schließ ihn dort. Gibt es jenen Rechner nicht mehr, lösch die Datei neben dem Protokoll, die auf .lock endet.`,
  'journal.notAJournal': ({ path }) =>
    `${escapeForTerminal(path)} enthält etwas anderes als das Protokoll eines Kochgangs, deshalb wurde nichts hineingeschrieben. Nenn eine neue Datei.`,
  'journal.tooLong': ({ kind, maxBytes }) =>
    `Ein Ereignis (${escapeForTerminal(kind)}) war zu lang zum Speichern: mehr als ${bytesInWords(maxBytes)}. Sag es in weniger Worten.`,
  'journal.full': ({ maxBytes }) =>
    `NICHTS WIRD GESPEICHERT: das Protokoll dieses Kochgangs hat ${bytesInWords(maxBytes)} erreicht. Es geht weiter, aber was ab jetzt geschieht, ist verloren, wenn das Programm endet.`,
  'journal.damaged': ({ lines, more }) =>
    `Das Protokoll ist beschädigt in Zeile ${lines.join(', ')}${more > 0 ? ` und ${more} weiteren` : ''}; alles andere blieb erhalten. Was dort bestätigt war, wird noch einmal gefragt.`,
  'journal.torn':
    'Die letzte Zeile des Protokolls brach beim Schreiben ab und wird ausgelassen. Nichts, was gezeigt wurde, ist verloren.',
} as const satisfies Translated<typeof problemTexts>;
