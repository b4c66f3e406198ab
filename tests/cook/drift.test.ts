import { describe, expect, it } from 'vitest';
import { type RunSheet, runSheetOf, shifted } from '../../source/batch/run-sheet.js';
import { openCook } from '../../source/cook/open.js';
import { readEvent } from '../../source/cook/read-event.js';
import { linesBetween } from '../../source/screen/lines.js';
import { adviceJson } from '../../source/sheets/advice-json.js';
import { words } from '../../source/texts/message.js';
import { blind, hall, type Opening, opened, Play } from './play.js';

/** A cook opened exactly when its run sheet sets out, and that sheet in seconds since the opening. */
const planned = (opening: Opening = {}): { play: Play; sheet: RunSheet; at: (phase: string) => number } => {
  const play = new Play(opening);
  const counted = runSheetOf(play.cook.batch);
  const sheet = shifted(counted, -(counted.phases[0]?.startsAt ?? 0));
  play.cook = openCook({ ...opened(opening), runSheet: sheet });
  const at = (phase: string) => sheet.phases.find((one) => one.phase === phase)?.startsAt ?? Number.NaN;
  return { play, sheet, at };
};

/** Takes the shortest way to a phase and comes there so many seconds after the plan. */
const comeTo = (play: Play, phase: 'dissolve' | 'boil', plannedAt: number, late: number): void => {
  const start = play.t;
  const before = new Play();
  before.cook = play.cook;
  before.t = start;
  before.seq = play.seq;
  before.until(phase);
  const took = before.t - start;
  play.wait(plannedAt + late - took - start);
  play.until(phase);
};

const said = (play: Play): string =>
  words({ id: 'drift', values: play.advice.drift ?? { seconds: Number.NaN } }, play.printer);

describe('drift against the run sheet', () => {
  it('is nothing without a run sheet', () => {
    expect(new Play().until('boil').advice.drift).toBeNull();
  });

  it('says how early or late a phase began', () => {
    const late = planned();
    comeTo(late.play, 'dissolve', late.at('dissolve'), 240);
    expect(late.play.phase).toBe('dissolve');
    expect(late.play.advice.drift).toMatchObject({ phase: 'dissolve', seconds: -240 });
    expect(said(late.play)).toBe('4 min behind');

    const early = planned();
    comeTo(early.play, 'dissolve', early.at('dissolve'), -180);
    expect(said(early.play)).toBe('3 min ahead');
    // An early start is used up by dawdling, and then it is late.
    early.play.wait(180 + (early.at('boil') - early.at('dissolve')) + 300);
    expect(early.play.advice.drift).toMatchObject({ phase: 'boil', seconds: -300 });
  });

  it('goes by the forecast in the boil', () => {
    const { play, at } = planned({ kitchen: hall });
    comeTo(play, 'boil', at('boil'), 0);
    play.until('boil.still');
    const { takeOffCelsius } = play.cook.batch.target;
    const f = (kelvin: number) =>
      Math.round(play.cook.batch.dial.toShownCelsius(takeOffCelsius - kelvin) * 1.8 + 32);
    play.reads(90, f(14), f(12), f(10));
    const { drift, forecast, now } = play.advice;
    expect(forecast).not.toBeNull();
    expect(drift?.phase).toBe('test');
    expect(drift?.seconds).toBeCloseTo(
      at('test') - now - (forecast?.takeOffSeconds.typical ?? Number.NaN),
      6,
    );
    // It is far quicker than planned.
    expect(drift?.seconds).toBeGreaterThan(180);
  });

  it('is not late because a test fell short and the pot went back', () => {
    const { play, at } = planned({ kitchen: blind });
    comeTo(play, 'boil', at('boil'), 0);
    play.until('boil.still').wait(300).type('pot off', 'soft ball').until('boil');
    expect(play.advice.drift).toMatchObject({ phase: 'boil' });
    expect(Math.abs(play.advice.drift?.seconds ?? Number.NaN)).toBeLessThan(30);
  });

  it('ends with the candy', () => {
    const { play } = planned();
    play.until('clean');
    expect(play.advice.drift).toBeNull();
    const given = planned().play.until('boil').type('stop');
    expect(given.advice.drift).toBeNull();
  });

  it('stands in the line mode beside phase and time, and in the JSON', () => {
    const { play, at } = planned();
    comeTo(play, 'dissolve', at('dissolve'), 240);
    expect(linesBetween(null, play.advice, play.printer)[0]).toMatch(/^\[DISSOLVE, [\d:]+, 4 min behind\]/);
    expect(adviceJson(play.advice, play.printer, null)).toMatchObject({
      drift: { seconds: -240, phase: 'dissolve' },
    });
    expect(adviceJson(new Play().advice, play.printer, null)).toMatchObject({ drift: null });
  });

  it('comes back from the journal; a plan of another shape is left out and the cook stays', () => {
    const { play, sheet } = planned();
    const [first] = play.events;
    const kept = JSON.parse(JSON.stringify(first));
    expect(readEvent(kept)).toMatchObject({ kind: 'opened', runSheet: sheet });
    expect(readEvent({ ...kept, runSheet: null })).toMatchObject({ runSheet: null });
    expect(readEvent({ ...kept, runSheet: { doors: '19:30' } })).toMatchObject({
      kind: 'opened',
      runSheet: null,
    });
  });
});

