import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { runSheetOf } from '../../source/batch/run-sheet.js';
import type { CookEvent, Happened } from '../../source/cook/event.js';
import { boilOptions, simulate } from '../../source/rehearsal/boil.js';
import { fastClock } from '../../source/rehearsal/clock.js';
import { rehearsalOpening, rehearse } from '../../source/rehearsal/rehearse.js';
import { RehearsedSession } from '../../source/rehearsal/rehearsed-session.js';
import { simulatedCook } from '../../source/rehearsal/simulated-cook.js';
import { nearestSurprise, type SurpriseName } from '../../source/rehearsal/surprises.js';
import { offSurface } from '../../source/rehearsal/thickening.js';
import { rehearsalVerdict } from '../../source/rehearsal/verdict.js';
import { startUnkept } from '../../source/session/start.js';
import { words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { blind } from '../cook/play.js';
import { hall, hallBatch, rehearsal } from './hall.js';

const print = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });

describe('a simulated pot', () => {
  const options = boilOptions({
    curve: hallBatch.curve,
    waterGrams: hallBatch.waterGrams,
    otherGrams: 30,
    stove: 'gas',
    stageFromCelsius: hallBatch.stageFromCelsius,
  });

  it('boiled to the end of its curve only gets hotter, and loses nothing more', () => {
    const pot = simulate(options, 3);
    pot.setHeat(1);
    pot.advance(3 * 3600);
    const { waterGrams, celsius } = pot.state();
    pot.advance(120);
    expect(pot.state().waterGrams).toBeCloseTo(waterGrams, 9);
    expect(pot.state().celsius).toBeGreaterThan(celsius);
  });

  it('is not changed by no water, and steams nothing off without any', () => {
    const pot = simulate(options, 3);
    const before = pot.state();
    for (const grams of [0, Number.NaN]) pot.addWater(grams);
    expect(pot.state()).toEqual(before);
    expect(offSurface(5000, 0)).toBe(0);
    expect(offSurface(5000, 0.3)).toBeGreaterThan(0);
  });

  it('shows whole marks where its dial has only those', () => {
    const marked = { ...options, dial: { ...options.dial, stepKelvin: 2, noiseSdKelvin: 0.7 } };
    const pot = simulate(marked, 3);
    pot.setHeat(1);
    for (let look = 0; look < 20; look += 1) {
      pot.advance(20);
      expect(pot.dialCelsius() % 2).toBeCloseTo(0, 9);
    }
  });
});

