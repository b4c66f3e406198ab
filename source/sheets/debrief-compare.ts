import { type CompareRow, compare } from '../lessons/comparison.js';
import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import type { Language } from '../units/language.js';
import { type Printer, printer } from '../units/printer.js';
import { sheetColumns, wrapped } from './layout.js';

export type Compared = { readonly id: string; readonly story: Story };

/** More do not fit side by side. */
export const mostCompared = 4;

const labelColumn = 20;

/** True syrup temperatures: each cook had a thermometer of its own. */
const truePrinter = (stories: readonly Story[], language: Language | undefined): Printer =>
  printer({ language, unit: stories[0]?.batch.kitchen.unit ?? 'C', toShownCelsius: (celsius) => celsius });

const cellsOf = ({ cells }: CompareRow, say: (said: Message) => string): readonly string[] =>
  cells.map((cell) => (cell === null ? say(message('compare.nothing')) : say(cell)));

const differs = (cells: readonly string[]): boolean => new Set(cells).size > 1;

const recipesDiffer = (stories: readonly Story[]): boolean =>
  new Set(stories.map(({ batch }) => batch.recipe.name)).size > 1;

/** Cells in columns; what is too long for its column is cut, the whole is in the JSON. */
const line = (label: string, cells: readonly string[]): string => {
  const width = Math.floor((sheetColumns - labelColumn) / cells.length);
  const inColumn = (text: string, room: number): string =>
    text.length < room ? text.padEnd(room) : `${text.slice(0, room - 2)}~ `;
  return `${inColumn(label, labelColumn)}${cells.map((cell) => inColumn(cell, width)).join('')}`.trimEnd();
};

/** Two to four cooks side by side, lines of at most 78 columns: what differed, and what came of it. */
export const compareText = (cooks: readonly Compared[], language?: Language): string => {
  const stories = cooks.map(({ story }) => story);
  const print = truePrinter(stories, language);
  const say = (said: Message): string => words(said, print);
  const mixed = recipesDiffer(stories);
  const rows = compare(stories).map((row) => ({ ...row, cells: cellsOf(row, say) }));
  const rowLine = ({ label, cells }: { label: Message; cells: readonly string[] }): string =>
    line(`${differs(cells) ? '*' : ' '} ${say(label)}`, cells);
  const unequal = rows.filter(({ of, cells }) => of === 'differed' && differs(cells));
  const known = rows.filter(
    ({ of, cells }) => of === 'outcome' && cells.some((cell) => cell !== say(message('compare.nothing'))),
  );
  const rehearsed = cooks.filter(({ story }) => story.rehearsal).map(({ id }) => id);
  const title = mixed
    ? message('compare.title.mixed', { count: cooks.length })
    : message('compare.title', { name: stories[0]?.batch.recipe.name ?? '', count: cooks.length });
  const dates = stories.map(({ startedAt }) => startedAt?.slice(0, 10) ?? say(message('compare.nothing')));
  return [
    ...wrapped(say(title)),
    ...(rehearsed.length === 0
      ? []
      : wrapped(`*** ${say(message('compare.rehearsal', { ids: rehearsed }))} ***`)),
    ...(mixed ? wrapped(say(message('compare.mixed'))) : []),
    '',
    line(
      `  ${say(message('compare.cook'))}`,
      cooks.map((_, index) => String.fromCharCode(65 + index)),
    ),
    line(`  ${say(message('compare.date'))}`, dates),
    ...cooks.map(({ id }, index) => `  ${String.fromCharCode(65 + index)} = ${id}`),
    '',
    say(message('compare.heading.differed')),
    ...(unequal.length === 0 ? [`  ${say(message('compare.same'))}`] : unequal.map(rowLine)),
    '',
    say(message('compare.heading.outcome')),
    ...known.map(rowLine),
    '',
    ...wrapped(say(message('compare.true'))),
    '',
  ].join('\n');
};

const rounded = (value: number | string | null): number | string | null =>
  typeof value === 'number' ? Number(value.toFixed(4)) : value;

/** What `cooks compare --json` prints, version 1: SI values, null where nothing is known, cooks in the order given. */
export const compareJson = (cooks: readonly Compared[]) => ({
  version: 1,
  cooks: cooks.map(({ id, story }) => ({
    id,
    recipe: story.batch.recipe.name,
    startedAt: story.startedAt,
    rehearsal: story.rehearsal,
  })),
  sameRecipe: !recipesDiffer(cooks.map(({ story }) => story)),
  rows: compare(cooks.map(({ story }) => story)).map(({ id, of, values }) => ({
    id,
    of,
    values: values.map(rounded),
    differs: new Set(values.map(rounded)).size > 1,
  })),
});
