import { type Message, message } from '../texts/message.js';
import type { FeedSilence } from './feed-arrivals.js';

/** Something that passes stands so long; the same is not said again before, seconds. Our judgement. */
const passingSeconds = 20;
const saidAgainSeconds = 60;
/** A feed of which the last so many lines were rubbish is of no use. */
const onlyRubbishLines = 5;

const notYet = { missing: 'feed.missing', 'no writer': 'feed.no-writer' } as const;

type Loss = {
  readonly kind: 'unreadable' | 'missing' | 'no writer' | 'stalled';
  readonly at: (now: number) => Message;
};

/** What is to be known of a feed: what stands until it is over, what passes, and what is said once. */
export class FeedNotices {
  #loss: Loss | null = null;
  #jump: Message | null = null;
  #passing: { readonly said: Message; readonly until: number } | null = null;
  #rubbish: { first: string; count: number; inARow: number; unfinished: boolean } | null = null;
  #saysOften = true;
  #saysNotWanted: string | null = null;
  #wasThere = false;
  #hasRead = false;
  /** When something was lost since the last reading: the next one says that it is back. */
  #lostAt: number | null = null;
  #toSay: Message[] = [];
  readonly #saidAt = new Map<string, number>();
  #shown = '';

  constructor(private readonly path: string) {}

  standing(now: number): readonly Message[] {
    const onlyRubbish =
      this.#rubbish !== null && this.#rubbish.inARow >= onlyRubbishLines
        ? message('feed.only-rubbish', this.#rubbish)
        : null;
    const lasting = this.#loss?.at(now) ?? onlyRubbish ?? this.#jump;
    const passing = this.#passing !== null && this.#passing.until > now ? this.#passing.said : null;
    return [lasting, passing].filter((one): one is Message => one !== null);
  }

  /** Whether what stands is another than when this was asked last. */
  changed(now: number): boolean {
    const shown = this.standing(now)
      .map(({ id }) => id)
      .join(' ');
    const isOther = shown !== this.#shown;
    this.#shown = shown;
    return isOther;
  }

  /** What is new and has not been said a moment ago. */
  toSay(now: number): readonly Message[] {
    const said = this.#toSay.filter(({ id }) => {
      const before = this.#saidAt.get(id);
      const isNew = before === undefined || now - before >= saidAgainSeconds;
      if (isNew) this.#saidAt.set(id, now);
      return isNew;
    });
    this.#toSay = [];
    return said;
  }

  pass(said: Message, now: number): void {
    this.#passing = { said, until: now + passingSeconds };
    this.#toSay.push(said);
  }

  /** The file or pipe is there. */
  begins(now: number): void {
    if (!this.#wasThere) this.pass(message('feed.reads', { path: this.path }), now);
    this.#wasThere = true;
    this.#loss = null;
  }

  /** Somebody writes again; until a reading comes, nothing is back. */
  found(): void {
    if (this.#loss?.kind === 'no writer') this.#loss = null;
  }

  lost(kind: 'missing' | 'no writer', now: number, seen = this.#wasThere): void {
    const id = (seen ? { missing: 'feed.gone', 'no writer': 'feed.ended' } : notYet)[kind];
    const said = message(id as 'feed.gone', { path: this.path });
    this.#lose({ kind, at: () => said }, now);
  }

  unreadable(problem: Message, now: number): void {
    this.#lose({ kind: 'unreadable', at: () => problem }, now);
  }

  silent(silence: FeedSilence, now: number): void {
    const { usualSeconds } = silence;
    const since = now - silence.seconds;
    this.#lose(
      {
        kind: 'stalled',
        at: (then) =>
          usualSeconds === null
            ? message('feed.silent', { seconds: then - since })
            : message('feed.stalled', { seconds: then - since, usualSeconds }),
      },
      now,
    );
  }

  rubbish(text: string, unfinished: boolean, now: number): void {
    const { first, count, inARow } = this.#rubbish ?? { first: text, count: 0, inARow: 0 };
    this.#rubbish = { first, count: count + 1, inARow: inARow + 1, unfinished };
    if (this.#rubbish.count === 1) this.pass(message('feed.rubbish', this.#rubbish), now);
    if (this.#rubbish.inARow === onlyRubbishLines)
      this.#toSay.push(message('feed.only-rubbish', this.#rubbish));
  }

  good(): void {
    if (this.#rubbish !== null) this.#rubbish.inARow = 0;
  }

  often(now: number): void {
    if (this.#saysOften) this.pass(message('feed.often'), now);
    this.#saysOften = false;
  }

  notWanted(because: 'feed.poured' | 'feed.no-thermometer', now: number): void {
    this.#loss = null;
    this.#lostAt = null;
    this.#jump = null;
    if (this.#saysNotWanted !== because) this.pass(message(because), now);
    this.#saysNotWanted = because;
  }

  /** Something was lost, and a reading that came at `at` would show that it is back. */
  awaits(at: number): boolean {
    return this.#lostAt !== null && at >= this.#lostAt;
  }

  /** A reading was taken that came at `at`: what was lost before it is back. */
  read(celsius: number, { doubted, at, now }: { doubted: boolean; at: number; now: number }): void {
    const jump = doubted ? message('feed.jumped', { celsius }) : null;
    if (jump !== null && this.#jump === null) this.#toSay.push(jump);
    this.#jump = jump;
    const isFirst = !this.#hasRead;
    this.#hasRead = true;
    this.#saysNotWanted = null;
    if (!this.awaits(at)) return;
    this.#lostAt = null;
    this.#loss = null;
    this.pass(message(isFirst ? 'feed.begins' : 'feed.back', { celsius }), now);
  }

  #lose(loss: Loss, now: number): void {
    // A file that is gone sends nothing either: that it is gone says more.
    const isLess = loss.kind === 'stalled' && this.#loss !== null;
    if (isLess || this.#loss?.kind === loss.kind) return;
    this.#loss = loss;
    this.#lostAt ??= now;
    this.#toSay.push(loss.at(now));
  }
}
