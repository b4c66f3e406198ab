import { type Message, message } from '../texts/message.js';
import type { Story } from './story.js';

/** One line of a comparison: what it is, and what it was in each cook; null where it is not known. */
export type CompareRow = {
  readonly id: string;
  readonly label: Message;
  readonly of: 'differed' | 'outcome';
  readonly cells: readonly (Message | null)[];
  /** The numbers or words behind the cells, for programs. */
  readonly values: readonly (number | string | null)[];
};

type Column = {
  readonly id: string;
  readonly of: CompareRow['of'];
  readonly label: Message;
  readonly value: (story: Story) => number | string | null;
  readonly said: (value: number | string) => Message;
};

const asText = (value: number | string): Message => message('compare.text', { text: String(value) });
const asGrams = (value: number | string): Message => message('compare.grams', { grams: Number(value) });
const asTime = (value: number | string): Message => message('compare.time', { seconds: Number(value) });
const asDegrees = (value: number | string): Message => message('compare.degrees', { celsius: Number(value) });
const asShare = (value: number | string): Message => message('compare.percent', { fraction: Number(value) });
const asCount = (value: number | string): Message => message('compare.count', { count: Number(value) });

const secondsIn = ({ phases }: Story, phase: string): number | null =>
  phases.find((one) => one.phase === phase)?.seconds ?? null;

const differed: readonly Column[] = [
  {
    id: 'recipe',
    of: 'differed',
    label: message('compare.recipe'),
    value: ({ batch }) => batch.recipe.name,
    said: asText,
  },
  {
    id: 'batch',
    of: 'differed',
    label: message('compare.batch'),
    value: ({ batch }) => batch.totalGrams,
    said: asGrams,
  },
  {
    id: 'window',
    of: 'differed',
    label: message('compare.window'),
    value: ({ batch }) => batch.target.todayCelsius.map((celsius) => celsius.toFixed(1)).join(' '),
    said: (value) => {
      const [low, high] = String(value).split(' ');
      return message('compare.span', { between: [Number(low), Number(high)] });
    },
  },
  {
    id: 'altitude',
    of: 'differed',
    label: message('compare.altitude'),
    value: ({ batch }) => batch.air.altitudeMetres,
    said: (value) => message('compare.metres', { metres: Number(value) }),
  },
  {
    id: 'stove',
    of: 'differed',
    label: message('compare.stove'),
    value: ({ batch }) => batch.kitchen.stove,
    said: asText,
  },
  {
    id: 'thermometer',
    of: 'differed',
    label: message('compare.thermometer'),
    value: ({ batch }) => batch.dial.id,
    said: asText,
  },
  {
    id: 'humidity',
    of: 'differed',
    label: message('compare.humidity'),
    value: ({ batch }) => batch.kitchen.room.humidity,
    said: asShare,
  },
  {
    id: 'hands',
    of: 'differed',
    label: message('compare.hands'),
    value: ({ cook }) => cook.hands,
    said: asText,
  },
  {
    id: 'portions',
    of: 'differed',
    label: message('compare.portions'),
    value: ({ cook }) => cook.portions,
    said: asCount,
  },
];

const outcome: readonly Column[] = [
  { id: 'state', of: 'outcome', label: message('compare.state'), value: ({ state }) => state, said: asText },
  {
    id: 'seconds',
    of: 'outcome',
    label: message('compare.seconds'),
    value: ({ seconds }) => seconds,
    said: asTime,
  },
  {
    id: 'boil',
    of: 'outcome',
    label: message('compare.boil'),
    value: (story) => secondsIn(story, 'boil'),
    said: asTime,
  },
  {
    id: 'tests',
    of: 'outcome',
    label: message('compare.tests'),
    value: ({ tests }) => tests.length,
    said: asCount,
  },
  {
    id: 'off',
    of: 'outcome',
    label: message('compare.off'),
    value: ({ takenOff }) => takenOff?.celsius ?? null,
    said: asDegrees,
  },
  {
    id: 'late',
    of: 'outcome',
    label: message('compare.late'),
    value: ({ takenOff }) => (takenOff?.askedAt == null ? null : takenOff.t - takenOff.askedAt),
    said: asTime,
  },
  {
    id: 'peak',
    of: 'outcome',
    label: message('compare.peak'),
    value: ({ peak }) => peak?.celsius ?? null,
    said: asDegrees,
  },
  {
    id: 'moisture',
    of: 'outcome',
    label: message('compare.moisture'),
    value: ({ candy }) => candy?.moisture ?? null,
    said: asShare,
  },
  {
    id: 'firmness',
    of: 'outcome',
    label: message('compare.firmness'),
    value: ({ candy }) => candy?.firmness ?? null,
    said: asText,
  },
  {
    id: 'fold',
    of: 'outcome',
    label: message('compare.fold'),
    value: (story) => secondsIn(story, 'fold'),
    said: asTime,
  },
  {
    id: 'pull',
    of: 'outcome',
    label: message('compare.pull'),
    value: (story) => secondsIn(story, 'pull'),
    said: asTime,
  },
  {
    id: 'weighed',
    of: 'outcome',
    label: message('compare.weighed'),
    value: ({ yield: { weighedGrams } }) => weighedGrams,
    said: asGrams,
  },
  {
    id: 'share',
    of: 'outcome',
    label: message('compare.share'),
    value: ({ yield: { share } }) => share,
    said: asShare,
  },
  {
    id: 'counted',
    of: 'outcome',
    label: message('compare.counted'),
    value: ({ pieces }) => pieces.counted,
    said: asCount,
  },
  {
    id: 'each',
    of: 'outcome',
    label: message('compare.each'),
    value: ({ pieces }) => pieces.meanGrams,
    said: asGrams,
  },
  {
    id: 'troubles',
    of: 'outcome',
    label: message('compare.troubles'),
    value: ({ troubles }) => troubles.length,
    said: asCount,
  },
  {
    id: 'warnings',
    of: 'outcome',
    label: message('compare.warnings'),
    value: ({ warnings }) => warnings.length,
    said: asCount,
  },
];

/** Every ingredient of any of them, in the order in which it is first met. */
const ingredients = (stories: readonly Story[]): readonly Column[] => {
  const names = new Map<string, string>();
  for (const { batch } of stories)
    for (const { item, name } of batch.recipe.ingredients) if (!names.has(item)) names.set(item, name);
  return [...names].map(([item, name]) => ({
    id: `ingredient.${item}`,
    of: 'differed',
    label: message('compare.ingredient', { name }),
    value: ({ batch }: Story) => {
      const own = batch.recipe.ingredients.filter((one) => one.item === item);
      return own.length === 0 ? null : own.reduce((sum, { grams }) => sum + grams, 0);
    },
    said: asGrams,
  }));
};

const rowOf = ({ id, of, label, value, said }: Column, stories: readonly Story[]): CompareRow => {
  const values = stories.map(value);
  return { id, of, label, values, cells: values.map((one) => (one === null ? null : said(one))) };
};

/** What was put in and where, then what came of it, a row each, in the order of the cooks given. */
export const compare = (stories: readonly Story[]): readonly CompareRow[] =>
  [...differed, ...ingredients(stories), ...outcome].map((column) => rowOf(column, stories));
