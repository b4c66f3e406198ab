import { describe, expect, it } from 'vitest';
import { changesFor } from '../../source/lessons/changes.js';
import type { Facts } from '../../source/lessons/story.js';
import type { TroubleTold } from '../../source/lessons/trouble-story.js';
import type { WarningTold } from '../../source/lessons/warning-story.js';
import { message } from '../../source/texts/message.js';
import { fairStory } from './cooks-told.js';

const { changes: _changes, moments: _moments, ...fair } = fairStory();

/** A cook of which there is nothing to say: what stands beside it is the only thing that went otherwise. */
const calm: Facts = {
  ...fair,
  batch: { ...fair.batch, dial: { ...fair.batch.dial, basis: 'two points' } },
  readings: fair.readings
    .filter(({ of }) => of === 'middle')
    .concat(fair.readings.filter(({ of }) => of === 'syrup')),
  offs: [],
  tests: [],
  events: [],
  disagreedStages: 0,
  warnings: [],
  troubles: [],
  phases: fair.phases.map((phase) => ({ ...phase, against: 'as planned' as const })),
  peak: fair.peak === null ? null : { ...fair.peak, outsideKelvin: 0, by: 'reading' },
  takenOff: fair.takenOff === null ? null : { ...fair.takenOff, askedAt: fair.takenOff.t },
  yield: { ...fair.yield, share: 0.9 },
  pieces: { ...fair.pieces, meanGrams: fair.pieces.wantedGrams, variation: null, between: null },
  cook: { ...fair.cook, armsOut: false },
};

const trouble = (name: TroubleTold['name'], more: Partial<TroubleTold> = {}): Facts['troubles'] => [
  {
    name,
    phase: 'boil',
    at: 900,
    firstSeconds: 5,
    withinSeconds: 15,
    inTime: true,
    acts: [],
    order: 'right',
    told: 1,
    instructions: 2,
    overAt: 960,
    ...more,
  },
];

const warning = (id: WarningTold['id'], raisedAt: number, endedAt: number | null): WarningTold => ({
  id,
  level: 'soon',
  signal: null,
  raisedAt,
  cause: message('journal.torn'),
  evidence: null,
  endedAt,
  endedBy: endedAt === null ? null : 'answered',
  withinSeconds: null,
  inTime: null,
});

const { peak, takenOff } = calm;
if (peak === null || takenOff === null) throw new Error('the fair was cooked to its end');
const peaked = (more: Partial<typeof peak>) => ({ ...peak, ...more });
const off = (lateSeconds: number) => ({ ...takenOff, askedAt: takenOff.t - lateSeconds });
const phase = (name: string, seconds: number): Facts['phases'] =>
  calm.phases.map((one) =>
    one.phase === name
      ? { ...one, seconds, planned: { low: 500, typical: 600, high: 1000 }, against: 'slower' as const }
      : one,
  );
const short = (celsius: number | null) =>
  ({ t: 1500, outcome: 'soft ball', verdict: 'short', celsius }) as const;
const pot = (neededLitres: number, haveLitres: number | null): Facts['batch'] => ({
  ...calm.batch,
  pot: { ...calm.batch.pot, neededLitres, haveLitres },
});
const stirred = (stir: Facts['batch']['recipe']['stir']): Facts['batch'] => ({
  ...calm.batch,
  recipe: { ...calm.batch.recipe, stir },
});
const readEvery = (seconds: number, kelvinEach: number, count: number): Pick<Facts, 'readings' | 'offs'> => {
  const last = 2000;
  const [reading] = fair.readings.filter(({ of }) => of === 'syrup');
  if (reading === undefined) throw new Error('the fair was read');
  const wantedCelsius = 120;
  return {
    offs: [{ t: last, celsius: wantedCelsius, wantedCelsius, askedAt: last, implied: false, backAt: null }],
    readings: Array.from({ length: count }, (_, index) => ({
      ...reading,
      believed: true,
      t: last - (count - 1 - index) * seconds,
      celsius: wantedCelsius - (count - 1 - index) * kelvinEach,
    })),
  };
};

