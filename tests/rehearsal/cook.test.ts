import { describe, expect, it } from 'vitest';
import { fastClock } from '../../source/rehearsal/clock.js';
import { foamOf } from '../../source/rehearsal/foam.js';
import { rehearsalOpening } from '../../source/rehearsal/rehearse.js';
import { RehearsedSession } from '../../source/rehearsal/rehearsed-session.js';
import { ropeOf } from '../../source/rehearsal/rope.js';
import { simulatedCook } from '../../source/rehearsal/simulated-cook.js';
import { slabOf } from '../../source/rehearsal/slab.js';
import type { SurpriseName } from '../../source/rehearsal/surprises.js';
import { rehearsalVerdict } from '../../source/rehearsal/verdict.js';
import { startUnkept } from '../../source/session/start.js';
import { words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { hall, hallBatch, rehearsal } from './hall.js';

const print = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });

const passes = (seconds: number, run: (seconds: number) => void): void => {
  for (let t = 0; t < seconds; t += 10) run(10);
};

describe('the slab', () => {
  it('has a middle hotter than its skin, once it is folded thick', () => {
    const slab = slabOf(900, 118, 17);
    passes(150, slab.advance);
    slab.fold();
    slab.fold();
    passes(60, slab.advance);
    expect(slab.middleCelsius()).toBeGreaterThan(slab.surfaceCelsius() + 1);
    expect(slab.thicknessMetres()).toBeGreaterThan(0.015);
  });

  it('is ready for hands after about a quarter of an hour, as the trade says (8-25 min)', () => {
    const slab = slabOf(900, 118, 17);
    let ready = 0;
    for (let t = 0; t < 3600 && slab.middleCelsius() > 45; t += 10) {
      slab.advance(10);
      if ([180, 360, 540].includes(t)) slab.fold();
      ready = t;
    }
    expect(ready / 60).toBeGreaterThan(8);
    expect(ready / 60).toBeLessThan(25);
  });

  it('cools to the room and never below it', () => {
    const slab = slabOf(600, 120, 17);
    passes(6 * 3600, slab.advance);
    expect(slab.middleCelsius()).toBeGreaterThan(16.99);
    expect(slab.middleCelsius()).toBeLessThan(19);
  });

  it('cools slower when it is thicker', () => {
    const [flat, folded] = [slabOf(900, 100, 17), slabOf(900, 100, 17)];
    folded.fold();
    folded.fold();
    passes(400, flat.advance);
    passes(400, folded.advance);
    expect(folded.middleCelsius()).toBeGreaterThan(flat.middleCelsius());
  });
});

describe('the rope', () => {
  it('droops at first, then holds, then is too tough to pull on', () => {
    const rope = ropeOf(45, 26, 9);
    expect(rope.droops()).toBe(true);
    let [holds, tough] = [0, 0];
    for (let t = 0; t < 3600; t += 10) {
      rope.advance(10);
      if (holds === 0 && !rope.droops()) holds = t;
      if (tough === 0 && rope.stiff()) tough = t;
    }
    expect(holds).toBeGreaterThan(30);
    expect(tough).toBeGreaterThan(holds);
    expect(tough / 60).toBeLessThan(20);
  });

  it('takes up air, a fifth or so of its volume', () => {
    const rope = ropeOf(45, 26, 9);
    passes(900, rope.advance);
    expect(rope.airShare()).toBeGreaterThan(0.15);
    expect(rope.airShare()).toBeLessThan(0.3);
  });
});

describe('foam', () => {
  it('rises with the heat and sinks off the ring', () => {
    const foam = foamOf(2.2, 0.03, 1);
    passes(60, (seconds) => foam.advance(seconds, 400, true));
    const low = foam.heightMetres();
    passes(60, (seconds) => foam.advance(seconds, 900, true));
    const high = foam.heightMetres();
    passes(60, (seconds) => foam.advance(seconds, 0, true));
    expect(high).toBeGreaterThan(low * 1.5);
    expect(foam.heightMetres()).toBeLessThan(high / 10);
  });
});

