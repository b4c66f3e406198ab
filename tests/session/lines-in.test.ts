import fc from 'fast-check';
import { expect, it } from 'vitest';
import { linesOf } from '../../source/session/lines-in.js';

async function* inPieces(pieces: readonly (Buffer | string)[]): AsyncGenerator<Buffer | string> {
  yield* pieces;
}
const lines = async (...pieces: readonly (Buffer | string)[]): Promise<string[]> => {
  const all: string[] = [];
  for await (const line of linesOf(inPieces(pieces))) all.push(line);
  return all;
};

it('takes the ends of lines of every system, and a last line without one', async () => {
  expect(await lines('a\nb\r\nc\rd\n\ne')).toEqual(['a', 'b', 'c', 'd', '', 'e']);
  // A return at the end of a piece may be half of an end of line.
  expect(await lines('a\r', '\nb\r', 'c')).toEqual(['a', 'b', 'c']);
  expect(await lines()).toEqual([]);
});

it('says the same however the bytes are cut, in the middle of a letter too', async () => {
  const text = 'weiß 114,5 °C\nπ ≈ 3\n🍬 done\n';
  const whole = text.trimEnd().split('\n');
  const bytes = Buffer.from(text);
  for (let at = 0; at <= bytes.length; at += 1)
    expect(await lines(bytes.subarray(0, at), bytes.subarray(at))).toEqual(whole);
});

it('makes broken UTF-8 visible and goes on behind it', async () => {
  expect(await lines(Buffer.from([0x61, 0xff, 0x0a, 0xe2, 0x82]))).toEqual(['a\ufffd', '\ufffd']);
});

it('cuts a line that nobody types, once, whatever its length', async () => {
  const long = 'x'.repeat(70_000);
  const got = await lines(long, long, long, '\nnext\n', `${long}\nlast`);
  expect(got.map((line) => line.length)).toEqual([65_536, 4, 65_536, 4]);
  expect(got.filter((line) => line.length < 10)).toEqual(['next', 'last']);
  expect((await lines(long, long)).length).toBe(1);
});

it('never throws and loses no short line, whatever is sent', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.uint8Array({ maxLength: 60 })), async (pieces) => {
      const got = await lines(...pieces.map((piece) => Buffer.from(piece)));
      const ends = Buffer.concat(pieces)
        .toString('utf8')
        .split(/\r\n|\n|\r/);
      if (ends.at(-1) === '') ends.pop();
      expect(got.map((line) => line.replace(/\r$/, ''))).toEqual(ends);
    }),
  );
});
