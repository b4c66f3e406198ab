import { describe, expect, it } from 'vitest';
import { coldWaterOutcomes } from '../../source/sugar/stages.js';
import { blind, hall, Play, seaside } from './play.js';

describe('the three pause points', () => {
  const pauses = [
    ['heat.pause', 'mix.dry'],
    ['pour.pause', 'pour.pour'],
    ['hands.pause', 'pull.grease'],
  ] as const;

  it.each(pauses)('%s is five to seven things, passed by a deliberate yes only', (id, next) => {
    const play = new Play().until(id);
    expect(play.advice.question).toMatchObject({ id, answers: ['yes', 'no'], safe: 'no', kind: 'pause' });
    expect(play.advice.items.length).toBeGreaterThanOrEqual(5);
    expect(play.advice.items.length).toBeLessThanOrEqual(7);
    const aloud = play.advice.items
      .map((item) => play.words(item))
      .join(' ')
      .split(/\s+/);
    // Under a minute aloud, at 150 words a minute.
    expect(aloud.length).toBeLessThan(150);
    expect(play.advice.canBeDone).toBe(false);
    expect(play.query('done')).toContain('"done" does not answer it');
    expect(play.query('')).toContain('Nothing was typed');
    expect(play.query('yes, in a minute')).toContain('not understood');
    for (const done of [id, next]) play.happen({ kind: 'done', step: done });
    expect(play.advice.question?.id).toBe(id);
    play.type('no');
    expect(play.advice.question?.id).toBe(id);
    play.wait(3600);
    expect(play.advice.question?.id).toBe(id);
    play.type('yes');
    expect(play.advice.question?.id).not.toBe(id);
  });

  it.each(pauses)('%s is locked again by undo', (id) => {
    const play = new Play().until(id).type('yes');
    expect(play.advice.question?.id).not.toBe(id);
    expect(play.type('undo').advice.question?.id).toBe(id);
  });

  it('reads the list before pouring about 8 K below the take-off, in the boil', () => {
    const play = new Play({ from: 'boil' });
    const { takeOffCelsius } = play.cook.batch.target;
    play.reads(60, 110, Math.floor(takeOffCelsius - 9));
    expect(play.advice.question?.id).not.toBe('pour.pause');
    play.reads(60, Math.ceil(takeOffCelsius - 8));
    expect(play.phase).toBe('boil');
    expect(play.advice.question?.id).toBe('pour.pause');
    // At the take-off no list comes first.
    play.reads(60, Math.ceil(takeOffCelsius));
    expect(play.advice.question).toBeNull();
    expect(play.say).toContain('OFF THE HEAT');
  });

  it('keeps the order at the take-off: off, bubbles, flavour, one line, pour', () => {
    const play = new Play({ from: 'boil' }).reads(60, 110, 118).type('yes').reads(60, 124);
    const seen = [play.step];
    for (const line of ['done', 'hard ball', 'done', 'done', 'yes', 'done']) {
      play.wait(15).type(line);
      seen.push(play.step);
    }
    expect(seen).toEqual([
      'boil.off',
      'test.drop',
      'flavour.sink',
      'flavour.add',
      'pour.path',
      'pour.pour',
      'fold.wait',
    ]);
  });

  it('asks the one line at every pour anew', () => {
    const play = new Play({ from: 'boil' }).reads(60, 110, 118).type('yes').until('pour.pour');
    play.type('pot on');
    expect(play.phase).toBe('boil');
    play.type('hard ball').until('pour');
    expect(play.advice.question?.id).toBe('pour.path');
  });
});

const atTheGate = (opening: ConstructorParameters<typeof Play>[0] = {}) =>
  new Play(opening).until('fold.again').wait(180).type('done');

