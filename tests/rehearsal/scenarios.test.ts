import { describe, expect, it } from 'vitest';
import { deadEnds } from '../../bench/give-up.js';
import { naive, type Ran, run, scenarioOf } from '../../bench/scenario.js';

/** The bench has hundreds: `npm run bench:scenarios`. */
const cooks = 60;
const ran: readonly Ran[] = Array.from({ length: cooks }, (_, index) => run(scenarioOf(200 + index)));

const share = (all: readonly Ran[], is: (one: Ran) => boolean): number => all.filter(is).length / all.length;
const named = ({ scenario }: Ran): string =>
  `seed ${scenario.seed}, ${scenario.name}, ${scenario.dial}, ${scenario.surprise ?? 'no surprise'}`;

describe(`${cooks} cooks by a simulated person who follows the advice`, () => {
  it('cover recipes, stoves, thermometers and surprises', () => {
    expect(new Set(ran.map(({ scenario }) => scenario.name)).size).toBe(8);
    expect(new Set(ran.map(({ scenario }) => scenario.kitchen.stove)).size).toBe(4);
    expect(new Set(ran.map(({ scenario }) => scenario.dial)).size).toBe(4);
    expect(new Set(ran.map(({ scenario }) => scenario.surprise)).size).toBeGreaterThan(8);
  });

  it('announce every hazard by the first reading or report that shows it, keep hands behind their gate, always say what to do, and end', () => {
    expect(ran.flatMap((one) => one.broken.map((what) => `${named(one)}: ${what}`))).toEqual([]);
  });

  it('raise no more than one warning that asks for nothing where nothing happens', () => {
    const calm = ran.filter(({ scenario }) => scenario.surprise === null);
    expect(calm.filter(({ idle }) => idle.length > 1).map(named)).toEqual([]);
  });

  it('understand everything that is typed', () => {
    expect(ran.flatMap(({ rehearsal }) => rehearsal.queried)).toEqual([]);
  });

  it('with a thermometer and no surprise, land in the stage in at least 95 %', () => {
    const plain = ran.filter(({ scenario }) => scenario.surprise === null && scenario.dial !== 'none');
    expect(plain.length).toBeGreaterThan(15);
    expect(share(plain, ({ inStage }) => inStage)).toBeGreaterThanOrEqual(0.95);
  });

  it('all together, land in the stage in at least 95 %', () => {
    expect(share(ran, ({ inStage }) => inStage)).toBeGreaterThanOrEqual(0.95);
  });

  it('land in the stage more often than somebody who takes it off at the number in the book', () => {
    const book =
      ran.filter(({ scenario }) => naive(scenario, 'the book’s number').inStage).length / ran.length;
    expect(share(ran, ({ inStage }) => inStage)).toBeGreaterThan(book + 0.2);
  });
});

describe('no dead end', () => {
  it('every state can be given up safely, from wherever it stands', () => {
    const stuck = ran.flatMap((one, index) =>
      deadEnds(one.rehearsal.cook.log, 60, 2 + index).map(
        (length) => `${named(one)}, after ${length} events`,
      ),
    );
    expect(stuck).toEqual([]);
  });
});
