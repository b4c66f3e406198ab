import headless from '@xterm/headless';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import '../seed.js';
import { Thrift } from '../../source/screen/thrifty.js';

const columns = 30;
const rows = 6;
const size = { columns, rows };

/** A frame over the last one as Ink writes it: each row stepped over, or written anew from end to end. */
const asInk = (before: readonly string[] | null, after: readonly string[]): string =>
  before === null
    ? after.join('\n')
    : `\u001b[${rows - 1}A${after
        .map((row, index) => {
          const isLast = index === rows - 1;
          if (row === before[index]) return isLast ? '' : '\u001b[E';
          return `\u001b[1G${row}\u001b[K${isLast ? '' : '\n'}`;
        })
        .join('')}`;

/** What stands in each cell, and how. */
const pictureOf = async (writes: readonly string[]): Promise<readonly string[]> => {
  const terminal = new headless.Terminal({ cols: columns, rows, allowProposedApi: true, convertEol: true });
  for (const text of writes) await new Promise<void>((done) => terminal.write(text, done));
  const { active } = terminal.buffer;
  return Array.from({ length: rows }, (_, y) => {
    const line = active.getLine(active.baseY + y);
    return Array.from({ length: columns }, (_, x) => {
      const cell = line?.getCell(x);
      const sign = cell?.getChars() || ' ';
      // A space has no weight and no colour of its own.
      const look = sign === ' ' ? '' : `${cell?.isBold()} ${cell?.getFgColor()}`;
      return `${sign}${look} ${cell?.isInverse()} ${cell?.getBgColor()}`;
    }).join('|');
  });
};

const piece = fc
  .record({
    text: fc.string({ unit: fc.constantFrom('a', '2', ' ', '▌', '█', '°', 'ö', '⠅'), maxLength: 9 }),
    style: fc.constantFrom(
      ['', ''],
      ['\u001b[1m', '\u001b[22m'],
      ['\u001b[38;2;178;178;178m', '\u001b[39m'],
      ['\u001b[1m\u001b[38;5;9m', '\u001b[39m\u001b[22m'],
      ['\u001b[7m\u001b[1m', '\u001b[22m\u001b[27m'],
      ['\u001b[41m', '\u001b[49m'],
    ),
  })
  .map(({ text, style: [on, off] }) => (text === '' ? '' : `${on}${text}${off}`));
const row = fc.oneof(
  { weight: 6, arbitrary: fc.array(piece, { maxLength: 3 }).map((pieces) => pieces.join('')) },
  // What is not known for sure: signs of two cells, of none, and sequences of another kind.
  {
    weight: 1,
    arbitrary: fc.constantFrom('鍋 2', 'e\u0301a', '\u001b[4munder\u001b[24m', '🍬 sweet', '⚠ hot'),
  },
);
const frame = fc.array(row, { minLength: rows, maxLength: rows });
const alike = (before: readonly string[], next: readonly string[], changed: readonly boolean[]) =>
  next.map((one, index) => (changed[index] ? one : (before[index] ?? '')));

it('shows in every cell what Ink would have shown', { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(
      frame,
      fc.array(fc.tuple(frame, fc.array(fc.boolean(), { minLength: rows, maxLength: rows })), {
        maxLength: 5,
      }),
      async (first, changes) => {
        const frames = [first];
        for (const [next, changed] of changes) frames.push(alike(frames.at(-1) ?? first, next, changed));
        const writes = frames.map((one, index) =>
          asInk(index === 0 ? null : (frames[index - 1] ?? null), one),
        );
        const thrift = new Thrift();
        const thrifty = writes.map((text) => thrift.of(text, size));
        expect(await pictureOf(thrifty)).toEqual(await pictureOf(writes));
      },
    ),
    { numRuns: 100 },
  );
});

const face = (typed: string): readonly string[] => ['a', 'b', `> ${typed}▌   of the syrup`, 'd', 'e', 'f'];

it('writes one cell where one cell changed', () => {
  const thrift = new Thrift();
  thrift.of(face('1').join('\n'), size);
  expect(thrift.of(asInk(face('1'), face('2')), size)).toBe('\u001b[5A\u001b[2E\u001b[3G2\u001b[3E');
});

it.each([
  ['another size', (thrift: Thrift) => thrift.of('', { columns: 40, rows })],
  ['the other screen', (thrift: Thrift) => thrift.of('\u001b[?1049h', size)],
  ['something written over it', (thrift: Thrift) => thrift.of('\u001b[2J', size)],
])('trusts nothing after %s: a changed row is written whole', (_, disturb) => {
  const thrift = new Thrift();
  thrift.of(face('1').join('\n'), size);
  disturb(thrift);
  expect(thrift.of(asInk(face('1'), face('2')), size)).toContain('> 2▌   of the syrup\u001b[K');
});
