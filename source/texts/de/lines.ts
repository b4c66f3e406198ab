import type { lineTexts } from '../en/lines.js';
import type { Translated } from '../texts.js';

/** The signal words as ISO 3864-2 and ANSI Z535.6 have them in German: GEFAHR, WARNUNG, VORSICHT (from memory). */
export const deLines = {
  'signal.DANGER': 'GEFAHR',
  'signal.WARNING': 'WARNUNG',
  'signal.CAUTION': 'VORSICHT',

  // The stages beside a scale: there is room for ten letters.
  'stage.dissolves': 'löst sich',
  'stage.thread': 'Faden',
  'stage.soft ball': 'w. Ballen',
  'stage.firm ball': 'f. Ballen',
  'stage.hard ball': 'h. Ballen',
  'stage.soft crack': 'schw.Bruch',
  'stage.hard crack': 'st. Bruch',
  'stage.past hard crack': 'über st. Bruch',

  'lines.level.now': 'JETZT',
  'lines.level.soon': 'BALD',
  'lines.level.note': 'HINWEIS',
  'lines.rehearsal': 'PROBELAUF',
  'lines.from': (v) => `begonnen bei ${v.phase}`,
  'lines.why': (v) => `Warum: ${v.said}`,
  'lines.question': (v) => `Frage: ${v.said}`,
  'lines.next': (v) => `Danach: ${v.said}`,
  'lines.watch': (v) => `Achte auf: ${v.said}`,
  'lines.over': (v) => `(vorbei: ${v.said})`,
  'lines.due': (v) => `Fällig: ${v.said}`,
} as const satisfies Translated<typeof lineTexts>;