describe('what hands do in a rehearsal', () => {
  const tableFor = (surprise: SurpriseName | null = null, batch = hallBatch) => {
    const table = simulatedCook(batch, 3, surprise);
    let seq = 1;
    let t = 0;
    const does = (seconds: number, ...events: readonly CookEvent[]) => {
      t += seconds;
      table.advanceTo(t);
      for (const event of events) {
        seq += 1;
        table.happened({ ...event, seq, t } as Happened);
      }
      return table;
    };
    return { table, does };
  };
  const heat = (setting: string): CookEvent => ({ kind: 'heat', setting });
  const done = (step: string): CookEvent => ({ kind: 'done', step }) as CookEvent;

  it('pours once, whether it is said by the step or by the phase that comes after', () => {
    const { table, does } = tableFor();
    does(0, heat('high'));
    does(1500, { kind: 'at', phase: 'test' });
    expect(table.truth().pouredAt).toBeNull();
    does(10, { kind: 'at', phase: 'fold' });
    const poured = table.truth().pouredAt;
    expect(poured).toBe(1510);
    does(60, done('pour.pour'));
    expect(table.truth().pouredAt).toBe(poured);
    // A test of what is on the slab takes no pot off.
    does(10, { kind: 'cold water', outcome: 'hard ball' });
    expect(table.truth().pouredAt).toBe(poured);
  });

  it('turns the ring on for who only says that it is done, and leaves what was set', () => {
    const warmed = (...events: readonly CookEvent[]): number => {
      const { table, does } = tableFor();
      const before = table.truth().celsius;
      does(0, ...events);
      does(300);
      return table.truth().celsius - before;
    };
    const [untouched, said, low, high] = [
      warmed(),
      warmed(done('dissolve.heat')),
      warmed(heat('low'), done('dissolve.heat')),
      warmed(heat('high'), done('dissolve.heat')),
    ];
    expect(untouched).toBeCloseTo(0, 0);
    expect(low).toBeLessThan(said);
    expect(said).toBeLessThan(high);
    expect(said).toBeGreaterThan(10);
  });

  it('smokes when it is left on the heat, and no dial shows more than its scale', () => {
    const { table, does } = tableFor();
    does(0, heat('high'));
    expect(table.senses().smokes).toBe(false);
    does(3 * 3600);
    expect(table.senses().smokes).toBe(true);
    expect(table.dial()?.value).toBe(400);
    const seen = table.notices().map(({ sight }) => sight);
    expect(seen.filter((sight) => sight === 'smokes')).toHaveLength(1);
    does(1, { kind: 'at', phase: 'fold' });
    expect(table.senses().smokes).toBe(false);
  });

  it('cannot take in hands what was never poured without pouring it, and measures no middle before', () => {
    const { table, does } = tableFor();
    expect(table.middle()).toBeNull();
    does(0, heat('high'));
    does(1500, done('pull.grease'));
    expect(table.truth().pouredAt).toBe(1500);
    expect(table.truth().middleAtHandsCelsius).toBeGreaterThan(80);
    expect(table.middle()?.value).toBeGreaterThan(176);
  });

  it('makes a stiff mass softer in the oven, in hands or not', () => {
    const { table, does } = tableFor();
    does(0, heat('high'));
    does(1700, { kind: 'at', phase: 'fold' });
    does(5400);
    const cold = table.truth().middleCelsius ?? 0;
    does(0, done('trouble.stiff.1'));
    const warm = table.truth().middleCelsius ?? 0;
    expect(warm).toBeGreaterThan(cold + 10);
    does(60, done('pull.grease'));
    for (let minute = 0; minute < 90 && !table.senses().stiff; minute += 1) does(60);
    expect(table.senses().stiff).toBe(true);
    does(0, done('trouble.stiff.1'));
    expect(table.senses().stiff).toBe(false);
  });

  it('turn a ring off that somebody turned up, and it is off', () => {
    const { table, does } = tableFor('overshoot');
    does(0, heat('high'));
    for (let second = 0; second < 5400 && table.truth().course.beganAt === null; second += 1) does(1);
    expect(table.truth().course.beganAt).not.toBeNull();
    does(1, heat('off'));
    // What the ring still holds goes into the pot; then it cools.
    does(200);
    const { celsius } = table.truth();
    does(300);
    expect(table.truth().celsius).toBeLessThan(celsius);
  });

  it('has no number where there is no thermometer', () => {
    const { table } = tableFor(null, batchOf(hall.recipe, blind));
    expect([table.dial(), table.middle(), table.boilingWater()]).toEqual([null, null, null]);
    expect(table.truth().dialErrorKelvin).toBeNull();
  });

  it('feel the hardest crack there is a word for in what was cooked much too far', () => {
    const { table, does } = tableFor();
    does(0, heat('high'));
    does(5000);
    const felt = Array.from({ length: 60 }, () => table.coldWater());
    expect(new Set(felt)).toEqual(new Set(['hard crack']));
  });
});

