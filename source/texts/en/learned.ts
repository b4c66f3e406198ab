import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';

export type Told = { cooks: number; date: string | null; by: 'cooks' | 'person' };

const cooksWord = (cooks: number): string => (cooks === 1 ? '1 cook' : `${cooks} cooks`);

const told = ({ cooks, date, by }: Told): string => {
  if (by === 'person') return date === null ? 'said by you' : `said by you on ${date}`;
  return `from ${cooksWord(cooks)}${date === null ? '' : `, the last on ${date}`}`;
};

const phaseWords = {
  fold: 'Cooling and folding',
  pull: 'Pulling one portion',
  cut: 'Rope and cut of 100 pieces',
} as const;

/** What a kitchen has learned, as `kettlehand kitchen` and plans say it. */
export const learnedTexts = {
  'learned.value': ({ found, example }: { found: string; example: string }) =>
    `"${escapeForTerminal(found)}" can't be meant here. Write for example ${example}, or none to forget it.`,
  'learned.no-knob-label': ({ found, allowed }: { found: string; allowed: readonly string[] }) =>
    `"${escapeForTerminal(found)}" is no label of this knob: ${allowed.map(escapeForTerminal).join(', ')}. Write for example learned.watts.${escapeForTerminal(allowed[0] ?? 'low')} "600 W".`,
  'learned.none':
    'Learned: nothing yet. Each finished cook (no rehearsal) teaches thermometer, burner, carry-over, losses and minutes.',
  'learned.thermometer': (v: Told & { id: string; value: number; sd: number }, p: Printer) =>
    `Learned of ${escapeForTerminal(v.id)}: it ${
      Math.abs(v.value) < 0.25
        ? 'reads true'
        : `reads ${v.value > 0 ? 'high' : 'low'} by ${p.rise(Math.abs(v.value))}`
    } at candy heat, give or take ${p.rise(2 * v.sd)} (${told(v)}). Weighed with its last check.`,
  'learned.watts': (v: Told & { label: string; value: number; sd: number }) =>
    `Learned of heat ${escapeForTerminal(v.label)}: about ${Math.round(v.value / 10) * 10} W into the pot, give or take ${Math.round(200 * v.sd)} % (${told(v)}).`,
  'learned.carry-over': (v: Told & { value: number; sd: number }, p: Printer) =>
    `Learned of carry-over: off the ring it climbs ${v.value <= 0 ? 'no further' : `another ${p.rise(v.value)}`}, give or take ${p.rise(2 * v.sd)} (${told(v)}).`,
  'learned.losses': (v: Told & { value: number; sd: number }, p: Printer) =>
    `Learned of losses: ${p.percent(1 - v.value)} stay on pot, table and hands, give or take ${Math.round(200 * v.sd)} % of the batch (${told(v)}).`,
  'learned.minutes': (v: Told & { phase: keyof typeof phaseWords; value: number }, p: Printer) =>
    `Learned of this crew: ${phaseWords[v.phase]} takes ${p.time(v.value * 60)} (${told(v)}).`,
  'learned.plan': ({ cooks, date }: { cooks: number; date: string | null }) =>
    `Reckoned with what ${cooks > 0 ? `${cooksWord(cooks)} in this kitchen showed` : 'you said of this kitchen'}${date === null ? '' : ` (up to ${date})`}. See and change it: kettlehand kitchen.`,
} as const;
