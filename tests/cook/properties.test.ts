import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Advice } from '../../source/cook/advice.js';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import { type CookEvent, type Happened, troubleNames } from '../../source/cook/event.js';
import { openCook } from '../../source/cook/open.js';
import { allSteps } from '../../source/cook/phases/index.js';
import { fold, step } from '../../source/cook/step.js';
import { phaseIds } from '../../source/recipe/recipe.js';
import { coldWaterOutcomes } from '../../source/sugar/stages.js';
import { words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { blind, hall, opened, recipeNames } from './play.js';

const runs = Number(process.env.KETTLEHAND_RUNS ?? 500);
const of = <Value>(...values: readonly Value[]) => fc.constantFrom(...values);

const questions = [
  ...new Set(allSteps.flatMap(({ question }) => question?.id ?? [])),
  'reading.doubt',
  'trouble.glass',
];

/** Anything that could ever stand in a list of events, likely or not. */
const anyEvent: fc.Arbitrary<CookEvent> = fc.oneof(
  {
    arbitrary: fc.record({
      kind: of('reading' as const),
      value: fc.oneof(
        fc.double({ min: -60, max: 400, noNaN: true }),
        fc.double({ min: 212, max: 262, noNaN: true }),
      ),
      unit: of('F' as const, 'C' as const),
      of: of(
        'syrup' as const,
        'syrup' as const,
        'middle' as const,
        'ice' as const,
        'boiling water' as const,
        'room' as const,
      ),
      by: of('hands' as const, 'feed' as const, 'pot' as const),
    }),
    weight: 6,
  },
  {
    arbitrary: fc.record({
      kind: of('done' as const),
      step: fc.oneof(
        of(...allSteps.map(({ id }) => id)),
        of('trouble.burn.1', 'trouble.thermometer.1', 'unknown'),
      ),
    }),
    weight: 5,
  },
  {
    arbitrary: fc.record({
      kind: of('answer' as const),
      question: of(...questions),
      answer: of('yes' as const, 'no' as const),
    }),
    weight: 4,
  },
  {
    arbitrary: fc.record({
      kind: of('cold water' as const),
      outcome: of(...coldWaterOutcomes, 'unsure' as const),
    }),
    weight: 2,
  },
  { arbitrary: fc.record({ kind: of('undo' as const), voids: fc.integer({ min: 1, max: 40 }) }), weight: 2 },
  fc.record({
    kind: of('room' as const),
    celsius: fc.option(fc.double({ min: -30, max: 50, noNaN: true })),
    humidity: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
  }),
  of<CookEvent>(
    { kind: 'no thermometer' },
    { kind: 'arms out' },
    { kind: 'stop' },
    { kind: 'rope', does: 'droops' },
    { kind: 'rope', does: 'holds' },
  ),
  fc.record({
    kind: of('ok' as const),
    warning: of('unattended', 'past-window', 'heat-left-on', 'burn', 'nothing'),
  }),
  fc.record({ kind: of('heat' as const), setting: of('off', 'low', 'medium', 'high', 'eleven') }),
  fc.record({ kind: of('pot' as const, 'lid' as const), on: fc.boolean() }),
  fc.record({ kind: of('water' as const), grams: fc.double({ min: 0, max: 5000, noNaN: true }) }),
  fc.record({
    kind: of('hands' as const),
    whose: of('bare' as const, 'visitors' as const, 'gloved' as const, 'children' as const),
  }),
  fc.record({ kind: of('portions' as const), count: fc.integer({ min: 1, max: 50 }) }),
  fc.record({ kind: of('trouble' as const, 'over' as const), name: of(...troubleNames) }),
  fc.record({ kind: of('at' as const), phase: of(...phaseIds) }),
  fc.record({
    kind: of('weigh' as const),
    grams: fc.double({ min: 0, max: 9000, noNaN: true }),
    pieces: fc.option(fc.integer({ min: 1, max: 900 })),
  }),
  fc.record({ kind: of('count' as const), pieces: fc.integer({ min: 0, max: 9000 }) }),
  fc.record({ kind: of('note' as const), text: fc.string() }),
  fc.record({
    kind: of('gap' as const),
    seconds: fc.double({ min: 0, max: 90_000, noNaN: true }),
    sure: fc.boolean(),
  }),
  fc.record({ kind: of('mark' as const), what: fc.string() }),
) as fc.Arbitrary<CookEvent>;

/** Undo as it is typed: it names the event that would be voided now. */
const timed = fc.array(
  fc.tuple(
    anyEvent,
    fc.oneof(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 1500 })),
    fc.boolean(),
  ),
  { maxLength: 28 },
);
type Timed = typeof timed extends fc.Arbitrary<infer Value> ? Value : never;

const opening = fc.record({
  recipe: of(...recipeNames),
  kitchen: of(hall, blind),
  from: of(null, null, 'boil' as const, 'fold' as const, 'pull' as const),
});

const happening = (events: Timed, opens: Parameters<typeof opened>[0]): readonly Happened[] => {
  const list: Happened[] = [opened(opens)];
  let t = 0;
  let cook = fold(list);
  for (const [event, after, sensible] of events) {
    t += after;
    const meant =
      event.kind === 'undo' && sensible && cook.undoes !== null ? { ...event, voids: cook.undoes } : event;
    const happened = { ...meant, seq: list.length + 1, t } as Happened;
    list.push(happened);
    cook = step(cook, happened);
  }
  return list;
};

const state = (cook: Cook): string => JSON.stringify(cook);

