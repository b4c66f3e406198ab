import { describe, expect, it } from 'vitest';
import { naive, type Ran, run, scenarioOf } from '../../bench/scenario.js';
import type { Advice } from '../../source/cook/advice.js';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import { interpret } from '../../source/cook/interpret.js';
import { fold, step } from '../../source/cook/step.js';

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

  // Not reached: 92 % of these, 91 % of 520 in the bench. By cold water alone one test of fingers that take half a stage
  // for its neighbour ends the boil, mostly short of the window; and a knob turned up near the end can't be called back.
  it.fails('all together, land in the stage in at least 95 %', () => {
    expect(share(ran, ({ inStage }) => inStage)).toBeGreaterThanOrEqual(0.95);
  });

  it('land in the stage more often than somebody who takes it off at the number in the book', () => {
    const book =
      ran.filter(({ scenario }) => naive(scenario, 'the book’s number').inStage).length / ran.length;
    expect(share(ran, ({ inStage }) => inStage)).toBeGreaterThan(book + 0.2);
  });
});

/** What somebody types who only wants to end it safely. */
const wordToEnd = (advice: Advice): string => {
  const { question, canBeDone, typing } = advice;
  if (question !== null)
    return question.answers.find((one) => one === 'yes' || one.endsWith('off')) ?? question.safe;
  const [open] = typing.openTroubles;
  return canBeDone || open === undefined ? 'done' : `over ${open}`;
};

/** Given up, and then led to the end: the phase in which that comes to rest. */
const givenUp = (state: Cook): string => {
  let cook = state;
  let t = cook.t;
  for (let turn = 0; turn < 60 && advise(cook, t).phase !== 'over'; turn++) {
    t = Math.max(t, advise(cook, t).waits?.until ?? t);
    const advice = advise(cook, t);
    const read = interpret(turn === 0 ? 'stop' : wordToEnd(advice), advice);
    t += 5;
    if (read.kind !== 'queried') cook = step(cook, { ...read, seq: (cook.log.at(-1)?.seq ?? 0) + 1, t });
  }
  return advise(cook, t).phase;
};

describe('no dead end', () => {
  it('every state can be given up safely, from wherever it stands', () => {
    for (const one of ran.slice(0, 12)) {
      const { log } = one.rehearsal.cook;
      for (let length = 2; length < log.length; length += 9)
        expect(givenUp(fold(log.slice(0, length))), `${named(one)}, after ${length} events`).toBe('over');
    }
  });
});