describe('the gate to hands', () => {
  it.each([
    ['visitors', 45],
    ['bare', 50],
    ['gloved', 55],
    ['children', 43],
  ] as const)('for hands of kind %s opens at %i °C and not above', (whose, limit) => {
    const play = atTheGate().type(`hands ${whose}`, `middle ${limit + 1}c`);
    expect(play.step).toBe('hands.measure');
    expect(play.say).toContain('still too hot');
    expect(play.why).toContain(`${limit} °C`);
    play.type(`middle ${limit}c`);
    expect(play.advice.question?.id).toBe('hands.pause');
  });

  it('takes visitors when nobody has said whose hands they are', () => {
    expect(new Play().cook.hands).toBe('visitors');
  });

  it('locks again when children come to pull what only adults could touch', () => {
    const play = atTheGate().type('hands bare', 'middle 49c', 'yes');
    expect(play.phase).toBe('pull');
    play.type('hands children');
    expect(play.step).toBe('hands.measure');
    expect(play.warned).toContain('middle-above-limit');
    play.wait(300).type('middle 42c');
    expect(play.step).toBe('pull.grease');
    expect(play.warned).not.toContain('middle-above-limit');
  });

  it('corrects the thermometer towards the safe side only', () => {
    const dial = (iceShownCelsius: number) => ({
      ...seaside,
      thermometers: seaside.thermometers.map((one) => ({
        ...one,
        iceShownCelsius,
        boilsShownCelsius: 100 + iceShownCelsius,
      })),
    });
    // Reads 3 K low: 44 on it is 47 in the candy.
    expect(atTheGate({ kitchen: dial(-3) }).type('middle 44c').step).toBe('hands.measure');
    // Reads 3 K high: 47 on it would be 44, and is not believed.
    expect(atTheGate({ kitchen: dial(3) }).type('middle 47c').step).toBe('hands.measure');
  });

  it('corrects by the thermometer that goes into the middle, not by the one of the pot', () => {
    const [pot] = seaside.thermometers;
    const kitchen = {
      ...seaside,
      thermometers: [
        { ...pot, use: 'pot' as const },
        {
          ...pot,
          id: 'probe',
          use: 'middle' as const,
          unit: 'F' as const,
          iceShownCelsius: -4,
          boilsShownCelsius: 96,
        },
      ],
    } as typeof seaside;
    const play = atTheGate({ kitchen });
    // 108 on its Fahrenheit scale is 42 °C, and the probe reads 4 K low.
    expect(play.type('108').step).toBe('hands.measure');
    expect(play.cook.middle?.celsius).toBeCloseTo(46.2, 1);
  });

  it('asks about a middle that can hardly be: colder than the room, or meant on the other scale', () => {
    const cold = atTheGate().type('middle 12c');
    expect(cold.advice.question?.id).toBe('reading.doubt');
    expect(cold.words(cold.advice.question?.text ?? { id: 'typed.nothing' })).toContain(
      'colder than the room',
    );
    expect(cold.type('no').step).toBe('hands.measure');

    // 60 meant in Celsius, typed in a kitchen that reads Fahrenheit: 16 °C would open the gate.
    const slip = atTheGate({ kitchen: hall }).type('60');
    expect(slip.words(slip.advice.question?.text ?? { id: 'typed.nothing' })).toContain('other scale');
    expect(slip.type('no', '60c').say).toContain('still too hot');
    expect(slip.type('middle 44c').advice.question?.id).toBe('hands.pause');
  });

  it('says how long to wait before measuring again, within a quarter of an hour', () => {
    const play = atTheGate().type('middle 70c');
    expect(play.say).toMatch(/measure again in (\d+) (min|s)/);
    const { againSeconds } = play.advice.say.values as { againSeconds: number };
    expect(againSeconds).toBeGreaterThanOrEqual(120);
    expect(againSeconds).toBeLessThanOrEqual(900);
  });

  it('locks when the mass is warmed again, until the middle is measured anew', () => {
    const play = atTheGate().type('middle 40c', 'yes', 'done').wait(200).type('trouble stiff');
    expect(play.say).toMatch(/oven at 95 °C/);
    play.wait(200).type('done');
    expect(play.say).toContain('Measure the middle again');
    play.type('done', 'done', 'over');
    expect(play.step).toBe('hands.measure');
    expect(play.type('middle 41c').step).toBe('pull.stretch');
  });

  it('never opens by "at pull", "at cut", or an older list of things done', () => {
    for (const phase of ['pull', 'cut'] as const) {
      const play = new Play().until('dissolve').type(`at ${phase}`);
      expect(play.step).toBe('hands.measure');
      expect(play.type('middle 40c').advice.question?.id).toBe('hands.pause');
      for (const done of ['pull.grease', 'pull.stiff', 'cut.cut', 'hands.pause'])
        play.happen({ kind: 'done', step: done });
      expect(play.advice.question?.id).toBe('hands.pause');
    }
  });

  it('measures and asks anew when another mass is poured', () => {
    const play = atTheGate().type('middle 40c', 'yes', 'done', 'at boil');
    expect(play.phase).toBe('boil');
    play.type('hard ball').until('fold');
    expect(play.step).toBe('fold.wait');
    play.until('hands.measure');
    expect(play.type('middle 44c').advice.question?.id).toBe('hands.pause');
  });
});

