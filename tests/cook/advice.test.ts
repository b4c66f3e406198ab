import { describe, expect, it } from 'vitest';
import { advise } from '../../source/cook/advise.js';
import { phaseIds } from '../../source/recipe/recipe.js';
import { blind, hall, Play, seaside } from './play.js';

const boiling = () => new Play({ from: 'boil' });
const trail = (play: Play) => Object.fromEntries(play.advice.trail.map(({ phase, state }) => [phase, state]));

describe('the trail', () => {
  it('has every phase once, in order, and one that is now', () => {
    for (const from of phaseIds) {
      const { trail: said } = new Play({ from }).advice;
      expect(said.map(({ phase }) => phase)).toEqual([...phaseIds]);
      const at = phaseIds.indexOf(from);
      expect(said.map(({ state }) => state)).toEqual(
        phaseIds.map((_, index) => (index < at ? 'behind' : index === at ? 'now' : 'ahead')),
      );
    }
  });

  it('shows where other portions are', () => {
    const play = new Play({ from: 'pull' }).type('portion 3');
    play.cook = { ...play.cook, candy: { pull: 1, cut: 1, wrap: 1 } };
    expect(trail(play)).toMatchObject({
      fold: 'behind',
      pull: 'now',
      cut: 'also',
      wrap: 'also',
      clean: 'ahead',
    });
  });
});

describe('when the pot has to come off', () => {
  it('says so at once by a reading at the take-off, whatever step is open, and not before', () => {
    const before = boiling().reads(60, 110, 112);
    expect(before.advice).toMatchObject({ offTheHeat: false, urgent: false });
    const at = before.reads(60, 128);
    expect(at.advice).toMatchObject({ offTheHeat: true, urgent: true, step: 'boil.off', canBeDone: true });
  });

  it('is quiet about it once the pot is off, the syrup poured, or the cook given up', () => {
    const hot = () => boiling().reads(60, 110, 112, 128);
    for (const play of [hot().type('pot off'), hot().type('stop'), hot().type('at fold')])
      expect(play.advice).toMatchObject({ offTheHeat: false, urgent: false });
  });

  it('is said when the forecast comes to it with nobody reading', () => {
    const play = boiling().type('heat high').reads(60, 118, 120, 122);
    const { forecast } = play.advice;
    expect(forecast).not.toBeNull();
    play.wait((forecast?.takeOffSeconds.typical ?? 0) * 3);
    expect(play.advice.offTheHeat).toBe(true);
  });

  it('says it as well after fingers felt it done, until somebody says that it is off', () => {
    const felt = new Play({ from: 'boil', kitchen: blind });
    felt.until('boil.still').wait(1500).type(felt.cook.batch.target.feels);
    const { feels } = felt.cook.batch.target;
    for (let turn = 0; turn < 3 && felt.phase !== 'flavour'; turn += 1) felt.wait(60).type(feels);
    expect(felt.phase).toBe('flavour');
    expect(felt.advice).toMatchObject({ offTheHeat: true, urgent: true });
    expect(felt.type('pot off').advice).toMatchObject({ offTheHeat: false, urgent: false });
  });

  it('stands before a trouble that may wait, and behind one that may not', () => {
    const hot = () => boiling().reads(60, 110, 112, 128);
    expect(hot().type('power').advice.step).toBe('boil.off');
    expect(hot().type('burn').advice.step).toBe('trouble.burn.1');
    expect(boiling().reads(60, 110).type('power').advice.step).toBe('trouble.power.1');
  });
});

