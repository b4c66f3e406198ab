import { build } from 'esbuild';
import plain from 'string-width';
import { beforeAll, describe, expect, it } from 'vitest';
import { briskInk } from '../../scripts/brisk-ink.mjs';

/** The library as the program is built with it, beside the library as it is published. */
let built: (text: string) => number;

beforeAll(async () => {
  const { outputFiles } = await build({
    stdin: { contents: "export { default } from 'string-width';", resolveDir: '.' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    plugins: [briskInk],
    write: false,
  });
  const code = outputFiles[0]?.text ?? '';
  expect(code).toContain('isEmoji');
  built = (await import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`)).default;
});

const everyEmoji = Array.from({ length: 0x20000 }, (_, code) => code)
  .filter((code) => code < 0xd800 || code > 0xdfff)
  .map((code) => String.fromCodePoint(code))
  .filter((sign) => /\p{Emoji}/u.test(sign));

describe('the width of what is shown, measured by the library as it is built in', () => {
  it.each([
    ['every emoji', everyEmoji],
    ['every one asked for as a picture', everyEmoji.map((sign) => `${sign}\uFE0F`)],
    ['every key cap', everyEmoji.map((sign) => `${sign}\uFE0F\u20E3`)],
    ['every one in every colour of skin', everyEmoji.flatMap((sign) => [`${sign}🏻`, `${sign}🏿`])],
    ['families, flags, and one of nobody', ['👩‍👩‍👧‍👦', '🏳️‍🌈', '🇦🇹', '🇦', '🏴󠁧󠁢󠁳󠁣󠁴󠁿', '❤️‍🔥', '🧑🏽‍🍳', '👨‍🚒‍🧪']],
    [
      'what the screen is drawn of',
      ['▐█▌ 124,5 °C', '⠋⣿⡇', '┌──┤', 'Zähe Süßigkeit – 3½', '测试', 'e\u0301', 'ｶﾞ'],
    ],
  ])('of %s is as the library says', (_, signs) => {
    const off = signs.filter((sign) => built(`= ${sign} =`) !== plain(`= ${sign} =`));
    expect(off).toEqual([]);
    expect(signs.length).toBeGreaterThan(5);
  });
});
