import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeLine, type Entry, encodeLine } from '../../source/journal/line.js';
import { damageNotes, looksLikeJournal, mendingBytes, recover } from '../../source/journal/recover.js';
import { bytesOf, event, opened, sample } from './sample.js';

const whole = bytesOf(sample);

const signed = (body: string): Buffer =>
  Buffer.from(`${body},"sum":"${crc32(Buffer.from(body)).toString(16).padStart(8, '0')}"}\n`);

const seqs = (entries: readonly Entry[]): number[] => entries.map(({ seq }) => seq);

describe('a line of the journal', () => {
  it('is what the interface promises, to the byte', () => {
    const bytes = encodeLine(event(2, 'heat', { setting: 'medium' }));
    expect(bytes?.toString()).toMatch(
      /^\{"seq":2,"t":60,"at":"2026-12-05T18:02:00.000Z","up":4060,"kind":"heat","setting":"medium","sum":"[0-9a-f]{8}"\}\n$/,
    );
    const text = bytes?.toString() ?? '';
    const body = text.slice(0, text.indexOf(',"sum"'));
    expect(Number.parseInt(text.slice(-11, -3), 16)).toBe(crc32(Buffer.from(body)));
  });

  it('knows the published check value of this CRC-32 ("123456789" gives cbf43926)', () => {
    expect(crc32(Buffer.from('123456789')).toString(16)).toBe('cbf43926');
  });

  it('gives back any event, whatever is typed into it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.jsonValue({ maxDepth: 5 }), (text, value) => {
        const entry = event(7, 'note', { text, value });
        const bytes = encodeLine(entry) ?? Buffer.alloc(0);
        expect(bytes.indexOf(10)).toBe(bytes.length - 1);
        const decoded = decodeLine(bytes.subarray(0, -1));
        // Through JSON: minus nought and lone surrogates are what JSON makes of them.
        expect('entry' in decoded && JSON.stringify(decoded.entry)).toBe(
          JSON.stringify(entry, (key, field: unknown) =>
            ['__proto__', 'constructor', 'prototype'].includes(key) ? undefined : field,
          ),
        );
      }),
    );
  });

  it('refuses what a signature alone does not make an event', () => {
    const deep = `{"seq":1,"t":0,"at":"x","up":null,"kind":"note","text":${'['.repeat(40)}${']'.repeat(40)}`;
    const bad = [
      '[1',
      '{"seq":"1","t":0,"at":"x","up":null,"kind":"note"',
      '{"seq":-1,"t":0,"at":"x","up":null,"kind":"note"',
      '{"seq":9007199254740991,"t":0,"at":"x","up":null,"kind":"note"',
      '{"seq":1,"t":1e999,"at":"x","up":null,"kind":"note"',
      '{"seq":1,"t":0,"at":5,"up":null,"kind":"note"',
      '{"seq":1,"t":0,"at":"x","up":null,"kind":null',
      deep,
    ];
    const answers = bad.map((body) => decodeLine(signed(body).subarray(0, -1)));
    expect(answers).toEqual(bad.map(() => ({ why: 'notAnEntry' })));
  });

  it('bounds its length when written and when read', () => {
    expect(encodeLine(event(2, 'note', { text: 'x'.repeat(70_000) }))).toBeNull();
    expect(encodeLine(event(1, 'opened', { recipe: 'x'.repeat(70_000) }))).not.toBeNull();
    expect(encodeLine(event(1, 'opened', { recipe: 'x'.repeat(1_100_000) }))).toBeNull();
    const long = `{"seq":1,"t":0,"at":"x","up":null,"kind":"note","text":"${'x'.repeat(70_000)}"`;
    expect(decodeLine(signed(long).subarray(0, -1))).toEqual({ why: 'tooLong' });
  });

  it('cannot reach the prototype of anything', () => {
    const body =
      '{"seq":1,"t":0,"at":"x","up":null,"kind":"note","__proto__":{"bad":1},"a":{"\\u005f_proto__":{"bad":1},"constructor":2}';
    const decoded = decodeLine(signed(body).subarray(0, -1));
    const entry = 'entry' in decoded ? decoded.entry : event(0);
    expect(Object.keys(entry)).toEqual(['seq', 't', 'at', 'up', 'kind', 'a']);
    expect(Object.assign({}, entry.a)).toEqual({});
    expect(Reflect.get(Object.assign({}, entry), 'bad')).toBeUndefined();
  });
});

