import { type Instance, render, useApp } from 'ink';
import { type ReactNode, useEffect } from 'react';
import { screenOf } from './alternate.js';
import { ChoiceScreen, QuestionsScreen } from './asking.js';
import { ConsoleScreen } from './console-screen.js';
import type { Style } from './context.js';
import { letGoOfGoneTerminals } from './gone.js';
import { keyboardOf } from './input/keyboard.js';
import { ConsoleModel } from './model.js';
import type {
  ConsoleExit,
  CookOptions,
  Terminal,
  TerminalOptions,
  WaitOptions,
  WatchOptions,
} from './options.js';
import { SpokenScreen } from './spoken-screen.js';
import { isSpoken, styleFor } from './style.js';
import { WaitingScreen } from './waiting.js';
import { WatchModel } from './watch-model.js';
import { WatchScreen } from './watch-screen.js';

const bel = '\u0007';
/** Longer than this is worth a word, milliseconds. */
const patienceMilliseconds = 300;

/** Signals that end the console, and what they are called. */
const signals = {
  SIGHUP: 'hung up',
  SIGTERM: 'terminated',
  SIGINT: 'interrupted',
  // Ctrl+\ where the terminal acts on it itself: while the program is put aside.
  SIGQUIT: 'interrupted',
} as const;

/** Gives a part of the program outside React the terminal's own way of being put aside. */
const Suspendable = ({
  children,
  onReady,
}: {
  readonly children: ReactNode;
  readonly onReady: (suspend: ((run: () => Promise<void>) => Promise<void>) | null) => void;
}) => {
  const { suspendTerminal } = useApp();
  useEffect(() => {
    onReady((run) => suspendTerminal(run));
    return () => onReady(null);
  }, [suspendTerminal, onReady]);
  return children;
};

/** Stop until the shell says to go on. A timer keeps the program alive meanwhile: an empty loop would end it. */
const stopped = (): Promise<void> =>
  new Promise((resolve) => {
    const alive = setInterval(() => undefined, 1 << 30);
    process.once('SIGCONT', () => {
      clearInterval(alive);
      resolve();
    });
    process.kill(process.pid, 'SIGSTOP');
  });

class InkTerminal implements Terminal {
  readonly #style: Style;
  readonly #spoken: boolean;
  readonly #stdout: NodeJS.WriteStream;
  readonly #stdin: NodeJS.ReadStream;
  #instance: Instance | null = null;
  #failed: Promise<never> | null = null;
  /** A mistake of the program's own, somewhere, that nobody caught. */
  #mistake: { readonly error: unknown } | null = null;
  #onMistake: ((error: unknown) => void) | null = null;
  #suspend: ((run: () => Promise<void>) => Promise<void>) | null = null;
  #suspending = false;
  #end: ((how: ConsoleExit) => void) | null = null;
  #ended: ConsoleExit | null = null;
  #onBack: () => void = () => undefined;
  readonly #letGo: (() => void)[] = [];

  constructor(options: TerminalOptions) {
    this.#stdin = options.stdin ?? process.stdin;
    this.#stdout = options.stdout ?? process.stdout;
    this.#style = styleFor(options);
    this.#spoken = isSpoken(options);
    this.#listen();
  }

