/** Renders real runs of the console to pictures in docs/screens: the program in a terminal, led by what it shows. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { closeAll, TimedCook } from '../tests/terminal/fixture.js';
import { follow } from '../tests/terminal/stranger.js';
import { svgOf } from './screens/svg.js';

const folder = new URL('../docs/screens/', import.meta.url);
mkdirSync(folder, { recursive: true });

type Stop = {
  readonly name: string;
  readonly title: string;
  readonly at: RegExp;
  /** What is done there before the picture, and what shows that it is done. */
  readonly first?: readonly (readonly [keys: string, shows: RegExp])[];
  /** What goes back to the cook after the picture. */
  readonly back?: readonly (readonly [keys: string, shows: RegExp])[];
};

const stops: readonly Stop[] = [
  { name: 'mix', title: 'Set everything out', at: /Set everything out/ },
  { name: 'pause', title: 'The list before heat, read aloud', at: /Pause before heat/ },
  {
    name: 'boil',
    title: 'The boil: leave it still, and where it will be in a minute',
    at: /Leave it still[\s\S]*of the boil|Leave it still[\s\S]*\d %/,
  },
  {
    name: 'reading',
    title: 'A reading, echoed large before Enter takes it',
    at: /Leave it still/,
    first: [['236', /> 236/]],
    back: [['\u001b', /Leave it still/]],
  },
  {
    name: 'trouble',
    title: 'Hot sugar on skin: the first action at once',
    at: /Leave it still/,
    first: [
      ['!', /What is wrong/],
      ['a', /Cool running water on it now/],
    ],
    back: [['x', /Leave it still|Read aloud|READ ALOUD|Read this aloud/]],
  },
  { name: 'off', title: 'Off the heat', at: /OFF THE HEAT now/ },
  {
    name: 'test',
    title: 'The cold-water test: what it felt like, one letter',
    at: /Half a teaspoon/,
    first: [['t', /What did it feel like/]],
    back: [['\u001b', /Half a teaspoon/]],
  },
  { name: 'hands', title: 'The gate to hands: the middle is measured', at: /still too hot/ },
  { name: 'pull', title: 'Pull: the space bar is all', at: /Pull long with fingertips/ },
  { name: 'over', title: 'All done', at: /Done: .* pieces/ },
];

const few: readonly string[] = ['boil', 'trouble'];

for (const [columns, rows, names] of [
  [80, 24, stops.map(({ name }) => name)],
  [120, 40, stops.map(({ name }) => name)],
  [200, 60, few],
] as const) {
  const cook = TimedCook.open({ columns, rows });
  await cook.says(/Set everything out/);
  for (const { name, title, at, first = [], back = [] } of stops.filter((stop) =>
    names.includes(stop.name),
  )) {
    await follow(cook, at);
    for (const [keys, shows] of first) await cook.pressesUntil(keys, () => shows.test(cook.flat));
    writeFileSync(new URL(`${columns}x${rows}-${name}.svg`, folder), svgOf(cook.terminal, title));
    for (const [keys, shows] of back) await cook.pressesUntil(keys, () => shows.test(cook.flat));
  }
  await cook.close();
  console.log(`${columns}x${rows}: ${names.length} pictures`);
}
await closeAll();
process.exit(0);
