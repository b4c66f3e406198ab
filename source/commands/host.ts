import type { Cook } from '../cook/cook.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Feed } from '../session/feed.js';
import type { Started } from '../session/start.js';
import type { Message } from '../texts/message.js';

/** A person left instead of answering: the exit code. */
export type Left = { readonly left: number };

/** Where a cook is led: the full screen, or lines. Both ask the same and lead the same session. */
export type Host = {
  /** Something to know before going on. */
  tell(said: Message): Promise<Left | null>;
  /** The outcome of something that may take long: a slow disk. */
  waitFor<Result>(work: Promise<Result>): Promise<Result>;
  /** An unfinished cook is offered first; false: not this one, and so many others are offered after it. */
  goOn(cook: Cook, seconds: number, others: number): Promise<boolean | Left>;
  /** The unfinished cook cannot be taken up, and why: another is begun beside it only if that is wanted. */
  beginAnother(why: Message): Promise<null | Left>;
  /** At most three questions, each with a default; null where nobody can be asked. */
  askKitchen(): Promise<Kitchen | Left | null>;
  /** Lead until the person leaves, with a feed beside the keyboard or none; both are closed by the caller. The exit code. */
  lead(started: Started, feed: Feed | null): Promise<number>;
  close(): Promise<void>;
};

export const hasLeft = (answer: unknown): answer is Left =>
  typeof answer === 'object' && answer !== null && 'left' in answer;
