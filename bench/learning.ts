/**
 * How forecast, pull-off and plan improve from the first to the fifth cook in the same simulated kitchen, against the
 * same cooks of somebody who forgets every time.
 */
import { readFileSync } from 'node:fs';
import type { Kitchen } from '../source/kitchen/kitchen.js';
import { crewPhases } from '../source/kitchen/learned.js';
import { learnFrom } from '../source/lessons/learn.js';
import { type CookLesson, lessonOf } from '../source/lessons/learn-cook.js';
import { parseRecipe } from '../source/recipe/parse.js';
import {
  type CookResult,
  cookIn,
  minutesBefore,
  type Odd,
  type TrueKitchen,
  trueKitchen,
} from './kitchen-series.js';

const parsed = parseRecipe(
  readFileSync('recipes/hill-hall-ginger-pull.yaml', 'utf8'),
  'hill-hall-ginger-pull',
);
if (!('recipe' in parsed)) throw new Error('the bundled recipe could not be read');
const { recipe } = parsed;

const cooksInARow = 5;

const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
};
const median = (values: readonly number[]): number => quantile(values, 0.5);

type Scored = CookResult & { readonly paceError: number };

/** What a run sheet takes where nothing was learned, minutes; source/batch/run-sheet-times.ts. */
const usualMinutes = { fold: 16, pull: 11, cut: 10 } as const;

/** Mean relative error of the minutes that a run sheet would have foreseen for fold, pull and cut. */
const paceErrorOf = (kitchen: Kitchen, lesson: CookLesson | null): number => {
  const errors = crewPhases.flatMap((phase) => {
    const took = lesson?.minutes[phase];
    if (took === undefined) return [];
    return [Math.abs((kitchen.learned?.minutes[phase]?.value ?? usualMinutes[phase]) - took) / took];
  });
  return errors.length === 0 ? Number.NaN : errors.reduce((sum, one) => sum + one, 0) / errors.length;
};

type Series = { readonly learning: readonly Scored[]; readonly fifthForgotten: Scored };

/** One cook with what the earlier ones taught; what it teaches is added to them. */
const cooked = (
  truth: TrueKitchen,
  seed: number,
  index: number,
  lessons: CookLesson[] | null,
  odd: Odd,
): Scored => {
  const kitchen =
    lessons === null ? truth.kitchen : { ...truth.kitchen, learned: learnFrom(lessons, truth.kitchen) };
  const result = cookIn(recipe, truth, kitchen, seed * 100 + index, odd);
  const lesson = lessonOf({ events: result.events, startedAt: `2026-11-${10 + index}T10:00:00Z` });
  if (lesson !== null) lessons?.push(lesson);
  return { ...result, paceError: paceErrorOf(kitchen, lesson) };
};

/**
 * The cooks of one kitchen. Who forgets cooks the first time like who learns, and the fifth time once more as a
 * beginner; `known` is the same kitchen without the odd cook, from which nothing differs before it.
 */