  choose(...[choice]: Parameters<Terminal['choose']>): ReturnType<Terminal['choose']> {
    return this.#screen((done) => (
      <ChoiceScreen
        key="choice"
        choice={choice}
        style={this.#style}
        onChoose={(word) => done({ word })}
        onLeave={() => done({ exit: 'left' })}
      />
    ));
  }

  ask(...[asked]: Parameters<Terminal['ask']>): ReturnType<Terminal['ask']> {
    return this.#screen((done) => (
      <QuestionsScreen
        key="questions"
        asked={asked}
        style={this.#style}
        onAnswered={(answers) => done({ answers })}
        onLeave={() => done({ exit: 'left' })}
      />
    ));
  }

  async wait<Result>(wait: WaitOptions, work: Promise<Result>): Promise<Result> {
    const timer = setTimeout(() => {
      this.#draw(<WaitingScreen key="wait" wait={wait} style={this.#style} />);
    }, patienceMilliseconds);
    try {
      return await work;
    } finally {
      clearTimeout(timer);
    }
  }

  async cook({
    session,
    language,
    quiet = false,
    pace = 1,
    notices,
    onHappening,
  }: CookOptions): Promise<ConsoleExit> {
    let leave: (exit: ConsoleExit) => void = () => undefined;
    let fail: (error: unknown) => void = () => undefined;
    const model = new ConsoleModel({
      session,
      language,
      quiet,
      pace,
      // A number that runs is never spoken: there is nothing to look at each second.
      still: this.#style.still || this.#spoken,
      notices,
      outside: {
        milliseconds: () => performance.now(),
        after: (milliseconds, run) => {
          const timer = setTimeout(run, milliseconds);
          return () => clearTimeout(timer);
        },
        bell: () => this.#stdout.write(bel),
      },
      onLeave: (how) => leave(how),
      onSuspend: () => void this.#putAside(),
      onFail: (error) => fail(error),
    });
    this.#onBack = model.happened;
    const stop = onHappening?.(model.happened);
    try {
      const left = await this.#screen<{ exit: ConsoleExit }>((done, failed) => {
        leave = (exit) => done({ exit });
        fail = failed;
        return this.#spoken ? (
          <SpokenScreen key="cook" model={model} style={this.#style} />
        ) : (
          <ConsoleScreen key="cook" model={model} style={this.#style} />
        );
      });
      return left.exit;
    } finally {
      this.#onBack = () => undefined;
      stop?.();
      model.close();
    }
  }

  async watch({ audience, language }: WatchOptions): Promise<ConsoleExit> {
    const model = new WatchModel(audience, language);
    try {
      const left = await this.#screen<{ exit: ConsoleExit }>((done) => (
        <WatchScreen key="watch" model={model} style={this.#style} onLeave={(exit) => done({ exit })} />
      ));
      return left.exit;
    } finally {
      model.close();
    }
  }

  async close(): Promise<void> {
    const instance = this.#instance;
    this.#instance = null;
    for (const letGo of this.#letGo.splice(0)) letGo();
    if (instance !== null) {
      instance.unmount();
      await instance.waitUntilExit().catch(() => undefined);
      instance.cleanup();
    }
    const mistake = this.#mistake;
    this.#mistake = null;
    if (mistake !== null) throw mistake.error;
  }

  /** Show a screen until it is done, or until the terminal ends under it. */
  async #screen<Result extends object>(
    screen: (
      done: (result: Result | { exit: ConsoleExit }) => void,
      failed: (error: unknown) => void,
    ) => ReactNode,
  ): Promise<Result | { exit: ConsoleExit }> {
    if (this.#ended !== null) return { exit: this.#ended };
    if (this.#mistake !== null) throw this.#mistake.error;
    const result = new Promise<Result | { exit: ConsoleExit }>((resolve, reject) => {
      this.#end = (exit) => resolve({ exit });
      this.#onMistake = reject;
      this.#draw(screen(resolve, reject));
    });
    try {
      return await (this.#failed === null ? result : Promise.race([result, this.#failed]));
    } finally {
      this.#end = null;
      this.#onMistake = null;
    }
  }

  #draw(node: ReactNode): void {
    const whole = <Suspendable onReady={this.#onReady}>{node}</Suspendable>;
    if (this.#instance !== null) {
      this.#instance.rerender(whole);
      return;
    }
    // Ink does this only after its first frame; a key or Ctrl+C must not come before it.
    this.#stdin.setRawMode?.(true);
    this.#instance = render(whole, {
      stdin: keyboardOf(this.#stdin),
      stdout: screenOf(this.#stdout),
      // A screen reader goes through what was said; a picture of its own would take that away.
      alternateScreen: !this.#spoken,
      incrementalRendering: !this.#spoken,
      // A key behind another is seen in half the time that it takes by default.
      maxFps: 60,
      isScreenReaderEnabled: this.#spoken,
      exitOnCtrlC: false,
      // A terminal is a terminal, also where CI is set in the environment.
      interactive: true,
    });
    // An error while drawing ends Ink: it has to reach the caller, with the terminal restored.
    this.#failed = this.#instance.waitUntilExit().then(() => new Promise<never>(() => undefined));
    this.#failed.catch(() => undefined);
  }

  readonly #onReady = (suspend: ((run: () => Promise<void>) => Promise<void>) | null): void => {
    this.#suspend = suspend;
  };

  async #putAside(): Promise<void> {
    if (this.#suspending || this.#suspend === null || process.platform === 'win32') return;
    this.#suspending = true;
    try {
      await this.#suspend(stopped);
    } finally {
      this.#suspending = false;
    }
    this.#onBack();
  }

  #finish(how: ConsoleExit): void {
    this.#ended ??= how;
    this.#end?.(how);
  }

  #listen(): void {
    letGoOfGoneTerminals();
    for (const [signal, how] of Object.entries(signals) as [keyof typeof signals, ConsoleExit][]) {
      const heard = (): void => this.#finish(how);
      process.on(signal, heard);
      this.#letGo.push(() => process.off(signal, heard));
    }
    if (process.platform !== 'win32') {
      const aside = (): void => void this.#putAside();
      process.on('SIGTSTP', aside);
      this.#letGo.push(() => process.off('SIGTSTP', aside));
    }
    // Wherever it came from: the screen ends with it in order, the terminal is given back, the journal closed.
    const broke = (error: unknown): void => {
      if (this.#mistake !== null) return;
      this.#mistake = { error };
      this.#onMistake?.(error);
    };
    for (const kind of ['uncaughtException', 'unhandledRejection'] as const) {
      process.on(kind, broke);
      this.#letGo.push(() => process.off(kind, broke));
    }
    // Nobody reads any more; the listener stays, for late writes fail too.
    this.#stdout.on('error', () => this.#finish('no reader'));
    const gone = (): void => this.#finish('hung up');
    this.#stdin.on('end', gone);
    this.#letGo.push(() => this.#stdin.off('end', gone));
  }
}

/** Take the terminal for one or more screens. It is given back by `close`, and on every other way out too. */
export const openTerminal = (options: TerminalOptions = {}): Terminal => new InkTerminal(options);
