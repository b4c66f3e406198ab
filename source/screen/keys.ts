import type { Advice } from '../cook/advice.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { message, type TextId, words } from '../texts/message.js';
import { printer } from '../units/printer.js';
import type { Facts } from './facts.js';
import type { ChooserId } from './input/choosers.js';
import { type ScaleChoice, switched } from './scales.js';
import { type ViewChoice, viewShown } from './views.js';

/** What a key looks at to know what it means. */
export type Situation = {
  readonly advice: Advice;
  readonly facts: Facts;
  /** What was asked for by key; only names of keys depend on it. */
  readonly input?: { readonly view: ViewChoice | null; readonly scale: ScaleChoice };
};

/** What a key does: it types a word, or opens something in which a word is chosen or completed. */
export type Act =
  | { readonly kind: 'type'; readonly line: string }
  | { readonly kind: 'choose'; readonly chooser: ChooserId }
  /** The typed line opens with these words in it. */
  | { readonly kind: 'begin'; readonly text: string }
  /** Another view of the same cook, and back. */
  | { readonly kind: 'view'; readonly view: 'far' | 'plot' }
  | { readonly kind: 'help' | 'bell' | 'scale' | 'leave' };

type When =
  | 'always'
  | 'rehearsed'
  | 'asked'
  | 'warned'
  | 'troubled'
  | 'undoable'
  | 'step'
  | readonly PhaseId[];

/** One row drives the key itself, the footer, the help and the README's list. */
export type KeyRow = {
  readonly key: string;
  readonly shownAs?: TextId;
  /** The typed word that it stands for. */
  readonly word: string;
  readonly text: TextId;
  readonly textNow?: (situation: Situation) => TextId;
  readonly when: When;
  /** Beyond `when`. */
  readonly if?: (situation: Situation) => boolean;
  readonly act: (situation: Situation) => Act;
  /** Place in the footer: smaller stays longer. */
  readonly rank: number;
  /** It leads back from what covers the screen now, and never leaves the footer. */
  readonly leadsBack?: (situation: Situation) => boolean;
};

const type = (line: string): Act => ({ kind: 'type', line });
const beforePour: readonly PhaseId[] = ['dissolve', 'boil', 'test', 'flavour', 'pour'];
const onTheStove: readonly PhaseId[] = phaseIds.filter((phase) => phase !== 'over');
/**
 * The question that stands on the screen, whole. While a trouble has the word, a list that is to be read aloud is not
 * to be seen, and must not be answered unseen.
 */
export const questionShown = ({ advice }: Pick<Situation, 'advice'>): Advice['question'] => {
  const { question } = advice;
  if (question === null || question.text.id === advice.say.id) return question;
  const besides = question.kind === 'reading' || question.kind === 'what is true now';
  return besides || question.id.startsWith('trouble.') ? question : null;
};

const isSeen = (view: 'far' | 'plot', { advice, input }: Situation): boolean =>
  viewShown(advice, input?.view ?? null) === view;

const asksYesOrNo = (situation: Situation): boolean =>
  questionShown(situation)?.answers.includes('yes') === true;

/** The knob's labels are numbers: the number itself is typed. */
const numbered = ({ advice }: Situation): boolean => advice.typing.heatWords.some((word) => /^\d/.test(word));

/** Answered by their own word `over`, not by `ok`. */
export const warningsShown = ({ advice }: Pick<Situation, 'advice'>): Advice['warnings'] => {
  const open = new Set<string>(advice.typing.openTroubles);
  return advice.warnings.filter(({ id }) => !open.has(id));
};

