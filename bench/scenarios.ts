/**
 * Whole cooks by a simulated person who follows the advice: over all bundled recipes, four kinds of stove, 0 to 3000 m,
 * every kind of thermometer, every surprise and none. `npm run bench:scenarios -- --cooks 600 --from 1000`
 */
import { deadEnds } from './give-up.js';
import {
  type Budget,
  budgetParts,
  type Landed,
  type Naive,
  naive,
  type Ran,
  run,
  scenarioOf,
} from './scenario.js';

const option = (name: string, otherwise: number): number => {
  const place = process.argv.indexOf(`--${name}`);
  const value = place < 0 ? otherwise : Number(process.argv[place + 1]);
  if (!Number.isInteger(value) || value < 1) {
    console.error(`--${name} wants a whole number, not "${process.argv[place + 1] ?? ''}".`);
    process.exit(2);
  }
  return value;
};

const cooks = option('cooks', 600);
const from = option('from', 1000);
const rules: readonly Naive[] = ['the book’s number', 'today’s number'];

type Row = {
  readonly ran: Ran;
  readonly naive: Readonly<Record<Naive, Landed>>;
  /** After how many events giving up does not come to an end. */
  readonly deadEnds: readonly number[];
};

const percent = (rows: readonly Row[], is: (row: Row) => boolean): string =>
  rows.length === 0 ? '   -' : `${Math.round((100 * rows.filter(is).length) / rows.length)} %`.padStart(5);

const line = (name: string, rows: readonly Row[]): string =>
  [
    name.padEnd(42),
    `${rows.length}`.padStart(5),
    percent(rows, ({ ran }) => ran.inStage),
    percent(rows, ({ ran }) => ran.inWindow),
    percent(rows, ({ ran }) => ran.offKelvin < 0),
    percent(rows, ({ ran }) => ran.offKelvin > 0),
    ' ',
    ...rules.flatMap((rule) => [
      percent(rows, ({ naive: by }) => by[rule].inStage),
      percent(rows, ({ naive: by }) => by[rule].inWindow),
    ]),
  ].join(' ');

const rows: Row[] = [];
const started = performance.now();
for (let index = 0; index < cooks; index++) {
  const scenario = scenarioOf(from + index);
  const ran = run(scenario);
  rows.push({
    ran,
    // Another state of each cook: over all of them every kind of state is met.
    deadEnds: deadEnds(ran.rehearsal.cook.log, 40, 2 + (index % 40)),
    naive: Object.fromEntries(rules.map((rule) => [rule, naive(scenario, rule)])) as Row['naive'],
  });
}
const seconds = (performance.now() - started) / 1000;

const by = <Key extends string>(key: (ran: Ran) => Key): ReadonlyMap<Key, Row[]> => {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) groups.set(key(row.ran), [...(groups.get(key(row.ran)) ?? []), row]);
  return groups;
};
const calm = rows.filter(({ ran }) => ran.scenario.surprise === null);

console.log(
  `${cooks} cooks, seeds ${from}-${from + cooks - 1}, ${(seconds / cooks).toFixed(2)} s each with both naive runs\n`,
);
console.log(`${' '.repeat(48)}following the advice       naive: book  naive: today`);
console.log(`${' '.repeat(42)} cooks stage window short past    stage window stage window`);
console.log(line('all', rows));
for (const [dial, own] of by(({ scenario }) => scenario.dial)) {
  console.log(
    line(
      `${dial}, no surprise`,
      own.filter(({ ran }) => ran.scenario.surprise === null),
    ),
  );
  console.log(
    line(
      `${dial}, some surprise`,
      own.filter(({ ran }) => ran.scenario.surprise !== null),
    ),
  );
}
console.log('');
for (const [surprise, own] of by(({ scenario }) => scenario.surprise ?? 'none'))
  console.log(line(surprise, own));
console.log('');
for (const [name, own] of by(({ scenario }) => scenario.name)) console.log(line(name, own));
console.log('');
for (const [stove, own] of by(({ scenario }) => scenario.kitchen.stove)) console.log(line(stove, own));

type Budgeted = { readonly budget: Budget; readonly window: readonly [number, number]; readonly aim: number };