describe('without a thermometer for the middle', () => {
  const atTheLayer = () => new Play({ kitchen: blind }).until('hands.layer');

  it.each([
    ['yes', 20],
    ['no', 45],
  ] as const)('thin? %s: hands not before %i min after the pour', (thin, minutes) => {
    const play = atTheLayer().type(thin);
    const poured = play.cook.pouredAt ?? Number.NaN;
    expect(play.advice.question).toBeNull();
    expect(play.say).toMatch(/^No hands for another \d+ min/);
    expect(play.query('yes')).toMatch(/^Not yet: this is asked in \d+ min\. Until then tools only/);
    expect(play.query('done')).toMatch(/^Not yet/);
    play.t = poured + minutes * 60 - 1;
    expect(play.advice.question).toBeNull();
    expect(play.advice.changesAt).toBe(poured + minutes * 60);
    play.t = poured + minutes * 60;
    expect(play.advice.question?.id).toBe('hands.crumb');
    expect(play.say).toContain('touches a crumb from the middle');
    expect(play.type('yes').advice.question?.id).toBe('hands.pause');
    expect(play.type('yes').phase).toBe('pull');
  });

  it('waits five minutes more after a crumb that was too hot', () => {
    const play = atTheLayer().type('yes').until('hands.crumb');
    play.t = play.advice.waits?.until ?? play.t;
    play.type('no');
    expect(play.say).toMatch(/No hands for another (4|5) min/);
    play.wait(300);
    expect(play.advice.question?.id).toBe('hands.crumb');
  });

  it('starts the time again when the mass was warmed', () => {
    const play = new Play({ kitchen: blind })
      .until('pull.stretch')
      .type('trouble stiff', 'done', 'done', 'done');
    expect(play.say).toMatch(/^No hands for another (19|20) min/);
  });

  it('is the same when the thermometer is lost on the way', () => {
    const play = atTheGate().type('thermometer none');
    expect(play.advice.question?.id).toBe('hands.layer');
  });

  it('leads a whole cook by cold water alone', () => {
    for (const outcome of coldWaterOutcomes.slice(0, 4)) {
      const play = new Play({ kitchen: blind }).until('boil.still').type(outcome);
      expect(play.advice.reached).toBe(false);
      expect(play.say).toMatch(outcome === 'firm ball' ? /^Not yet/ : /^Far from it yet/);
    }
    const play = new Play({ kitchen: blind }).until('boil.still').type('hard ball');
    expect(play.advice.reached).toBe(true);
    expect(play.advice.offTheHeat).toBe(true);
    expect(play.advice.temperature).toBeNull();
    expect(play.advice.forecast).toBeNull();
    expect(play.advice.nextReadingSeconds).toBeNull();
    expect(play.until('over').say).toMatch(/^Done/);
  });
});
