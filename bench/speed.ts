/** The two promises about speed: a reading costs the same after ten thousand as after ten; a plan is under 1 ms. */
import { readFileSync } from 'node:fs';
import { batchOf } from '../source/batch/batch-of.js';
import { begin, type Estimate, type Hob, observe, project, type Target } from '../source/forecast/index.js';
import { defaultKitchen } from '../source/kitchen/default.js';
import { parseRecipe } from '../source/recipe/parse.js';

const recipeFile = new URL('../recipes/hill-hall-ginger-pull.yaml', import.meta.url);
const parsed = parseRecipe(readFileSync(recipeFile, 'utf8'), 'hill-hall-ginger-pull.yaml');
if (!('recipe' in parsed)) throw new Error('the bundled recipe could not be read');
const { recipe } = parsed;
const kitchen = { ...defaultKitchen, altitudeMetres: 1450, stove: 'coil' as const };

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Median microseconds of one call, after it has warmed up. */
const microseconds = (work: () => unknown, calls: number, rounds = 31): number => {
  for (let call = 0; call < calls; call++) work();
  return median(
    Array.from({ length: rounds }, () => {
      const started = performance.now();
      for (let call = 0; call < calls; call++) work();
      return (1000 * (performance.now() - started)) / calls;
    }),
  );
};

const batch = batchOf(recipe, kitchen);
const { curve } = batch;
const hob: Hob = {
  stove: kitchen.stove,
  otherGrams: batch.syrup.fatGrams + batch.syrup.inertGrams,
  dialSdKelvin: batch.dial.sdKelvin,
  dialLagSeconds: 12,
  stageFromCelsius: batch.stageFromCelsius,
  startSolidsFraction: curve.dissolvedGrams / (curve.dissolvedGrams + batch.syrup.waterGrams),
  celsiusAtStart: 20,
};
const target: Target = {
  floorCelsius: batch.target.todayCelsius[0],
  ceilingCelsius: batch.target.todayCelsius[1],
  takeOffCelsius: batch.target.takeOffCelsius,
};

/** A long, slow boil: `count` readings, a second apart. */
const readings = (count: number): Estimate => {
  let estimate = observe(begin(hob), { kind: 'heat', t: 0, level: 0.5 }, curve, hob);
  for (let t = 1; t <= count; t++) {
    const celsius = batch.boil.startsCelsius + 1 + (10 * t) / 10_000;
    estimate = observe(estimate, { kind: 'reading', t, celsius }, curve, hob);
  }
  return estimate;
};

const update = (estimate: Estimate): number =>
  microseconds(
    () =>
      observe(
        estimate,
        { kind: 'reading', t: estimate.t + 1, celsius: estimate.lastReading?.celsius ?? 0 },
        curve,
        hob,
      ),
    400,
  );

const few = readings(10);
const many = readings(10_000);
// Turn about, so that neither has the warmer machine.
const ratios = Array.from({ length: 5 }, () => {
  const afterFew = update(few);
  const afterMany = update(many);
  return { afterFew, afterMany, ratio: afterMany / afterFew };
});
const afterFew = median(ratios.map((each) => each.afterFew));
const afterMany = median(ratios.map((each) => each.afterMany));
const ratio = median(ratios.map((each) => each.ratio));
const verdict = (met: boolean): string => (met ? 'met' : 'MISSED');

console.log(`forecast update after 10 readings      ${afterFew.toFixed(1)} µs`);
console.log(
  `forecast update after 10,000 readings  ${afterMany.toFixed(1)} µs, ${ratio.toFixed(2)} times (aim: no slower, within 1.2)  ${verdict(ratio <= 1.2)}`,
);
console.log(
  `size of the estimate                   ${JSON.stringify(few).length} and ${JSON.stringify(many).length} bytes`,
);
const looked = microseconds(() => project(many, target, many.t + 1, curve, hob), 40);
console.log(`time to the window, once               ${looked.toFixed(0)} µs`);
const plan = microseconds(() => batchOf(recipe, kitchen), 20);
console.log(
  `a whole plan's computation             ${(plan / 1000).toFixed(2)} ms (aim: under 1 ms)  ${verdict(plan < 1000)}`,
);
