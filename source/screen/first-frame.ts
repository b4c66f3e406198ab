import { frame } from './frame.js';
import { ConsoleModel } from './model.js';
import { takeOpeningAway } from './opening.js';
import type { CookOptions, TerminalOptions } from './options.js';
import { penned, pensFor } from './pens.js';
import { isSpoken, sparedRows, styleFor } from './style.js';

const enter = '\u001b[?1049h\u001b[?25l\u001b[H';
const leave = '\u001b[?25h\u001b[?1049l';
const begin = '\u001b[?2026h';
const end = '\u001b[?2026l';

/** Exit codes of a program that a signal ended. */
const ending = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;

const nothing = (): void => undefined;

let giveBack: (() => void) | null = null;

/** The terminal as it was: for one that nobody took over. */
export const dropFirstFrame = (): void => giveBack?.();

/** Whether a first frame stands on the other screen; from now on that is the caller's. */
export const takeOverFirstFrame = (): boolean => {
  const stood = giveBack !== null;
  letGo();
  return stood;
};

let letGo: () => void = nothing;

/**
 * The first picture of a cook, before the terminal library is there: it takes longer to load than all the rest. Keys
 * wait in the terminal meanwhile, unseen.
 */
export const paintFirstFrame = (options: TerminalOptions & CookOptions): void => {
  const { stdin = process.stdin, stdout = process.stdout } = options;
  const { columns = 0, rows = 0 } = stdout;
  // Without a size, or where the last cell makes the window scroll, the library knows better.
  if (isSpoken(options) || columns <= 0 || rows <= 0 || sparedRows > 0) return;
  const style = styleFor(options);
  const model = new ConsoleModel({
    session: options.session,
    language: options.language,
    quiet: options.quiet ?? false,
    pace: options.pace ?? 1,
    notices: options.notices,
    outside: { milliseconds: () => performance.now(), after: () => nothing, bell: nothing },
    onLeave: nothing,
    onSuspend: nothing,
    onFail: nothing,
  });
  const { shown } = model;
  model.close();
  const pens = pensFor(style.paints, stdout.getColorDepth?.(process.env) ?? 1);
  const { lines } = frame(shown, { columns, rows }, style);
  stdin.setRawMode?.(true);
  const restore = (): void => {
    letGo();
    stdin.setRawMode?.(false);
    stdout.write(leave);
  };
  const handlers = Object.entries(ending).map(([signal, code]) => {
    const heard = (): void => {
      restore();
      process.exit(code);
    };
    process.on(signal, heard);
    return () => process.off(signal, heard);
  });
  process.on('exit', restore);
  giveBack = restore;
  letGo = () => {
    giveBack = null;
    letGo = nothing;
    process.off('exit', restore);
    for (const stop of handlers) stop();
  };
  takeOpeningAway();
  stdout.write(`${enter}${begin}${lines.map((line) => penned(line, pens)).join('\r\n')}${end}`);
};