describe('in trouble', () => {
  const burnt = () => boiling().reads(60, 110).type('burn').advice;

  it('nothing else is said, shown or asked', () => {
    const calm = boiling().reads(60, 110).type('done').advice;
    expect(calm.cues.length).toBeGreaterThan(0);
    expect(calm.watch).not.toBeNull();
    expect(burnt()).toMatchObject({ next: null, watch: null, cautions: [], cues: [], waits: null });
  });

  it('the first instruction is shouted by its own word, those behind it by a common one', () => {
    const play = boiling().type('burn');
    expect(play.advice).toMatchObject({
      step: 'trouble.burn.1',
      shout: { id: 'hazard.burn.shout' },
      urgent: true,
    });
    expect(play.advice.why).toEqual({ id: 'trouble.why', values: { name: 'burn' } });
    expect(play.advice.items.map(({ id }) => id)).toEqual([2, 3, 4, 5].map((at) => `hazard.burn.${at}`));
    play.type('done');
    expect(play.advice).toMatchObject({ step: 'trouble.burn.2', shout: { id: 'trouble.more.shout' } });
    expect(play.advice.items.map(({ id }) => id)).toEqual([3, 4, 5].map((at) => `hazard.burn.${at}`));
  });

  it('one that may wait is not urgent', () => {
    expect(boiling().type('power').advice).toMatchObject({ step: 'trouble.power.1', urgent: false });
  });

  it('cooling counts twenty minutes from the report, before every other clock', () => {
    const play = boiling().type('burn');
    const since = play.t;
    const [cooling] = play.advice.timers;
    expect(cooling).toEqual({ id: 'trouble.burn', from: since, until: since + 1200, due: false });
    expect(play.advice.troubles).toMatchObject([{ name: 'burn', since, until: since + 1200 }]);
    play.wait(1199);
    expect(play.advice.timers[0]?.due).toBe(false);
    expect(play.wait(1).advice.timers[0]?.due).toBe(true);
  });

  it('what has been told stays open without an instruction and without a clock it never had', () => {
    const play = boiling().type('foam', 'done', 'done');
    expect(play.advice.troubles).toMatchObject([{ name: 'foam', instruction: null, rest: [], until: null }]);
    expect(play.advice.step).not.toMatch(/^trouble/);
  });

  it('broken glass is asked before anything else, and "yes" is right when in doubt', () => {
    const play = boiling().type('trouble thermometer');
    expect(play.advice.question).toMatchObject({
      id: 'trouble.glass',
      text: { id: 'trouble.glass.ask' },
      answers: ['yes', 'no'],
      safe: 'yes',
      kind: 'safety',
    });
    expect(play.type('no').advice.question).toBeNull();
  });

  it('its warning says what causes it, what it does and what to do', () => {
    const [warning] = burnt().warnings;
    expect(warning).toMatchObject({
      id: 'burn',
      level: 'now',
      signal: 'WARNING',
      evidence: null,
      cause: { id: 'hazard.burn.cause' },
      consequence: { id: 'hazard.burn.does' },
    });
    expect(warning?.response.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5].map((at) => `hazard.burn.${at}`));
  });

  it('a warning that is answered is not said again, what to do still is', () => {
    const play = boiling().type('burn', 'ok');
    expect(play.warned).not.toContain('burn');
    expect(play.step).toBe('trouble.burn.1');
  });

  it('the more pressing of two stands first', () => {
    const play = boiling().type('power', 'fire');
    expect(play.warned.slice(0, 2)).toEqual(['fire', 'power']);
    expect(play.advice.step).toBe('trouble.fire.1');
  });
});

describe('questions', () => {
  it('come one at a time: glass, what became of the pot, what is true now, the doubted reading', () => {
    const play = boiling().reads(60, 110, 112).reads(1, 131);
    expect(play.advice.question).toMatchObject({
      id: 'reading.doubt',
      answers: ['yes', 'no'],
      safe: 'no',
      kind: 'reading',
    });
    expect(play.advice.question?.text).toMatchObject({
      id: 'reading.doubt.ask',
      values: { of: 'syrup', because: 'jump', lastCelsius: expect.closeTo(112, 0) },
    });
    play.type('heat low', 'undo');
    expect(play.advice.question).toMatchObject({ id: 'unsettled.heat', kind: 'what is true now' });
    play.happen({ kind: 'gap', seconds: 900, sure: true });
    expect(play.advice.question?.text.id).toBe('gap.ask');
    play.type('trouble thermometer');
    expect(play.advice.question?.id).toBe('trouble.glass');
  });

  it('of the middle compares with no reading of the syrup', () => {
    const play = boiling().reads(60, 110).type('at fold').until('fold');
    play.type('middle 300c');
    expect(play.advice.question?.text).toMatchObject({ values: { of: 'middle', lastCelsius: null } });
  });

  it('of what was taken back name what it is', () => {
    const play = boiling().type('lid on', 'undo');
    expect(play.advice.question?.text).toEqual({ id: 'unsettled.ask', values: { what: 'lid' } });
  });

  it('of the ring offer its own words, of the lid and the pot both places', () => {
    const asked = (act: string, kitchen = hall) =>
      new Play({ from: 'boil', kitchen }).type(act, 'undo').advice.question?.answers;
    expect(asked('heat low')).toEqual(boiling().advice.typing.heatWords.map((word) => `heat ${word}`));
    expect(asked('lid on')).toEqual(['lid on', 'lid off']);
    expect(asked('pot off')).toEqual(['pot on', 'pot off']);
    expect(new Play().until('pour.pour').type('done', 'undo').advice.question).toMatchObject({
      answers: ['at pour', 'at fold'],
      safe: 'at pour',
    });
  });

  it('a list read aloud is a pause, a single line is safety; both say what the step says', () => {
    const pause = new Play().until('heat.pause').advice;
    expect(pause.question).toMatchObject({ id: 'heat.pause', kind: 'pause', text: pause.say });
    const line = new Play({ from: 'fold', kitchen: blind }).until('hands.layer').advice;
    expect(line.question).toMatchObject({ id: 'hands.layer', kind: 'safety', text: line.say });
  });

  it('one that has its moment is not asked before it, but at it', () => {
    const play = new Play({ from: 'fold', kitchen: blind });
    for (let turn = 0; turn < 40 && play.advice.waits === null; turn += 1) {
      play.wait(1);
      play.forward();
    }
    const { waits } = play.advice;
    expect(waits).not.toBeNull();
    expect(play.advice.question).toBeNull();
    expect(play.advice.changesAt).toBeLessThanOrEqual(waits?.until ?? 0);
    play.t = (waits?.until ?? 0) - 1;
    expect(play.advice.waits).toEqual(waits);
    play.t = waits?.until ?? 0;
    expect(play.advice.waits).toBeNull();
    expect(play.advice.question?.id).toBe(waits?.question);
  });
});

