import { type Message, message } from '../../texts/message.js';
import type { TemperatureUnit } from '../../units/temperature.js';
import { actOf, type Situation } from '../keys.js';
import { asksFor } from '../own-words.js';
import { type ScaleChoice, scaleSaid, scaleTyped, switched } from '../scales.js';
import { signsOf } from '../signs.js';
import { toggled, type ViewChoice } from '../views.js';
import { type ChooserId, chooserNow, optionsOf } from './choosers.js';
import type { Key } from './key.js';

/** A line that is being typed. `digits`: it began with a digit, and only what belongs to a reading joins it. */
export type Entry = {
  readonly text: string;
  readonly of: 'digits' | 'words';
  /** It was not taken: Backspace corrects it, any other key begins anew, so that nothing is typed behind a mistake. */
  readonly returned?: boolean;
};

type Waiting = { readonly key: Key; readonly at: number };

export type InputState = {
  readonly entry: Entry | null;
  readonly chooser: ChooserId | null;
  readonly help: boolean;
  readonly leaving: boolean;
  readonly bell: boolean;
  /** The view that was asked for; null: none yet. */
  readonly view: ViewChoice | null;
  /** The scale that was asked for; null: the thermometer's. */
  readonly scale: ScaleChoice;
  /** Said about what was typed; gone with the next key. */
  readonly notice: Message | null;
  /** Keys held back until it is known that they are no burst, in order; the first is always a command. */
  readonly waiting: readonly Waiting[];
  /** Commands are swallowed until this moment: the rest of a burst. */
  readonly burstUntil: number;
  readonly spaceAt: number;
  readonly stepAt: number;
  readonly step: string | null;
};

/** Moments are milliseconds of any clock that never falls. */
export type InputEvent =
  | { readonly kind: 'key'; readonly key: Key }
  | { readonly kind: 'paste'; readonly text: string }
  /** Time went on. */
  | { readonly kind: 'time' }
  /** The advice changed. */
  | { readonly kind: 'step'; readonly step: string | null }
  /** A typed line was not taken; `typed` comes back for editing where it was a line. */
  | { readonly kind: 'queried'; readonly because: Message; readonly typed: string | null };

export type Effect =
  /** `at`: the moment of the key. `line`: it came from the typed line, not from a key. */
  | { readonly kind: 'type'; readonly typed: string; readonly at: number; readonly line: boolean }
  | { readonly kind: 'leave'; readonly how: 'left' | 'interrupted' }
  | { readonly kind: 'suspend' };

export type Stepped = { readonly state: InputState; readonly effects: readonly Effect[] };

/** Three commands within this are a hand on the keyboard. */
export const burstMilliseconds = 150;
const burstSize = 3;
/** A space this soon after another, or after a change of step, is no answer to what is shown now. */
export const spaceMilliseconds = 400;
/** A keyboard begins to repeat a held key within this: X11 waits 660 ms, Windows up to 1 s. */
const repeatMilliseconds = 1100;
/** A typed line is never longer; a note may have this many characters. */
const longestEntry = 500;

const never = Number.NEGATIVE_INFINITY;

export const startingInput = (options: { bell: boolean; step: string | null }): InputState => ({
  entry: null,
  chooser: null,
  help: false,
  leaving: false,
  bell: options.bell,
  view: null,
  scale: null,
  notice: null,
  waiting: [],
  burstUntil: never,
  spaceAt: never,
  stepAt: never,
  step: options.step,
});

const isDigit = (char: string): boolean => /^\d$/.test(char);
/** What may stand in a reading behind its first digit. */
const joinsReading = (char: string): boolean => /^[\d.,fc°]$/i.test(char);
const keepsLetters = /^(note|mark)\b/i;

const isLetter = (char: string): boolean => /^\p{L}/u.test(char);

/**
 * What a key is typed behind: nothing, where a line was given back, which gives way. A letter begins other words then, for
 * what to type instead stands right there, and must not be taken for keys.
 */
const typedBehind = ({ entry }: InputState, key: Key): InputState['entry'] => {
  if (entry?.returned !== true || key.kind !== 'char') return entry;
  return entry.of === 'words' && isLetter(key.char) ? { text: '', of: 'words' } : null;
};

/** Whether a key would command something, as things stand. Digits, Enter and Backspace never do. */
const isCommand = (key: Key, state: InputState): boolean => {
  const entry = typedBehind(state, key);
  if (key.kind !== 'char' || isDigit(key.char)) return false;
  if (entry === null) return key.char !== ':';
  if (entry.of === 'words') return false;
  return !joinsReading(key.char);
};

const still = (state: InputState): Stepped => ({ state, effects: [] });

/** Another scale first, and what that does not change. */
const inScale = (state: InputState, scale: TemperatureUnit, { advice }: Situation): InputState => ({
  ...state,
  scale,
  notice: scaleSaid(scale, advice),
});

