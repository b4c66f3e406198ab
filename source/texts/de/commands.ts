import { escapeForTerminal } from '../../units/escape.js';
import type { commandTexts } from '../en/commands.js';
import { quotedUpTo } from '../quoted.js';
import type { Translated } from '../texts.js';

const quoted = quotedUpTo(80);

/** What commands say on standard error, and the line mode around the cook. */
export const deCommands = {
  'command.unknown': (v, p) =>
    v.nearest === null
      ? `Einen Befehl ${quoted(v.found)} gibt es nicht. Es gibt ${p.list(v.names)}.`
      : `Einen Befehl ${quoted(v.found)} gibt es nicht. Meintest du "kettlehand ${v.nearest}"?`,
  'command.unknown-option': (v, p) => {
    const options = `"kettlehand ${v.command} --help" erklärt sie.`;
    const found = `"kettlehand ${v.command}" hat keine Option ${quoted(v.found)}.`;
    return v.nearest === null
      ? `${found} Es gibt ${p.list(v.names)}. ${options}`
      : `${found} Meintest du ${v.nearest}? ${options}`;
  },
  'command.unknown-language': (v, p) =>
    `Eine Sprache ${quoted(v.found)} gibt es nicht. Es gibt ${p.list(v.names)}: kettlehand --language ${v.names.at(-1)}.`,
  'command.no-background': (v, p) =>
    `${quoted(v.found)} ist kein Hintergrund. Schreib --background und dahinter ${p.list(v.names)}.`,
  'command.too-many': (v) =>
    `${quoted(v.found)} ist ein Wort zu viel für "kettlehand ${v.command}". Was zusammengehört, steht in Anführungszeichen, wie "1450 m". "kettlehand ${v.command} --help" zeigt, wie es geht.`,
  'command.needs-recipe': (v, p) =>
    `Welches Rezept? Tipp "kettlehand ${v.command}" und eines von ${p.list(v.names)}, oder den Pfad einer Rezeptdatei.`,
  'command.unknown-recipe': (v, p) =>
    v.nearest === null
      ? `Ein Rezept ${quoted(v.found)} gibt es nicht. Mitgeliefert sind ${p.list(v.names)}; eine eigene Datei nennst du mit ihrem Pfad.`
      : `Ein Rezept ${quoted(v.found)} gibt es nicht. Meintest du "${v.nearest}"? "kettlehand recipes" zählt sie auf.`,
  'command.unknown-phase': (v, p) =>
    `${quoted(v.found)} ist keine Phase. --from nimmt eine von ${p.list(v.names)}.`,
  'command.no-terminal': (v) =>
    `"kettlehand ${v.command}" braucht ein Terminal, in dem getippt wird, und die Standardeingabe ist keines. Für eine Pipe nimm "kettlehand follow RECIPE" oder "kettlehand cook --plain".`,
  'command.failed': (v) =>
    `Das ging schief: ${escapeForTerminal(v.what)}. Nichts Gespeichertes ist verloren.`,
  'command.journal-other': (v) =>
    `${quoted(v.path)} enthält keinen Kochgang, der sich wieder aufnehmen lässt: die erste Zeile ist beschädigt. Nenn eine andere Datei.`,
  'line.opened': (v) =>
    `${escapeForTerminal(v.recipe)}. Tipp, was du liest und fühlst; "help" zeigt die Wörter, "leave" verlässt (der Stand bleibt erhalten).`,
  'line.deferring':
    'Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das Lebensmittelrecht und ausgebildete Erste Hilfe gehen allem vor, was dieses Programm sagt.',
  'line.unfinished': (v, p) =>
    `Ein offener Kochgang: ${escapeForTerminal(v.recipe)}, bei ${v.phase}, vor ${p.time(v.seconds)} verlassen. Damit weiter? yes (ja) oder no (nein) (Enter: yes).`,
  'line.others': (v, p) => `Bei no (nein) ${p.count(v.others, 'weiterer wird', 'weitere werden')} angeboten.`,
  'line.begin-another': 'Daneben einen neuen Kochgang beginnen? yes (ja) oder no (nein) (Enter: no).',
  'line.ask-default': 'Enter nimmt die Vorgabe.',
  'line.resumed': (v) => `Weiter mit ${escapeForTerminal(v.recipe)}.`,
  'line.left': 'Verlassen. Der Stand bleibt erhalten; starte wieder, um dort weiterzumachen.',
  'line.saving-again': 'Speichern geht wieder; nichts ging verloren.',
  'line.held': 'Im Speicher gehalten, noch nicht gesichert.',
  'line.help': (v, p) =>
    `Ziffern: eine Ablesung (238, 238f, 114.5c). Sonst: ${p.list(v.words)}. Auch "help" (Hilfe) und "leave" (verlassen).`,
} as const satisfies Translated<typeof commandTexts>;
