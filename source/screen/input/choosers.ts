import type { TroubleName } from '../../cook/event.js';
import { coldWaterOutcomes } from '../../sugar/stages.js';
import { type Message, message, type TextId } from '../../texts/message.js';
import type { Situation } from '../keys.js';

export type ChooserId = 'test' | 'heat' | 'trouble' | 'over' | 'rope' | 'settle';

/** One thing to choose: a letter, the line that it types, and its sentence. */
export type Option = { readonly letter: string; readonly line: string; readonly text: Message };

/** Where people are hurt or soon will be first, then what spreads, then what only the candy suffers from. */
export const troublesByUrgency: readonly TroubleName[] = [
  'burn',
  'fire',
  'choking',
  'allergy',
  'overflow',
  'foam',
  'scorched',
  'spill',
  'glass',
  'overshoot',
  'grains',
  'soft',
  'stiff',
  'thermometer',
  'power',
  'away',
];

type Unlettered = Omit<Option, 'letter'>;

const byWord = (lines: readonly string[]): readonly Unlettered[] =>
  lines.map((line) => ({ line, text: message('choose.word', { word: line }) }));

/** Off first; the words of the knob, weakest first, each once. */
const heatLines = (words: readonly string[]): readonly string[] => [
  'heat off',
  ...words.filter((word) => word !== 'off').map((word) => `heat ${word}`),
];

const options: { readonly [Id in ChooserId]: (situation: Situation) => readonly Unlettered[] } = {
  test: () =>
    [...coldWaterOutcomes, 'unsure'].map((outcome) => ({
      line: outcome,
      text: { id: `feels.${outcome}` as TextId },
    })),
  heat: ({ advice }) => byWord(heatLines(advice.typing.heatWords)),
  // The words and their causes are joined where they are drawn: a name is a typed word, a cause is a sentence.
  trouble: () =>
    troublesByUrgency.map((name) => ({
      line: `trouble ${name}`,
      text: { id: `hazard.${name}.cause` as TextId },
    })),
  over: ({ advice }) =>
    advice.typing.openTroubles.map((name) => ({
      line: `over ${name}`,
      text: { id: `hazard.${name}.cause` as TextId },
    })),
  rope: () => [
    { line: 'droops', text: message('choose.droops') },
    { line: 'holds', text: message('choose.holds') },
    { line: 'arms out', text: message('choose.arms-out') },
  ],
  settle: ({ advice }) => byWord(advice.question?.answers ?? []),
};

const letters = 'abcdefghijklmnopqrstuvwxyz';

export const optionsOf = (id: ChooserId, situation: Situation): readonly Option[] =>
  options[id](situation)
    .slice(0, letters.length)
    .map((option, index) => ({ letter: letters.charAt(index), ...option }));

/** The chooser on the screen: the one that was opened, else the question that has more than yes and no to say. */
export const chooserNow = (opened: ChooserId | null, { advice }: Situation): ChooserId | null =>
  opened ?? (advice.question?.kind === 'what is true now' ? 'settle' : null);
