import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import type { Happened } from '../../source/cook/event.js';
import { interpret } from '../../source/cook/interpret.js';
import { fold, step } from '../../source/cook/step.js';
import { opened } from '../cook/play.js';

const runs = Number(process.env.KETTLEHAND_RUNS ?? 500);

/** What a person may type; "on" is whatever leads on from where the cook stands. */
const words = [
  ...Array<string>(12).fill('on'),
  ...Array<string>(5).fill('undo'),
  '212f',
  '226',
  '238',
  '255',
  '300',
  'soft ball',
  'hard ball',
  'heat medium',
  'heat off',
  'pot off',
  'pot on',
  'lid on',
  'lid off',
  'water 30ml',
  'middle 44c',
  'hands children',
  'portion 3',
  'trouble foam',
  'over foam',
  'trouble burn',
  'ok',
  'at boil',
  'at fold',
  'note a child asked why',
  'weigh 512g',
  'yes',
  'no',
] as const;

const typing = fc.array(
  fc.tuple(fc.constantFrom(...words, 'a feed reads', 'a gap' as const), fc.integer({ min: 0, max: 400 })),
  { minLength: 4, maxLength: 18 },
);

const eventFor = (cook: Cook, word: string, t: number): Parameters<typeof step>[1] | null => {
  const seq = cook.length + 1;
  if (word === 'a feed reads')
    return { kind: 'reading', value: 228, unit: 'F', of: 'syrup', by: 'feed', seq, t };
  if (word === 'a gap') return { kind: 'gap', seconds: 300, sure: true, seq, t };
  const advice = advise(cook, t);
  const leadsOn = advice.question?.answers[0] ?? 'done';
  const read = interpret(word === 'on' ? leadsOn : word, advice);
  return read.kind === 'queried' ? null : { ...read, seq, t };
};

/** DESIGN.md's rule, written down once more by itself: which event an undo takes back. */
const undoModel = (list: readonly Happened[]): number | null => {
  const gone = new Set(list.flatMap((event) => (event.kind === 'undo' ? [event.voids] : [])));
  const byHands = list
    .slice(1)
    .filter((event) => event.kind !== 'undo' && event.kind !== 'gap' && !gone.has(event.seq))
    .filter((event) => event.kind !== 'reading' || event.by === 'hands');
  return byHands.at(-1)?.seq ?? null;
};

/** All but the memory of what was undone, and the time at which it was. */
const essence = (cook: Cook): string => {
  const { log: _log, length: _length, voided: _voided, unsettled: _unsettled, ...rest } = cook;
  const { t: _t, heardAt: _heard, undoes: _undoes, ...state } = rest;
  return JSON.stringify(state);
};

describe('undo', () => {
  it(
    'takes back the latest event by hands, and the cook stands as if it had never happened',
    () => {
      let undone = 0;
      fc.assert(
        fc.property(typing, (typed) => {
          const list: Happened[] = [opened()];
          let cook = fold(list);
          let t = 0;
          for (const [word, seconds] of typed) {
            t += seconds;
            const event = eventFor(cook, word, t);
            if (event === null) continue;
            if (cook.undoes !== undoModel(list)) expect(cook.undoes).toBe(undoModel(list));
            if (event.kind === 'undo') {
              undone += 1;
              expect(event.voids).toBe(undoModel(list));
            }
            list.push(event);
            cook = step(cook, event);
            if (event.kind !== 'undo') continue;
            const gone = new Set(list.flatMap((one) => (one.kind === 'undo' ? [one.voids, one.seq] : [])));
            const left = essence(fold(list.filter(({ seq }) => !gone.has(seq))));
            // A difference is shown by its fields.
            if (essence(cook) !== left) expect(JSON.parse(essence(cook))).toEqual(JSON.parse(left));
          }
        }),
        {
          numRuns: runs,
          // Found once: what a conclusion looks back at was not there while a list was folded again.
          examples: [
            [
              [
                ['at boil', 0],
                ['226', 0],
                ['255', 0],
                ['a feed reads', 120],
                ['on', 0],
                ['on', 0],
                ['undo', 0],
                ['on', 0],
                ['on', 0],
                ['on', 0],
                ['undo', 0],
              ],
            ],
          ],
        },
      );
      expect(undone).toBeGreaterThan(runs / 10);
    },
    60_000 + runs * 60,
  );
});
