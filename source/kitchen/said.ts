import type { StoveKind, Thermometer } from './kitchen.js';

/** What people say of their kitchen in its two languages, in small letters, blanks as hyphens → the word for it. */
export const stovesSaid: Readonly<Record<string, StoveKind>> = {
  'gas-stove': 'gas',
  'gas-hob': 'gas',
  gasherd: 'gas',
  'electric-coil': 'coil',
  'coil-hob': 'coil',
  'hot-plate': 'coil',
  hotplate: 'coil',
  kochplatte: 'coil',
  ceramic: 'glass-ceramic',
  glass: 'glass-ceramic',
  glaskeramik: 'glass-ceramic',
  ceran: 'glass-ceramic',
  ceranfeld: 'glass-ceramic',
  'induction-hob': 'induction',
  induktion: 'induction',
  induktionsherd: 'induction',
};

export const thermometersSaid: Readonly<Record<string, Thermometer['kind']>> = {
  zeiger: 'dial',
  bimetal: 'dial',
  bimetall: 'dial',
  probe: 'digital',
  glas: 'glass',
  infrarot: 'infrared',
  laser: 'infrared',
};

/** Nothing is known of it, or there is none. */
export const noneSaid: readonly string[] = [
  'none',
  'no',
  'no thermometer',
  'keines',
  'keins',
  'kein',
  'kein thermometer',
  'nein',
];
export const seaLevelSaid: readonly string[] = ['sea level', 'sea', '0', 'at sea level', 'meer', 'am meer'];

/** Words around a number or a kind that say nothing. */
export const fillers =
  /^(?:about|around|circa|ca\.?|etwa|ungefähr|~)\s*|\s+(?:above sea level|above sea|asl|ü\. ?m\.|üm|ü\. ?nn|über (?:dem )?meer|über nn)$/giu;