describe('when to read next', () => {
  it.each([
    ['dissolve', 180],
    ['boil', 120],
  ] as const)('in the phase %s, before there is a forecast, %d seconds after it began', (from, every) => {
    const play = new Play({ from });
    const began = play.cook.enteredAt[from] ?? Number.NaN;
    expect(play.advice.nextReadingSeconds).toBe(began + every - play.t);
    play.wait(50);
    expect(play.advice.nextReadingSeconds).toBe(began + every - play.t);
    expect(play.advice.changesAt).toBe(began + every);
    play.wait(every);
    expect(play.advice.nextReadingSeconds).toBe(0);
  });

  it('is counted from the last reading; from the forecast once two are taken', () => {
    const play = boiling().reads(60, 110);
    expect(play.advice.nextReadingSeconds).toBe(120);
    expect(play.wait(30).advice.nextReadingSeconds).toBe(90);
    play.reads(30, 112);
    expect(play.advice.forecast).not.toBeNull();
    const first = play.advice.nextReadingSeconds;
    expect(first).toBeGreaterThan(0);
    expect(first).toBeLessThan(120);
    expect(play.advice.meaning).toMatchObject({ values: { nextSeconds: first } });
    expect(boiling().reads(60, 110).wait(30).advice.meaning).toMatchObject({ values: { nextSeconds: 90 } });
  });

  it('is nothing without a thermometer, off the ring, and once poured or asked off', () => {
    const none = [
      new Play({ from: 'boil', kitchen: blind }),
      boiling().type('pot off'),
      boiling().type('at fold'),
      boiling().reads(60, 110, 112, 128),
      new Play(),
      new Play({ from: 'pull' }),
    ];
    for (const play of none) expect(play.advice.nextReadingSeconds).toBeNull();
  });
});

describe('what a reading means', () => {
  it('is nothing without one, once poured, or given up', () => {
    expect(boiling().advice).toMatchObject({ meaning: null, meaningOf: null, readAt: null });
    for (const end of ['at fold', 'stop'])
      expect(boiling().reads(60, 110).type(end).advice).toMatchObject({ meaning: null, meaningOf: null });
  });

  it('says how far it is, and of which reading it is said', () => {
    const play = boiling().reads(60, 110, 112);
    const { meaning, meaningOf, readAt } = play.advice;
    expect(meaningOf).toBe(play.cook.lastReading?.seq);
    expect(readAt).toBe(play.t);
    const toGo = play.cook.takeOffCelsius - (play.cook.lastReading?.celsius ?? 0);
    expect(meaning).toMatchObject({ id: 'reading.means', values: { toGoKelvin: toGo } });
    expect(toGo).toBeGreaterThan(3);
    expect(toGo).toBeLessThan(20);
    expect(meaning).toMatchObject({ values: { kelvinPerSecond: expect.closeTo(2 / 60, 3) } });
  });

  it('names a stage only of a syrup that boils', () => {
    expect(new Play({ from: 'dissolve' }).reads(60, 80).advice.meaning).toMatchObject({
      values: { stage: null },
    });
    expect(boiling().type('done').reads(60, 118).advice.meaning).toMatchObject({
      values: { stage: 'firm ball' },
    });
  });

  it('no temperature is shown before a reading, and no forecast before two', () => {
    expect(boiling().advice).toMatchObject({ temperature: null, forecast: null });
    const one = boiling().reads(60, 110).advice;
    expect(one.temperature?.celsius).toBeCloseTo(110, 0);
    expect(one.forecast).toBeNull();
    expect(boiling().reads(60, 110, 112).advice.forecast).not.toBeNull();
    expect(new Play({ from: 'dissolve' }).reads(60, 70, 75).advice.forecast).toBeNull();
    expect(boiling().reads(60, 110, 112).type('at fold').advice).toMatchObject({
      temperature: null,
      stages: null,
    });
  });
});

