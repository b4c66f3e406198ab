import { readdir } from 'node:fs/promises';
import { livingHolder } from '../files/lock.js';
import { isPlainName } from '../files/names.js';
import { lockPath } from './journal.js';
import { journalPath } from './list.js';

/** Whether somebody leads the cook of this journal at this moment. Looks only: no lock is taken or removed. */
export const isLed = async (path: string): Promise<boolean> => (await livingHolder(lockPath(path))) !== null;

const ending = lockPath('.jsonl');

/** The ids of the cooks that somebody leads at this moment, newest first. Looks only. No folder, no cooks. */
export const runningCooks = async (folder: string): Promise<readonly string[]> => {
  const found = await readdir(folder).catch(() => []);
  const ids = found
    .filter((name) => name.endsWith(ending) && isPlainName(name))
    .map((name) => name.slice(0, -ending.length))
    .sort()
    .reverse();
  const running: string[] = [];
  for (const id of ids) {
    const path = journalPath(folder, id);
    if (path !== null && (await isLed(path))) running.push(id);
  }
  return running;
};