const series = (truth: TrueKitchen, seed: number, odd: number | null, known: Series | null): Series => {
  const lessons: CookLesson[] = [];
  const learning: Scored[] = [];
  for (let index = 0; index < cooksInARow; index += 1) {
    const same = known !== null && odd !== null && index < odd ? known.learning[index] : undefined;
    if (same === undefined)
      learning.push(cooked(truth, seed, index, lessons, odd === index ? 'knob not typed' : 'none'));
    else {
      learning.push(same);
      const lesson = lessonOf({ events: same.events, startedAt: `2026-11-${10 + index}T10:00:00Z` });
      if (lesson !== null) lessons.push(lesson);
    }
  }
  return {
    learning,
    fifthForgotten: known?.fifthForgotten ?? cooked(truth, seed, cooksInARow - 1, null, 'none'),
  };
};

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`.padStart(6);
const kelvin = (value: number): string => `${value.toFixed(1)} K`.padStart(6);

type Row = { readonly name: string; readonly of: (cooks: readonly Scored[]) => string };

const rows: readonly Row[] = [
  {
    name: 'first forecast of the cook, median error',
    of: (cooks) => percent(median(cooks.flatMap(({ firstForecastError }) => firstForecastError ?? []))),
  },
  ...minutesBefore.map(
    (minutes): Row => ({
      name: `forecast ${minutes} min before, median error`,
      of: (cooks) => percent(median(cooks.flatMap(({ forecastError }) => forecastError[minutes] ?? []))),
    }),
  ),
  {
    name: 'forecast, 90 of 100 better than, 10 min before',
    of: (cooks) =>
      percent(
        quantile(
          cooks.flatMap(({ forecastError }) => forecastError[10] ?? []),
          0.9,
        ),
      ),
  },
  {
    name: 'came to rest off the aim, median',
    of: (cooks) =>
      kelvin(median(cooks.map(({ restCelsius, aimCelsius }) => Math.abs(restCelsius - aimCelsius)))),
  },
  {
    name: 'came to rest off the aim, 90 of 100 better than',
    of: (cooks) =>
      kelvin(
        quantile(
          cooks.map(({ restCelsius, aimCelsius }) => Math.abs(restCelsius - aimCelsius)),
          0.9,
        ),
      ),
  },
  {
    name: 'came to rest within the window',
    of: (cooks) => percent(cooks.filter(({ inWindow }) => inWindow).length / cooks.length),
  },
  {
    name: 'cold-water tests, mean',
    of: (cooks) => (cooks.reduce((sum, { tests }) => sum + tests, 0) / cooks.length).toFixed(1).padStart(6),
  },
  {
    name: 'expected yield off by, median, of the batch',
    of: (cooks) => `${(100 * median(cooks.map(({ shareError }) => shareError))).toFixed(1)} %`.padStart(6),
  },
  {
    name: 'minutes of fold, pull and cut off by, median',
    of: (cooks) => percent(median(cooks.map(({ paceError }) => paceError).filter(Number.isFinite))),
  },
];

const option = (name: string, otherwise: number): number => {
  const place = process.argv.indexOf(`--${name}`);
  const value = place < 0 ? otherwise : Number(process.argv[place + 1]);
  if (Number.isInteger(value) && value > 0) return value;
  console.error(`--${name} wants a whole number, not "${process.argv[place + 1] ?? ''}".`);
  return process.exit(2);
};

const kitchens = option('kitchens', 20);
const from = option('from', 500_000);

const medianKnown = (values: readonly (number | null | undefined)[]): number =>
  median(values.flatMap((value) => (value == null || !Number.isFinite(value) ? [] : [value])));

type Quality = {
  readonly name: string;
  readonly of: (cook: Scored) => number | null;
  readonly print: (value: number) => string;
};

const qualities: readonly Quality[] = [
  { name: 'first forecast off by', of: ({ firstForecastError }) => firstForecastError, print: percent },
  {
    name: 'forecast 10 min before off by',
    of: ({ forecastError }) => forecastError[10] ?? null,
    print: percent,
  },
  {
    name: 'pull-off off the aim by',
    of: ({ restCelsius, aimCelsius }) => Math.abs(restCelsius - aimCelsius),
    print: kelvin,
  },
  { name: 'yield expected off by', of: ({ shareError }) => shareError, print: percent },
  { name: 'minutes of the crew off by', of: ({ paceError }) => paceError, print: percent },
];

/**
 * From the first to the fifth cook, medians, and the same fifth cook of somebody who forgets: the pots are the same
 * pair by pair, so that the kitchens in which learning comes closer can be counted.
 */
const summary = (all: readonly Series[]): string =>
  qualities
    .map(({ name, of, print }) => {
      const at = (index: number) =>
        medianKnown(
          all.map(({ learning }) => learning[index]).map((one) => (one === undefined ? null : of(one))),
        );
      const pairs = all.flatMap(({ learning, fifthForgotten }): (readonly [number, number])[] => {
        const last = learning[cooksInARow - 1];
        const [learns, forgets] = [last === undefined ? null : of(last), of(fifthForgotten)];
        return learns === null || forgets === null || !Number.isFinite(learns - forgets)
          ? []
          : [[learns, forgets]];
      });
      const closer = pairs.filter(([learns, forgets]) => learns < forgets).length;
      const apart = pairs.filter(([learns, forgets]) => learns !== forgets).length;
      return `  ${name.padEnd(32)}${print(at(0))} -> ${print(at(cooksInARow - 1))}   without learning ${print(medianKnown(pairs.map(([, forgets]) => forgets)))}; closer with it in ${closer} of ${apart} kitchens`;
    })
    .join('\n');

const summaries: string[] = [];

const report = (
  title: string,
  checked: boolean,
  odd: number | null,
  known: readonly Series[] | null,
): readonly Series[] => {
  const all = Array.from({ length: kitchens }, (_, index) =>
    series(trueKitchen(from + index, checked), from + index, odd, known?.[index] ?? null),
  );
  console.log(`\n${title}`);
  console.log(`${''.padEnd(50)}cook   1      2      3      4      5    forgets: 5th`);
  for (const { name, of } of rows) {
    const cells = Array.from({ length: cooksInARow }, (_, index) =>
      of(all.flatMap(({ learning }) => learning[index] ?? [])),
    );
    console.log(
      `  ${name.padEnd(50)}${cells.join(' ')}   ${of(all.map(({ fifthForgotten }) => fifthForgotten))}`,
    );
  }
  summaries.push(`\n${title}\n${summary(all)}`);
  return all;
};

const started = performance.now();
console.log(
  `${kitchens} kitchens, ${cooksInARow} cooks each, seeds from ${from}; one recipe; gas, coil, glass-ceramic and induction`,
);
console.log(
  'the same in all cooks of a kitchen: burner 75-135 % of usual, its labels, pot base, losses, dial, fingers off by sd 1 K, share in the box, pace',
);
console.log(
  'different in each: curve by sd 0.8 K, water by 3 %, mains by 5 %, wander of the burner, scatter of readings and fingers',
);
report('A dial read in ice and boiling water (its readings are in the file)', true, null, null);
const unchecked = report('A dial that nobody checked, off by sd 2.5 K', false, null, null);
report(
  'The same, and in the second cook the knob was turned to the highest and not typed',
  false,
  1,
  unchecked,
);
console.log(`\nFrom the first to the fifth cook, medians\n${summaries.join('\n')}`);
console.log(`
Where the dial is checked, the forecast of a first cook has little left to learn: it begins with the second reading in
the boil, and by then the pot has told the burner's power. What remains differs from cook to cook (mains, wander of the
burner, water, curve), and no earlier cook can tell it. Its pull-off is within one mark of the dial (1 F is 0.6 K)
from the first cook on. There learning shows in yield and minutes; where nobody checked the dial, in all of them.`);
console.log(
  `\ntook ${((performance.now() - started) / 1000).toFixed(0)} s; --kitchens 100 takes five times as long`,
);
