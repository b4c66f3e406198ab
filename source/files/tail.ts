import { constants, type Stats } from 'node:fs';
import { access, type FileHandle, open, stat } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { O_NOCTTY, O_NONBLOCK, O_RDONLY } from './open-flags.js';
import { TailLines } from './tail-lines.js';
import { codeOf, FileTroubleError } from './trouble.js';

/** What is learned of a file or named pipe that somebody else goes on writing to. */
export type Tailed =
  | { readonly what: 'line'; readonly text: string }
  /** A line that is longer than any may be, or that was left without its end. */
  | { readonly what: 'no line'; readonly text: string; readonly because: 'too long' | 'unfinished' }
  | { readonly what: 'there'; readonly as: 'file' | 'pipe' }
  /** A pipe: somebody has it open for writing; nobody has. */
  | { readonly what: 'writer' | 'no writer' }
  /** A file: shorter than before, or another one under its name. It is read from its beginning. */
  | { readonly what: 'started over' }
  /** So much stood there that the older part was passed over. */
  | { readonly what: 'skipped'; readonly bytes: number }
  | { readonly what: 'missing' }
  | { readonly what: 'unreadable'; readonly error: unknown }
  /** All there is for now has been told. */
  | { readonly what: 'looked' };

type Options = {
  readonly signal?: AbortSignal;
  /** Wait until it is worth looking again. */
  readonly wait?: (signal: AbortSignal | undefined) => Promise<void>;
};

const chunkBytes = 64 * 1024;
/** What is read in one look at most: the rest waits for the next, so that a flood never holds up the program. */
const lookBytes = 4 * chunkBytes;
/** Further behind than this, what is old is passed over: a feed is of now. */
const mostBehindBytes = 1024 * 1024;
const newline = 0x0a;

const aQuarterSecond = async (signal: AbortSignal | undefined): Promise<void> => {
  await pause(250, undefined, { signal }).catch(() => undefined);
};

const identityOf = ({ dev, ino }: Stats): string => `${dev}:${ino}`;

/** Reads from an open end; 'nothing yet' where a writer holds the pipe and has not written. */
const readSome = async (handle: FileHandle, position: number | null): Promise<Buffer | 'nothing yet'> => {
  const bytes = Buffer.alloc(chunkBytes);
  try {
    const { bytesRead } = await handle.read(bytes, 0, chunkBytes, position);
    return bytes.subarray(0, bytesRead);
  } catch (error) {
    if (codeOf(error) === 'EAGAIN') return 'nothing yet';
    throw error;
  }
};

type Place = { readonly handle: FileHandle; readonly identity: string; readonly as: 'file' | 'pipe' };

/** One look after the other at whatever stands under a name. Never waits for a writer; reads within bounds. */
class Tail {
  #place: Place | null = null;
  #position = 0;
  #first = true;
  #lines = new TailLines();
  #told: 'writer' | 'no writer' | 'missing' | 'unreadable' | null = null;

  constructor(private readonly path: string) {}

  async *look(): AsyncGenerator<Tailed> {
    try {
      const there = await stat(this.path).catch((error: unknown) => {
        if (['ENOENT', 'ENOTDIR'].includes(codeOf(error))) return null;
        throw error;
      });
      if (this.#place === null && there !== null) yield* this.#open(there);
      this.#first = false;
      if (this.#place !== null) yield* this.#readOn(this.#place);
      const gone = this.#place !== null && (there === null || identityOf(there) !== this.#place.identity);
      if (gone) {
        await this.close();
        yield* this.#lines.end();
      }
      if (there === null) yield* this.#tell('missing');
      else if (gone) yield { what: 'started over' };
    } catch (error) {
      await this.close();
      this.#first = false;
      if (this.#told !== 'unreadable') yield { what: 'unreadable', error };
      this.#told = 'unreadable';
    }
    yield { what: 'looked' };
  }

  async close(): Promise<void> {
    const place = this.#place;
    this.#place = null;
    await place?.handle.close().catch(() => undefined);
  }

  *#tell(what: 'writer' | 'no writer' | 'missing'): Generator<Tailed> {
    if (this.#told !== what) yield { what };
    this.#told = what;
  }

  async *#open(there: Stats): AsyncGenerator<Tailed> {
    // Looked at before it is opened: opening a device may already do something.
    if (!there.isFile() && !there.isFIFO()) throw new FileTroubleError('notAFile');
    const handle = await open(this.path, O_RDONLY | O_NONBLOCK | O_NOCTTY);
    const found = await handle.stat().catch(async (error: unknown) => {
      await handle.close();
      throw error;
    });
    this.#place = { handle, identity: identityOf(found), as: found.isFIFO() ? 'pipe' : 'file' };
    this.#lines = new TailLines();
    this.#position = 0;
    this.#told = null;
    // What stood in the file before anybody followed it is of the past.
    if (this.#first && found.isFile()) await this.#toTheEnd(handle, found.size);
    yield { what: 'there', as: this.#place.as };
  }

  /** From the end of a file; the end of a line that is just being written is no line. */
  async #toTheEnd(handle: FileHandle, size: number): Promise<void> {
    this.#position = size;
    if (size === 0) return;
    const last = Buffer.alloc(1);
    await handle.read(last, 0, 1, size - 1);
    if (last[0] !== newline) this.#lines.skip();
  }

  async *#readOn(place: Place): AsyncGenerator<Tailed> {
    if (place.as === 'file') yield* this.#catchUp(await place.handle.stat());
    for (let done = 0; done < lookBytes; ) {
      const bytes = await readSome(place.handle, place.as === 'file' ? this.#position : null);
      if (bytes === 'nothing yet') {
        yield* this.#tell('writer');
        return;
      }
      if (bytes.length === 0) {
        if (place.as === 'pipe') {
          yield* this.#lines.end();
          yield* this.#tell('no writer');
        }
        return;
      }
      if (place.as === 'pipe') yield* this.#tell('writer');
      this.#position += bytes.length;
      done += bytes.length;
      yield* this.#lines.add(bytes);
    }
  }

  *#catchUp({ size }: Stats): Generator<Tailed> {
    if (size < this.#position) {
      this.#position = 0;
      this.#lines = new TailLines();
      yield { what: 'started over' };
    }
    const behind = size - this.#position;
    if (behind <= mostBehindBytes) return;
    const bytes = behind - chunkBytes;
    this.#position += bytes;
    this.#lines = new TailLines();
    this.#lines.skip();
    yield { what: 'skipped', bytes };
  }
}

/**
 * Follow a growing file or a named pipe: of a file only what is appended from now on, of one that appears, got shorter
 * or was exchanged all of it. Never waits for the writer of a pipe and never rejects: what cannot be read is told and
 * tried again. Ends when `signal` is aborted.
 */
export async function* tailLines(path: string, options: Options = {}): AsyncGenerator<Tailed> {
  const { signal, wait = aQuarterSecond } = options;
  const tail = new Tail(path);
  try {
    while (!signal?.aborted) {
      yield* tail.look();
      if (!signal?.aborted) await wait(signal);
    }
  } finally {
    await tail.close();
  }
}

/** Why nothing could ever be followed there; null where it can, also where nothing is there yet. */
export const cannotTail = async (path: string): Promise<unknown> => {
  try {
    const found = await stat(path);
    if (!found.isFile() && !found.isFIFO()) return new FileTroubleError('notAFile');
    // Not opened: a writer that waits at the pipe would begin, and then lose its reader.
    await access(path, constants.R_OK);
    return null;
  } catch (error) {
    return codeOf(error) === 'ENOENT' ? null : error;
  }
};
