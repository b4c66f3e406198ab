import { bounds, readBytes } from '../files/read.js';
import { listCooks } from '../journal/list.js';
import { recover } from '../journal/recover.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { type Learned, lessonsIn } from '../kitchen/learned.js';
import { learnFrom, mostCooks } from '../lessons/learn.js';
import { type CookLesson, lessonOf } from '../lessons/learn-cook.js';
import { readEntries } from '../session/start.js';
import { type Message, message } from '../texts/message.js';
import { cooksFolder } from './cooks-shelf.js';
import type { World } from './world.js';

/** So many journals are looked into for the cooks that count: some were given up, some teach nothing. */
const mostJournals = 16;
/** A journal of hands has some hundred lines; a longer one, of a feed, would make every start wait. Our judgement. */
const longestJournalBytes = Math.min(bounds.journal, 1024 * 1024);

const lessonIn = async (path: string): Promise<CookLesson | null> => {
  const read = await readBytes(path, longestJournalBytes);
  if ('problem' in read) return null;
  const { entries } = recover(read.bytes);
  const cook = readEntries(entries);
  return cook === null ? null : lessonOf({ events: cook.events, startedAt: entries[0]?.at ?? null });
};

/** What the latest finished cooks in the data folder teach; none where there are none. Never rejects. */
const lessonsOnDisk = async (world: Pick<World, 'env'>): Promise<readonly CookLesson[]> => {
  const cooks = await listCooks(cooksFolder(world.env), { isOver: () => true, most: mostJournals });
  const lessons: CookLesson[] = [];
  for (const { path, isRehearsal } of cooks) {
    if (lessons.length >= mostCooks) break;
    const lesson = isRehearsal ? null : await lessonIn(path).catch(() => null);
    if (lesson !== null) lessons.push(lesson);
  }
  return lessons;
};

/**
 * The kitchen with what earlier cooks taught of it, computed again from their journals; what a person said in the
 * kitchen file stands before it. The same kitchen where nothing is known.
 */
export const taughtKitchen = async (kitchen: Kitchen, world: Pick<World, 'env'>): Promise<Kitchen> => {
  const learned = learnFrom(await lessonsOnDisk(world), kitchen);
  return lessonsIn(learned).length === 0 ? kitchen : { ...kitchen, learned };
};

/** The one sentence of a plan about it; null where it rests on nothing learned. */
export const learnedNote = (learned: Learned | undefined): Message | null => {
  const lessons = learned === undefined ? [] : lessonsIn(learned);
  if (lessons.length === 0) return null;
  const dates = lessons.flatMap(({ date }) => date ?? []).toSorted();
  return message('learned.plan', {
    cooks: Math.max(...lessons.map(({ cooks }) => cooks)),
    date: dates.at(-1) ?? null,
  });
};