/** The share that would lie in the window if what `parts` are off by were not there. */
const without = (budgets: readonly Budgeted[], parts: readonly (keyof Budget)[]): string => {
  const inside = budgets.filter(({ budget, window: [floor, ceiling], aim }) => {
    const rest = budgetParts
      .filter((part) => !parts.includes(part))
      .reduce((sum, part) => sum + budget[part], aim);
    return rest >= floor && rest <= ceiling;
  });
  return `${Math.round((100 * inside.length) / budgets.length)} %`.padStart(5);
};

const spreadOf = (values: readonly number[]): string => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
  return `${mean.toFixed(2).padStart(6)} ${sd.toFixed(2).padStart(5)}`;
};

const printBudget = (name: string, own: readonly Row[]): void => {
  const budgets: Budgeted[] = own.flatMap(({ ran: { budget, rehearsal } }) => {
    const { aimCelsius, todayCelsius } = rehearsal.cook.batch.target;
    return budget === null ? [] : [{ budget, window: todayCelsius, aim: aimCelsius }];
  });
  if (budgets.length === 0) return;
  const widths = budgets.map(({ window: [floor, ceiling] }) => ceiling - floor);
  console.log(
    `\n${name}: ${budgets.length} cooks, what they were off by (K)   mean    sd   in the window without it`,
  );
  for (const part of budgetParts)
    console.log(
      `  ${part.padEnd(62)} ${spreadOf(budgets.map(({ budget }) => budget[part]))}  ${without(budgets, [part])}`,
    );
  console.log(
    `  all of it: ${without(budgets, [])}; nothing but thermometer and weather, that nobody knows: ${without(budgets, ['estimate', 'hands', 'fingers', 'climb'])}; windows ${Math.min(...widths).toFixed(1)}-${Math.max(...widths).toFixed(1)} K wide`,
  );
};

printBudget(
  'calibrated, no surprise',
  calm.filter(({ ran }) => ran.scenario.dial === 'calibrated'),
);
printBudget(
  'unchecked, no surprise',
  calm.filter(({ ran }) => ran.scenario.dial === 'unchecked'),
);

const noisy = calm.filter(({ ran }) => ran.idle.length > 1);
console.log(
  `\nuneventful cooks with more than one warning that asks for nothing: ${noisy.length} of ${calm.length}`,
);
const count = new Map<string, number>();
for (const { ran } of calm) for (const id of ran.warnings) count.set(id, (count.get(id) ?? 0) + 1);
console.log(
  `warnings in uneventful cooks: ${[...count].map(([id, times]) => `${id} ${times}`).join(', ') || 'none'}`,
);
const broken = rows.filter(({ ran }) => ran.broken.length > 0);
console.log(`cooks with a broken promise: ${broken.length}`);
for (const { ran } of broken.slice(0, 30))
  console.log(
    `  seed ${ran.scenario.seed} ${ran.scenario.name} ${ran.scenario.surprise ?? 'none'}: ${ran.broken.slice(0, 3).join('; ')}`,
  );
const stuck = rows.filter((row) => row.deadEnds.length > 0);
console.log(`cooks with a state that can't be given up safely: ${stuck.length}`);
for (const { ran, deadEnds: ends } of stuck.slice(0, 30))
  console.log(`  seed ${ran.scenario.seed}: after ${ends.join(', ')} events`);

const share = (of: readonly Row[], is: (ran: Ran) => boolean): number =>
  of.filter(({ ran }) => is(ran)).length / Math.max(1, of.length);
const checked = calm.filter(({ ran }) => ran.scenario.dial === 'calibrated');
const aims: ReadonlyArray<readonly [words: string, reached: number]> = [
  ['the advice followed, in the stage (aim 95 %)', share(rows, ({ inStage }) => inStage)],
  [
    'calibrated thermometer, no surprise, in the window (aim 95 %)',
    share(checked, ({ inWindow }) => inWindow),
  ],
];
console.log('');
for (const [words, reached] of aims)
  console.log(`${reached >= 0.95 ? 'met   ' : 'MISSED'}  ${words}: ${(100 * reached).toFixed(1)} %`);
const [stage] = aims;
if ((stage?.[1] ?? 0) < 0.95 || broken.length > 0 || noisy.length > 0 || stuck.length > 0)
  process.exitCode = 1;
