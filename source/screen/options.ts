import type { FirstRunAnswers, FirstRunQuestion } from '../kitchen/ask.js';
import type { Audience } from '../session/audience.js';
import type { Session } from '../session/session.js';
import type { Message } from '../texts/message.js';
import type { Language } from '../units/language.js';
import type { Printer } from '../units/printer.js';
import type { Background } from './palette.js';

/** What the console needs of a session: no file, no journal, no physics. */
export type ConsoleSession = Pick<Session, 'type' | 'advice' | 'now' | 'onSaving' | 'saving' | 'cook'> & {
  /** In a rehearsal: what is to be seen at the simulated pot at this moment. */
  readonly sight?: () => Message;
};

/** How the terminal is used. */
export type TerminalOptions = {
  readonly stdin?: NodeJS.ReadStream;
  readonly stdout?: NodeJS.WriteStream;
  /** Letters, digits and signs of ASCII only. */
  readonly ascii?: boolean;
  /** False: no colour at all; weight and marks stay. */
  readonly color?: boolean;
  /** What is behind the text; missing: what the terminal tells, or unknown. */
  readonly background?: Background;
  /** Running numbers move on every ten seconds only, and nothing turns. */
  readonly still?: boolean;
  /** Lines for a screen reader, in the order in which they are spoken, instead of a picture. */
  readonly spoken?: boolean;
};

export type CookOptions = {
  readonly session: ConsoleSession;
  /** What it is read in: English where nothing is said. */
  readonly language?: Language | undefined;
  /** Without the bell. */
  readonly quiet?: boolean;
  /** Calls back after every event that nobody typed here (a simulated pot); returns how to stop. */
  readonly onHappening?: (listener: () => void) => () => void;
  /** What stands to be known beside the cook itself, most important first: what a feed does. */
  readonly notices?: () => readonly Message[];
  /** Seconds of the cook per second of the wall: 1 unless a rehearsal runs fast. */
  readonly pace?: number;
};

export type ConsoleOptions = TerminalOptions & CookOptions;

/** Why the console was left. The terminal is as it was before; closing the session is the caller's. */
export type ConsoleExit =
  /** By the person: exit code 0. */
  | 'left'
  /** Ctrl+C twice: 130. */
  | 'interrupted'
  /** SIGHUP: 129. */
  | 'hung up'
  /** SIGTERM: 143. */
  | 'terminated'
  /** Nobody reads our output any more. */
  | 'no reader';

/** A few things to choose from, each with one key; Enter takes the first. */
export type ChoiceOptions = {
  readonly say: Message;
  readonly why?: Message;
  readonly choices: readonly { readonly key: string; readonly word: string; readonly text: Message }[];
  readonly printer: Printer;
};

export type QuestionsOptions = {
  readonly questions: readonly FirstRunQuestion[];
  /** The sentence that asks again; null when the answer is understood. */
  readonly problem: (id: FirstRunQuestion['id'], typed: string) => Message | null;
  readonly printer: Printer;
};

/** What is being waited for, should it take long. */
export type WaitOptions = { readonly say: Message; readonly printer: Printer };

/** A cook that somebody else leads, to look at. */
export type WatchOptions = {
  readonly audience: Pick<Audience, 'sight' | 'onChange'>;
  readonly language?: Language | undefined;
};

/** One terminal session: several screens after each other, restored once. */
export type Terminal = {
  /** The word chosen; or why the person left instead. */
  choose(options: ChoiceOptions): Promise<{ readonly word: string } | { readonly exit: ConsoleExit }>;
  ask(
    options: QuestionsOptions,
  ): Promise<{ readonly answers: FirstRunAnswers } | { readonly exit: ConsoleExit }>;
  /** The outcome of `work`; says what is waited for when it is not there at once. */
  wait<Result>(options: WaitOptions, work: Promise<Result>): Promise<Result>;
  cook(options: CookOptions): Promise<ConsoleExit>;
  /** Show a cook that somebody else leads, until the onlooker leaves. */
  watch(options: WatchOptions): Promise<ConsoleExit>;
  /** Give the terminal back. May be called more than once. */
  close(): Promise<void>;
};
