import type { Style } from './context.js';
import type { TerminalOptions } from './options.js';
import { backgroundIn, depthOf, paintsFor } from './palette.js';

/** Poor terminals and locales get ASCII. */
export const wantsAscii = (env: NodeJS.ProcessEnv): boolean => {
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG || '';
  // No locale at all: most terminals of today show UTF-8; "C" and "POSIX" say that they don't.
  const poorLocale = locale !== '' && !/utf-?8/i.test(locale);
  // Where signs of unsure width are two cells wide, blocks and lines fall apart.
  const wideLocale = /^(ja|ko|zh)/i.test(locale);
  return poorLocale || wideLocale || ['linux', 'vt100', 'vt220', 'dumb'].includes(env.TERM ?? '');
};

/** NO_COLOR, when it is not empty, turns colour off: no-color.org. */
export const wantsColor = (env: NodeJS.ProcessEnv): boolean => (env.NO_COLOR ?? '') === '';

const colorBits = ({ color = wantsColor(process.env), stdout = process.stdout }: TerminalOptions): number =>
  color ? (stdout.getColorDepth?.(process.env) ?? 1) : 1;

/** Some consoles on Windows scroll when their last cell is written: the last row stays empty there. */
export const sparedRows = process.platform === 'win32' ? 1 : 0;

/** How this terminal is written to. */
export const styleFor = (options: TerminalOptions): Style => ({
  ascii: options.ascii ?? wantsAscii(process.env),
  paints: paintsFor(depthOf(colorBits(options)), options.background ?? backgroundIn(process.env)),
  still: options.still ?? false,
});

/** Whether somebody listens rather than looks. INK_SCREEN_READER is the terminal library's own word for it. */
export const isSpoken = ({ spoken }: TerminalOptions): boolean =>
  spoken ?? process.env.INK_SCREEN_READER === 'true';
