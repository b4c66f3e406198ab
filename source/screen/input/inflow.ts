const pasteStart = '\u001b[200~';
const pasteEnd = '\u001b[201~';
const interrupt = '\u0003';

/** Of a paste nothing more is kept; no line is longer. */
const mostKept = 2000;
/** More characters at once than hands can send, also over a line that lags: a paste of a terminal that does not mark it. */
const mostTyped = 256;
/** What comes within this of an unmarked paste belongs to it. */
const floodMilliseconds = 150;
/** A marked paste that is silent for so long has lost its end: the keyboard is given back. Our judgement. */
const lostMilliseconds = 3000;
/** The beginning of a mark waits so long for the rest of it. */
const partMilliseconds = 20;

type State =
  | { readonly of: 'keys'; readonly part: string }
  | { readonly of: 'paste'; readonly kept: string; readonly part: string }
  | { readonly of: 'flood'; readonly kept: string };

const keys: State = { of: 'keys', part: '' };

/** How much of the end of `text` is the beginning of `mark`, and not all of it. */
const begun = (text: string, mark: string): number => {
  for (let length = Math.min(text.length, mark.length - 1); length > 0; length -= 1)
    if (text.endsWith(mark.slice(0, length))) return length;
  return 0;
};

/** As one marked paste; what is in it can not end it. */
const marked = (kept: string): string => `${pasteStart}${kept.replaceAll('\u001b', '')}${pasteEnd}`;

/** Function keys that were held while the program was busy are many characters and no paste. */
const isFlood = (text: string): boolean =>
  text.length > mostTyped && text.replaceAll(/\u001b\[[0-9;]*[A-Za-z~]/g, '').length > mostTyped;

/**
 * What comes from the keyboard before anybody makes keys of it. Pastes leave it whole, marked and bounded, those that the
 * terminal did not mark too; one whose end never comes does not keep the keyboard. Pure; moments are milliseconds.
 */
export class Inflow {
  #state: State = keys;
  #at = 0;

  /** What is to be read of this chunk now. */
  push(chunk: string, at: number): string {
    const before = this.time(at);
    this.#at = at;
    return before + this.#take(chunk);
  }

  /** Time went on: what waited too long is let go. */
  time(at: number): string {
    const due = this.wakesAt;
    return due === null || at < due ? '' : this.#end();
  }

  /** When `time` has to be said; null: nothing waits. */
  get wakesAt(): number | null {
    switch (this.#state.of) {
      case 'paste':
        return this.#at + lostMilliseconds;
      case 'flood':
        return this.#at + floodMilliseconds;
      default:
        return this.#state.part === '' ? null : this.#at + partMilliseconds;
    }
  }

  #end(): string {
    const state = this.#state;
    this.#state = keys;
    return state.of === 'keys' ? state.part : marked(state.kept);
  }

  #take(chunk: string): string {
    const state = this.#state;
    // Ctrl+C by itself is a person: it works from everywhere.
    if (chunk === interrupt) return this.#end() + chunk;
    if (state.of === 'keys') return this.#asKeys(state.part + chunk);
    if (state.of === 'paste') return this.#asPaste(state.kept, state.part + chunk);
    this.#state = { of: 'flood', kept: (state.kept + chunk).slice(0, mostKept) };
    return '';
  }

  #asKeys(text: string): string {
    const start = text.indexOf(pasteStart);
    const typed = start < 0 ? text : text.slice(0, start);
    if (isFlood(typed)) {
      this.#state = { of: 'flood', kept: text.slice(0, mostKept) };
      return '';
    }
    if (start >= 0) {
      this.#state = { of: 'paste', kept: '', part: '' };
      return typed + this.#asPaste('', text.slice(start + pasteStart.length));
    }
    const part = begun(text, pasteStart);
    this.#state = { of: 'keys', part: text.slice(text.length - part) };
    return text.slice(0, text.length - part);
  }

  #asPaste(kept: string, text: string): string {
    const end = text.indexOf(pasteEnd);
    if (end >= 0) {
      this.#state = keys;
      return (
        marked((kept + text.slice(0, end)).slice(0, mostKept)) +
        this.#asKeys(text.slice(end + pasteEnd.length))
      );
    }
    const part = begun(text, pasteEnd);
    const inside = text.slice(0, text.length - part);
    this.#state = {
      of: 'paste',
      kept: (kept + inside).slice(0, mostKept),
      part: text.slice(text.length - part),
    };
    return '';
  }
}
