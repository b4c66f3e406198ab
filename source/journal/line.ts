import { crc32 } from 'node:zlib';

/** What every line of a journal begins with. */
export type Stamp = {
  /** Rises by one from event to event; names the event for good. */
  readonly seq: number;
  /** Seconds since the cook opened. */
  readonly t: number;
  /** Wall clock, ISO 8601 with milliseconds. */
  readonly at: string;
  /** Machine up-time in seconds, or null where it is not known. */
  readonly up: number | null;
};

/** An event as the journal sees it: stamped, of some kind. What the kinds mean is known to the cook alone. */
export type Stamped = Stamp & { readonly kind: string };

/** An event read back. Fields beyond the stamp and the kind are as unknown as any file's content. */
export type Entry = Stamped & { readonly [field: string]: unknown };

export const lineBounds = { openedBytes: 1024 * 1024, eventBytes: 64 * 1024, depth: 32, seq: 1e9 } as const;

/** Why a line could not be used. `joined`: two lines run together, what is whole in them was kept. */
export type Damage = 'checksum' | 'notAnEntry' | 'tooLong' | 'repeated' | 'joined';

export type Decoded = { readonly entry: Entry } | { readonly why: Damage };

/** What ends every line: the checksum of all bytes before it. ASCII. */
const sumOf = (bytes: Uint8Array | string): string =>
  `,"sum":"${crc32(bytes).toString(16).padStart(8, '0')}"}`;
const sumBytes = sumOf(Buffer.alloc(0)).length;

export const longestLine = (kind: string): number =>
  kind === 'opened' ? lineBounds.openedBytes : lineBounds.eventBytes;

/**
 * One line with its newline, or null when it is longer than a reader would accept (64 KiB, `opened` 1 MiB).
 * The stamp comes first, then the kind, the event's own fields and the sum; a field of the event called `sum` is dropped.
 */
export const encodeLine = (event: Stamped): Buffer | null => {
  const { seq, t, at, up, kind, ...fields } = event;
  const body = JSON.stringify({ seq, t, at, up, kind, ...fields, sum: undefined }).slice(0, -1);
  const line = Buffer.from(`${body}${sumOf(body)}\n`);
  return line.length - 1 > longestLine(kind) ? null : line;
};

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

const [opensObject, closesObject, opensArray, closesArray] = Buffer.from('{}[]');
const quote = 0x22;
const backslash = 0x5c;

/** Nesting beyond the bound would overflow the stack of whoever walks the value later. */
const tooDeep = (bytes: Uint8Array): boolean => {
  let depth = 0;
  let inString = false;
  let escaped = false;
  for (const byte of bytes) {
    if (escaped) escaped = false;
    else if (byte === backslash && inString) escaped = true;
    else if (byte === quote) inString = !inString;
    else if (inString) continue;
    else if (byte === opensObject || byte === opensArray) depth += 1;
    else if (byte === closesObject || byte === closesArray) depth -= 1;
    if (depth > lineBounds.depth) return true;
  }
  return false;
};

const special = /__proto__|constructor|prototype|\\u/;
const harmful = new Set(['__proto__', 'constructor', 'prototype']);

/** What ends in a brace, as every line with a good sum does, can be nothing else than an object. */
const parsed = (text: string): Record<string, unknown> =>
  special.test(text)
    ? JSON.parse(text, (key, value: unknown) => (harmful.has(key) ? undefined : value))
    : JSON.parse(text);

const isEntry = (value: Readonly<Record<string, unknown>>): value is Entry => {
  const { seq, t, at, up, kind } = value;
  return (
    Number.isSafeInteger(seq) &&
    (seq as number) >= 0 &&
    (seq as number) <= lineBounds.seq &&
    typeof t === 'number' &&
    Number.isFinite(t) &&
    typeof at === 'string' &&
    (up === null || (typeof up === 'number' && Number.isFinite(up))) &&
    typeof kind === 'string'
  );
};

const hasGoodSum = (bytes: Uint8Array): boolean => {
  const body = bytes.length - sumBytes;
  if (body < 1) return false;
  const end = Buffer.from(bytes.buffer, bytes.byteOffset + body, sumBytes).toString('latin1');
  return end === sumOf(bytes.subarray(0, body));
};

/**
 * Read one line, given without its newline. Total: whatever the bytes are, an entry or the reason why not.
 * Prototype keys (`__proto__`, `constructor`, `prototype`) are left out of the entry.
 */
export const decodeLine = (bytes: Uint8Array): Decoded => {
  if (bytes.length > lineBounds.openedBytes) return { why: 'tooLong' };
  if (!hasGoodSum(bytes)) return { why: 'checksum' };
  if (tooDeep(bytes)) return { why: 'notAnEntry' };
  try {
    // Up to the sum, which has said what it had to say.
    const value = parsed(`${utf8.decode(bytes.subarray(0, bytes.length - sumBytes))}}`);
    if (!isEntry(value)) return { why: 'notAnEntry' };
    if (bytes.length > longestLine(value.kind)) return { why: 'tooLong' };
    return { entry: value };
  } catch {
    return { why: 'notAnEntry' };
  }
};