export const keyTable: readonly KeyRow[] = [
  {
    key: ' ',
    shownAs: 'key.space',
    word: 'done',
    text: 'key.done',
    when: 'step',
    act: () => type('done'),
    rank: 1,
  },
  { key: 'y', word: 'yes', text: 'key.yes', when: 'asked', if: asksYesOrNo, act: () => type('yes'), rank: 0 },
  { key: 'n', word: 'no', text: 'key.no', when: 'asked', if: asksYesOrNo, act: () => type('no'), rank: 0 },
  {
    key: 'o',
    word: 'ok ID',
    text: 'key.ok',
    when: 'warned',
    act: (situation) => type(`ok ${warningsShown(situation)[0]?.id ?? ''}`.trim()),
    rank: 2,
  },
  {
    key: 't',
    word: 'pot off',
    text: 'key.test',
    textNow: ({ advice }) => (advice.phase === 'test' ? 'key.felt' : 'key.test'),
    when: ['dissolve', 'boil', 'test'],
    act: ({ advice, facts }) =>
      advice.phase === 'boil' && facts.potOn !== false
        ? type('pot off')
        : { kind: 'choose', chooser: 'test' },
    rank: 4,
  },
  {
    key: 'h',
    word: 'heat low',
    text: 'key.heat',
    when: onTheStove,
    act: (situation) =>
      numbered(situation) ? { kind: 'begin', text: 'heat ' } : { kind: 'choose', chooser: 'heat' },
    rank: 5,
  },
  {
    key: '!',
    word: 'trouble NAME',
    text: 'key.trouble',
    when: 'always',
    act: () => ({ kind: 'choose', chooser: 'trouble' }),
    rank: 3,
  },
  {
    key: 'x',
    word: 'over NAME',
    text: 'key.over',
    when: 'troubled',
    act: ({ advice: { typing } }) =>
      typing.openTroubles.length === 1
        ? type(`over ${typing.openTroubles[0]}`)
        : { kind: 'choose', chooser: 'over' },
    rank: 3,
  },
  {
    key: 'm',
    word: 'middle 47c',
    text: 'key.middle',
    when: ['fold', 'pull', 'cut'],
    act: () => ({ kind: 'begin', text: 'middle ' }),
    rank: 6,
  },
  {
    key: 'r',
    word: 'droops',
    text: 'key.rope',
    when: ['pull'],
    act: () => ({ kind: 'choose', chooser: 'rope' }),
    rank: 6,
  },
  {
    key: 'w',
    word: 'weigh 512g',
    text: 'key.weigh',
    when: ['wrap', 'clean', 'over'],
    act: () => ({ kind: 'begin', text: 'weigh ' }),
    rank: 7,
  },
  {
    key: 'c',
    word: 'count 63',
    text: 'key.count',
    when: ['wrap', 'clean', 'over'],
    act: () => ({ kind: 'begin', text: 'count ' }),
    rank: 7,
  },
  {
    key: 'p',
    word: 'pot off',
    text: 'key.pot',
    textNow: ({ facts }) => (facts.potOn === false ? 'key.pot.on' : 'key.pot.off'),
    when: beforePour,
    act: ({ facts }) => type(facts.potOn === false ? 'pot on' : 'pot off'),
    rank: 8,
  },
  {
    key: 'l',
    word: 'lid on',
    text: 'key.lid',
    textNow: ({ facts }) => (facts.lidOn === true ? 'key.lid.off' : 'key.lid.on'),
    when: ['dissolve', 'boil', 'test'],
    act: ({ facts }) => type(facts.lidOn === true ? 'lid off' : 'lid on'),
    rank: 10,
  },
  {
    key: 'v',
    word: '',
    text: 'key.view',
    textNow: (situation) => (isSeen('far', situation) ? 'key.view.near' : 'key.view.far'),
    when: 'always',
    // A list that is read aloud is shown whole, whatever was chosen.
    if: ({ advice }) => advice.question?.kind !== 'pause',
    act: () => ({ kind: 'view', view: 'far' }),
    rank: 3,
    leadsBack: (situation) => isSeen('far', situation),
  },
  {
    key: 'g',
    word: '',
    text: 'key.plot',
    textNow: (situation) => (isSeen('plot', situation) ? 'key.plot.close' : 'key.plot'),
    when: 'always',
    if: ({ advice, facts }) =>
      (facts.thermometer || facts.reading !== null) && advice.question === null && !advice.urgent,
    act: () => ({ kind: 'view', view: 'plot' }),
    rank: 6,
    leadsBack: (situation) => isSeen('plot', situation),
  },
  {
    key: 'd',
    word: 'show c',
    text: 'key.scale',
    textNow: ({ advice, input }) => `key.scale.${switched(input?.scale ?? null, advice)}`,
    when: 'always',
    act: () => ({ kind: 'scale' }),
    rank: 12,
  },
  { key: 's', word: 'skip', text: 'key.skip', when: 'rehearsed', act: () => type('skip'), rank: 3 },
  { key: 'z', word: 'pause', text: 'key.pause', when: 'rehearsed', act: () => type('pause'), rank: 3 },
  { key: 'u', word: 'undo', text: 'key.undo', when: 'undoable', act: () => type('undo'), rank: 7 },
  {
    key: ':',
    word: '',
    text: 'key.words',
    when: 'always',
    act: () => ({ kind: 'begin', text: '' }),
    rank: 9,
  },
  { key: 'b', word: '', text: 'key.bell', when: 'always', act: () => ({ kind: 'bell' }), rank: 11 },
  { key: 'q', word: '', text: 'key.leave', when: 'always', act: () => ({ kind: 'leave' }), rank: 10 },
  { key: '?', word: '', text: 'key.help', when: 'always', act: () => ({ kind: 'help' }), rank: 0 },
];

const holds = (when: When, situation: Situation): boolean => {
  const { advice } = situation;
  switch (when) {
    case 'always':
      return true;
    case 'rehearsed':
      return advice.rehearsal;
    case 'asked':
      return questionShown(situation) !== null;
    case 'warned':
      return warningsShown(situation).length > 0;
    case 'troubled':
      return advice.typing.openTroubles.length > 0;
    case 'undoable':
      return advice.typing.undoes !== null;
    case 'step':
      return advice.canBeDone;
    default:
      return when.includes(advice.phase);
  }
};

/** The rows whose keys mean something now. */
export const keysNow = (situation: Situation): readonly KeyRow[] =>
  keyTable.filter((row) => holds(row.when, situation) && row.if?.(situation) !== false);

/**
 * What a key does now; null for a key that means nothing. The space bar always says "done", also where that answers
 * nothing: the cook is told what is wanted instead.
 */
export const actOf = (char: string, situation: Situation): Act | null => {
  const key = char.toLowerCase();
  if (key === ' ') return type('done');
  return (
    keysNow(situation)
      .find((row) => row.key === key)
      ?.act(situation) ?? null
  );
};

const plain = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });
const say = (id: TextId): string => words({ id }, plain);

const whenSaid = (when: When): string => {
  if (typeof when !== 'string')
    return when.length > 6
      ? say('key.list.always')
      : when.map((phase) => say(`phase.${phase}` as TextId)).join(', ');
  return say(`key.list.${when}` as TextId);
};

/** The key list of the README: a table in Markdown. */
export const keyListMarkdown = (): string => {
  const row = (key: string, text: string, word: string, when: string): string =>
    `| ${key} | ${text} | ${word === '' ? '' : `\`${word}\``} | ${when} |`;
  return [
    say('key.list.head'),
    row(`\`${say('key.0-9')}\``, say('key.digits'), '238, 238f, 114.5c', say('key.list.always')),
    ...keyTable.map(({ key, shownAs, text, word, when }) =>
      row(
        shownAs === undefined ? `\`${key}\`` : say(shownAs),
        words(message(text as 'key.done'), plain),
        word,
        whenSaid(when),
      ),
    ),
  ].join('\n');
};
