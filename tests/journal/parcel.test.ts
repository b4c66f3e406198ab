import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { looksLikeParcel, readParcel, writeParcel } from '../../source/journal/parcel.js';
import { bytesOf, event, sample } from './sample.js';

const stamp = { exported: '2026-12-06T09:00:00.000Z', program: '0.1.0' };
const whole = writeParcel('2026-12-05-173009-9f2c', sample, stamp);
const [header = '', ...lines] = whole.split('\n');
const body = lines.join('\n');

const read = (text: string) => {
  const parcel = readParcel(Buffer.from(text));
  return 'fault' in parcel ? [parcel.fault, parcel.version] : parcel.recovered.entries.map(({ seq }) => seq);
};
/** The same parcel with some fields of its header changed. */
const changed = (fields: Readonly<Record<string, unknown>>): string =>
  `${JSON.stringify({ ...JSON.parse(header), ...fields })}\n${body}`;

describe('a cook carried elsewhere in one file', () => {
  it('arrives as the journal it was, first event twice, under its own name', () => {
    const parcel = readParcel(Buffer.from(whole));
    expect(parcel).toMatchObject({ id: '2026-12-05-173009-9f2c', recovered: { entries: sample } });
    expect('body' in parcel && parcel.body).toEqual(bytesOf(sample));
    expect(JSON.parse(header)).toMatchObject({ kettlehandCook: 1, ...stamp });
    expect(looksLikeParcel(Buffer.from(whole))).toBe(true);
  });

  const tooMuch = event(6, 'note', { text: 'y'.repeat(70_000) });

  it('leaves out what no journal would take', () => {
    expect(read(writeParcel('a', [...sample, tooMuch], stamp))).toEqual([1, 2, 3, 4, 5]);
  });

  it.each([
    ['the first half', whole.slice(0, whole.length / 2), 'cut off', 1],
    ['one character less', whole.slice(0, -1), 'cut off', 1],
    ['one character more', `${whole}\n`, 'longer', 1],
    ['a reading changed by hand', whole.replace('104.5', '114.5'), 'changed', 1],
    ['a checksum that is none', changed({ sha256: 7 }), 'changed', 1],
    ['a length that is none', changed({ bytes: 'all' }), 'changed', 1],
    ['a name that leads out of the folder', changed({ id: '../../x' }), 'changed', 1],
    ['no name', changed({ id: null }), 'changed', 1],
    ['made by a later version', changed({ kettlehandCook: 2 }), 'newer', 2],
    ['half a version', changed({ kettlehandCook: 1.5 }), 'not ours', null],
    ['version none', changed({ kettlehandCook: 0 }), 'not ours', null],
    ['a version in words', changed({ kettlehandCook: 'one' }), 'not ours', null],
    ['a journal without its header', body, 'not ours', null],
    ['a header alone, without an end', header, 'not ours', null],
    ['JSON of something else', '{"name":"soup"}\n', 'not ours', null],
    ['a number', '5\n', 'not ours', null],
    ['null', 'null\n', 'not ours', null],
    ['words', 'sugar, water, patience\n', 'not ours', null],
    ['nothing', '', 'not ours', null],
    ['a header longer than any', `${' '.repeat(9000)}${whole}`, 'not ours', null],
    ['a cook whose beginning is missing', writeParcel('a', sample.slice(1), stamp), 'no cook', 1],
    ['a cook without events', writeParcel('a', [], stamp), 'no cook', 1],
  ])('is refused as a whole: %s', (_what, text, fault, version) => {
    expect(read(text)).toEqual([fault, version]);
  });

  it.each([
    ['a line that no longer matches its checksum', body.replace('104.5', '114.5')],
    ['an end that is torn off', `${body}{"seq":`],
  ])('is refused although its own sum is right: %s', (_what, text) => {
    const sha256 = createHash('sha256').update(text).digest('hex');
    const sealed = JSON.stringify({ ...JSON.parse(header), bytes: Buffer.byteLength(text), sha256 });
    expect(read(`${sealed}\n${text}`)).toEqual(['no cook', 1]);
  });
});
