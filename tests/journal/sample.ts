import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import type { LockAnswer } from '../../source/files/lock.js';
import type { JournalHandle, JournalIo } from '../../source/journal/io.js';
import { diskIo } from '../../source/journal/io.js';
import type { Scheduler } from '../../source/journal/journal.js';
import { type Entry, encodeLine } from '../../source/journal/line.js';

/** A folder of its own, removed when the test file is done. */
export const scratch = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'kettlehand-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

export const event = (seq: number, kind = 'reading', fields: Record<string, unknown> = {}): Entry => ({
  seq,
  t: seq * 30,
  at: `2026-12-05T18:${String(seq % 60).padStart(2, '0')}:00.000Z`,
  up: 4000 + seq * 30,
  kind,
  ...fields,
});

export const opened = event(1, 'opened', {
  recipe: { name: 'Hill hall ginger pull' },
  seed: null,
  version: '0.1.0',
});

const line = (entry: Entry): Buffer => encodeLine(entry) ?? Buffer.alloc(0);

/** The bytes of a small journal as the program writes it: `opened` twice, then readings and a remark. */
export const sample = [
  opened,
  event(2, 'reading', { value: 104.5, unit: 'C', of: 'syrup', by: 'hands' }),
  event(3, 'note', { text: 'the "big" pot \\ ½ full\nfoam {"seq":9' }),
  event(4, 'heat', { setting: 'medium' }),
  event(5, 'undo', { voids: 4 }),
];

export const bytesOf = (entries: readonly Entry[]): Buffer =>
  Buffer.concat(
    entries.flatMap((entry) => (entry.kind === 'opened' ? [line(entry), line(entry)] : [line(entry)])),
  );

/** A lock that is always free, for tests about something else. */
export const freeLock = async (path: string): Promise<LockAnswer> => ({
  lock: { path, isHeld: async () => true, release: async () => undefined },
});

/** Time that passes when the test says so. */
export const handClock = (): Scheduler & { pass(milliseconds: number): void; readonly waiting: number } => {
  let now = 0;
  let waiting: { at: number; work: () => void }[] = [];
  return {
    after: (milliseconds, work) => {
      const entry = { at: now + milliseconds, work };
      waiting.push(entry);
      return () => {
        waiting = waiting.filter((other) => other !== entry);
      };
    },
    pass: (milliseconds) => {
      now += milliseconds;
      const due = waiting.filter(({ at }) => at <= now);
      waiting = waiting.filter(({ at }) => at > now);
      for (const { work } of due) work();
    },
    get waiting() {
      return waiting.length;
    },
  };
};

/** What happens to a call to the disk: it fails with a code, or it writes only so many bytes and then fails. */
export type Fault = { readonly code: string; readonly after?: number };

const failure = (code: string): Error => Object.assign(new Error(code), { code });

/** The real disk, but `fault(n, operation)` decides what becomes of the n-th call (counted from 1). */
export const faultyIo = (
  fault: (n: number, operation: string) => Fault | null,
): JournalIo & { readonly calls: readonly string[]; abandon(): Promise<void> } => {
  const handles = new Set<JournalHandle>();
  const calls: string[] = [];
  const strike = (operation: string): Fault | null => {
    calls.push(operation);
    return fault(calls.length, operation);
  };
  const may = async <Result>(operation: string, work: () => Promise<Result>): Promise<Result> => {
    const struck = strike(operation);
    if (struck !== null) throw failure(struck.code);
    return work();
  };
  const wrap = (handle: JournalHandle): JournalHandle => ({
    read: (into, position) => may('read', () => handle.read(into, position)),
    write: async (bytes, position) => {
      const struck = strike('write');
      if (struck === null) return handle.write(bytes, position);
      if (struck.after !== undefined) await handle.write(bytes.subarray(0, struck.after), position);
      throw failure(struck.code);
    },
    datasync: () => may('datasync', () => handle.datasync()),
    facts: () => may('facts', () => handle.facts()),
    // As in the system, a close that fails has closed all the same.
    close: async () => {
      handles.delete(handle);
      await handle.close();
      await may('close', async () => undefined);
    },
  });
  return {
    calls,
    /** What the system does for a program that is killed. */
    abandon: async () => {
      for (const handle of handles) await handle.close();
    },
    open: (path) =>
      may('open', async () => {
        const handle = await diskIo.open(path);
        handles.add(handle);
        return wrap(handle);
      }),
    look: (path) => may('look', () => diskIo.look(path)),
    makeFolder: (folder) => may('makeFolder', () => diskIo.makeFolder(folder)),
    syncFolder: (folder) => may('syncFolder', () => diskIo.syncFolder(folder)),
  };
};

/** Let everything that is already under way on the disk finish. */
export const settle = async (until: () => boolean): Promise<void> => {
  for (let looks = 0; looks < 2000 && !until(); looks += 1) {
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
};
