import type { Cook } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import { openCook } from '../cook/open.js';
import { readEvent } from '../cook/read-event.js';
import { fold } from '../cook/step.js';
import type { Entry } from '../journal/line.js';
import { openJournal } from '../journal/open.js';
import { damageNotes } from '../journal/recover.js';
import { type Message, message } from '../texts/message.js';
import { type Clock, type LastStamp, secondsSince, stampOf } from './clock.js';
import { Session } from './session.js';

type Opening = Omit<Extract<CookEvent, { kind: 'opened' }>, 'kind'>;

/** A cook without a journal: a feed that nobody asked to be kept. */
export const startUnkept = (opening: Opening, clock: Clock): Session =>
  new Session({
    cook: openCook({ kind: 'opened', ...opening, seq: 1, t: 0 }),
    journal: null,
    clock,
    startsAt: 0,
  });

export type Started = {
  readonly session: Session;
  readonly notes: readonly Message[];
  /** Seconds since its last event, when it was taken up again. */
  readonly resumedAfter: { readonly seconds: number; readonly sure: boolean } | null;
};

/** The events of a journal that this program understands, and where its clock stood. */
export const readEntries = (
  entries: readonly Entry[],
): { readonly events: readonly Happened[]; readonly last: LastStamp } | null => {
  const events = entries.flatMap((entry) => readEvent(entry) ?? []);
  const last = entries.at(-1);
  if (events[0]?.kind !== 'opened' || last === undefined) return null;
  const boot = typeof last.boot === 'string' ? last.boot : null;
  return { events, last: { t: last.t, up: last.up, at: last.at, boot } };
};

export const cookOf = (entries: readonly Entry[]): Cook | null => {
  const read = readEntries(entries);
  return read === null ? null : fold(read.events);
};

/** Start a cook on a journal, or take up the one that it holds; `opening` null: only take up. */
export const startKept = async (
  path: string,
  opening: Opening | null,
  clock: Clock,
): Promise<Started | { readonly problem: Message }> => {
  const opened = await openJournal({ path });
  if ('problem' in opened) return opened;
  const { journal, recovered } = opened;
  const notes = damageNotes(recovered);
  const refuse = async () => {
    await journal.close();
    return { problem: message('command.journal-other', { path }) };
  };
  if (recovered.entries.length > 0) {
    const read = readEntries(recovered.entries);
    if (read === null) return refuse();
    const cook = fold(read.events);
    const resumedAfter = secondsSince(read.last, clock);
    const session = new Session({
      cook,
      journal,
      clock,
      startsAt: read.last.t + resumedAfter.seconds,
      away: resumedAfter,
    });
    return { session, notes, resumedAfter };
  }
  if (opening === null) return refuse();
  const event: Happened = { kind: 'opened', ...opening, seq: journal.nextSeq, t: 0 };
  await journal.append({ ...event, ...stampOf(clock) });
  return {
    session: new Session({ cook: openCook(event), journal, clock, startsAt: 0 }),
    notes,
    resumedAfter: null,
  };
};
