import { describe, expect, it } from 'vitest';
import type { Tailed } from '../../source/files/tail.js';
import { FileTroubleError } from '../../source/files/trouble.js';
import type { Clock } from '../../source/session/clock.js';
import { Feed } from '../../source/session/feed.js';
import { startUnkept } from '../../source/session/start.js';
import { words } from '../../source/texts/message.js';
import { hall, opened, Play } from '../cook/play.js';

async function* none(): AsyncGenerator<Tailed> {
  // Each is handed over by the test.
}

/** A feed beside a cook, on a clock that the test holds. Unit of bare numbers: the hall's dial, Fahrenheit. */
class Fed {
  seconds = 0;
  readonly clock: Clock = { up: () => this.seconds, wall: () => this.seconds * 1000 };
  readonly session = startUnkept(opened({ kitchen: hall, from: 'boil' }), this.clock);
  readonly feed = new Feed({ session: this.session, path: 'probe.txt', lines: none(), clock: this.clock });
  readonly said: string[] = [];

  constructor() {
    this.feed.onChange((said) => this.said.push(...said.map(({ id }) => id)));
  }

  async hears(...all: readonly (Tailed | string)[]): Promise<this> {
    for (const one of all) await this.feed.hear(typeof one === 'string' ? { what: 'line', text: one } : one);
    return this;
  }

  /** A line every so many seconds, looked at between. */
  async every(seconds: number, ...lines: readonly string[]): Promise<this> {
    for (const line of lines) {
      await this.hears(line, { what: 'looked' });
      await this.passes(seconds);
    }
    return this;
  }

  async passes(seconds: number): Promise<this> {
    this.seconds += seconds;
    await this.feed.hear({ what: 'looked' });
    return this;
  }

  async types(line: string): Promise<void> {
    await this.session.type(line);
  }

  get readings(): readonly (readonly [number, number, string])[] {
    return this.session.cook.log.flatMap((event) =>
      event.kind === 'reading' ? [[event.t, event.value, event.by] as const] : [],
    );
  }

  get values(): readonly number[] {
    return this.readings.map(([, value]) => value);
  }

  get stands(): readonly string[] {
    return this.feed.notices().map(({ id }) => id);
  }
}

const there: Tailed = { what: 'there', as: 'file' };

describe('readings from a feed', () => {
  it('are read as they are typed, are by the feed, and are passed over by undo', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(20, '225', '226.5f', '108,5c');
    await fed.types('heat medium');
    await fed.every(20, '229');
    await fed.types('undo');
    expect(fed.readings.map(([, value, by]) => [value, by])).toEqual([
      [225, 'feed'],
      [226.5, 'feed'],
      [108.5, 'feed'],
      [229, 'feed'],
    ]);
    expect(fed.session.cook.heat).toBeNull();
  });

  it('are thinned to one in ten seconds, and no more than one in a second when it moves', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(0.25, ...Array.from({ length: 81 }, () => '230'));
    expect(fed.readings.map(([t]) => Math.round(t))).toEqual([0, 10, 20]);
    expect(fed.said).toContain('feed.often');
    const rising = await new Fed().hears(there);
    await rising.every(0.1, ...Array.from({ length: 30 }, (_, nth) => String(230 + nth)));
    expect(rising.readings.length).toBeLessThanOrEqual(4);
    await rising.passes(1);
    expect(rising.values.at(-1)).toBe(259);
  });

  it('are taken at once when they reach the take-off', async () => {
    const fed = await new Fed().hears(there);
    await fed.types('heat medium');
    const { dial } = fed.session.cook.batch;
    const shown = (celsius: number): string => `${dial.toShownCelsius(celsius).toFixed(2)}c`;
    const off = fed.session.cook.takeOffCelsius;
    await fed.every(60, shown(off - 1), shown(off - 0.4));
    await fed.every(1.1, shown(off - 0.3), shown(off + 0.1));
    expect(fed.session.advice().offTheHeat).toBe(true);
  });

  it('never ask, but a high one takes the pot off and the next agreeing one counts', async () => {
    const fed = await new Fed().hears(there);
    await fed.types('heat medium');
    await fed.every(20, '225', '226', '290');
    expect(fed.session.advice().question).toBeNull();
    expect(fed.session.advice().offTheHeat).toBe(true);
    expect(fed.stands).toContain('feed.jumped');
    await fed.every(20, '227');
    expect(fed.stands).not.toContain('feed.jumped');
    expect(fed.session.advice().offTheHeat).toBe(false);
  });

  it('are not of the mass: after the pour nobody knows what the probe lies in', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(20, '225');
    await fed.types('at fold');
    await fed.every(20, '90', '89');
    expect(fed.values).toEqual([225]);
    expect(fed.session.cook.middle).toBeNull();
    expect(fed.said.filter((id) => id === 'feed.poured')).toHaveLength(1);
    await fed.passes(600);
    expect(fed.said).not.toContain('feed.stalled');
  });

  it('that are half written or far too long are no readings, and what was lost on the way is said once', async () => {
    const fed = await new Fed().hears(there, { what: 'writer' });
    await fed.every(20, '225');
    await fed.hears(
      { what: 'no line', text: '22', because: 'unfinished' },
      { what: 'no line', text: '9'.repeat(40), because: 'too long' },
      { what: 'started over' },
      { what: 'skipped', bytes: 9000 },
      { what: 'skipped', bytes: 9000 },
    );
    expect(fed.values).toEqual([225]);
    expect(fed.said.filter((id) => id === 'feed.skipped')).toHaveLength(1);
    expect(fed.said).toContain('feed.started-over');
    await fed.every(20, '226');
    expect(fed.values).toEqual([225, 226]);
  });

  it('stop where the file becomes none or cannot be read; the cook goes on', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(20, '225');
    await fed.hears({ what: 'unreadable', error: new FileTroubleError('notAFile') });
    expect(fed.stands).toEqual(['feed.bad.kind']);
    await fed.hears(there);
    await fed.hears({ what: 'unreadable', error: Object.assign(new Error('no'), { code: 'EACCES' }) });
    expect(fed.stands).toEqual(['files.notRead']);
    await fed.hears({ what: 'missing' });
    expect(fed.stands).toEqual(['feed.gone']);
    await fed.hears(there);
    await fed.every(20, '226');
    expect(fed.stands).toEqual([]);
    expect(fed.values).toEqual([225, 226]);
  });

  it('whose reader breaks are said to be unreadable, and nothing is thrown', async () => {
    const { session, clock } = new Fed();
    const lines = (async function* (): AsyncGenerator<Tailed> {
      yield { what: 'line', text: '225' };
      throw Object.assign(new Error('broke'), { code: 'EIO' });
    })();
    const feed = new Feed({ session, path: 'probe.txt', lines, clock });
    await feed.run();
    expect(feed.notices().map(({ id }) => id)).toEqual(['files.notRead']);
    expect(session.cook.lastReading).not.toBeNull();
  });

  it('do not bring back a thermometer that was said to be none', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(20, '225');
    await fed.types('thermometer none');
    await fed.every(20, '226');
    expect(fed.session.cook.thermometer).toBe(false);
    await fed.types('227');
    await fed.every(20, '228');
    expect(fed.values).toEqual([225, 227, 228]);
  });
});