const act = (state: InputState, char: string, at: number, situation: Situation): Stepped => {
  const done = actOf(char, situation);
  if (done === null) return still({ ...state, notice: message('entry.no-key', { key: char }) });
  switch (done.kind) {
    case 'type':
      return { state, effects: [{ kind: 'type', typed: done.line, at, line: false }] };
    case 'choose':
      return still({ ...state, entry: null, chooser: done.chooser });
    case 'begin':
      return still({ ...state, entry: { text: done.text, of: 'words' } });
    case 'help':
      return still({ ...state, help: true });
    case 'bell':
      return still({ ...state, bell: !state.bell });
    case 'scale':
      return still(inScale(state, switched(state.scale, situation.advice), situation));
    case 'view':
      return still({ ...state, view: toggled(state.view, done.view, situation.advice.phase) });
    default:
      return situation.advice.phase === 'over'
        ? { state, effects: [{ kind: 'leave', how: 'left' }] }
        : still({ ...state, leaving: true });
  }
};

const space = (state: InputState, at: number, situation: Situation): Stepped => {
  const tooSoon = at - state.spaceAt < spaceMilliseconds || at - state.stepAt < spaceMilliseconds;
  const spaced = { ...state, spaceAt: at };
  if (tooSoon || state.entry !== null || state.chooser !== null) return still(spaced);
  return act(spaced, ' ', at, situation);
};

const command = (state: InputState, char: string, at: number, situation: Situation): Stepped => {
  if (char === ' ') return space(state, at, situation);
  const chooser = chooserNow(state.chooser, situation);
  if (chooser !== null) {
    const chosen = optionsOf(chooser, situation).find(({ letter }) => letter === char.toLowerCase());
    if (chosen !== undefined)
      return {
        state: { ...state, chooser: null },
        effects: [{ kind: 'type', typed: chosen.line, at, line: false }],
      };
    const closed = { ...state, chooser: null };
    // A second press of the key that opened it closes it; any other command goes on to mean what it means.
    const reopened = act(closed, char, at, situation);
    return state.chooser !== null && reopened.state.chooser === state.chooser ? still(closed) : reopened;
  }
  return act(state, char, at, situation);
};

const enter = (state: InputState, at: number, situation: Situation): Stepped => {
  const typed = state.entry?.text.trim() ?? '';
  const cleared = { ...state, entry: null };
  if (typed === '') return still(cleared);
  if (asksFor('help', typed)) return still({ ...cleared, help: true });
  if (asksFor('leave', typed)) return still({ ...cleared, leaving: true });
  const scale = scaleTyped(typed);
  if (scale !== null) return still(inScale(cleared, scale, situation));
  return { state: cleared, effects: [{ kind: 'type', typed, at, line: true }] };
};

const withoutLast = (text: string): string => signsOf(text).slice(0, -1).join('');

const backspace = (state: InputState): InputState => {
  if (state.entry === null) return { ...state, chooser: null, help: false };
  const text = withoutLast(state.entry.text);
  return { ...state, entry: text === '' ? null : { ...state.entry, text, returned: false } };
};

const char = (state: InputState, typed: string, at: number, situation: Situation): Stepped => {
  const { entry } = state;
  if (entry === null && isDigit(typed))
    return still({ ...state, chooser: null, entry: { text: typed, of: 'digits' } });
  if (entry === null && typed === ':')
    return still({ ...state, chooser: null, entry: { text: '', of: 'words' } });
  if (entry === null) return command(state, typed, at, situation);
  // Trouble is one key away, also from a half-typed line; only a remark may need the sign itself.
  if (typed === '!' && !keepsLetters.test(entry.text))
    return still({ ...state, entry: null, chooser: 'trouble' });
  if (entry.of === 'words' || joinsReading(typed)) {
    const text = entry.text.length >= longestEntry ? entry.text : entry.text + typed;
    return still({ ...state, entry: { ...entry, text } });
  }
  return command(state, typed, at, situation);
};

/** One key, at its moment, that is known to be no part of a burst. */
const handle = (before: InputState, key: Key, at: number, situation: Situation): Stepped => {
  const state = { ...before, notice: null, entry: typedBehind(before, key) };
  if (key.kind === 'interrupt')
    return before.leaving
      ? { state, effects: [{ kind: 'leave', how: 'interrupted' }] }
      : still({ ...state, leaving: true });
  if (key.kind === 'suspend') return { state, effects: [{ kind: 'suspend' }] };
  if (before.leaving) {
    const leaves = key.kind === 'char' && key.char.toLowerCase() === 'y';
    return { state: { ...state, leaving: false }, effects: leaves ? [{ kind: 'leave', how: 'left' }] : [] };
  }
  if (before.help) {
    const closed = { ...state, help: false };
    // Trouble and readings work from everywhere.
    if (key.kind !== 'char' || !(key.char === '!' || isDigit(key.char))) return still(closed);
    return char(closed, key.char, at, situation);
  }
  switch (key.kind) {
    case 'enter':
      return enter(state, at, situation);
    case 'backspace':
      return still(backspace(state));
    case 'escape':
      return still({ ...state, entry: null, chooser: null });
    case 'char':
      return char(state, key.char, at, situation);
    default:
      return still(state);
  }
};

