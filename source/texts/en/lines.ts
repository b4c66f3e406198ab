/** The small words around what is said in lines, and the signal words of warnings. */
export const lineTexts = {
  'signal.DANGER': 'DANGER',
  'signal.WARNING': 'WARNING',
  'signal.CAUTION': 'CAUTION',

  // The stages beside a scale, as short as they can be said.
  'stage.dissolves': 'dissolves',
  'stage.thread': 'thread',
  'stage.soft ball': 'soft ball',
  'stage.firm ball': 'firm ball',
  'stage.hard ball': 'hard ball',
  'stage.soft crack': 'soft crack',
  'stage.hard crack': 'hard crack',
  'stage.past hard crack': 'past hard crack',

  'lines.level.now': 'NOW',
  'lines.level.soon': 'SOON',
  'lines.level.note': 'NOTE',
  'lines.rehearsal': 'REHEARSAL',
  'lines.from': (v: { phase: string }) => `opened at ${v.phase}`,
  'lines.why': (v: { said: string }) => `Why: ${v.said}`,
  'lines.question': (v: { said: string }) => `Question: ${v.said}`,
  'lines.next': (v: { said: string }) => `Next: ${v.said}`,
  'lines.watch': (v: { said: string }) => `Watch: ${v.said}`,
  'lines.over': (v: { said: string }) => `(over: ${v.said})`,
  'lines.due': (v: { said: string }) => `Due: ${v.said}`,
} as const;
