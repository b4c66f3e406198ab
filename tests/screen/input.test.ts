import { describe, expect, it } from 'vitest';
import { factsOf } from '../../source/screen/facts.js';
import { KeyReader, pastedLine } from '../../source/screen/input/key.js';
import {
  type Effect,
  type InputEvent,
  type InputState,
  startingInput,
  stepInput,
  wakesAt,
} from '../../source/screen/input/reducer.js';
import type { Situation } from '../../source/screen/keys.js';
import { type Bench, bench, play, wholeCook } from './kit.js';

const situationOf = ({ session }: Bench): Situation => ({
  advice: session.advice(),
  facts: factsOf(session.cook),
});

const boiling = async (): Promise<Situation> => {
  const one = bench();
  await play(one, wholeCook.slice(0, 17));
  return situationOf(one);
};

/** A keyboard in front of one fixed situation: what is typed at which moment, and what came of it. */
class Keyboard {
  state: InputState;
  effects: Effect[] = [];
  now = 10_000;

  constructor(private readonly situation: Situation) {
    this.state = startingInput({ bell: true, step: situation.advice.step });
  }

  tell(event: InputEvent): this {
    const { state, effects } = stepInput(this.state, event, this.now, this.situation);
    this.state = state;
    this.effects.push(...effects);
    return this;
  }

  /** Keys, so many milliseconds apart. */
  press(keys: string, apart = 0): this {
    const reader = new KeyReader();
    for (const char of keys) {
      for (const key of reader.read(char)) this.tell({ kind: 'key', key });
      this.wait(apart);
    }
    return this;
  }

  wait(milliseconds: number): this {
    const until = this.now + milliseconds;
    for (;;) {
      const at = wakesAt(this.state);
      if (at === null || at > until) break;
      this.now = Math.max(this.now, at);
      this.tell({ kind: 'time' });
    }
    this.now = until;
    return this;
  }

  get typed(): readonly string[] {
    return this.effects.flatMap((effect) => (effect.kind === 'type' ? [effect.typed] : []));
  }
}

describe('a reading', () => {
  it('starts with a digit anywhere, is echoed, and is taken by Enter', async () => {
    const keyboard = new Keyboard(await boiling()).press('238');
    expect(keyboard.state.entry?.text).toBe('238');
    expect(keyboard.typed).toEqual([]);
    expect(keyboard.press('\r').typed).toEqual(['238']);
    expect(keyboard.state.entry).toBeNull();
  });

  it('may have a unit and a decimal, and is corrected by Backspace', async () => {
    expect(new Keyboard(await boiling()).press('115\u007f4.5c\r').typed).toEqual(['114.5c']);
  });

  it('closes a list that is open, and help', async () => {
    const keyboard = new Keyboard(await boiling()).press('!').wait(200);
    expect(keyboard.state.chooser).toBe('trouble');
    expect(keyboard.press('2').state).toMatchObject({ chooser: null, entry: { text: '2' } });
    const helped = new Keyboard(await boiling()).press('?').wait(200);
    expect(helped.state.help).toBe(true);
    expect(helped.press('2').state).toMatchObject({ help: false, entry: { text: '2' } });
  });

  it('comes back for editing when it was not taken', async () => {
    const keyboard = new Keyboard(await boiling()).press('2.3.8\r');
    keyboard.tell({ kind: 'queried', because: { id: 'typed.nothing' }, typed: '2.3.8' });
    expect(keyboard.state.entry?.text).toBe('2.3.8');
    expect(keyboard.state.notice?.id).toBe('typed.nothing');
    expect(keyboard.press('\u007f').state.notice).toBeNull();
    expect(keyboard.state.entry?.text).toBe('2.3.');
  });

  it('that was not taken is replaced by whatever is typed next, never added to', async () => {
    const queried = { kind: 'queried', because: { id: 'typed.nothing' }, typed: '2.3.8' } as const;
    expect(new Keyboard(await boiling()).tell(queried).press('238\r').typed).toEqual(['238']);
    expect(new Keyboard(await boiling()).tell(queried).press(':heat low\r').typed).toEqual(['heat low']);
    expect(new Keyboard(await boiling()).tell(queried).press('p').wait(200).typed).toEqual(['pot off']);
    expect(new Keyboard(await boiling()).tell(queried).press('\r').typed).toEqual(['2.3.8']);
  });
});