type Row = readonly [what: string, facts: Partial<Facts>, id: string, because: object | null];
const rows: readonly Row[] = [
  ['skin burnt', { troubles: trouble('burn', { firstSeconds: 8 }) }, 'burn', { first: 8, phase: 'boil' }],
  ['hands let in too soon', { warnings: [warning('middle-above-limit', 9999, null)] }, 'hands-too-hot', {}],
  [
    'hands let in by a crumb alone',
    { warnings: [warning('middle-above-limit', 9999, null)], readings: [] },
    'hands-too-hot',
    { celsius: null },
  ],
  [
    'water before the pot was off',
    { troubles: trouble('foam', { order: 'wrong', acts: [{ act: 'water', t: 910 }] }) },
    'wrong-order',
    { name: 'foam', acts: ['water'] },
  ],
  [
    'an answer that came late',
    {
      troubles: [
        ...trouble('foam', { inTime: false, firstSeconds: 40 }),
        ...trouble('overflow', { inTime: false, firstSeconds: 70 }),
      ],
    },
    'slow-answer',
    { name: 'overflow', seconds: 70, within: 15 },
  ],
  [
    'no answer, with time for it',
    { troubles: trouble('soft', { inTime: false, withinSeconds: 61 }) },
    'slow-answer',
    null,
  ],
  ['no answer that was seen', { troubles: trouble('foam', { inTime: null }) }, 'slow-answer', null],
  [
    'silence of 20 s more',
    { warnings: [warning('unattended', 900, 920)] },
    'unattended',
    { times: 1, seconds: 20 },
  ],
  ['silence that was soon over', { warnings: [warning('unattended', 900, 919)] }, 'unattended', null],
  [
    'silence four times',
    { warnings: [1, 2, 3, 4].map((time) => warning('unattended', time * 300, time * 300 + 5)) },
    'unattended',
    { times: 4, seconds: 5 },
  ],
  [
    'silence to the end',
    { seconds: 3000, warnings: [warning('unattended', 2900, null)] },
    'unattended',
    { seconds: 100 },
  ],
  [
    'foam in a small pot',
    { troubles: trouble('foam'), batch: pot(4, 3) },
    'boil-over',
    { name: 'foam', haveLitres: 3 },
  ],
  ['foam in a large pot', { troubles: trouble('foam'), batch: pot(4, 4) }, 'boil-over', { haveLitres: 4 }],
  [
    'foam, and then over',
    { troubles: [...trouble('foam'), ...trouble('overflow')], batch: pot(4, null) },
    'boil-over',
    { name: 'overflow', haveLitres: null },
  ],
  ['scorched', { troubles: trouble('scorched') }, 'scorched', { at: 900, peakCelsius: peak.celsius }],
  [
    'scorched, by cold water alone',
    { troubles: trouble('scorched'), peak: peaked({ by: 'cold water' }) },
    'scorched',
    { peakCelsius: null },
  ],
  [
    'scorched, before any reading',
    { troubles: trouble('scorched'), peak: null },
    'scorched',
    { peakCelsius: null },
  ],
  [
    'past by 0.6 K',
    { peak: peaked({ outsideKelvin: 0.6 }) },
    'past-window',
    { pastKelvin: 0.6, lateSeconds: 0 },
  ],
  ['past by 0.5 K', { peak: peaked({ outsideKelvin: 0.5 }) }, 'past-window', null],
  ['past by cold water', { peak: peaked({ outsideKelvin: 5, by: 'cold water' }) }, 'past-window', null],
  [
    'past, as it came off late',
    { peak: peaked({ outsideKelvin: 3 }), takenOff: off(21) },
    'past-window',
    { lateSeconds: 21 },
  ],
  [
    'past, and never off',
    { peak: peaked({ outsideKelvin: 3 }), takenOff: null },
    'past-window',
    { lateSeconds: 0 },
  ],
  ['poured 0.6 K short', { peak: peaked({ outsideKelvin: -0.6 }) }, 'short', { shortKelvin: 0.6 }],
  ['poured 0.5 K short', { peak: peaked({ outsideKelvin: -0.5 }) }, 'short', null],
  ['short, and never poured', { peak: peaked({ outsideKelvin: -3 }), pouredAt: null }, 'short', null],
  [
    'short by the dial, there by fingers',
    { peak: peaked({ outsideKelvin: -3 }), tests: [{ ...short(120), verdict: 'there' }] },
    'short',
    null,
  ],
  [
    'short by the dial, past by fingers',
    { peak: peaked({ outsideKelvin: -3 }), tests: [{ ...short(120), verdict: 'past' }] },
    'short',
    null,
  ],
  ['off 21 s late', { takenOff: off(21) }, 'late-off', { seconds: 21 }],
  ['off 20 s late', { takenOff: off(20) }, 'late-off', null],
  ['off late and past', { takenOff: off(40), peak: peaked({ outsideKelvin: 2 }) }, 'late-off', null],
  ['off late, nothing read', { takenOff: off(40), peak: null }, 'late-off', { seconds: 40 }],
  ['off unasked', { takenOff: { ...takenOff, askedAt: null } }, 'late-off', null],
  ['a quick end', readEvery(15, 1, 8), 'fast-end', { kelvinPerSecond: 1 / 15 }],
  ['a slow end', readEvery(30, 1, 8), 'fast-end', null],
  ['a single reading near the end', readEvery(30, 9, 2), 'fast-end', null],
  ['76 s without a reading', readEvery(76, 1, 4), 'few-readings', { seconds: 76, readings: 4 }],
  ['75 s without a reading', readEvery(75, 1, 4), 'few-readings', null],
  ['set before it was pulled', { troubles: trouble('stiff') }, 'stiff', { armsOut: false }],
  ['arms that gave out', { cook: { ...calm.cook, armsOut: true } }, 'stiff', { armsOut: true }],
  ['grains', { troubles: trouble('grains', { phase: 'pull' }) }, 'grains', { phase: 'pull' }],
  ['too soft', { troubles: trouble('soft'), candy: null }, 'soft', { droops: 0, moisture: null }],
  ['two stages apart', { disagreedStages: -2 }, 'fingers-and-dial', { stages: -2 }],
  ['one stage apart', { disagreedStages: 1 }, 'fingers-and-dial', null],
  ['two tests short', { tests: [short(112), short(116)] }, 'short-tests', { tests: 2, firstCelsius: 112 }],
  [
    'two tests short, nothing read',
    { tests: [short(null), short(null)] },
    'short-tests',
    { firstCelsius: null },
  ],
  ['one test short', { tests: [short(112)] }, 'short-tests', null],
  ['cold water alone', { readings: [] }, 'no-readings', { between: peak.between }],
  ['nothing at all', { readings: [], peak: null }, 'no-readings', { between: null }],
  ['nothing at all, not poured', { readings: [], pouredAt: null }, 'no-readings', null],
  [
    'a thermometer taken as right',
    { batch: { ...calm.batch, dial: { ...calm.batch.dial, basis: 'taken as right' } } },
    'unchecked-dial',
    { sdKelvin: calm.batch.dial.sdKelvin },
  ],
  ['a long boil', { phases: phase('boil', 1300) }, 'slow-boil', { seconds: 1300, high: 1000 }],
  ['a boil a tenth too long', { phases: phase('boil', 1100) }, 'slow-boil', null],
  ['a long boil for foam', { phases: phase('boil', 1300), troubles: trouble('foam') }, 'slow-boil', null],
  [
    'a long boil, much of it off the ring',
    {
      phases: phase('boil', 1300),
      spans: [{ phase: 'boil', from: 0, to: 1300 }],
      offs: [{ ...takenOff, t: 500, backAt: 800 }],
    },
    'slow-boil',
    null,
  ],
  ['a slow fold', { phases: phase('fold', 1300) }, 'slow-fold', { seconds: 1300, high: 1000 }],
  ['a ring left on', { warnings: [warning('heat-left-on', 2100, 2130)] }, 'heat-left-on', { seconds: 90 }],
  [
    'stirred in the boil',
    { warnings: [warning('boils-while-stirring', 700, 730)], batch: stirred('until-boil') },
    'stirred-in-the-boil',
    { seconds: 30 },
  ],
  [
    'stirred in the boil, as it is meant',
    { warnings: [warning('boils-while-stirring', 700, 730)], batch: stirred('late') },
    'stirred-in-the-boil',
    null,
  ],
  [
    'pieces a fifth too heavy',
    { pieces: { ...calm.pieces, meanGrams: calm.pieces.wantedGrams * 1.2 } },
    'piece-size',
    {},
  ],
  [
    'pieces a seventh too light',
    { pieces: { ...calm.pieces, meanGrams: calm.pieces.wantedGrams * 0.86 } },
    'piece-size',
    null,
  ],
  ['pieces nobody weighed', { pieces: { ...calm.pieces, meanGrams: null } }, 'piece-size', null],
  [
    'uneven pieces',
    { pieces: { ...calm.pieces, variation: 0.25, between: [5, 9] } },
    'uneven-pieces',
    { between: [5, 9] },
  ],
  ['pieces alike', { pieces: { ...calm.pieces, variation: 0.2, between: [5, 9] } }, 'uneven-pieces', null],
  ['a fifth lost', { yield: { ...calm.yield, share: 0.79 } }, 'yield', { share: 0.79 }],
  ['little lost', { yield: { ...calm.yield, share: 0.8 } }, 'yield', null],
  ['more than there was', { yield: { ...calm.yield, share: 1.01 } }, 'yield', { share: 1.01 }],
  ['all of it', { yield: { ...calm.yield, share: 1 } }, 'yield', null],
  ['never weighed', { yield: { ...calm.yield, weighedGrams: null, share: null } }, 'yield', null],
  ['slow wrapping', { phases: phase('wrap', 1900) }, 'slow-wrap', { seconds: 1900 }],
  [
    'never weighed',
    { yield: { ...calm.yield, weighedGrams: null } },
    'weigh-and-count',
    { weigh: true, count: false },
  ],
  [
    'never counted',
    { pieces: { ...calm.pieces, counted: null } },
    'weigh-and-count',
    { weigh: false, count: true },
  ],
  [
    'never counted, given up',
    { pieces: { ...calm.pieces, counted: null }, state: 'given up' },
    'weigh-and-count',
    null,
  ],
  [
    'never counted, rehearsed',
    { pieces: { ...calm.pieces, counted: null }, rehearsal: true },
    'weigh-and-count',
    null,
  ],
];

