import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { recover } from '../../source/journal/recover.js';
import { chance, entriesOf, followArgs, Piped, scratch, seed, times } from './program.js';
import { likely, Uninterrupted } from './uninterrupted.js';

const kills = times(10, 300);

/** Lines sent before the answer to the first of them has come: some are killed on their way in, some on their way out. */
const ahead = 12;
/** A new cook after so many lines, so that replaying does not take over. */
const longest = 300;

type Sent = { readonly line: string; readonly t: number; readonly said: unknown; readonly event: boolean };

/** One journal, beside the same cook without any fault. */
class KilledCook {
  readonly #survived: Sent[] = [];
  #model = new Uninterrupted();
  #t = 0;

  constructor(readonly path: string) {}

  get length(): number {
    return this.#survived.length;
  }

  /** Start the program on the journal, type ahead, kill it; how many events it kept, and how many lines it answered. */
  async killOnce(random: () => number, early: boolean): Promise<{ kept: number; answered: number }> {
    const feed = new Piped(followArgs(this.path));
    // First it is asked where it stands.
    feed.type(JSON.stringify({ t: this.#t }));
    if (!early) {
      expect(await feed.until(() => feed.lines.length > 0)).toBe(true);
      expect(feed.err).not.toMatch(/\n\s+at /);
      expect(JSON.parse(feed.lines[0] ?? '')).toEqual(this.#model.said(this.#t));
    }
    const sent = Array.from({ length: ahead }, () => this.#next(random));
    feed.type(...sent.map(({ t, line }) => JSON.stringify({ t, typed: line })));
    // By answers rather than by time, so that a slow machine is hit in the same places; then anywhere between two.
    const heard = early ? 0 : Math.floor(random() * ahead);
    expect(await feed.until(() => feed.lines.length >= heard)).toBe(true);
    await new Promise((resolve) => setTimeout(resolve, random() * (early ? 250 : 12)));
    await feed.kill();
    return { kept: this.#compare(sent, feed.lines.slice(1)), answered: feed.lines.length };
  }

  #next(random: () => number): Sent {
    this.#t += Math.floor(random() * 40);
    const line = likely(this.#model.cook, this.#t, random);
    const event = this.#model.type(line, this.#t) !== null;
    return { line, t: this.#t, said: this.#model.said(this.#t), event };
  }

  /** Nothing that was answered is missing; nothing is there that was not typed, in another order, or twice. */
  #compare(sent: readonly Sent[], answers: readonly string[]): number {
    const inJournal = entriesOf(this.path);
    const events = sent.filter(({ event }) => event);
    const answered = sent.slice(0, answers.length).filter(({ event }) => event).length;
    const kept = Math.max(0, inJournal.length - 1 - this.length);
    expect(kept).toBeGreaterThanOrEqual(answered);
    expect(kept).toBeLessThanOrEqual(events.length);
    expect(inJournal.map(({ seq }) => seq)).toEqual(inJournal.map((_, index) => index + 1));
    for (const [index, answer] of answers.entries())
      expect({ ...JSON.parse(answer), queried: null }).toEqual(sent[index]?.said);
    this.#survived.push(...events.slice(0, kept));
    this.#model = new Uninterrupted();
    for (const event of this.#survived) this.#model.type(event.line, event.t);
    this.#t = this.#survived.at(-1)?.t ?? 0;
    return kept;
  }
}

describe('the program behind a feed, killed at any moment', () => {
  it(`has every event it answered in its journal and goes on as if nothing had happened, ${kills} times`, {
    timeout: 60_000 + kills * 3000,
  }, async () => {
    const random = chance(seed);
    const folder = scratch();
    let cook = new KilledCook(join(folder, '0.jsonl'));
    let kept = 0;
    let unheard = 0;
    for (let kill = 0; kill < kills; kill += 1) {
      if (cook.length > longest) cook = new KilledCook(join(folder, `${kill}.jsonl`));
      const killed = await cook.killOnce(random, kill % 5 === 4);
      kept += killed.kept;
      if (killed.answered === 0) unheard += 1;
    }
    expect(kept).toBeGreaterThan(kills);
    console.log(
      `${kills} kills through follow --journal, ${unheard} of them before it said a word: ${kept} events kept, none lost (seed ${seed})`,
    );
  });
});

describe('a journal that was hurt', () => {
  const filled = async (path: string): Promise<readonly string[]> => {
    const feed = new Piped(followArgs(path));
    feed.type(
      ...['done', 'done', 'yes', 'note one', 'note two'].map((typed, n) => JSON.stringify({ t: n, typed })),
    );
    expect(await feed.finish()).toBe(0);
    return feed.lines;
  };

  it('is told with its line number by the program, and the rest is kept', async () => {
    const path = join(scratch(), 'cook.jsonl');
    await filled(path);
    const bytes = readFileSync(path);
    const at = bytes.indexOf('"one"') + 1;
    bytes[at] = (bytes[at] ?? 0) ^ 1;
    writeFileSync(path, Buffer.concat([bytes, Buffer.from('{"seq":9,"t":')]));
    const again = new Piped(followArgs(path));
    again.type(JSON.stringify({ t: 10, typed: 'note three' }));
    expect(await again.finish()).toBe(0);
    expect(again.err).toMatch(/line 6\b/i);
    expect(again.err).toContain('cut off');
    expect(again.err).not.toMatch(/\n\s+at /);
    expect(entriesOf(path).map(({ kind, text }) => text ?? kind)).toEqual([
      'opened',
      'done',
      'done',
      'answer',
      'two',
      'three',
    ]);
  });

  it(`never ends the program, whatever byte of it is flipped, at ${times(6, 100)} places`, {
    timeout: 20_000 + times(6, 100) * 2000,
  }, async () => {
    const random = chance(seed + 1);
    const folder = scratch();
    const path = join(folder, 'cook.jsonl');
    await filled(path);
    const whole = readFileSync(path);
    for (let turn = 0; turn < times(6, 100); turn += 1) {
      const hurt = Buffer.from(whole);
      const at = Math.floor(random() * hurt.length);
      hurt[at] = (hurt[at] ?? 0) ^ (1 << Math.floor(random() * 8));
      const file = join(folder, `${turn}.jsonl`);
      writeFileSync(file, hurt);
      const again = new Piped(followArgs(file));
      again.type(JSON.stringify({ t: 60 }));
      expect(await again.finish(), `byte ${at}`).toBe(0);
      expect(again.lines).toHaveLength(1);
      expect(again.err, `byte ${at}`).toMatch(/line \d+|lines \d+|cut off/);
      expect(again.err).not.toMatch(/\n\s+at /);
      expect(recover(readFileSync(file)).entries.length).toBeGreaterThanOrEqual(4);
    }
  });
});