/** Advice with every number taken out of it: what must not change by time alone. */
const withoutNumbers = (advice: Advice): unknown =>
  JSON.parse(JSON.stringify(advice, (_key, value) => (typeof value === 'number' ? '#' : value)));

const paper = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });

/** Everything that could be said of an advice, in words. */
const spoken = (advice: Advice): readonly string[] =>
  [
    advice.say,
    advice.why,
    advice.shout,
    ...advice.items,
    ...(advice.question === null ? [] : [advice.question.text]),
    ...[...advice.warnings, ...advice.cautions].flatMap(({ cause, consequence, response, evidence }) => [
      cause,
      consequence,
      ...response,
      ...(evidence === null ? [] : [evidence]),
    ]),
    ...(advice.meaning === null ? [] : [advice.meaning]),
    ...(advice.next === null ? [] : [advice.next]),
    ...(advice.watch === null ? [] : [advice.watch]),
  ].map((said) => words(said, paper));

/** Hands come to the candy by no way that passes the middle and the third pause point. */
const handsAreLetIn = (cook: Cook, advice: Advice): void => {
  if (!/^(pull|cut)\./.test(`${advice.step}`)) return;
  expect(cook.answers['hands.pause']?.answer).toBe('yes');
  if (cook.middle !== null && cook.thermometer) expect(cook.middle.celsius).toBeLessThanOrEqual(55);
  else expect(cook.answers['hands.crumb']?.answer).toBe('yes');
};

/** It is poured by no way that passes the second pause point and the clear path. */
const thePathIsClear = (cook: Cook, advice: Advice): void => {
  if (advice.step !== 'pour.pour') return;
  const list = cook.answers['pour.pause'];
  expect(list?.answer).toBe('yes');
  const justNow = (list?.t ?? 0) >= (cook.enteredAt.pour ?? 0);
  if (!justNow) expect(cook.answers['pour.path']?.answer).toBe('yes');
};

const oneThingToDo = (advice: Advice): void => {
  expect(advice.step).not.toBeNull();
  const said = spoken(advice);
  expect(said.slice(0, 3)).not.toContain('');
  expect(said.join('\n')).not.toMatch(/undefined|NaN|Infinity|\[object/);
};

describe('whatever happens, in whatever order', () => {
  it(
    'never throws, always says one thing to do in words without holes, and lets nobody past a safety question',
    () => {
      fc.assert(
        fc.property(timed, opening, (events, opens) => {
          const list = happening(events, opens);
          let cook = fold(list.slice(0, 1));
          for (const event of list.slice(1)) {
            cook = step(cook, event);
            const advice = advise(cook, cook.t);
            oneThingToDo(advice);
            handsAreLetIn(cook, advice);
            thePathIsClear(cook, advice);
          }
          for (const later of [37, 5000]) oneThingToDo(advise(cook, cook.t + later));
        }),
        { numRuns: runs },
      );
    },
    60_000 + runs * 120,
  );

  it(
    'changes by time alone in nothing but running numbers before changesAt, which lies ahead',
    () => {
      fc.assert(
        fc.property(timed, opening, fc.double({ min: 0, max: 1, noNaN: true }), (events, opens, share) => {
          const cook = fold(happening(events, opens));
          let now = cook.t;
          for (let turn = 0; turn < 4; turn += 1) {
            const advice = advise(cook, now);
            if (advice.changesAt !== null) expect(advice.changesAt).toBeGreaterThan(now);
            const until = advice.changesAt ?? now + 20_000;
            const before = withoutNumbers(advice);
            for (const part of [Math.min(share, 0.999_999), 0.999_999])
              expect(withoutNumbers(advise(cook, now + (until - now) * part))).toEqual(before);
            now = until;
          }
        }),
        { numRuns: runs },
      );
    },
    60_000 + runs * 120,
  );

  it(
    'is the same folded at once, in two parts, and twice; and one can branch from any older state',
    () => {
      fc.assert(
        fc.property(timed, opening, fc.nat(28), anyEvent, (events, opens, place, other) => {
          const list = happening(events, opens);
          const at = 1 + (place % list.length);
          const older = fold(list.slice(0, at));
          const before = state({ ...older, log: older.log.slice(0, at) });
          const whole = list.slice(at).reduce(step, older);
          expect(state(fold(list))).toBe(state(whole));
          expect(whole.log.slice(0, whole.length)).toEqual(list);
          const branch = step(older, { ...other, seq: 1000, t: older.t + 1 } as Happened);
          expect(branch.log.map(({ seq }) => seq)).toEqual([
            ...list.slice(0, at).map(({ seq }) => seq),
            1000,
          ]);
          expect(state({ ...older, log: older.log.slice(0, at) })).toBe(before);
          expect(whole.log.slice(0, whole.length)).toEqual(list);
        }),
        { numRuns: runs },
      );
    },
    60_000 + runs * 120,
  );
});

describe('a long cook', () => {
  it('keeps its state small, however much is typed', () => {
    let cook = openCook(opened({ from: 'boil' }));
    const size = () => state({ ...cook, log: [] }).length;
    for (let n = 0; n < 50; n += 1)
      cook = step(cook, { kind: 'cold water', outcome: 'unsure', seq: n + 2, t: n * 9 });
    const before = size();
    for (let n = 50; n < 3000; n += 1) {
      const event: CookEvent =
        n % 3 === 0
          ? { kind: 'cold water', outcome: 'unsure' }
          : { kind: 'reading', value: 110 + n / 1000, unit: 'C', of: 'syrup', by: 'feed' };
      cook = step(cook, { ...event, seq: n + 2, t: n * 9 });
    }
    expect(size()).toBeLessThan(before + 1500);
  });
});
