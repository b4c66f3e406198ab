import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { recover } from '../../source/journal/recover.js';
import type { Clock } from '../../source/session/clock.js';
import type { Session } from '../../source/session/session.js';
import { startKept, startUnkept } from '../../source/session/start.js';
import { hall, opened } from '../cook/play.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kettlehand-clocks-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** The first Sunday of the winter fair, 02:30 UTC on a day on which summer time ends in the hill village. */
const fair = Date.parse('2026-10-25T00:30:00Z');

/** A machine whose clocks do what the test says; the awake part of time lets the timers run. */
class Machine implements Clock {
  wallMilliseconds = fair;
  upSeconds = 5000;
  boot: string | null = 'aaaa1111';
  #timers: { every: number; at: number; run: () => void }[] = [];
  #awake = 0;

  up = (): number => this.upSeconds;
  wall = (): number => this.wallMilliseconds;
  every = (seconds: number, run: () => void): (() => void) => {
    const timer = { every: seconds, at: this.#awake + seconds, run };
    this.#timers.push(timer);
    return () => {
      this.#timers = this.#timers.filter((other) => other !== timer);
    };
  };

  sleeps(seconds: number): void {
    this.upSeconds += seconds;
    this.wallMilliseconds += seconds * 1000;
  }

  /** Awake: in steps of a second, each with its timers. */
  async passes(seconds: number): Promise<void> {
    for (let passed = 0; passed < seconds; passed += 1) {
      this.sleeps(1);
      this.#awake += 1;
      for (const timer of this.#timers) {
        if (timer.at > this.#awake) continue;
        timer.at += timer.every;
        timer.run();
      }
    }
    await new Promise((resolve) => setTimeout(resolve, 0));
  }

  restarts(upSeconds: number): void {
    this.upSeconds = upSeconds;
    this.boot = this.boot === null ? null : 'bbbb2222';
    this.#timers = [];
  }
}

const opening = () => {
  const { recipe, runSheet, seed, version, from } = opened({ kitchen: hall });
  return { recipe, kitchen: hall, runSheet, seed, version, from };
};

const start = async (machine: Machine, attends = true): Promise<Session> => {
  const started = await startKept(join(folder, 'cook.jsonl'), opening(), machine);
  if ('problem' in started) throw new Error(started.problem.id);
  if (attends) await started.session.attend();
  return started.session;
};

/** Into the boil, with readings; the pot stands on the ring. */
const boil = async (session: Session, machine: Machine): Promise<void> => {
  for (const line of ['done', 'done', 'yes', 'done', 'done', 'done', 'heat medium', 'done', 'done']) {
    await machine.passes(20);
    const outcome = await session.type(line);
    if (outcome.kind === 'queried') throw new Error(`${line} at ${session.advice().step}`);
  }
  for (const line of ['222', '223.5', '225']) {
    await machine.passes(60);
    await session.type(line);
  }
  expect(session.advice().phase).toBe('boil');
};

const kinds = (): readonly string[] =>
  recover(readFileSync(join(folder, 'cook.jsonl'))).entries.map(({ kind }) => kind);
const gaps = () =>
  recover(readFileSync(join(folder, 'cook.jsonl')))
    .entries.filter(({ kind }) => kind === 'gap')
    .map(({ seconds, sure }) => ({ seconds, sure }));

describe('a laptop that goes to sleep', () => {
  it('counts 20 minutes of sleep in the boil, and asks about the pot before it advises anything', async () => {
    const machine = new Machine();
    const session = await start(machine);
    await boil(session, machine);
    const before = session.now();
    let told = 0;
    session.onGap(() => {
      told += 1;
    });
    machine.sleeps(1200);
    expect(session.now() - before).toBe(1200);
    // Nobody types: it is noticed all the same.
    await machine.passes(6);
    await session.happen({ kind: 'note', text: 'awake' });
    expect(told).toBe(1);
    expect(session.advice()).toMatchObject({ step: 'gap.look', question: { id: 'gap' } });
    expect(gaps()).toEqual([{ seconds: expect.closeTo(1205, -1), sure: true }]);
    await session.close();
  });

  it('hears of the sleep before what is typed first, so that "done" answers nothing that was not seen', async () => {
    const machine = new Machine();
    const session = await start(machine);
    await boil(session, machine);
    machine.sleeps(600);
    expect((await session.type('done')).kind).toBe('queried');
    expect(session.advice().question?.id).toBe('gap');
    expect((await session.type('238')).kind).toBe('event');
    expect(kinds().slice(-2)).toEqual(['gap', 'reading']);
    await session.type('pot on');
    expect(session.advice().question).toBeNull();
    await session.close();
  });

  it('asks nothing after a nap of a minute, nor of somebody who is silent for an hour', async () => {
    const machine = new Machine();
    const session = await start(machine);
    await boil(session, machine);
    machine.sleeps(90);
    await machine.passes(3600);
    await session.type('note still here');
    expect(gaps()).toEqual([]);
    expect(session.cook.t).toBeGreaterThan(3690);
    await session.close();
  });
});

describe('a wall clock that is wrong', () => {
  it.each([
    ['set back an hour', -3600],
    ['set forward an hour', 3600],
    ['set back ten years', -315_360_000],
  ])('%s in the middle: durations stay right, nothing is asked', async (_what, jump) => {
    const machine = new Machine();
    const session = await start(machine);
    await boil(session, machine);
    const before = session.now();
    machine.wallMilliseconds += jump * 1000;
    await machine.passes(100);
    expect(session.now() - before).toBe(100);
    await session.type('226');
    await session.close();
    // And while the program is not running.
    machine.wallMilliseconds += jump * 1000;
    machine.sleeps(50);
    const again = await start(machine);
    expect(again.now() - before).toBe(150);
    expect(again.advice().question).toBeNull();
    expect(gaps()).toEqual([]);
    await again.close();
  });

  it.each([
    [
      'an hour that comes twice in October is two hours',
      '2026-10-25T00:30:00.000Z',
      '2026-10-25T02:30:00.000Z',
    ],
    ['an hour that is left out in March is none', '2027-03-28T00:30:00.000Z', '2027-03-28T02:30:00.000Z'],
  ])('keeps its stamps in universal time: %s', async (_what, before, after) => {
    const machine = new Machine();
    machine.wallMilliseconds = Date.parse(before);
    const zone = process.env.TZ;
    process.env.TZ = 'Europe/Zurich';
    try {
      const session = await start(machine);
      await session.type('note before the change');
      await machine.passes(7200);
      await session.type('note after the change');
      await session.close();
      // Nor when it is taken up again after the change.
      machine.sleeps(60);
      const again = await start(machine);
      expect(again.now()).toBe(7260);
      expect(again.advice().question).toBeNull();
      await again.close();
    } finally {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    }
    const { entries } = recover(readFileSync(join(folder, 'cook.jsonl')));
    expect(entries.map(({ kind, at, t }) => [kind, at, t])).toEqual([
      ['opened', before, 0],
      ['note', before, 0],
      ['note', after, 7200],
    ]);
  });
});

describe('a cook that is taken up again', () => {
  const interrupted = async (machine: Machine): Promise<number> => {
    const session = await start(machine);
    await boil(session, machine);
    const t = session.now();
    await session.close();
    return t;
  };

  it('within two minutes: goes on where it stood, and asks nothing', async () => {
    const machine = new Machine();
    const t = await interrupted(machine);
    machine.sleeps(100);
    const again = await start(machine);
    expect(again.now()).toBe(t + 100);
    expect(again.advice().question).toBeNull();
    expect(again.advice().temperature).not.toBeNull();
    await again.close();
    expect(gaps()).toEqual([]);
  });

  it.each([
    ['after ten minutes', 600],
    ['the next day', 86_400],
  ])('%s without a restart: sure of the time, and asks', async (_what, away) => {
    const machine = new Machine();
    const t = await interrupted(machine);
    machine.sleeps(away);
    const again = await start(machine);
    expect(again.now()).toBe(t + away);
    expect(again.advice().question?.id).toBe('gap');
    await again.close();
    expect(gaps()).toEqual([{ seconds: away, sure: true }]);
  });

  it.each([
    ['less', 40],
    ['more', 90_000],
  ])(
    'the next day, after a restart, with %s up-time than before: by the wall clock, and asks',
    async (_, up) => {
      const machine = new Machine();
      const t = await interrupted(machine);
      machine.sleeps(86_400);
      machine.restarts(up);
      const again = await start(machine);
      expect(again.now()).toBe(t + 86_400);
      expect(again.advice().question?.id).toBe('gap');
      await again.close();
      expect(gaps()).toEqual([{ seconds: 86_400, sure: false }]);
    },
  );

  it('after a restart with a wall clock that fell back: time never falls, and it asks', async () => {
    const machine = new Machine();
    const t = await interrupted(machine);
    machine.wallMilliseconds -= 3_600_000;
    machine.restarts(30);
    const again = await start(machine);
    expect(again.now()).toBe(t);
    expect(again.advice().question?.id).toBe('gap');
    await again.type('pot off');
    await again.close();
    const times = recover(readFileSync(join(folder, 'cook.jsonl'))).entries.map((entry) => entry.t);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  it.each([
    ['restarted with less up-time', 86_400, 40],
    ['restarted, and on for longer than the wall clock allows', 6000, 60_000],
    ['restarted, and on for less long than the wall clock says', 86_400, 9000],
    ['not restarted', 300, null],
  ] as const)(
    'where the system does not name its runs, %s: no less time than passed, and asks',
    async (_, away, up) => {
      const machine = new Machine();
      machine.boot = null;
      const t = await interrupted(machine);
      machine.sleeps(away);
      if (up !== null) machine.restarts(up);
      const again = await start(machine);
      expect(again.now()).toBeGreaterThanOrEqual(t + away);
      expect(again.advice().question?.id).toBe('gap');
      await again.close();
    },
  );

  it('a recorded feed brings its own time: nothing is added to it', async () => {
    const machine = new Machine();
    await interrupted(machine);
    machine.sleeps(6000);
    const again = await start(machine, false);
    const t = again.cook.t + 5;
    await again.type('226', t);
    expect(again.cook.t).toBe(t);
    await again.close();
    expect(gaps()).toEqual([]);
  });

  it('a cook that is over has no gap, whenever it is looked at again', async () => {
    const machine = new Machine();
    const session = await start(machine);
    await session.type('stop');
    await session.type('at over');
    await session.close();
    machine.sleeps(500_000);
    const again = await start(machine);
    await again.close();
    expect(gaps()).toEqual([]);
  });
});

it('without a journal a sleep is noticed just the same', async () => {
  const machine = new Machine();
  const session = startUnkept(opening(), machine);
  await session.attend();
  await boil(session, machine);
  machine.sleeps(300);
  await session.type('note back');
  expect(session.advice().question?.id).toBe('gap');
  await session.close();
});
