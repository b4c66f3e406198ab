/** Typed words that the screen takes itself: they are no events. */
const ownWords = {
  help: ['help', '?'],
  leave: ['leave', 'quit', 'exit', 'q'],
} as const;

export const asksFor = (what: keyof typeof ownWords, typed: string): boolean =>
  (ownWords[what] as readonly string[]).includes(typed.trim().toLowerCase());