describe('a hand laid on the keyboard', () => {
  it('does nothing: three command letters within 150 ms', async () => {
    for (const hand of ['tpl', 'uho', 'asdfjkl', 'phu t l', 'ptp']) {
      const keyboard = new Keyboard(await boiling()).press(hand, 20).wait(1000);
      expect(keyboard.typed, hand).toEqual([]);
      expect(keyboard.state).toMatchObject({ chooser: null, help: false, leaving: false });
      expect(keyboard.state.notice?.id, hand).toBe('entry.burst');
    }
  });

  it('leaves digits, Enter and Backspace alone', async () => {
    const keyboard = new Keyboard(await boiling()).press('p2t3l8\r', 10).wait(1000);
    expect(keyboard.typed).toEqual(['238']);
    expect(new Keyboard(await boiling()).press('239\u007f8\r', 5).typed).toEqual(['238']);
  });

  it('is over after a moment: the next letter works', async () => {
    const keyboard = new Keyboard(await boiling()).press('tpl', 20).wait(500).press('p').wait(200);
    expect(keyboard.typed).toEqual(['pot off']);
  });

  it('two letters in a row are typed, in their order', async () => {
    const keyboard = new Keyboard(await boiling()).press('hb', 60).wait(400);
    expect(keyboard.typed).toEqual(['heat low']);
  });

  it('a key and its number in one breath stay together', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 41));
    const keyboard = new Keyboard(situationOf(one)).press('m47c\r').wait(400);
    expect(keyboard.typed).toEqual(['middle 47c']);
  });
});

describe('a key that means nothing now', () => {
  it('does nothing, and says so until the next key', async () => {
    const keyboard = new Keyboard(await boiling()).press('k').wait(200);
    expect(keyboard.typed).toEqual([]);
    expect(keyboard.state.notice).toEqual({ id: 'entry.no-key', values: { key: 'k' } });
    expect(keyboard.press('2').state.notice).toBeNull();
  });
});

describe('the space bar', () => {
  it('held down says done once', async () => {
    const held = new Keyboard(await boiling()).press(' ').wait(300).press(' '.repeat(60), 33).wait(1000);
    expect(held.typed).toEqual(['done']);
  });

  it.each([250, 375, 500, 660, 1000])(
    'held on a keyboard that repeats after %i ms says done once',
    async (delay) => {
      const held = new Keyboard(await boiling()).press(' ').wait(delay).press(' '.repeat(40), 40).wait(1000);
      expect(held.typed).toEqual(['done']);
    },
  );

  it('tapped twice in haste says done once, and again a second later', async () => {
    const keyboard = new Keyboard(await boiling()).press('  ', 90).wait(500);
    expect(keyboard.typed).toEqual(['done']);
    expect(keyboard.wait(1000).press(' ').wait(300).typed).toEqual(['done', 'done']);
  });

  it('says nothing within 400 ms of a change of step', async () => {
    const keyboard = new Keyboard(await boiling()).tell({ kind: 'step', step: 'boil.off' });
    expect(keyboard.wait(200).press(' ').wait(300).typed).toEqual([]);
    expect(keyboard.wait(500).press(' ').wait(300).typed).toEqual(['done']);
  });

  it('does not end a line that is being typed', async () => {
    expect(new Keyboard(await boiling()).press('238 ').wait(300).state.entry?.text).toBe('238');
  });
});

describe('a paste', () => {
  it('never acts, and is offered as a line', async () => {
    const keyboard = new Keyboard(await boiling()).tell({ kind: 'paste', text: pastedLine('yes\r\ndone\r') });
    expect(keyboard.wait(1000).typed).toEqual([]);
    expect(keyboard.state.entry?.text).toBe('yes done ');
    expect(keyboard.press('\r').typed).toEqual(['yes done']);
  });

  it('is cut where it is longer than any line', () => {
    expect(pastedLine('\u001b[31mx'.repeat(10_000)).length).toBeLessThanOrEqual(500);
    expect(pastedLine('a\u001b[2Jb')).toBe('a[2Jb');
  });
});