describe('what to do otherwise next time', () => {
  it('is nothing after a cook in which nothing went otherwise', () => {
    expect(changesFor(calm).map(({ id }) => id)).toEqual([]);
  });

  it.each(rows)('%s', (_what, facts, id, because) => {
    const found = changesFor({ ...calm, ...facts }).find((one) => one.id === id);
    if (because === null) expect(found).toBeUndefined();
    else expect(found?.because.values ?? {}).toMatchObject(because);
    if (because !== null) expect(found).toBeDefined();
  });

  it('names the pot, the take-off and the number of people that follow from it', () => {
    const values = (facts: Partial<Facts>, id: string) =>
      changesFor({ ...calm, ...facts }).find((one) => one.id === id)?.action.values;
    expect(values({ troubles: trouble('foam'), batch: pot(4, 3) }, 'boil-over')).toEqual({ litres: 4 });
    expect(values({ troubles: trouble('foam'), batch: pot(4, 4) }, 'boil-over')).toEqual({ litres: null });
    expect(values({ peak: peaked({ outsideKelvin: 3 }) }, 'past-window')).toEqual({
      late: false,
      offCelsius: takenOff.wantedCelsius - 3,
    });
    expect(values({ peak: peaked({ outsideKelvin: 3 }), takenOff: off(30) }, 'past-window')).toEqual({
      late: true,
      offCelsius: takenOff.wantedCelsius,
    });
    expect(values({ peak: peaked({ outsideKelvin: 3 }), takenOff: null }, 'past-window')).toEqual({
      late: false,
      offCelsius: calm.batch.target.takeOffCelsius - 3,
    });
    expect(values({ tests: [short(112), short(113)] }, 'short-tests')).toMatchObject({
      fromCelsius: calm.batch.target.takeOffCelsius - 1.5,
    });
    expect(values({ phases: phase('wrap', 1900) }, 'slow-wrap')).toEqual({ people: 4 });
    expect(values({ phases: phase('wrap', 1050) }, 'slow-wrap')).toEqual({ people: 2 });
    const heavy = { ...calm.pieces, meanGrams: calm.pieces.wantedGrams * 1.25 };
    expect(values({ pieces: heavy }, 'piece-size')).toEqual({
      now: calm.batch.yield.cutMillimetres,
      better: calm.batch.yield.cutMillimetres / 1.25,
    });
  });

  it('keeps to five, people first', () => {
    const everything: Partial<Facts> = {
      troubles: [...trouble('grains'), ...trouble('burn'), ...trouble('stiff'), ...trouble('soft')],
      tests: [short(112), short(113)],
      disagreedStages: 3,
      yield: { ...calm.yield, share: 0.5 },
    };
    const ids = changesFor({ ...calm, ...everything }).map(({ id }) => id);
    expect(ids).toEqual(['burn', 'stiff', 'grains', 'soft', 'fingers-and-dial']);
  });
});
