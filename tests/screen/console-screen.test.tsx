import { render } from 'ink-testing-library';
import { describe, expect, it } from 'vitest';
import { firstRunProblem, firstRunQuestions } from '../../source/kitchen/ask.js';
import { ChoiceScreen, QuestionsScreen } from '../../source/screen/asking.js';
import { ConsoleScreen } from '../../source/screen/console-screen.js';
import type { Size } from '../../source/screen/context.js';
import { message } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { bench, modelOn, play, unicode, wholeCook } from './kit.js';

const plain = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });
const size: Size = { columns: 80, rows: 24 };
const enter = '\r';
const ctrlC = '\u0003';

/** Ink takes keys and draws in its own time; a few turns of the loop are enough. */
const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn += 1) await new Promise((resolve) => setImmediate(resolve));
};

describe('the console on the screen', () => {
  it('is exactly as high as the window in every step: an empty row is a row', async () => {
    const one = bench();
    const model = modelOn(one);
    const heights = new Set<number>();
    const ink = render(<ConsoleScreen model={model} style={unicode} size={size} />);
    await play(one, wholeCook, async () => {
      model.happened();
      await settled();
      heights.add((ink.lastFrame() ?? '').split('\n').length);
    });
    expect([...heights]).toEqual([24]);
    ink.unmount();
    model.close();
  });

  it('hears keys, and shows what came of them', async () => {
    const one = bench();
    const model = modelOn(one);
    const ink = render(<ConsoleScreen model={model} style={unicode} size={size} />);
    await settled();
    expect(ink.lastFrame()).toMatch(/Set everything out/);
    ink.stdin.write(' ');
    await settled();
    await one.time.pass(200);
    await settled();
    expect(ink.lastFrame()).toMatch(/Say aloud who does what/);
    ink.stdin.write('238');
    await settled();
    expect(ink.lastFrame()).toMatch(/> 238/);
    ink.unmount();
    model.close();
  });

  it('grows and shrinks with the window, and says what it needs when it is too small', async () => {
    const model = modelOn(bench());
    const ink = render(<ConsoleScreen model={model} style={unicode} size={size} />);
    for (const [columns, rows] of [
      [120, 40],
      [60, 20],
      [200, 60],
      [80, 24],
    ] as const) {
      ink.rerender(<ConsoleScreen model={model} style={unicode} size={{ columns, rows }} />);
      await settled();
      const frame = ink.lastFrame() ?? '';
      expect(frame.split('\n').length).toBe(rows);
      if (columns === 60) expect(frame).toMatch(/needs 80x24, has 60x20/);
    }
    ink.unmount();
    model.close();
  });
});

describe('the questions of a first run', () => {
  const ask = async (typed: readonly string[]) => {
    const heard: { answers?: unknown; left: boolean } = { left: false };
    const ink = render(
      <QuestionsScreen
        asked={{ questions: firstRunQuestions, problem: firstRunProblem, printer: plain }}
        style={unicode}
        size={size}
        onAnswered={(answers) => {
          heard.answers = answers;
        }}
        onLeave={() => {
          heard.left = true;
        }}
      />,
    );
    const frames: string[] = [];
    await settled();
    for (const keys of typed) {
      ink.stdin.write(keys);
      await settled();
      frames.push(ink.lastFrame() ?? '');
    }
    ink.unmount();
    return { ...heard, frames };
  };

  it('are three at most, and Enter alone takes each default', async () => {
    expect(firstRunQuestions.length).toBeLessThanOrEqual(3);
    const { answers } = await ask([enter, enter, enter]);
    expect(answers).toEqual({ place: '', stove: '', thermometer: '' });
  });

  it('take what is typed, also when it all comes at once', async () => {
    const { answers } = await ask(['1450 m\r', 'gas\r', 'digital c\r']);
    expect(answers).toEqual({ place: '1450 m', stove: 'gas', thermometer: 'digital c' });
  });

  it('ask again with a sentence when they do not understand, and keep what was typed', async () => {
    const { answers, frames } = await ask(['up high', enter]);
    expect(answers).toBeUndefined();
    expect(frames.at(-1)).toMatch(/> up high/);
    expect(frames.at(-1)).toMatch(/1 of 3/);
    // What Enter alone means is still said: this person is further from knowing it than before.
    expect(frames.at(-1)).toMatch(/neither an altitude/);
    expect(frames.at(-1)).toMatch(/Enter: not known/);
  });

  it('put the next try in the place of what was not taken, and backspace corrects it instead', async () => {
    const again = await ask(['up high', enter, '1450 ', 'm', enter]);
    expect(again.frames.at(-3)).toMatch(/> 1450 ▌/);
    expect(again.frames.at(-3)).toMatch(/neither an altitude/);
    expect(again.frames.at(-1)).toMatch(/2 of 3/);
    expect(again.frames.at(-1)).not.toMatch(/neither an altitude/);
    const corrected = await ask(['1450 mm', enter, '\u007f', enter]);
    expect(corrected.frames.at(-2)).toMatch(/> 1450 m▌/);
    expect(corrected.frames.at(-1)).toMatch(/2 of 3/);
  });

  it('are left by Ctrl+C', async () => {
    expect((await ask([ctrlC])).left).toBe(true);
  });
});

describe('a choice', () => {
  const choose = async (keys: string) => {
    const heard: string[] = [];
    const ink = render(
      <ChoiceScreen
        choice={{
          say: message('leave.say'),
          choices: [
            { key: 'g', word: 'go on', text: message('key.yes') },
            { key: 'n', word: 'new', text: message('key.no') },
          ],
          printer: plain,
        }}
        style={unicode}
        size={size}
        onChoose={(word) => heard.push(word)}
        onLeave={() => heard.push('left')}
      />,
    );
    await settled();
    ink.stdin.write(keys);
    await settled();
    ink.unmount();
    return heard;
  };

  it('is made by its letter, or by Enter for the first; anything else waits', async () => {
    expect(await choose('n')).toEqual(['new']);
    expect(await choose(enter)).toEqual(['go on']);
    expect(await choose('z')).toEqual([]);
    expect(await choose(ctrlC)).toEqual(['left']);
  });
});