describe('a rehearsal without a screen', () => {
  it('is the same for the same seed, and another cook for another', () => {
    const typed = (seed: number) => rehearsal(seed).cook.log.map(({ t, kind }) => `${t.toFixed(3)} ${kind}`);
    expect(typed(4)).toEqual(typed(4));
    expect(typed(4)).not.toEqual(typed(5));
  });

  it('goes from the cold pot to wrapped pieces with ordinary words, none of them refused', () => {
    const { ended, queried, cook, truth } = rehearsal(7);
    expect(ended).toBe(true);
    expect(queried).toEqual([]);
    expect(truth.restStage).toBe('hard ball');
    expect(cook.counted ?? cook.weighed).not.toBeNull();
  });

  it('can never be taken for a real cook', () => {
    const advised: boolean[] = [];
    const { cook } = rehearsal(7, null, ({ after: advice }) => advised.push(advice.rehearsal));
    expect(cook.log[0]).toMatchObject({ kind: 'opened', seed: 7 });
    expect(advised.length).toBeGreaterThan(20);
    expect(advised.every((one) => one)).toBe(true);
  });

  it('says what it came to, phase by phase', () => {
    const { cook, truth } = rehearsal(7);
    const verdict = rehearsalVerdict(cook, truth, null);
    const spent = verdict.phases.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(spent).toBeCloseTo(cook.t, 3);
    expect(verdict.phases.map(({ phase }) => phase)).toContain('pull');
    expect(verdict.seed).toBe(7);
    expect(verdict.changes.length).toBeGreaterThan(0);
  });
});

describe('the fast clock', () => {
  const wall = { seconds: 1000 };
  const real = { up: () => wall.seconds, wall: () => wall.seconds * 1000 };

  it('runs at its pace, stands when paused, and is put forward', () => {
    const clock = fastClock(real, 20);
    const from = clock.up();
    wall.seconds += 3;
    expect(clock.up() - from).toBeCloseTo(60, 9);
    clock.pause();
    wall.seconds += 100;
    expect(clock.up() - from).toBeCloseTo(60, 9);
    clock.skip(40);
    expect(clock.up() - from).toBeCloseTo(100, 9);
    clock.go();
    wall.seconds += 1;
    expect(clock.up() - from).toBeCloseTo(120, 9);
    expect(clock.wall() - clock.up() * 1000).toBeCloseTo(0, 6);
  });

  it('runs slower where asked to, never faster than its pace, and takes nothing back', () => {
    const clock = fastClock(real, 20);
    const from = clock.up();
    wall.seconds += 1;
    clock.noFasterThan(1);
    wall.seconds += 10;
    expect(clock.up() - from).toBeCloseTo(30, 9);
    clock.noFasterThan(Number.POSITIVE_INFINITY);
    wall.seconds += 1;
    expect(clock.up() - from).toBeCloseTo(50, 9);
    clock.noFasterThan(0);
    wall.seconds += 1;
    expect(clock.up() - from).toBeCloseTo(51, 9);
  });
});

