import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import type { FileTrouble } from '../file-trouble.js';
import { bytesInWords, momentOf } from '../measures.js';
import { kitchenProblemTexts } from './kitchens.js';
import { fileTexts, recipeProblemTexts } from './recipes.js';
import { unitTexts } from './units.js';

type TroubleAt = { path: string; trouble: FileTrouble; code: string };

const troubleWords: Readonly<Record<FileTrouble, (code: string) => string>> = {
  full: () => 'the disk is full',
  quota: () => "this account's share of the disk is used up",
  readOnly: () => 'the disk is read-only',
  notAllowed: () => 'this account has no permission there',
  missing: () => 'the file or its folder is not there',
  device: () => 'the disk reports a fault',
  link: () => 'a symbolic link is in its place',
  notAFile: () => 'a folder or device is in its place',
  gone: () => 'the file was removed',
  replaced: () => 'the file was changed by another program',
  taken: () => 'another console has opened this cook',
  slow: () => 'the disk does not answer',
  other: (code) => `the system refused (${code})`,
};

const readAdvice: Readonly<Partial<Record<FileTrouble, string>>> = {
  missing: 'Check the name, or give the whole path.',
  notAllowed: 'Change its permissions, or name another file.',
  link: 'Name the file itself.',
};

const writeAdvice: Readonly<Partial<Record<FileTrouble, string>>> = {
  full: 'Free some space on it.',
  quota: 'Delete some of your files.',
  notAllowed: 'Change the permissions of the folder, or set KETTLEHAND_HOME to another one.',
  missing: 'Put the folder back, or set KETTLEHAND_HOME to another one.',
  device: 'Check the drive or its cable.',
  link: 'Remove the link.',
  replaced: 'Move that file away.',
  taken: 'Close it there.',
};

export const problemTexts = {
  ...unitTexts,
  ...fileTexts,
  ...recipeProblemTexts,
  ...kitchenProblemTexts,
  // files and journal
  'files.notAFile': ({ path }: { path: string }) =>
    `${escapeForTerminal(path)} is not an ordinary file (a folder, a link or a device is in its place). Name a file.`,
  'files.notAFolder': ({ path }: { path: string }) =>
    `${escapeForTerminal(path)} is a file, and a folder is needed there. Move it away, or set KETTLEHAND_HOME to a folder.`,
  'files.tooLarge': ({ path, maxBytes }: { path: string; maxBytes: number }) =>
    `${escapeForTerminal(path)} is larger than ${bytesInWords(maxBytes)}, the most that is read of such a file. Check that it is the right one.`,
  'files.notUtf8': ({ path, line }: { path: string; line: number }) =>
    `${escapeForTerminal(path)} is not UTF-8 text: line ${line} has bytes that are no character. Save it as UTF-8 in your editor.`,
  'files.notRead': ({ path, trouble, code }: TroubleAt) =>
    `${escapeForTerminal(path)} could not be read: ${troubleWords[trouble](code)}. ${readAdvice[trouble] ?? 'Try again, or name another file.'}`,
  'files.notWritten': ({ path, trouble, code }: TroubleAt) =>
    `${escapeForTerminal(path)} could not be written: ${troubleWords[trouble](code)}. ${writeAdvice[trouble] ?? 'Name another place for it.'}`,
  'journal.notSaved': ({ path, trouble, code }: TroubleAt) =>
    `NOTHING IS BEING SAVED: ${troubleWords[trouble](code)} (${escapeForTerminal(path)}). The cook goes on; what happens is kept and saved as soon as it can be. ${writeAdvice[trouble] ?? 'Leave the program running.'}`,
  'journal.heldElsewhere': (
    { pid, host, since, sameHost }: { pid: number; host: string; since: string; sameHost: boolean },
    p: Printer,
  ) =>
    sameHost
      ? `This cook is open in another console: process ${pid} on this machine, since ${momentOf(since, p)}. Go on there, or close it first; "kettlehand watch" looks on from here.`
      : `This cook is open on another machine: process ${pid} on ${escapeForTerminal(host)}, since ${momentOf(since, p)}. Close it there. If that machine is gone for good, delete the file that ends in .lock beside the journal.`,
  'journal.notAJournal': ({ path }: { path: string }) =>
    `${escapeForTerminal(path)} holds something else than a cook's journal, so nothing was written to it. Name a new file.`,
  'journal.tooLong': ({ kind, maxBytes }: { kind: string; maxBytes: number }) =>
    `One event (${escapeForTerminal(kind)}) was too long to be saved: more than ${bytesInWords(maxBytes)}. Say it in fewer words.`,
  'journal.full': ({ maxBytes }: { maxBytes: number }) =>
    `NOTHING IS BEING SAVED: this cook's journal has reached ${bytesInWords(maxBytes)}. The cook goes on, but what happens from now on is lost when the program ends.`,
  'journal.damaged': ({ lines, more }: { lines: readonly number[]; more: number }) =>
    `The journal is damaged in line ${lines.join(', ')}${more > 0 ? ` and ${more} more` : ''}; everything else was kept. What was confirmed there is asked again.`,
  'journal.torn':
    'The last line of the journal was cut off while it was written and is left out. Nothing that was shown is lost.',
} as const;
