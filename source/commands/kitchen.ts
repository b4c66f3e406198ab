import { airNotes, airOf } from '../kitchen/air.js';
import { defaultKitchen } from '../kitchen/default.js';
import { dialNotes, dialOf } from '../kitchen/dial.js';
import { kitchenSettings, setInKitchen } from '../kitchen/edit.js';
import type { Kitchen, Thermometer } from '../kitchen/kitchen.js';
import { parseKitchen } from '../kitchen/parse.js';
import { nearest } from '../recipe/items.js';
import { learnedLines } from '../sheets/learned.js';
import { type Message, message, words } from '../texts/message.js';
import { jsonText } from '../units/escape.js';
import { type Printer, printer } from '../units/printer.js';
import { type CommandIo, type ExitCode, fail, failFile } from './io.js';

export type KitchenIo = CommandIo & {
  /** The saved kitchen; null: there is none yet. */
  readKitchen(): Promise<{ readonly text: string } | { readonly problem: Message } | null>;
  writeKitchen(text: string): Promise<{ readonly problem: Message } | null>;
  /** The kitchen with what earlier cooks taught of it; left out: nothing is known of any. */
  taught?(kitchen: Kitchen): Promise<Kitchen>;
  /** The wall clock, for the date of what a person says. */
  now?(): Date;
  /** Where it is, or will be. */
  readonly kitchenPath: string;
};

export type KitchenOptions = { readonly json?: boolean | undefined };

const actions = ['show', 'set', 'path'] as const;
/** Where candy is made: the place on the scale that is worth telling. */
const candyCelsius = 125;

/** One thermometer alone, so that each is judged by its own readings. */
const alone = (kitchen: Kitchen, thermometer: Thermometer): Kitchen => ({
  ...kitchen,
  thermometers: [{ ...thermometer, use: 'both' }],
});

const thermometersOf = (kitchen: Kitchen) =>
  kitchen.thermometers.map((thermometer) => {
    const own = alone(kitchen, thermometer);
    const { basis, sdKelvin, toShownCelsius } = dialOf(own, 'pot');
    return {
      ...thermometer,
      basis,
      sdKelvin,
      trueCelsius: candyCelsius,
      shownCelsius: toShownCelsius(candyCelsius),
    };
  });

const notesOf = (kitchen: Kitchen): readonly Message[] => [
  ...airNotes(kitchen),
  ...(kitchen.thermometers.length === 0
    ? dialNotes(kitchen, 'pot')
    : kitchen.thermometers.flatMap((thermometer) => dialNotes(alone(kitchen, thermometer), 'pot'))),
];

const inOwnUnit = (kitchen: Kitchen, { language }: CommandIo): Printer =>
  printer({ language, unit: kitchen.unit, toShownCelsius: (celsius) => celsius });

type Saved = { readonly kitchen: Kitchen; readonly text: string | null };

const load = async (io: KitchenIo): Promise<Saved | ExitCode> => {
  const read = await io.readKitchen();
  if (read === null) return { kitchen: defaultKitchen, text: null };
  if ('problem' in read) return fail(io, 1, read.problem);
  const parsed = parseKitchen(read.text, io.kitchenPath);
  return 'problems' in parsed ? failFile(io, parsed.problems) : { kitchen: parsed.kitchen, text: read.text };
};

const show = async ({ kitchen: saved, text }: Saved, json: boolean, io: KitchenIo): Promise<ExitCode> => {
  const kitchen = (await io.taught?.(saved)) ?? saved;
  const print = inOwnUnit(kitchen, io);
  const say = (said: Message): string => words(said, print);
  const air = airOf(kitchen);
  const thermometers = thermometersOf(kitchen);
  const notes = notesOf(kitchen);
  if (json) {
    const shown = { version: 1, file: text === null ? null : io.kitchenPath, kitchen, air, thermometers };
    io.out(`${jsonText({ ...shown, notes: notes.map((note) => ({ id: note.id, text: say(note) })) }, 2)}\n`);
    return 0;
  }
  const path = io.kitchenPath;
  const said: readonly Message[] = [
    text === null ? message('kitchen.show.no-file', { path }) : message('kitchen.show.file', { path }),
    message('kitchen.show.air', air),
    message('kitchen.show.stove', kitchen),
    message('kitchen.show.pot', kitchen.pot),
    ...thermometers.map((thermometer) => message('kitchen.show.thermometer', thermometer)),
    message('kitchen.show.room', kitchen.room),
    message('kitchen.show.hands', kitchen),
    ...learnedLines(kitchen.learned),
  ];
  io.out(`${[...said.map(say), ...notes.map((note) => `- ${say(note)}`)].join('\n')}\n`);
  return 0;
};

/** The day by the clock of this place, ISO. */
const dayOf = (date: Date): string =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');

const pairsOf = (typed: readonly string[]): ReadonlyArray<readonly [string, string]> | null =>
  typed.length === 0 || typed.length % 2 === 1
    ? null
    : typed.flatMap((key, place) => (place % 2 === 0 ? [[key, typed[place + 1] ?? ''] as const] : []));

const set = async (typed: readonly string[], json: boolean, io: KitchenIo): Promise<ExitCode> => {
  const pairs = pairsOf(typed);
  if (pairs === null) return fail(io, 2, message('kitchen.set-usage', { allowed: kitchenSettings }));
  const saved = await load(io);
  if (typeof saved === 'number') return saved;
  const print = inOwnUnit(saved.kitchen, io);
  const edited = setInKitchen(saved.text, pairs, dayOf(io.now?.() ?? new Date()));
  if ('problems' in edited) {
    for (const problem of edited.problems) fail(io, 2, problem, print);
    return 2;
  }
  const notWritten = await io.writeKitchen(edited.text);
  if (notWritten !== null) return fail(io, 1, notWritten.problem, print);
  // Who just chose a language reads the answer in it.
  const chose = pairs.some(([key]) => key === 'language');
  const reader = chose ? { ...io, language: edited.kitchen.language } : io;
  io.err(`${words(message('kitchen.saved', { path: io.kitchenPath }), inOwnUnit(edited.kitchen, reader))}\n`);
  return show({ kitchen: edited.kitchen, text: edited.text }, json, reader);
};

/**
 * `kettlehand kitchen [show] | set KEY VALUE... | path`. `typed` is what stands after `kitchen`. A value that can't
 * be meant is wrong use and nothing is written.
 */
export const kitchen = async (
  typed: readonly string[],
  options: KitchenOptions,
  io: KitchenIo,
): Promise<ExitCode> => {
  const json = options.json === true;
  const [action = 'show', ...rest] = typed;
  if (action === 'path') {
    io.out(`${io.kitchenPath}\n`);
    return 0;
  }
  if (action === 'set') return set(rest, json, io);
  if (action !== 'show')
    return fail(
      io,
      2,
      message('kitchen.unknown-action', { found: action.slice(0, 40), nearest: nearest(action, actions) }),
    );
  const saved = await load(io);
  return typeof saved === 'number' ? saved : show(saved, json, io);
};