describe('clocks', () => {
  const pulling = () => {
    const play = new Play({ from: 'pull' });
    play.until('pull.stretch');
    return play;
  };
  const regrease = (play: Play) => play.advice.timers.find(({ id }) => id === 'regrease');

  it('that come again stand as due for a minute, then count to the next', () => {
    const play = pulling();
    const from = regrease(play)?.from ?? Number.NaN;
    const at = (seconds: number) => {
      play.t = from + seconds;
      return regrease(play);
    };
    expect(at(179)).toMatchObject({ until: from + 180, due: false });
    expect(at(180)).toMatchObject({ until: from + 180, due: true });
    expect(at(239)).toMatchObject({ until: from + 180, due: true });
    expect(at(240)).toMatchObject({ until: from + 360, due: false });
    expect(at(360)).toMatchObject({ until: from + 360, due: true });
  });

  it('the advice changes when one becomes due and when it is set anew', () => {
    const play = pulling();
    const from = regrease(play)?.from ?? Number.NaN;
    const changes = (seconds: number) => advise(play.cook, from + seconds).changesAt;
    expect(changes(61)).toBe(from + 180);
    expect(changes(180)).toBe(from + 240);
    expect(changes(240)).toBe(from + 300);
    expect(changes(300)).toBe(from + 360);
  });

  it('that come once stay due', () => {
    const play = pulling();
    const droop = () => play.advice.timers.find(({ id }) => id === 'droop-test');
    const { until } = droop() ?? {};
    play.t = (until ?? 0) - 1;
    expect(droop()?.due).toBe(false);
    play.t = until ?? 0;
    expect(droop()?.due).toBe(true);
    play.wait(500);
    expect(droop()).toMatchObject({ until, due: true });
  });
});

describe('cautions', () => {
  it.each([
    ['coil', true],
    ['glass-ceramic', true],
    ['gas', false],
    ['induction', false],
  ] as const)('of a ring that stays hot, on %s: %s', (stove, said) => {
    const play = new Play({ from: 'boil', kitchen: { ...seaside, stove } }).reads(60, 110, 112, 128);
    const cautions = play.advice.cautions.map(({ id }) => id);
    expect(cautions).toContain('molten-sugar');
    expect(cautions.includes('glowing-ring')).toBe(said);
    for (const caution of play.advice.cautions) {
      expect(caution).toMatchObject({ since: play.t, evidence: null });
      expect(caution.response.length).toBeGreaterThan(0);
    }
  });
});

describe('hands', () => {
  it.each(phaseIds)('are in the candy in the phase %s only while it is pulled or cut', (from) => {
    expect(new Play({ from }).advice.handsOn).toBe(from === 'pull' || from === 'cut');
  });
});

describe('what typing means', () => {
  it('a bare number is the syrup until it is poured, then the middle', () => {
    expect(boiling().advice.typing.bare).toBe('syrup');
    expect(boiling().type('at fold').advice.typing.bare).toBe('middle');
  });

  it('is in the unit of the thermometer that is read now', () => {
    const [dial] = seaside.thermometers;
    if (dial === undefined) throw new Error('no dial');
    const kitchen = {
      ...seaside,
      thermometers: [
        { ...dial, id: 'pot', use: 'pot' as const, unit: 'C' as const },
        { ...dial, id: 'middle', use: 'middle' as const, unit: 'F' as const },
      ],
    };
    expect(new Play({ from: 'boil', kitchen }).advice.typing.unit).toBe('C');
    expect(new Play({ from: 'boil', kitchen }).type('at fold').advice.typing.unit).toBe('F');
    const onlyPot = { ...kitchen, thermometers: kitchen.thermometers.slice(0, 1), unit: 'F' as const };
    expect(new Play({ from: 'boil', kitchen: onlyPot }).type('at fold').advice.typing.unit).toBe('C');
    expect(new Play({ from: 'boil', kitchen: { ...blind, unit: 'F' } }).advice.typing.unit).toBe('F');
  });

  it('names the open troubles', () => {
    expect(boiling().type('power', 'foam').advice.typing.openTroubles).toEqual(['power', 'foam']);
  });
});

describe('advice of a moment that is past', () => {
  it('is that of the last event: time never runs back', () => {
    const play = boiling().reads(60, 110);
    expect(advise(play.cook, play.t - 40)).toEqual(advise(play.cook, play.t));
    expect(play.advice.now).toBe(play.t);
  });
});