describe('the verdict on a rehearsal', () => {
  const { cook, truth } = rehearsal(7);
  const changes = (more: Partial<typeof truth>, of = cook, surprise: SurpriseName | null = null) =>
    rehearsalVerdict(of, { ...truth, ...more }, surprise).changes.map((change) => words(change, print));

  it.each<[string, Partial<typeof truth>, RegExp]>([
    ['grained', { grained: true }, /grain/i],
    ['ran over', { ranOver: true }, /over/i],
    [
      'past its window',
      { restCelsius: truth.windowCelsius[1] + 3, restStage: 'soft crack' },
      /5(\.\d)? °F|3(\.0)? °C/,
    ],
    [
      'short of it',
      { restCelsius: truth.windowCelsius[0] - 3, restStage: 'firm ball' },
      /5(\.\d)? °F|3(\.0)? °C/,
    ],
    ['in hands too hot', { middleAtHandsCelsius: 70 }, /158 °F/],
  ])('says what to change: %s', (_, more, sentence) => {
    expect(changes(more).join('\n')).toMatch(sentence);
    expect(changes(more)).not.toEqual(changes({}));
  });

  it('tells nobody to test who tested: what fingers can tell, and what they took for it', () => {
    const kitchen = { ...hall.kitchen, thermometers: [] };
    const { cook: blind } = rehearse({ ...hall, kitchen, seed: 7, surprise: null, version: 'test' });
    expect(blind.readingsTaken).toBe(0);
    const below = truth.windowCelsius[0] - 3;
    expect(changes({ restCelsius: below, restStage: 'hard ball' }, blind)[0]).toBe(
      'It came off 5 °F below the window, and the drop felt right: fingers tell the stage (hard ball), not where in it. A borrowed thermometer does.',
    );
    expect(changes({ restCelsius: below, restStage: 'firm ball' }, blind)[0]).toBe(
      'It came off 5 °F below the window, and what was felt as hard ball was firm ball: a fresh cup of cold water, ten seconds, and feel it twice.',
    );
  });

  it('says which phase took longer than the plan has, and by how much', () => {
    const [first, ...rest] = cook.log.slice(0, cook.length);
    if (first?.kind !== 'opened') throw new Error('a cook is opened');
    const plan = runSheetOf(cook.batch);
    const runSheet = {
      ...plan,
      phases: plan.phases.map((one) => ({ ...one, seconds: { low: 1, typical: 2, high: 60 } })),
    };
    const log = [{ ...first, runSheet }, ...rest];
    const verdict = rehearsalVerdict({ ...cook, log, length: log.length }, truth, null);
    expect(verdict.phases.find(({ phase }) => phase === 'boil')).toMatchObject({
      late: true,
      planned: { high: 60 },
    });
    expect(verdict.pulling?.plannedAt).toBe(plan.phases.find(({ phase }) => phase === 'pull')?.startsAt);
    expect(verdict.changes.map((change) => words(change, print)).join('\n')).toMatch(
      /Boil took .* and the plan has 60 s/,
    );
    expect(() => rehearsalVerdict({ ...cook, log: rest, length: rest.length }, truth, null)).toThrow(
      '"opened"',
    );
  });

  it('tells an answer in the wrong order from one in the right', () => {
    const shown = { ...truth, course: { beganAt: 900, showedAt: 900, endedAt: null } };
    const [first] = cook.log;
    if (first === undefined) throw new Error('a cook is opened');
    const typed = (...events: readonly CookEvent[]) => {
      const log = [first, ...events.map((event, index) => ({ ...event, seq: index + 2, t: 905 + index }))];
      return rehearsalVerdict(
        { ...cook, log: log as Happened[], length: log.length, t: 950 },
        shown,
        'burning-smell',
      );
    };
    const report: CookEvent = { kind: 'trouble', name: 'scorched' };
    const off: CookEvent = { kind: 'pot', on: false };
    const over: CookEvent = { kind: 'over', name: 'scorched' };
    expect(typed(report, off, over).answered).toMatchObject({
      afterSeconds: 5,
      inTime: true,
      inOrder: true,
    });
    const wrong = typed(off, report, over);
    expect(wrong.answered).toMatchObject({ inTime: true, inOrder: false });
    expect(wrong.changes.map(({ id }) => id)).toContain('rehearsal.change.order');
    const none = typed({ kind: 'pot', on: true }, { kind: 'lid', on: false }, { kind: 'note', text: 'hm' });
    expect(none.answered).toMatchObject({ afterSeconds: null, inTime: false });
  });

  it('takes a check in ice or boiling water, or going without, for the answer to a thermometer that is off', () => {
    const [first] = cook.log;
    if (first === undefined) throw new Error('a cook is opened');
    const shown = { ...truth, course: { beganAt: 0, showedAt: 900, endedAt: null } };
    const reading = (of: 'ice' | 'boiling water' | 'syrup'): CookEvent => ({
      kind: 'reading',
      value: of === 'ice' ? 34 : 205,
      unit: 'F',
      of,
      by: 'hands',
    });
    const secondsTo = (event: CookEvent) => {
      const log = [first, { ...event, seq: 2, t: 920 }];
      return rehearsalVerdict(
        { ...cook, log: log as Happened[], length: 2, t: 930 },
        shown,
        'thermometer-off',
      ).answered?.afterSeconds;
    };
    expect(secondsTo(reading('boiling water'))).toBe(20);
    expect(secondsTo(reading('ice'))).toBe(20);
    expect(secondsTo({ kind: 'no thermometer' })).toBe(20);
    expect(secondsTo(reading('syrup'))).toBeNull();
  });

  it('finds no name in a word of two letters', () => {
    expect(nearestSurprise('fo')).toBeNull();
  });
});

