import { describe, expect, it } from 'vitest';
import { naive, type Ran, run, scenarioOf } from '../../bench/scenario.js';
import { advise } from '../../source/cook/advise.js';
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

  it('land in the stage more often than somebody who takes it off at the number in the book', () => {
    const book =
      ran.filter(({ scenario }) => naive(scenario, 'the book’s number').inStage).length / ran.length;
    expect(share(ran, ({ inStage }) => inStage)).toBeGreaterThan(book + 0.2);
  });
});

describe('no dead end', () => {
  it('every state can be given up safely, from wherever it stands', () => {
    for (const { rehearsal } of ran.slice(0, 12)) {
      const { log } = rehearsal.cook;
      for (let length = 2; length < log.length; length += 9) {
        let cook = fold(log.slice(0, length));
        let t = cook.t;
        const words = ['stop'];
        for (let turn = 0; turn < 60 && advise(cook, t).phase !== 'over'; turn++) {
          const advice = advise(cook, t);
          if (advice.waits !== null) t = advice.waits.until;
          const open = advice.typing.openTroubles[0];
          const word =
            words.pop() ??
            (advice.question !== null
              ? (advice.question.answers.find((one) => one === 'yes' || one.endsWith('off')) ??
                advice.question.safe)
              : advice.canBeDone
                ? 'done'
                : open === undefined
                  ? 'done'
                  : `over ${open}`);
          const read = interpret(word, advise(cook, t));
          t += 5;
          if (read.kind !== 'queried')
            cook = step(cook, { ...read, seq: (cook.log.at(-1)?.seq ?? 0) + 1, t });
        }
        expect(advise(cook, t).phase, `${named(ran[0] as Ran)} after ${length} events`).toBe('over');
      }
    }
  });
});
