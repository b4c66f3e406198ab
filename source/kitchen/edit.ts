import { Document, isSeq, parseDocument } from 'yaml';
import { nearest } from '../recipe/items.js';
import { type Message, message } from '../texts/message.js';
import type { Kitchen } from './kitchen.js';
import { parseKitchen } from './parse.js';

export type Edited =
  | { readonly text: string; readonly kitchen: Kitchen }
  | { readonly problems: readonly Message[] };

/** What can be set, and where it stands in the file; `thermometer.*` is the first thermometer. */
const places: Readonly<Record<string, readonly (string | number)[]>> = {
  altitude: ['altitude'],
  pressure: ['pressure'],
  stove: ['stove'],
  heat: ['heat'],
  'pot.volume': ['pot', 'volume'],
  'pot.diameter': ['pot', 'diameter'],
  'room.temperature': ['room', 'temperature'],
  'room.humidity': ['room', 'humidity'],
  unit: ['unit'],
  hands: ['hands'],
  language: ['language'],
  weights: ['weights'],
  clock: ['clock'],
  thermometer: ['thermometers', 0, 'kind'],
  'thermometer.id': ['thermometers', 0, 'id'],
  'thermometer.use': ['thermometers', 0, 'use'],
  'thermometer.unit': ['thermometers', 0, 'unit'],
  'thermometer.ice': ['thermometers', 0, 'ice'],
  'thermometer.boils': ['thermometers', 0, 'boils'],
  'thermometer.checked': ['thermometers', 0, 'checked'],
  'thermometer.stem': ['thermometers', 0, 'stem'],
};

/** What a person says instead of what earlier cooks taught; it is dated. `learned.watts.LABEL`: a label of the knob. */
const learnedPlaces: Readonly<Record<string, readonly string[]>> = {
  'learned.thermometer': ['learned', 'thermometer'],
  'learned.carry-over': ['learned', 'carry-over'],
  'learned.losses': ['learned', 'losses'],
  'learned.fold': ['learned', 'fold'],
  'learned.pull': ['learned', 'pull'],
  'learned.cut': ['learned', 'cut'],
};
const wattsPrefix = 'learned.watts.';

export const kitchenSettings: readonly string[] = [
  ...Object.keys(places),
  ...Object.keys(learnedPlaces),
  `${wattsPrefix}LABEL`,
];

const learnedPlace = (key: string): readonly string[] | null => {
  if (Object.hasOwn(learnedPlaces, key)) return learnedPlaces[key] ?? null;
  const label = key.startsWith(wattsPrefix) ? key.slice(wattsPrefix.length) : '';
  return label === '' ? null : ['learned', 'watts', label.toLowerCase()];
};

const setLearned = (
  document: Document,
  place: readonly string[],
  value: string,
  today: string | null,
): void => {
  if (isForgotten(value)) {
    document.deleteIn(place);
    return;
  }
  const entry = today === null ? { value: value.trim() } : { value: value.trim(), date: today };
  document.setIn(place, document.createNode(entry, { flow: true }));
};

/** A new thermometer begins with an id that no older cook can have meant. */
const newThermometer = (kind: string) => ({ id: `my-${kind}`, kind });

const scalar = (value: string): string | number => {
  const text = value.trim();
  return text !== '' && Number.isFinite(Number(text)) ? Number(text) : text;
};

/** "low medium high" or "low, medium, high" is a list; "9" a number. */
const valueFor = (key: string, value: string): unknown =>
  key === 'heat' && /[\s,]/.test(value.trim()) ? value.trim().split(/[\s,]+/) : scalar(value);

const isForgotten = (value: string): boolean => value.trim() === '' || value.trim().toLowerCase() === 'none';

const setOne = (document: Document, key: string, value: string, today: string | null): Message | null => {
  const learned = learnedPlace(key);
  if (learned !== null) {
    setLearned(document, learned, value, today);
    return null;
  }
  const place = Object.hasOwn(places, key) ? places[key] : undefined;
  if (place === undefined)
    return message('kitchen.unknown-setting', {
      found: key.slice(0, 40),
      nearest: nearest(key, kitchenSettings),
      allowed: kitchenSettings,
    });
  const thermometers = document.get('thermometers');
  const has = isSeq(thermometers) && thermometers.items.length > 0;
  if (key === 'thermometer' && isForgotten(value)) {
    if (has) document.deleteIn(['thermometers', 0]);
    else document.set('thermometers', document.createNode([]));
    return null;
  }
  if (place[0] === 'thermometers' && !has) {
    if (key !== 'thermometer') return message('kitchen.no-thermometer-yet');
    document.set('thermometers', document.createNode([newThermometer(value.trim().toLowerCase())]));
    return null;
  }
  if (isForgotten(value)) document.deleteIn(place);
  else document.setIn(place, document.createNode(valueFor(key, value)));
  return null;
};

/**
 * A kitchen file's text with some settings changed and the rest, comments too, as it was; null text is a new file.
 * An empty value or "none" forgets the setting. `today`, ISO, is the date of what is set under `learned`. Problems: a setting that is not there, or values that
 * `parseKitchen` refuses. Pure; `text` must be one that `parseKitchen` reads.
 */
export const setInKitchen = (
  text: string | null,
  settings: ReadonlyArray<readonly [key: string, value: string]>,
  today: string | null = null,
): Edited => {
  const document = text === null ? new Document({ 'kettlehand-kitchen': 1 }) : parseDocument(text);
  const problems = settings.flatMap(([key, value]) => setOne(document as Document, key, value, today) ?? []);
  if (problems.length > 0) return { problems };
  const changed = document.toString({ lineWidth: 110 });
  const read = parseKitchen(changed, '');
  return 'kitchen' in read
    ? { text: changed, kitchen: read.kitchen }
    : { problems: read.problems.map((problem) => problem.message) };
};
