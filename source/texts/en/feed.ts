import type { Printer } from '../../units/printer.js';
import { quotedLine, quotedPath } from '../quoted.js';

/** What is said of a thermometer that writes its readings into a file or a named pipe, beside the keyboard. */
export const feedTexts = {
  'feed.badge': 'FEED',
  'feed.reads': (v: { path: string }) =>
    `Readings also come from ${quotedPath(v.path)}. Everything else is typed as ever; so are readings, at any time.`,
  'feed.missing': (v: { path: string }) =>
    `There is no feed ${quotedPath(v.path)} yet. Type what the thermometer shows; the feed is taken up when it is there.`,
  'feed.gone': (v: { path: string }) =>
    `The feed ${quotedPath(v.path)} is gone. Read the thermometer and type it; the feed is taken up when it is back.`,
  'feed.no-writer': (v: { path: string }) =>
    `Nobody writes into ${quotedPath(v.path)} yet. Type what the thermometer shows; the feed is taken up when it begins.`,
  'feed.ended': (v: { path: string }) =>
    `The feed ended: nobody writes into ${quotedPath(v.path)} any more. Read the thermometer and type it.`,
  'feed.silent': (v: { seconds: number }, p: Printer) =>
    `Nothing has come from the feed for ${p.time(v.seconds)}. Read the thermometer and type it.`,
  'feed.stalled': (v: { seconds: number; usualSeconds: number }, p: Printer) =>
    `The feed stalled: nothing for ${p.time(v.seconds)}, where a line comes every ${p.time(Math.max(1, v.usualSeconds))}. Read the thermometer and type it.`,
  'feed.rubbish': (v: { first: string; count: number; unfinished: boolean }, p: Printer) =>
    `${p.count(v.count, 'line', 'lines')} of the feed left out: ${quotedLine(v.first)} is no temperature of syrup${v.unfinished ? ', for its line has no end' : ''}. A line is 238, 238f or 114.5c.`,
  'feed.only-rubbish': (v: { first: string; count: number }, p: Printer) =>
    `Nothing but rubbish from the feed: ${p.count(v.count, 'line', 'lines')} like ${quotedLine(v.first)}. A line is 238, 238f or 114.5c. Type what the thermometer shows.`,
  'feed.jumped': (v: { celsius: number }, p: Printer) =>
    `The feed jumped to ${p.dial(v.celsius)}. It counts only when the next one agrees. Look whether the probe stands in the syrup.`,
  'feed.begins': (v: { celsius: number }, p: Printer) => `The feed has begun: ${p.dial(v.celsius)}.`,
  'feed.back': (v: { celsius: number }, p: Printer) => `The feed is back: ${p.dial(v.celsius)}.`,
  'feed.often':
    'The feed sends more than is needed: one reading every 10 s is kept, sooner when it moves by a degree.',
  'feed.poured':
    'Poured: the feed is not read any more. The middle of the mass is measured by hand and typed.',
  'feed.no-thermometer':
    'No thermometer any more, as typed: the feed is not read. It is read again after the next typed reading.',
  'feed.started-over': 'The file of the feed was emptied or exchanged. It is read from its beginning.',
  'feed.skipped': 'Much stood in the feed at once. What was old is passed over.',
  'feed.bad.empty': '--feed wants the path of a file or a named pipe: --feed readings.txt.',
  'feed.bad.kind': (v: { path: string }) =>
    `${quotedPath(v.path)} is neither a file nor a named pipe. For a device write its lines into a file, and name that one with --feed.`,
} as const;