describe('recovering a journal', () => {
  it('gives every event once, the first although it is written twice', () => {
    expect(recover(whole)).toEqual({
      entries: sample,
      damaged: [],
      damagedCount: 0,
      torn: false,
      bytesUsed: whole.length,
    });
  });

  it('loses at most two lines to any flipped bit, never the recipe, and names the line', () => {
    let worst = 0;
    for (let bit = 0; bit < whole.length * 8; bit += 1) {
      const hurt = Buffer.from(whole);
      hurt[bit >> 3] = (hurt[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const { entries, damaged, torn } = recover(hurt);
      const lost = sample.filter(({ seq }) => !seqs(entries).includes(seq));
      worst = Math.max(worst, lost.length);
      expect(entries[0]).toEqual(opened);
      expect(sample).toEqual(expect.arrayContaining([...entries]));
      expect(seqs(entries)).toEqual([...seqs(entries)].sort((a, b) => a - b));
      const lineHit = whole.subarray(0, bit >> 3).filter((byte) => byte === 10).length + 1;
      if (!torn) expect(damaged[0]?.line).toBe(lineHit);
    }
    expect(worst).toBe(1);
  });

  it('never throws and never invents, whatever byte replaces whatever byte', () => {
    for (let at = 0; at < whole.length; at += 1) {
      for (const value of [0, 10, 13, 34, 92, 123, 255]) {
        const hurt = Buffer.from(whole);
        hurt[at] = value;
        expect(sample).toEqual(expect.arrayContaining([...recover(hurt).entries]));
      }
    }
  });

  it('uses a file cut off anywhere up to its last newline', () => {
    for (let length = 0; length < whole.length; length += 1) {
      const cut = whole.subarray(0, length);
      const { entries, torn, bytesUsed, damaged } = recover(cut);
      expect(bytesUsed).toBe(cut.lastIndexOf(10) + 1);
      expect(torn).toBe(bytesUsed < length);
      expect(damaged).toEqual([]);
      expect(entries).toEqual(sample.slice(0, entries.length));
    }
  });

  it('counts a torn line as damaged once it is mended, and never brings it back to life', () => {
    for (let length = 0; length < whole.length; length += 1) {
      const cut = whole.subarray(0, length);
      const before = recover(cut);
      const mended = Buffer.concat([cut, mendingBytes(cut, before)]);
      const after = recover(Buffer.concat([mended, bytesOf([event(before.entries.length + 1, 'later')])]));
      expect(after.torn).toBe(false);
      expect(after.damagedCount).toBe(before.torn ? 1 : 0);
      expect(after.entries.slice(0, -1)).toEqual(before.entries);
      expect(after.entries.at(-1)?.kind).toBe('later');
      expect(looksLikeJournal(cut, before)).toBe(true);
    }
  });

  it('takes any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), fc.nat(whole.length), (noise, at) => {
        const { entries } = recover(Buffer.concat([whole.subarray(0, at), noise, whole.subarray(at)]));
        expect(sample).toEqual(expect.arrayContaining([...entries]));
      }),
    );
  });

  it('keeps a hostile file within bounds: a million empty lines leave a hundred reports', () => {
    const { damaged, damagedCount } = recover(Buffer.alloc(1_000_000, 10));
    expect([damaged.length, damagedCount]).toEqual([100, 1_000_000]);
  });

  it('tells the person which lines are hurt', () => {
    const hurt = Buffer.concat([
      bytesOf([opened]),
      Buffer.from('x\n'),
      bytesOf(sample.slice(1)),
      Buffer.from('{"se'),
    ]);
    expect(damageNotes(recover(hurt))).toEqual([
      { id: 'journal.damaged', values: { lines: [3], more: 0 } },
      { id: 'journal.torn' },
    ]);
  });

  it('does not take another file for a journal', () => {
    for (const text of ['kettlehand: 1\nname: x\n', '{"version":1}\n', ' ']) {
      expect(looksLikeJournal(Buffer.from(text), recover(Buffer.from(text)))).toBe(false);
    }
  });
});
