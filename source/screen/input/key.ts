import { signsOf } from '../signs.js';

/** What came from the keyboard, after the terminal's own ways of saying it are gone. */
export type Key =
  | { readonly kind: 'char'; readonly char: string }
  | { readonly kind: 'enter' | 'backspace' | 'escape' | 'interrupt' | 'suspend' };

/** The part of Ink's key that matters here. */
export type Modifiers = {
  readonly return?: boolean;
  readonly backspace?: boolean;
  readonly delete?: boolean;
  readonly escape?: boolean;
  readonly ctrl?: boolean;
  readonly meta?: boolean;
};

const controls: Readonly<Record<string, Key>> = {
  '\r': { kind: 'enter' },
  '\n': { kind: 'enter' },
  '\u007f': { kind: 'backspace' },
  '\b': { kind: 'backspace' },
  '\u0003': { kind: 'interrupt' },
  '\u001a': { kind: 'suspend' },
  '\u001b': { kind: 'escape' },
};

/** A control sequence that nobody decoded, its ESC gone: focus, mouse, cursor reports. */
const leftover = /^\[[0-9;<>=?]*[ -/]*[@-~]/;
const oldMouseReport = '[M';
const oldMouseBytes = 3;

const isPrintable = (char: string): boolean => !/^[\p{C}\p{Zl}\p{Zp}]/u.test(char);

/**
 * Chunks as Ink hands them over → keys, in order. `dropped` counts characters still to be swallowed: an old mouse
 * report sends three bytes behind its sequence, and a space among them must not say "done".
 */
export class KeyReader {
  #dropped = 0;

  read(input: string, modifiers: Modifiers = {}): readonly Key[] {
    if (modifiers.return) return [{ kind: 'enter' }];
    if (modifiers.backspace || modifiers.delete) return [{ kind: 'backspace' }];
    if (modifiers.escape) return [{ kind: 'escape' }];
    if (modifiers.ctrl) {
      if (input === 'c') return [{ kind: 'interrupt' }];
      return input === 'z' ? [{ kind: 'suspend' }] : [];
    }
    // Esc and a key in one breath: the key is dropped, for it may be part of something unknown.
    if (modifiers.meta) return [{ kind: 'escape' }];
    if (input === oldMouseReport) {
      this.#dropped = oldMouseBytes;
      return [];
    }
    if (input.length > 1 && leftover.test(input)) return [];
    const keys: Key[] = [];
    for (const sign of signsOf(input)) {
      if (this.#dropped > 0) this.#dropped -= 1;
      else if (controls[sign] !== undefined) keys.push(controls[sign]);
      else if (sign === '\r\n') keys.push({ kind: 'enter' });
      else if (isPrintable(sign)) keys.push({ kind: 'char', char: sign });
    }
    return keys;
  }
}

/** Pasted text as one line that can be looked at: line ends and tabs become spaces, what does not print is left out. */
export const pastedLine = (text: string, most = 500): string =>
  signsOf(text.slice(0, most * 4).replaceAll(/[\r\n\t]+/g, ' '))
    .filter(isPrintable)
    .slice(0, most)
    .join('');
