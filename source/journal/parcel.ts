import { createHash } from 'node:crypto';
import { isPlainName } from '../files/names.js';
import { type Entry, encodeLine } from './line.js';
import { type Recovered, recover } from './recover.js';

/**
 * A cook as one file to carry elsewhere: a line of JSON with version and checksum, then the journal's own lines.
 * Version 1.
 */
export const parcelVersion = 1;

/** The header is a short line; nothing longer is looked at. */
const longestHeaderBytes = 8 * 1024;

type Header = {
  readonly kettlehandCook: number;
  readonly id: string;
  readonly exported: string;
  readonly program: string;
  readonly bytes: number;
  /** SHA-256 over everything after the header's newline, hex. */
  readonly sha256: string;
};

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** The file's text: only what could be read of the journal goes in, the first event twice as a journal has it. */
export const writeParcel = (
  id: string,
  entries: readonly Entry[],
  stamp: { readonly exported: string; readonly program: string },
): string => {
  const [first] = entries;
  const doubled = first?.kind === 'opened' ? [first, ...entries] : entries;
  const body = Buffer.concat(doubled.flatMap((entry) => encodeLine(entry) ?? []));
  const header: Header = {
    kettlehandCook: parcelVersion,
    id,
    ...stamp,
    bytes: body.length,
    sha256: sha256(body),
  };
  return `${JSON.stringify(header)}\n${body.toString('utf8')}`;
};

export type ParcelFault = 'not ours' | 'newer' | 'cut off' | 'longer' | 'changed' | 'no cook';
export type Parcel =
  | { readonly id: string; readonly body: Buffer; readonly recovered: Recovered }
  | { readonly fault: ParcelFault; readonly version: number | null };

const headerOf = (bytes: Buffer): { header: Record<string, unknown>; rest: Buffer } | null => {
  const end = bytes.subarray(0, longestHeaderBytes).indexOf(0x0a);
  if (end < 0) return null;
  try {
    const header: unknown = JSON.parse(bytes.subarray(0, end).toString('utf8'));
    const isHeader = typeof header === 'object' && header !== null && 'kettlehandCook' in header;
    return isHeader ? { header: header as Record<string, unknown>, rest: bytes.subarray(end + 1) } : null;
  } catch {
    return null;
  }
};

export const looksLikeParcel = (bytes: Buffer): boolean => headerOf(bytes) !== null;

/** Read it, or say what is wrong with it; nothing of a parcel is used unless all of it is right. Total. */
export const readParcel = (bytes: Buffer): Parcel => {
  const found = headerOf(bytes);
  if (found === null) return { fault: 'not ours', version: null };
  const { header, rest } = found;
  const { kettlehandCook: version, id, bytes: length, sha256: sum } = header;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return { fault: 'not ours', version: null };
  if (version > parcelVersion) return { fault: 'newer', version };
  if (typeof id !== 'string' || !isPlainName(id) || typeof length !== 'number' || typeof sum !== 'string')
    return { fault: 'changed', version };
  if (rest.length < length) return { fault: 'cut off', version };
  if (rest.length > length) return { fault: 'longer', version };
  if (sha256(rest) !== sum) return { fault: 'changed', version };
  const recovered = recover(rest);
  const whole = recovered.entries[0]?.kind === 'opened' && !recovered.torn && recovered.damagedCount === 0;
  return whole ? { id, body: rest, recovered } : { fault: 'no cook', version };
};
