import type { farTexts } from '../en/far.js';
import { passedMinutes } from '../measures.js';
import type { Translated } from '../texts.js';

/** What is written for an eye two metres away, and around the curve. */
export const deFar = {
  'key.view': 'fern oder nah',
  'key.view.far': 'Fernsicht',
  'key.view.near': 'Nahsicht',
  'key.plot': 'Kurve',
  'key.plot.close': 'Kurve zu',

  'far.now': (v) => (v.ago < 60 ? `JETZT ${v.unit}` : `VOR ${passedMinutes(v.ago)} MIN`),
  'far.target': (v) => `ZIEL ${v.unit}`,
  'far.minutes': 'NOCH MIN',
  'far.hours': 'NOCH H',
  'far.seconds': 'NOCH S',
  'far.off': 'VOM HERD',
  'far.off.now': 'JETZT',
  'far.middle': (v) => (v.ago < 60 ? `KERN ${v.unit}` : `VOR ${passedMinutes(v.ago)} MIN`),
  'far.middle.none': 'KERN ?',
  'far.limit': (v) => `HÄNDE UNTER ${v.unit}`,
  'far.due': 'FÄLLIG',
  'far.list': 'Hierzu gibt es eine Liste: v zeigt sie.',

  'far.scorch-near.shout': 'VOM HERD\nKEIN WASSER',
  'far.past-window.shout': 'VOM HERD\nÜBERS ZIEL',
  'far.past-window.off.shout': 'ÜBERS ZIEL',
  'far.middle-above-limit.shout': 'HINLEGEN\nZU HEISS',

  // The curve.
  'plot.empty': 'Noch keine Ablesung: die Kurve beginnt mit der ersten.',
  'plot.minutes': 'min',
  'plot.legend': 'Ablesungen, Linie dazwischen; voraus: Vorhersage, 8 von 10 Malen im Schatten',
} as const satisfies Translated<typeof farTexts>;