describe('a rehearsal that a person types', () => {
  const begin = (auto: boolean, surprise: SurpriseName | null = null) => {
    const wall = { seconds: 0 };
    const clock = fastClock({ up: () => wall.seconds, wall: () => wall.seconds * 1000 }, 60);
    const opening = rehearsalOpening({ ...hall, seed: 3, surprise: null, version: 'test' });
    const session = startUnkept(opening, clock);
    const table = simulatedCook(hallBatch, 3, surprise);
    const rehearsed = new RehearsedSession({ session, table, clock, auto });
    const types = async (...lines: readonly string[]) => {
      let said = '';
      for (const line of lines) {
        const outcome = await rehearsed.type(line);
        said = outcome.kind === 'queried' ? outcome.queried.because.id : outcome.event.kind;
      }
      return said;
    };
    /** So many seconds of the wall, looked at as the screen does; seconds of the cook that went by. */
    const waits = async (seconds: number) => {
      const from = rehearsed.now();
      for (let past = 0; past < seconds; past += 0.2) {
        wall.seconds += 0.2;
        await rehearsed.look();
      }
      return rehearsed.now() - from;
    };
    return { rehearsed, types, wall, waits };
  };
  const toTheStove = ['done', 'done', 'yes', 'done', 'done', 'done', 'heat medium'];

  it('does to the simulated pot what is typed, and shows it on the dial', async () => {
    const { rehearsed, types, wall } = begin(false);
    await types(...toTheStove);
    const cold = rehearsed.dialNow()?.value ?? 0;
    wall.seconds += 5;
    expect(rehearsed.dialNow()?.value ?? 0).toBeGreaterThan(cold + 20);
  });

  it('skips to the next thing to do, and no further', async () => {
    const { rehearsed, types } = begin(false);
    await types(...toTheStove);
    expect(await rehearsed.skip()).toBeGreaterThan(60);
    expect(rehearsed.advice().nextReadingSeconds).toBe(0);
    expect(await rehearsed.skip()).toBe(0);
    expect(await types('skip')).toBe('rehearsal.nothing-to-skip');
  });

  it('types its own readings when asked to, as the pot and not as hands', async () => {
    const { rehearsed, types } = begin(true);
    await types(...toTheStove);
    await rehearsed.skip();
    const readings = rehearsed.cook.log.filter(({ kind }) => kind === 'reading');
    expect(readings.length).toBeGreaterThan(0);
    expect(readings).toSatisfy((all: readonly { by?: string }[]) => all.every(({ by }) => by === 'pot'));
    expect(rehearsed.advice().warnings.map(({ id }) => id)).not.toContain('unattended');
  });

  it('gives a list the time that it takes to read it aloud, and no more', async () => {
    const { types, waits } = begin(false);
    await types('done', 'done');
    expect(await waits(40)).toBeLessThan(50);
    await waits(20);
    expect(await waits(10)).toBeGreaterThan(500);
  });

  it('gives what goes wrong the time to be answered, then runs on', async () => {
    const { rehearsed, types, waits } = begin(true, 'power-cut');
    await types(...toTheStove);
    const seen: string[] = [];
    rehearsed.onHappening((said) => seen.push(...said.map(({ id }) => id)));
    for (let turn = 0; turn < 400 && !seen.includes('rehearsal.sees.power-gone'); turn++) {
      await waits(0.2);
      if (rehearsed.advice().canBeDone && rehearsed.advice().question === null) await types('done');
    }
    expect(seen).toContain('rehearsal.sees.power-gone');
    // It is said for as long as it stands, where nobody reads what scrolled by.
    expect(rehearsed.sight()).toMatchObject({ values: { wrong: ['power-gone'] } });
    expect(words(rehearsed.sight(), print)).toContain('THE LIGHT IS OUT');
    expect(await waits(20)).toBeLessThan(30);
    await types('trouble power');
    expect(await waits(10)).toBeLessThan(15);
    expect(await waits(40)).toBeGreaterThan(300);
  });

  it('asks for readings no faster than a person can type them', async () => {
    const { rehearsed, types, waits } = begin(false);
    await types(...toTheStove);
    await rehearsed.skip();
    // It is due, and nobody has typed it yet: a second of the wall is a second.
    await waits(0.2);
    expect(await waits(5)).toBeLessThan(6);
    await types(String(rehearsed.dialNow()?.value));
    const { nextReadingSeconds } = rehearsed.advice();
    expect((await waits(2)) / (nextReadingSeconds ?? 0)).toBeLessThan(0.6);
  });

  it('says for as long as it stands that it is paused', async () => {
    const { rehearsed, types, waits } = begin(false);
    expect(await types('pause')).toBe('rehearsal.paused');
    expect(await waits(5)).toBe(0);
    expect(rehearsed.sight()).toMatchObject({ values: { paused: true } });
    expect(await types('pause')).toBe('rehearsal.going');
    expect(rehearsed.sight()).toMatchObject({ values: { paused: false } });
  });

  it('tells what can be seen at the pot to whoever listens', async () => {
    const { rehearsed, types } = begin(true);
    const seen: string[] = [];
    rehearsed.onHappening((said) => seen.push(...said.map(({ id }) => id)));
    await types(...toTheStove);
    for (let turn = 0; turn < 6 && !seen.includes('rehearsal.sees.boils'); turn++) await rehearsed.skip();
    expect(seen).toContain('rehearsal.sees.dissolved');
    expect(seen).toContain('rehearsal.sees.boils');
    expect(await types('look')).toBe('rehearsal.look');
  });
});
