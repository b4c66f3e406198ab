import { unlink } from 'node:fs/promises';
import { dirname } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { headline } from '../cook/candy.js';
import { makeFolder } from '../files/folder.js';
import { takeLock } from '../files/lock.js';
import { bounds, readBytes } from '../files/read.js';
import { writeProblem } from '../files/trouble.js';
import { syncFolder } from '../files/write.js';
import { writeNew } from '../files/write-new.js';
import { lockPath } from '../journal/journal.js';
import { type CookSummary, journalPath, listBounds, listCooks } from '../journal/list.js';
import { cookOf } from '../session/start.js';
import { type Message, message } from '../texts/message.js';
import { clockOf } from './clock-habit.js';
import { cooks } from './cooks.js';
import { cooksFolder, findCookOrRehearsal, findId, rehearsalsFolder } from './cooks-shelf.js';
import type { ExitCode } from './io.js';
import { boolean, flag, parse, string, text } from './options.js';
import type { World } from './world.js';

const isOver = (entries: Parameters<typeof cookOf>[0]): boolean => {
  const cook = cookOf(entries);
  return cook !== null && headline(cook) === 'over';
};

/** A cook that a console is leading is never deleted: its lock says so. */
const remove = async ({ path }: CookSummary): Promise<'deleted' | { readonly problem: Message }> => {
  const answer = await takeLock(lockPath(path));
  if ('heldBy' in answer) {
    const { pid, host, since } = answer.heldBy;
    return { problem: message('journal.heldElsewhere', { pid, host, since, sameHost: answer.sameHost }) };
  }
  if ('problem' in answer) return { problem: answer.problem };
  try {
    await unlink(path);
    await syncFolder(dirname(path));
    return 'deleted';
  } catch (error) {
    return { problem: writeProblem(error, path) };
  } finally {
    await answer.lock.release();
  }
};

const asker =
  ({ stdin, stdout }: World) =>
  async (question: string): Promise<string | null> => {
    if (stdin.isTTY !== true) return null;
    const lines = createInterface({ input: stdin, output: stdout });
    const gone = new AbortController();
    lines.once('close', () => gone.abort());
    try {
      return await lines.question(question, { signal: gone.signal });
    } catch {
      // Ctrl+D or Ctrl+C instead of an answer: nothing is deleted.
      return '';
    } finally {
      lines.close();
    }
  };

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    recipe: string,
    since: string,
    to: string,
    unfinished: boolean,
    rehearsals: boolean,
    yes: boolean,
    json: boolean,
  });
  const folder = cooksFolder(world.env);
  return cooks(
    words,
    {
      recipe: text(given.recipe),
      since: text(given.since),
      to: text(given.to),
      unfinished: flag(given.unfinished),
      rehearsals: flag(given.rehearsals),
      yes: flag(given.yes),
      json: flag(given.json),
    },
    {
      language: world.language,
      clock: (await clockOf(world)) ?? undefined,
      out: world.out,
      err: world.err,
      folder,
      version: world.version,
      most: listBounds.most,
      now: () => new Date(),
      list: async () => {
        const real = await listCooks(folder, { isOver });
        if (!flag(given.rehearsals)) return real;
        const rehearsed = await listCooks(rehearsalsFolder(world.env), { isOver });
        return [...real, ...rehearsed].toSorted((one, other) => (one.id < other.id ? 1 : -1));
      },
      find: (typed) => findCookOrRehearsal(world.env, typed),
      findId: (typed) => findId(folder, typed),
      remove,
      readFile: (path) => readBytes(path, bounds.journal),
      writeNew,
      place: async (id) => {
        await makeFolder(folder);
        return journalPath(folder, id);
      },
      ask: asker(world),
    },
  );
};
