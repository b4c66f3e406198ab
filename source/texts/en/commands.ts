import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { quotedUpTo } from '../quoted.js';

const quoted = quotedUpTo(80);

/** What commands say on standard error, and the line mode around the cook. */
export const commandTexts = {
  'command.unknown': (v: { found: string; nearest: string | null; names: readonly string[] }, p: Printer) =>
    v.nearest === null
      ? `There is no command ${quoted(v.found)}. The commands are ${p.list(v.names)}.`
      : `There is no command ${quoted(v.found)}. Did you mean "kettlehand ${v.nearest}"?`,
  'command.unknown-option': (
    v: { found: string; command: string; nearest: string | null; names: readonly string[] },
    p: Printer,
  ) => {
    const options = `"kettlehand ${v.command} --help" explains them.`;
    const found = `"kettlehand ${v.command}" has no option ${quoted(v.found)}.`;
    return v.nearest === null
      ? `${found} It has ${p.list(v.names)}. ${options}`
      : `${found} Did you mean ${v.nearest}? ${options}`;
  },
  'command.unknown-language': (v: { found: string; names: readonly string[] }, p: Printer) =>
    `There is no language ${quoted(v.found)}. There are ${p.list(v.names)}: kettlehand --language ${v.names.at(-1)}.`,
  'command.no-background': (v: { found: string; names: readonly string[] }, p: Printer) =>
    `${quoted(v.found)} is no background. Type --background and one of ${p.list(v.names)}.`,
  'command.too-many': (v: { found: string; command: string }) =>
    `${quoted(v.found)} is one word too many for "kettlehand ${v.command}". Words that belong together need quotes, as in "1450 m". "kettlehand ${v.command} --help" shows how it is used.`,
  'command.needs-recipe': (v: { command: string; names: readonly string[] }, p: Printer) =>
    `Which recipe? Type "kettlehand ${v.command}" and one of ${p.list(v.names)}, or the path of a recipe file.`,
  'command.unknown-recipe': (
    v: { found: string; nearest: string | null; names: readonly string[] },
    p: Printer,
  ) =>
    v.nearest === null
      ? `There is no recipe ${quoted(v.found)}. The bundled ones are ${p.list(v.names)}; a file of your own is named by its path.`
      : `There is no recipe ${quoted(v.found)}. Did you mean "${v.nearest}"? "kettlehand recipes" lists them.`,
  'command.unknown-phase': (v: { found: string; names: readonly string[] }, p: Printer) =>
    `${quoted(v.found)} is not a phase. --from takes one of ${p.list(v.names)}.`,
  'command.no-terminal': (v: { command: string }) =>
    `"kettlehand ${v.command}" needs a terminal to type in, and standard input is none. For a pipe use "kettlehand follow RECIPE", or "kettlehand cook --plain".`,
  'command.failed': (v: { what: string }) =>
    `That failed: ${escapeForTerminal(v.what)}. Nothing that was saved is lost.`,
  'command.journal-other': (v: { path: string }) =>
    `${quoted(v.path)} holds no cook that can be taken up again: its first line is damaged. Name another file.`,
  'line.opened': (v: { recipe: string }) =>
    `${escapeForTerminal(v.recipe)}. Type what you read and feel; "help" shows the words, "leave" leaves (the cook is kept).`,
  'line.deferring':
    'The person in charge, local rules for kitchens and children, food law and trained first aid come before anything this program says.',
  'line.unfinished': (v: { recipe: string; seconds: number; phase: string }, p: Printer) =>
    `An unfinished cook: ${escapeForTerminal(v.recipe)}, at ${v.phase}, left ${p.time(v.seconds)} ago. Go on with it? yes or no (Enter: yes).`,
  'line.others': (v: { others: number }, p: Printer) =>
    `After no, ${p.count(v.others, 'other is', 'others are')} offered.`,
  'line.begin-another': 'Begin another cook beside it? yes or no (Enter: no).',
  'line.ask-default': 'Enter takes the default.',
  'line.resumed': (v: { recipe: string }) => `Going on with ${escapeForTerminal(v.recipe)}.`,
  'line.left': 'Left. The cook is kept; start again to go on where it stood.',
  'line.saving-again': 'Saving works again; nothing was lost.',
  'line.held': 'Held in memory, not saved yet.',
  'line.help': (v: { words: readonly string[] }, p: Printer) =>
    `Digits: a reading (238, 238f, 114.5c). Otherwise: ${p.list(v.words)}. "help" and "leave" too.`,
} as const;
