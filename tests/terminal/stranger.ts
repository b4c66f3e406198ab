import type { TimedCook } from './fixture.js';

/** What a pot would show, made up but possible: degrees Fahrenheit on the dial by minutes since the boil began. */
class Pot {
  #boilMinutes = 0;
  #cooling = 0;

  boils(seconds: number): number {
    this.#boilMinutes += seconds / 60;
    return Math.round(Math.min(262, 222 + 2.6 * this.#boilMinutes));
  }

  get isHardBall(): boolean {
    return 222 + 2.6 * this.#boilMinutes >= 244;
  }

  cools(seconds: number): number {
    this.#cooling += seconds / 60;
    return Math.round(72 + 168 * Math.exp(-this.#cooling / 16));
  }
}

type Move = { readonly on: RegExp; readonly does: (cook: TimedCook, pot: Pot, seconds: number) => string };

/** What a stranger does who reads the screen and nothing else. The first that fits is done; else the space bar. */
const moves: readonly Move[] = [
  { on: /Is it right\? yes, or no/, does: () => 'y' },
  { on: /Answer yes\./, does: () => 'y' },
  { on: /Type what you set/, does: () => ':heat medium\r' },
  {
    on: /type: heat off|Turn the ring off\./,
    does: (cook) => (/heat off/.test(cook.rows.at(-2) ?? '') ? ' ' : ':heat off\r'),
  },
  { on: /One letter\./, does: (_, pot) => (pot.isHardBall ? 'e' : 'd') },
  { on: /then feel/, does: () => 't' },
  { on: /OFF THE HEAT now|Not yet/, does: () => ' ' },
  { on: /hang it in|Read again|Read the thermometer/, does: (_, pot, seconds) => `${pot.boils(seconds)}\r` },
  { on: /Measure the middle|measure again/, does: (_, pot, seconds) => `m${pot.cools(seconds * 6)}f\r` },
  { on: /weigh 512g/, does: (cook) => (/count/.test(cook.rows.at(-2) ?? '') ? ' ' : 'c141\r') },
];

/** What is different once something was taken: the last events, the keys that work now. No running number. */
const essence = (cook: TimedCook): string => cook.rows.slice(-2).join('\n');

/** A line that is half typed is no answer yet. */
const isTyping = (cook: TimedCook): boolean => (cook.rows.at(-1) ?? '').startsWith('Enter takes it');

const nextMove = (cook: TimedCook, pot: Pot, seconds: number): string => {
  const text = cook.flat;
  const keys = moves.find(({ on }) => on.test(text))?.does(cook, pot, seconds) ?? ' ';
  // With hands in the candy nothing but the space bar; before, the word is quicker: a space waits until it was read.
  return keys === ' ' && !/\[(PULL|CUT)\]/.test(text) ? ':done\r' : keys;
};

export type Walk = { readonly moves: number; readonly screens: readonly string[] };

/** Lead the cook from whatever the screen shows to where `ends` is shown, by what stands on the screen alone. */
export const follow = async (cook: TimedCook, ends: RegExp, most = 120): Promise<Walk> => {
  const pot = new Pot();
  const screens: string[] = [];
  for (let made = 0; made < most; made += 1) {
    if (ends.test(cook.flat)) return { moves: made, screens };
    screens.push(cook.text);
    const boiling = /Read again|Read the thermometer|hang it in/.test(cook.flat);
    const seconds = boiling ? 45 : 30;
    cook.passes(seconds);
    const before = essence(cook);
    const keys = nextMove(cook, pot, seconds);
    await cook.pressesUntil(keys, () => essence(cook) !== before && !isTyping(cook));
  }
  throw new Error(`not there after ${most} moves:\n${cook.text}`);
};