describe('the typed line', () => {
  it('opens with a colon and takes any word', async () => {
    expect(new Keyboard(await boiling()).press(':heat high\r').typed).toEqual(['heat high']);
  });

  it('closes with Escape, and with Backspace when it is empty', async () => {
    const keyboard = new Keyboard(await boiling()).press(':he\u001b');
    expect(keyboard.state.entry).toBeNull();
    expect(new Keyboard(await boiling()).press(':h\u007f').state.entry).toBeNull();
  });

  it('that were not taken give way to the words that are typed instead, which are no keys', async () => {
    const queried = { kind: 'queried', because: { id: 'typed.nothing' }, typed: 'it smells' } as const;
    const behind = async (keys: string, apart: number): Promise<readonly string[]> =>
      new Keyboard(await boiling()).tell(queried).press(keys, apart).wait(300).typed;
    // One key in half a second, or all at once.
    for (const apart of [500, 0]) {
      expect(await behind('scorched\r', apart)).toEqual(['scorched']);
      expect(await behind('undo\r', apart)).toEqual(['undo']);
      expect(await behind(':heat low\r', apart)).toEqual(['heat low']);
      expect(await behind('238\r', apart)).toEqual(['238']);
    }
    expect(await behind('\u007f\u007f\r', 100)).toEqual(['it smel']);
    const trouble = new Keyboard(await boiling()).tell(queried).press('!').wait(300);
    expect(trouble.state).toMatchObject({ chooser: 'trouble', entry: null });
  });

  it('lets trouble through, but not out of a remark', async () => {
    expect(new Keyboard(await boiling()).press(':hea!').state.chooser).toBe('trouble');
    expect(new Keyboard(await boiling()).press(':note hot!').state.entry?.text).toBe('note hot!');
  });

  it('knows the words for help and for leaving', async () => {
    expect(new Keyboard(await boiling()).press(':help\r').state.help).toBe(true);
    expect(new Keyboard(await boiling()).press(':quit\r').state.leaving).toBe(true);
  });
});

describe('leaving', () => {
  const interrupt = { kind: 'key', key: { kind: 'interrupt' } } as const;

  it('asks once; the second Ctrl+C leaves whatever happens', async () => {
    const keyboard = new Keyboard(await boiling()).tell(interrupt);
    expect(keyboard.state.leaving).toBe(true);
    expect(keyboard.tell(interrupt).effects).toEqual([{ kind: 'leave', how: 'interrupted' }]);
  });

  it('any other key stays, and is not taken for a command', async () => {
    const keyboard = new Keyboard(await boiling()).tell(interrupt).press('p').wait(400);
    expect(keyboard.state.leaving).toBe(false);
    expect(keyboard.effects).toEqual([]);
  });

  it('y leaves', async () => {
    const keyboard = new Keyboard(await boiling()).press('q').wait(200).press('y').wait(200);
    expect(keyboard.effects).toEqual([{ kind: 'leave', how: 'left' }]);
  });
});

describe('what a terminal sends unasked', () => {
  it.each([
    ['focus gained', '[I'],
    ['focus lost', '[O'],
    ['a mouse report', '[<0;10;10M'],
    ['a cursor report', '[12;40R'],
    ['an unknown key', '[1;9Z'],
  ])('%s is dropped', (_, sequence) => {
    expect(new KeyReader().read(sequence)).toEqual([]);
  });

  it('the bytes of an old mouse report are no space bar', () => {
    const reader = new KeyReader();
    expect([...reader.read('[M'), ...reader.read(' !!')]).toEqual([]);
    expect(reader.read(' ')).toEqual([{ kind: 'char', char: ' ' }]);
  });

  it('Esc with a key in one breath is Esc', () => {
    expect(new KeyReader().read('d', { meta: true })).toEqual([{ kind: 'escape' }]);
  });

  it('a chunk is split into graphemes, in order', () => {
    expect(new KeyReader().read('2é\r')).toEqual([
      { kind: 'char', char: '2' },
      { kind: 'char', char: 'é' },
      { kind: 'enter' },
    ]);
  });
});
