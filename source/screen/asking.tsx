import { useWindowSize } from 'ink';
import { useState } from 'react';
import type { FirstRunAnswers, FirstRunQuestion } from '../kitchen/ask.js';
import { type Message, message, words } from '../texts/message.js';
import type { Size, Style } from './context.js';
import type { Key } from './input/key.js';
import { asciiSigns, toAscii, unicodeSigns } from './looks.js';
import type { ChoiceOptions, QuestionsOptions } from './options.js';
import { Rows } from './rows.js';
import { blank, type Line, span, wrap } from './text.js';
import { useKeys } from './use-keys.js';

type Asking = { readonly style: Style; readonly size?: Size; readonly onLeave: () => void };

const widest = 76;

/** Rows with a margin, filled to the height of the window so that nothing of an earlier screen stays. */
const page = (lines: readonly Line[], { columns, rows }: Size): readonly Line[] => {
  const margin = columns > widest ? '  ' : '';
  const set = [blank, ...lines].slice(0, rows).map((line): Line => [span(margin), ...line]);
  return [...set, ...Array.from({ length: Math.max(0, rows - set.length) }, () => blank)];
};

const spoken = (said: Message, printer: ChoiceOptions['printer'], { ascii }: Style): string => {
  const text = words(said, printer);
  return ascii ? toAscii(text) : text;
};

type ChoiceProps = Asking & { readonly choice: ChoiceOptions; readonly onChoose: (word: string) => void };

/** A few things to choose from; Enter takes the first. */
export const ChoiceScreen = ({ choice, style, size, onChoose, onLeave }: ChoiceProps) => {
  const window = useWindowSize();
  const { say, why, choices, printer } = choice;
  const at = size ?? window;
  const width = Math.min(widest, at.columns - 2);
  const key = (pressed: Key): void => {
    if (pressed.kind === 'interrupt') onLeave();
    const letter = pressed.kind === 'char' ? pressed.char.toLowerCase() : null;
    const chosen = pressed.kind === 'enter' ? choices[0] : choices.find((one) => one.key === letter);
    if (chosen !== undefined) onChoose(chosen.word);
    else if (letter === 'q') onLeave();
  };
  useKeys({ key, paste: () => undefined });
  const lines: readonly Line[] = [
    ...wrap([span(spoken(say, printer, style), 'strong')], width),
    ...(why === undefined ? [] : wrap([span(spoken(why, printer, style), 'faint')], width)),
    blank,
    ...choices.flatMap((one) =>
      wrap([span(` ${one.key}  `, 'key'), span(spoken(one.text, printer, style))], width, 4),
    ),
    blank,
    [span(spoken(message('choice.keys'), printer, style), 'faint')],
  ];
  return <Rows lines={page(lines, at)} paints={style.paints} />;
};

type QuestionsProps = Asking & {
  readonly asked: QuestionsOptions;
  readonly onAnswered: (answers: FirstRunAnswers) => void;
};

type Progress = {
  readonly index: number;
  readonly typed: string;
  /** What was typed was not taken: it stands there to be read or corrected, and gives way to what is typed next. */
  readonly refused: boolean;
  /** Stays in sight until an answer is taken. */
  readonly problem: Message | null;
  readonly answers: FirstRunAnswers;
};

const withoutLast = (text: string): string => [...text].slice(0, -1).join('');

const first: Progress = { index: 0, typed: '', refused: false, problem: null, answers: {} };

const withMore = (state: Progress, text: string): Progress => ({
  ...state,
  typed: ((state.refused ? '' : state.typed) + text).slice(0, 60),
  refused: false,
});

/** One key further. Pure, so that a burst of keys loses none. */
const answer = (
  { problem }: QuestionsOptions,
  question: FirstRunQuestion,
  state: Progress,
  key: Key,
): Progress => {
  if (key.kind === 'char') return withMore(state, key.char);
  if (key.kind === 'backspace') return { ...state, typed: withoutLast(state.typed), refused: false };
  if (key.kind !== 'enter') return state;
  const found = problem(question.id, state.typed);
  if (found !== null) return { ...state, refused: true, problem: found };
  return {
    ...first,
    index: state.index + 1,
    answers: { ...state.answers, [question.id]: state.typed },
  };
};

/** A first run: a few questions, one at a time, each with what Enter alone means. */
export const QuestionsScreen = ({ asked, style, size, onAnswered, onLeave }: QuestionsProps) => {
  const window = useWindowSize();
  const at = size ?? window;
  const width = Math.min(widest, at.columns - 2);
  // Keys of one chunk arrive before the next render: the latest state is kept beside the rendered one.
  const [latest] = useState({ state: first });
  const [state, setState] = useState(latest.state);
  const put = (next: Progress): void => {
    latest.state = next;
    setState(next);
    if (next.index >= asked.questions.length) onAnswered(next.answers);
  };
  useKeys({
    key: (pressed) => {
      const question = asked.questions[latest.state.index];
      if (pressed.kind === 'interrupt') onLeave();
      else if (question !== undefined) put(answer(asked, question, latest.state, pressed));
    },
    paste: (text) => put(withMore(latest.state, text)),
  });
  const question: FirstRunQuestion | undefined = asked.questions[state.index];
  const say = (said: Message): string => spoken(said, asked.printer, style);
  const cursor = (style.ascii ? asciiSigns : unicodeSigns).cursor;
  const typed = style.ascii ? toAscii(state.typed) : state.typed;
  const lines: readonly Line[] =
    question === undefined
      ? []
      : [
          [
            span(`${say(message('questions.title'))}  `, 'faint'),
            span(
              say(message('questions.count', { number: state.index + 1, of: asked.questions.length })),
              'faint',
            ),
          ],
          blank,
          ...wrap([span(say(question.ask), 'strong')], width),
          ...wrap([span(say(question.why), 'faint')], width),
          blank,
          [span('> ', 'faint'), span(`${typed}${cursor}`, 'entry')],
          blank,
          ...(state.problem === null ? [] : wrap([span(say(state.problem), 'caution')], width)),
          ...wrap([span(say(question.skip), 'faint')], width),
          blank,
          [span(say(message('questions.keys')), 'faint')],
        ];
  return <Rows lines={page(lines, at)} paints={style.paints} />;
};
