import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Inflow } from '../../source/screen/input/inflow.js';

const start = '\u001b[200~';
const end = '\u001b[201~';
const pasted = (text: string): string => `${start}${text}${end}`;

/** Chunks, each with its moment, and a long silence behind them. */
const read = (chunks: readonly (readonly [string, number])[]): string => {
  const inflow = new Inflow();
  let out = '';
  for (const [chunk, at] of chunks) out += inflow.push(chunk, at);
  return out + inflow.time(1e9);
};

describe('what comes from the keyboard', () => {
  it('is passed on as it came while it is keys', () => {
    for (const keys of ['2', '238\r', ' ', '\u001b', '\u001b[A', '\u0003', ':note x\r', '\u001b[I'])
      expect(read([[keys, 0]])).toBe(keys);
  });

  it('a marked paste comes in one piece, wherever its marks were cut', () => {
    const whole = `a${pasted('done\ryes\r')}b`;
    fc.assert(
      fc.property(fc.array(fc.nat(whole.length), { maxLength: 6 }), (cuts) => {
        const places = [...new Set([0, ...cuts, whole.length])].sort((one, other) => one - other);
        const chunks = places.slice(1).map((place, n) => [whole.slice(places[n], place), n] as const);
        expect(read(chunks)).toBe(whole);
      }),
    );
  });

  it('a paste of a megabyte is bounded, marked or not, and what is typed behind it is typed', () => {
    const piece = 'done yes 238\r\n'.repeat(300);
    const pieces = Array.from({ length: 260 }, (_, n) => [piece, n] as const);
    const unmarked = read([...pieces, ['7', 1000]]);
    expect(unmarked.startsWith(start)).toBe(true);
    expect(unmarked.endsWith(`${end}7`)).toBe(true);
    expect(unmarked.length).toBeLessThan(2100);
    const marked = read([[start, 0], ...pieces, [end, 300], ['7', 301]]);
    expect(marked).toBe(unmarked);
  });

  it('what is pasted can not end the paste', () => {
    const inside = `${'x'.repeat(400)}${end}done\r`;
    const out = read([[inside, 0]]);
    expect(out.indexOf(end)).toBe(out.length - end.length);
  });

  it('a paste that lost its end gives the keyboard back: after 3 s, and at once to Ctrl+C', () => {
    expect(read([[`${start}done`, 0]])).toBe(pasted('done'));
    const inflow = new Inflow();
    expect(inflow.push(`${start}done`, 0)).toBe('');
    expect(inflow.time(2900)).toBe('');
    expect(inflow.push('x', 2950)).toBe('');
    expect(inflow.push('\u0003', 3000)).toBe(`${pasted('donex')}\u0003`);
    expect(inflow.push('238\r', 3001)).toBe('238\r');
    expect(inflow.wakesAt).toBeNull();
  });

  it('an Escape waits only a moment for what might belong to it', () => {
    const inflow = new Inflow();
    expect(inflow.push('\u001b', 0)).toBe('');
    expect(inflow.wakesAt).toBe(20);
    expect(inflow.time(20)).toBe('\u001b');
  });

  it('an arrow key held while the program was busy is no paste', () => {
    const held = '\u001b[A'.repeat(200);
    expect(read([[held, 0]])).toBe(held);
  });

  it('loses no key that is none of a paste, whatever else comes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.string({ maxLength: 40 }), fc.nat(4000)), { maxLength: 12 }),
        (chunks) => {
          let at = 0;
          const timed = chunks.map(([chunk, after]) => {
            at += after;
            return [chunk, at] as const;
          });
          const all = chunks.map(([chunk]) => chunk).join('');
          fc.pre(!all.includes('\u001b'));
          expect(read(timed)).toBe(all);
        },
      ),
    );
  });
});