describe('a rehearsal that a person types, to its end', () => {
  const begin = (auto: boolean, surprise: SurpriseName | null = null) => {
    const wall = { seconds: 0 };
    const clock = fastClock({ up: () => wall.seconds, wall: () => wall.seconds * 1000 }, 60);
    const session = startUnkept(rehearsalOpening({ ...hall, seed: 3, surprise, version: 'test' }), clock);
    const rehearsed = new RehearsedSession({
      session,
      table: simulatedCook(hallBatch, 3, surprise),
      clock,
      auto,
    });
    return { rehearsed, clock };
  };
  type Rehearsed = ReturnType<typeof begin>['rehearsed'];

  type Sight = {
    readonly fingers: string | null;
    readonly crumbIsComfortable: boolean | null;
    readonly rope: string | null;
    readonly wrong: readonly string[];
  };
  const sightOf = (rehearsed: Rehearsed): Sight => rehearsed.sight().values as Sight;

  /** What is typed at a step or question that "done" and "yes" do not answer. */
  const special: Readonly<Record<string, (sight: Sight) => string>> = {
    'hands.crumb': ({ crumbIsComfortable }) => (crumbIsComfortable === true ? 'yes' : 'no'),
    'dissolve.heat': () => 'heat medium',
    'test.drop': ({ fingers }) => fingers ?? 'unsure',
    'pull.droop': ({ rope }) => (rope === 'droops' ? 'droops' : 'done'),
  };

  /** One turn of somebody who does what is said, and skips what is waited for. */
  const goOn = async (rehearsed: Rehearsed): Promise<void> => {
    const { question, canBeDone, step, offTheHeat, urgent } = rehearsed.advice();
    const own = special[question?.id ?? step ?? ''];
    if (offTheHeat) await rehearsed.type('pot off');
    else if (own !== undefined) await rehearsed.type(own(sightOf(rehearsed)));
    else if (question !== null) await rehearsed.type('yes');
    else if ((urgent || (await rehearsed.skip()) === 0) && canBeDone) await rehearsed.type('done');
  };

  it('is led from the cold pot to the pull, with what can be seen and felt said at each step', async () => {
    const { rehearsed } = begin(true);
    const looked = new Map<string, string>();
    for (let turn = 0; turn < 300 && rehearsed.advice().phase !== 'cut'; turn += 1) {
      const { step, phase } = rehearsed.advice();
      looked.set(step ?? phase, words(rehearsed.sight(), print));
      await goOn(rehearsed);
    }
    expect(rehearsed.advice().phase).toBe('cut');
    expect(looked.get('test.drop')).toMatch(/hard ball|firm ball|soft crack/);
    const readings = rehearsed.cook.log.filter((event) => event.kind === 'reading');
    expect(new Set(readings.map(({ by }) => by))).toEqual(new Set(['pot']));
    expect(new Set(readings.map(({ of }) => of))).toEqual(new Set(['syrup', 'middle']));
    // Measured no more than once a minute.
    const middles = readings.filter(({ of }) => of === 'middle').map(({ t }) => t);
    for (const [index, t] of middles.slice(1).entries())
      expect(t - (middles[index] ?? 0)).toBeGreaterThanOrEqual(60);
    // The pot's thermometer lies aside; what is shown is the middle of the mass.
    expect(rehearsed.dialNow()?.value).toBeLessThan(140);
  });

  it('keeps what is not understood away from the pot, and says so', async () => {
    const { rehearsed } = begin(false);
    const outcome = await rehearsed.type('heta medium');
    expect(outcome.kind).toBe('queried');
    expect(rehearsed.cook.length).toBe(1);
    const resumed = await rehearsed.type('go');
    expect(resumed.kind === 'queried' && resumed.queried.because.id).toBe('rehearsal.going');
    expect(rehearsed.cook.length).toBe(1);
  });

  it.each<[SurpriseName, string]>([
    ['burning-smell', 'smell'],
    ['grains', 'grains'],
    ['early-touch', 'touched'],
  ])('says for as long as it stands that there is %s', async (surprise, sight) => {
    const { rehearsed } = begin(true, surprise);
    const wrong = () => sightOf(rehearsed).wrong;
    for (let turn = 0; turn < 200 && wrong().length === 0 && rehearsed.advice().phase !== 'cut'; turn += 1)
      await goOn(rehearsed);
    expect(wrong()).toEqual([sight]);
  });

  it('says how far it skipped', async () => {
    const { rehearsed } = begin(false);
    for (const line of ['done', 'done', 'yes', 'done', 'done', 'done', 'heat medium'])
      await rehearsed.type(line);
    const from = rehearsed.now();
    const outcome = await rehearsed.type('skip');
    if (outcome.kind !== 'queried') throw new Error('to skip is no event');
    expect(outcome.queried.because).toMatchObject({
      id: 'rehearsal.skipped',
      values: { seconds: rehearsed.now() - from },
    });
  });
});