const isSpace = (key: Key): boolean => key.kind === 'char' && key.char === ' ';

/** Commands among the keys held back, a held space bar counted once. */
const commandsWithin = (waiting: readonly Waiting[], state: InputState, from: number): number => {
  const recent = waiting.filter((one) => one.at > from && isCommand(one.key, state)).map((one) => one.key);
  const spaces = recent.filter(isSpace).length;
  return recent.length - spaces + Math.min(spaces, 1);
};

/** Let go of what has waited long enough, and of everything that waited only for its turn behind it. */
const release = (state: InputState, now: number, situation: Situation): Stepped => {
  let current = state;
  const effects: Effect[] = [];
  for (;;) {
    const [head, ...rest] = current.waiting;
    if (head === undefined) break;
    if (isCommand(head.key, current) && now < head.at + burstMilliseconds) break;
    const stepped = handle({ ...current, waiting: rest }, head.key, head.at, situation);
    current = { ...stepped.state, waiting: rest };
    effects.push(...stepped.effects);
    // What was held behind a key that acts belongs to the screen that the key leads to.
    if (stepped.effects.length > 0) break;
  }
  return { state: current, effects };
};

/**
 * A held space bar: behind an earlier one, spaces come faster than a person presses. The first of them waits to see
 * whether it is a burst, and goes with it.
 */
const isHeld = (state: InputState, key: Key): boolean =>
  isSpace(key) &&
  state.waiting.some((one) => isSpace(one.key) && one.at - state.spaceAt < repeatMilliseconds);

const onKey = (state: InputState, key: Key, now: number, situation: Situation): Stepped => {
  if (key.kind === 'interrupt' || key.kind === 'suspend') return handle(state, key, now, situation);
  if (isHeld(state, key)) {
    const waiting = state.waiting.filter((one) => !isSpace(one.key));
    return still({ ...state, waiting, spaceAt: now });
  }
  const held = state.waiting.length > 0;
  const commands = isCommand(key, state);
  if (!held && (!commands || state.leaving || state.help)) return handle(state, key, now, situation);
  if (commands && now < state.burstUntil) return still({ ...state, burstUntil: now + burstMilliseconds });
  const waiting = [...state.waiting, { key, at: now }];
  if (commandsWithin(waiting, state, now - burstMilliseconds) < burstSize)
    return release({ ...state, waiting }, now, situation);
  const kept = waiting.filter((one) => !isCommand(one.key, state));
  const calm = {
    ...state,
    waiting: kept,
    burstUntil: now + burstMilliseconds,
    spaceAt: waiting.some((one) => isSpace(one.key)) ? now : state.spaceAt,
  };
  const released = release(calm, now, situation);
  return { ...released, state: { ...released.state, notice: message('entry.burst') } };
};

/** The one reducer of everything typed. Pure; `now` in milliseconds. */
export const stepInput = (
  state: InputState,
  event: InputEvent,
  now: number,
  situation: Situation,
): Stepped => {
  switch (event.kind) {
    case 'key': {
      const due = release(state, now, situation);
      const stepped = onKey(due.state, event.key, now, situation);
      return { state: stepped.state, effects: [...due.effects, ...stepped.effects] };
    }
    case 'paste': {
      const begun = state.entry?.returned ? '' : (state.entry?.text ?? '');
      const text = (begun + event.text).slice(0, longestEntry);
      if (text.trim() === '' || state.leaving) return still(state);
      return still({
        ...state,
        help: false,
        chooser: null,
        entry: { text, of: 'words' },
        notice: message('entry.pasted'),
      });
    }
    case 'time':
      return release(state, now, situation);
    case 'step': {
      if (event.step === state.step) return still(state);
      return still({ ...state, step: event.step, stepAt: now });
    }
    default: {
      const { typed, because } = event;
      if (typed === null || state.entry !== null) return still({ ...state, notice: because });
      const of = /^\d/.test(typed) ? 'digits' : 'words';
      return still({ ...state, notice: because, entry: { text: typed, of, returned: true } });
    }
  }
};

/** When `time` has to be said, milliseconds; null: nothing waits. */
export const wakesAt = (state: InputState): number | null => {
  const [head] = state.waiting;
  return head === undefined ? null : head.at + burstMilliseconds;
};