describe('cue lines', () => {
  const inTheBoil = (opening: Opening): Play => new Play(opening).until('boil.still');
  const shown = (play: Play, kelvinBelow: number): number =>
    Math.round((play.cook.batch.dial.toShownCelsius(play.cook.takeOffCelsius - kelvinBelow) * 9) / 5 + 32);

  it('give way to a trouble: nobody entertains beside it', () => {
    const play = inTheBoil({ kitchen: hall });
    expect(play.advice.cues.length).toBeGreaterThan(0);
    expect(play.type('trouble grains').advice.cues).toEqual([]);
    expect(play.type('over grains').advice.cues.length).toBeGreaterThan(0);
  });

  it('stop 6 K below the take-off and come back when the pot is empty', () => {
    const play = inTheBoil({ kitchen: hall });
    play.reads(90, shown(play, 14), shown(play, 11));
    expect(play.advice.cues.length).toBeGreaterThan(0);
    play.reads(60, shown(play, 5));
    expect(play.phase).toBe('boil');
    expect(play.advice.cues).toEqual([]);
    play.reads(60, shown(play, -1));
    for (let turn = 0; turn < 40 && play.cook.pouredAt === null; turn += 1) {
      expect(play.advice.cues, play.step ?? '').toEqual([]);
      if (play.step === 'boil.off') play.type('pot off');
      else if (play.step === 'test.drop') play.type('hard ball');
      else play.forward();
    }
    expect(play.until('fold').advice.cues.length).toBeGreaterThan(0);
  });

  it('stop by the forecast when nobody reads, and the advice says when it will change', () => {
    const play = inTheBoil({ kitchen: hall });
    play.reads(90, shown(play, 14), shown(play, 12), shown(play, 10));
    expect(play.advice.cues.length).toBeGreaterThan(0);
    const cues = (): number => play.advice.cues.length;
    for (let turn = 0; turn < 50 && cues() > 0; turn += 1) {
      const next = play.advice.changesAt;
      if (next === null) throw new Error('it never changes');
      // Nothing but running numbers changes before that moment.
      play.t = next - 0.5;
      expect(cues()).toBeGreaterThan(0);
      play.t = next;
    }
    expect(cues()).toBe(0);
    expect(play.advice.offTheHeat).toBe(false);
  });

  it('stop at once for a high reading, also one that is doubted', () => {
    const play = inTheBoil({ kitchen: hall });
    play.reads(60, shown(play, 16), shown(play, 15));
    play.reads(5, shown(play, 2));
    expect(play.advice.cues).toEqual([]);
  });

  it('stop at the first firm ball where there is no thermometer', () => {
    const play = inTheBoil({ kitchen: blind });
    expect(play.advice.cues.length).toBeGreaterThan(0);
    play.wait(300).type('pot off', 'soft ball').until('boil.still');
    expect(play.advice.cues.length).toBeGreaterThan(0);
    play.wait(120).type('pot off', 'firm ball');
    expect(play.advice.cues).toEqual([]);
    expect(play.until('boil').advice.cues).toEqual([]);
  });
});