describe('what is said of a feed', () => {
  it('that it stalls, clearly beyond its own interval, and that it is back', async () => {
    const fast = await new Fed().hears(there);
    await fast.every(1, '225', '225', '225', '225', '225');
    await fast.passes(3);
    expect(fast.stands).not.toContain('feed.stalled');
    await fast.passes(3);
    expect(fast.stands).toContain('feed.stalled');
    await fast.every(1, '225');
    expect(fast.stands).toEqual(['feed.back']);
    await fast.passes(3);
    expect(fast.said.filter((id) => id === 'feed.stalled')).toHaveLength(1);
    const slow = await new Fed().hears(there);
    await slow.every(30, '225', '226', '227');
    await slow.passes(50);
    expect(slow.stands).not.toContain('feed.stalled');
    await slow.passes(30);
    expect(slow.stands).toContain('feed.stalled');
  });

  it('that it never began', async () => {
    const fed = await new Fed().hears(there);
    await fed.passes(59);
    expect(fed.stands).toEqual([]);
    await fed.passes(3);
    expect(fed.stands).toEqual(['feed.silent']);
  });

  it('that nobody writes, that somebody begins, that it ended', async () => {
    const fed = await new Fed().hears(
      { what: 'there', as: 'pipe' },
      { what: 'no writer' },
      { what: 'looked' },
    );
    expect(fed.stands[0]).toBe('feed.no-writer');
    await fed.hears({ what: 'writer' });
    await fed.every(1, '225', '225', '225');
    expect(fed.said).toContain('feed.begins');
    await fed.hears({ what: 'no writer' }, { what: 'looked' });
    expect(fed.stands[0]).toBe('feed.ended');
  });

  it('not that it ended where the pipe is opened anew for each line', async () => {
    const fed = await new Fed().hears({ what: 'there', as: 'pipe' }, { what: 'no writer' });
    for (let nth = 0; nth < 6; nth += 1) {
      await fed.hears({ what: 'writer' }, '225', { what: 'no writer' }, { what: 'looked' });
      await fed.passes(5);
      await fed.passes(5);
    }
    expect(fed.said).not.toContain('feed.ended');
    await fed.passes(31);
    expect(fed.stands).toContain('feed.ended');
  });

  it('that its file is gone; not that it stalls as well', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(2, '225', '225', '225');
    await fed.hears({ what: 'missing' });
    await fed.passes(100);
    expect(fed.stands).toEqual(['feed.gone']);
  });

  it('rubbish once, counted, harmless; and lasting where nothing else comes', async () => {
    const fed = await new Fed().hears(there);
    await fed.every(
      1,
      'time;temp',
      '\u001b[2J\u0007',
      '1e9',
      'NaN',
      '-999',
      '9999c',
      '238x',
      '{"t":1,"typed":"done"}',
    );
    expect(fed.values).toEqual([]);
    expect(fed.session.cook.log).toHaveLength(1);
    expect(fed.said.filter((id) => id === 'feed.rubbish')).toHaveLength(1);
    await fed.passes(30);
    expect(fed.stands[0]).not.toBe('feed.rubbish');
    const { printer } = new Play();
    const hostile = await new Fed().hears(there, '\u001b[2J\u202e238', '1', '2', '3');
    const shown = hostile.feed
      .notices()
      .map((one) => words(one, printer))
      .join('\n');
    expect(shown).toContain('\\x1b[2J');
    expect(shown).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/u);
  });
});
