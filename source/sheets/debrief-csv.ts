import type { Happened } from '../cook/event.js';
import type { Story } from '../lessons/story.js';

const columns = [
  'seq',
  'seconds',
  'clock',
  'phase',
  'kind',
  'value',
  'unit',
  'of',
  'celsius_true',
  'believed',
  'detail',
  'taken_back',
  'rehearsal',
] as const;
type Cell = string | number | boolean | undefined;
type Row = Readonly<Partial<Record<(typeof columns)[number], Cell>>>;

/** What an event carries, in the columns that fit; the stamp comes from elsewhere. */
const cellsOf = (event: Happened): Row => {
  switch (event.kind) {
    case 'reading':
      return { value: event.value, unit: event.unit, of: event.of, detail: event.by };
    case 'room':
      return {
        ...(event.celsius === null ? {} : { value: event.celsius, unit: 'C' }),
        ...(event.humidity === null ? {} : { detail: `humidity ${Math.round(event.humidity * 100)} %` }),
      };
    case 'cold water':
      return { detail: event.outcome };
    case 'done':
      return { detail: event.step };
    case 'answer':
      return { detail: `${event.question}: ${event.answer}` };
    case 'ok':
      return { detail: event.warning };
    case 'heat':
      return { detail: event.setting };
    case 'pot':
    case 'lid':
      return { detail: event.on ? 'on' : 'off' };
    case 'water':
      return { value: event.grams, unit: 'g' };
    case 'hands':
      return { detail: event.whose };
    case 'rope':
      return { detail: event.does };
    case 'portions':
      return { value: event.count };
    case 'trouble':
    case 'over':
      return { detail: event.name };
    case 'at':
      return { detail: event.phase };
    case 'undo':
      return { value: event.voids, detail: 'seq taken back' };
    case 'weigh':
      return {
        value: event.grams,
        unit: 'g',
        ...(event.pieces === null ? {} : { detail: `${event.pieces} pieces` }),
      };
    case 'count':
      return { value: event.pieces, unit: 'pieces' };
    case 'note':
      return { detail: event.text };
    case 'mark':
      return { detail: event.what };
    case 'gap':
      return { value: event.seconds, unit: 's' };
    case 'opened':
      return { detail: event.recipe.name };
    default:
      return {};
  }
};

/** A spreadsheet would run a text that begins so as a formula. */
const formula = /^[=+\-@\t\r]/;

/** One cell after RFC 4180: in quotes where it holds a comma, a quote or a line end. */
const cell = (value: Cell): string => {
  if (value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(Number(value.toFixed(3)));
  const safe = formula.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/**
 * Events and readings, one a line, RFC 4180 with a header: everything in the list, what was taken back marked so.
 * `celsius_true` and `believed` stand beside readings of syrup and mass only.
 */
export const debriefCsv = ({ events, readings, spans, voided, startedAt, rehearsal }: Story): string => {
  const read = new Map(readings.map((one) => [one.seq, one]));
  const started = startedAt === null ? Number.NaN : Date.parse(startedAt);
  const rows = events.map((event): Row => {
    const reading = read.get(event.seq);
    return {
      seq: event.seq,
      seconds: event.t,
      ...(Number.isNaN(started) ? {} : { clock: new Date(started + event.t * 1000).toISOString() }),
      phase: spans.findLast(({ from }) => from <= event.t)?.phase,
      kind: event.kind,
      ...cellsOf(event),
      ...(reading === undefined
        ? {}
        : { celsius_true: Number(reading.celsius.toFixed(2)), believed: reading.believed }),
      taken_back: voided.has(event.seq),
      rehearsal,
    };
  });
  const lines = rows.map((row) => columns.map((column) => cell(row[column])).join(','));
  return `${[columns.join(','), ...lines].join('\r\n')}\r\n`;
};
