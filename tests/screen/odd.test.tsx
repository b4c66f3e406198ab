import { render } from 'ink-testing-library';
import { describe, expect, it } from 'vitest';
import type { Happened } from '../../source/cook/event.js';
import { firstRunQuestions } from '../../source/kitchen/ask.js';
import { ChoiceScreen, QuestionsScreen } from '../../source/screen/asking.js';
import { blockLetters } from '../../source/screen/block-letters.js';
import { contextOf, type Size } from '../../source/screen/context.js';
import { factsOf } from '../../source/screen/facts.js';
import { frame } from '../../source/screen/frame.js';
import { KeyReader } from '../../source/screen/input/key.js';
import { type InputState, startingInput, stepInput } from '../../source/screen/input/reducer.js';
import { actOf, type Situation } from '../../source/screen/keys.js';
import { lastEvents } from '../../source/screen/last-events.js';
import { inkedRows } from '../../source/screen/legibility.js';
import { LineMode } from '../../source/screen/line-mode.js';
import { toAscii } from '../../source/screen/looks.js';
import type { Shown } from '../../source/screen/model.js';
import { monochrome } from '../../source/screen/palette.js';
import { caution } from '../../source/screen/parts/action.js';
import { Canvas } from '../../source/screen/parts/canvas.js';
import { farNumbers } from '../../source/screen/parts/far-numbers.js';
import { glass } from '../../source/screen/parts/glass.js';
import { plotView } from '../../source/screen/parts/plot-view.js';
import { speak } from '../../source/screen/spoken.js';
import { styleFor, wantsAscii } from '../../source/screen/style.js';
import { clip, span, widthOf, wrap } from '../../source/screen/text.js';
import { WaitingScreen } from '../../source/screen/waiting.js';
import { watchFrame } from '../../source/screen/watch-frame.js';
import { WatchLines } from '../../source/screen/watch-lines.js';
import { watchNumbers } from '../../source/screen/watch-numbers.js';
import { sceneOf } from '../../source/screen/watch-scene.js';
import { message, words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { hall, Play } from '../cook/play.js';
import { type Bench, bench, modelOn, plainText, play, wholeCook } from './kit.js';

const plain = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });
const unicode = { ascii: false };
const usual: Size = { columns: 80, rows: 24 };
const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn += 1) await new Promise((resolve) => setImmediate(resolve));
};
const shownAt = async (length: number, ...more: readonly string[]): Promise<Shown> => {
  const one = bench();
  await play(one, [...wholeCook.slice(0, length), ...more]);
  const model = modelOn(one);
  model.happened();
  const { shown } = model;
  model.close();
  return shown;
};
const page = (shown: Shown, size = usual): string => plainText(frame(shown, size, unicode).lines);
const situationOf = ({ session }: Bench): Situation => ({
  advice: session.advice(),
  facts: factsOf(session.cook),
});

describe('the questions of a first run', () => {
  const ask = async (keys: readonly string[], columns = 80, ascii = false) => {
    let answers: unknown;
    const ink = render(
      <QuestionsScreen
        asked={{ questions: firstRunQuestions, problem: () => null, printer: plain }}
        style={{ ascii, paints: monochrome, still: false }}
        size={{ columns, rows: 24 }}
        onAnswered={(given) => {
          answers = given;
        }}
        onLeave={() => undefined}
      />,
    );
    for (const one of keys) {
      await settled();
      ink.stdin.write(one);
    }
    await settled();
    ink.unmount();
    return { answers, last: ink.frames.findLast((one) => one.trim() !== '') ?? '' };
  };

  it('let what was typed be corrected, and pass over keys that mean nothing here', async () => {
    const { answers } = await ask(['14509', '\u007f', '\u001a', ' m\r', 'gas\r', '\r', 'x']);
    expect(answers).toEqual({ place: '1450 m', stove: 'gas', thermometer: '' });
  });

  it('keep to the edge of a narrow window, and to plain signs where there are no others', async () => {
    expect((await ask(['ü'], 60, true)).last).toMatch(/^> ue_/m);
    expect((await ask(['ü'])).last).toMatch(/^ {2}> ü▌/m);
  });

  it('a choice is left by q where none of its letters is that', async () => {
    const heard: string[] = [];
    const ink = render(
      <ChoiceScreen
        choice={{
          say: message('leave.say'),
          why: message('choice.keys'),
          choices: [{ key: 'g', word: 'go on', text: message('key.yes') }],
          printer: plain,
        }}
        style={{ ascii: true, paints: monochrome, still: false }}
        size={usual}
        onChoose={(word) => heard.push(word)}
        onLeave={() => heard.push('left')}
      />,
    );
    await settled();
    ink.stdin.write('q');
    await settled();
    ink.unmount();
    expect(heard).toEqual(['left']);
  });

  it.each([
    [{ ascii: false, still: false }, /^\s*[^\sA-Za-z] Looking for earlier cooks/m],
    [{ ascii: true, still: true }, /^\s*Looking for earlier cooks/m],
  ])('waiting turns or stands still as was asked: %o', (style, said) => {
    const wait = { say: message('wait.disk'), printer: plain };
    const ink = render(<WaitingScreen wait={wait} style={{ ...style, paints: monochrome }} />);
    expect(ink.lastFrame()).toMatch(said);
    ink.unmount();
  });
});

describe('text in cells', () => {
  it.each([
    ['Öl', 'Oel'],
    ['LÖFFEL', 'LOEFFEL'],
    ['Äpfel, Übung, groß', 'Aepfel, Uebung, gross'],
    ['café, 5½ °F, ¾ cup…', 'cafe, 5 1/2 F, 3/4 cup...'],
    ['snow ☃', 'snow ?'],
  ])('%s is %s in ASCII', (text, ascii) => expect(toAscii(text)).toBe(ascii));

  it('is cut at the room that there is, whole letters only, the rest left out', () => {
    const line = [span('12345'), span('67'), span('89')];
    expect(clip(line, 6).map(({ text }) => text)).toEqual(['12345', '6']);
    expect(clip(line, 5).map(({ text }) => text)).toEqual(['12345']);
    expect(
      wrap([span('糖'.repeat(9))], 4).every((row) => widthOf(row.map(({ text }) => text).join('')) <= 4),
    ).toBe(true);
    expect(wrap([], 10)).toEqual([]);
  });

  it('has no height where nothing is inked, and draws nothing outside of its canvas', () => {
    expect(inkedRows(['   ', ''])).toBe(0);
    expect(inkedRows(['█', '█'])).toBe(2);
    const canvas = new Canvas(2, 1, false);
    canvas.sign(5, 0, 'x', 'plain');
    canvas.dot(-3, -1, 'plain', '.');
    expect(plainText([canvas.row(0)])).toBe('');
    // All eight dots of a braille cell are the full sign.
    for (const x of [0, 1]) for (const y of [0, 1, 2, 3]) canvas.dot(x, y, 'plain', '.');
    expect(plainText([canvas.row(0)])).toBe('⣿');
  });

  it('asks for plain signs by locale and terminal', () => {
    expect(wantsAscii({})).toBe(false);
    expect(wantsAscii({ LANG: 'C' })).toBe(true);
    expect(wantsAscii({ LC_CTYPE: 'ja_JP.UTF-8' })).toBe(true);
    const style = styleFor({ color: false, ascii: false, still: true });
    expect(style).toMatchObject({ ascii: false, still: true });
    expect(styleFor({ color: true, stdout: {} as NodeJS.WriteStream }).paints).toEqual(style.paints);
  });
});

describe('keys', () => {
  const acts = async (length: number, ...more: readonly string[]) => {
    const one = bench();
    await play(one, [...wholeCook.slice(0, length), ...more]);
    return (key: string, change: (situation: Situation) => Situation = (same) => same) =>
      actOf(key, change(situationOf(one)));
  };

  it('x is over with the only trouble, or asks which', async () => {
    expect((await acts(17, 'trouble foam'))('x')).toEqual({ kind: 'type', line: 'over foam' });
    expect((await acts(17, 'trouble foam', 'trouble burn'))('x')).toEqual({
      kind: 'choose',
      chooser: 'over',
    });
  });

  it('o answers the first warning by its name', async () => {
    const act = await acts(17);
    const warned = act('o', (situation) => ({
      ...situation,
      advice: {
        ...situation.advice,
        warnings: [{ id: 'stalled' } as unknown as Situation['advice']['warnings'][number]],
      },
    }));
    expect(warned).toEqual({ kind: 'type', line: 'ok stalled' });
  });

  it('h begins a line where the knob has numbers, and lists its words where it has words', async () => {
    const act = await acts(17);
    expect(act('h')).toEqual({ kind: 'choose', chooser: 'heat' });
    const numbered = act('h', (situation) => ({
      ...situation,
      advice: { ...situation.advice, typing: { ...situation.advice.typing, heatWords: ['1', '2', '9'] } },
    }));
    expect(numbered).toEqual({ kind: 'begin', text: 'heat ' });
  });

  it('the key of the lid takes off what is on, and puts on what is off', async () => {
    const act = await acts(17);
    const lid = (lidOn: boolean) => act('l', (one) => ({ ...one, facts: { ...one.facts, lidOn } }));
    expect(lid(true)).toEqual({ kind: 'type', line: 'lid off' });
    expect(lid(false)).toEqual({ kind: 'type', line: 'lid on' });
  });

  it('that a terminal sends in odd shapes are read for what they are', () => {
    const read = (input: string, modifiers = {}) => new KeyReader().read(input, modifiers);
    expect(read('\r\n')).toEqual([{ kind: 'enter' }]);
    expect(read('x', { ctrl: true })).toEqual([]);
    expect(read('z', { ctrl: true })).toEqual([{ kind: 'suspend' }]);
    expect(read('\u0000')).toEqual([]);
  });
});

describe('what is typed', () => {
  const begin = async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 17));
    const situation = situationOf(one);
    const state = startingInput({ bell: true, step: situation.advice.step });
    const tell = (from: InputState, event: Parameters<typeof stepInput>[1], now = 10_000) =>
      stepInput(from, event, now, situation).state;
    return { state, tell };
  };

  it('is never longer than a remark, and a paste joins it in one line', async () => {
    const { state, tell } = await begin();
    const long: InputState = { ...state, entry: { text: 'n'.repeat(500), of: 'words' } };
    expect(tell(long, { kind: 'key', key: { kind: 'char', char: 'x' } }).entry?.text).toHaveLength(500);
    const begun = tell(state, { kind: 'key', key: { kind: 'char', char: '2' } });
    expect(tell(begun, { kind: 'paste', text: '38' }).entry).toMatchObject({ text: '238', of: 'words' });
    expect(tell(state, { kind: 'paste', text: '   ' }).entry).toBeNull();
    const returned: InputState = { ...state, entry: { text: '2.3', of: 'digits', returned: true } };
    expect(tell(returned, { kind: 'paste', text: '238' }).entry?.text).toBe('238');
  });

  it('comes back as words or digits, but never over what is being typed by then', async () => {
    const { state, tell } = await begin();
    const because = message('typed.nothing');
    expect(tell(state, { kind: 'queried', because, typed: 'heta low' }).entry).toMatchObject({ of: 'words' });
    const begun = tell(state, { kind: 'key', key: { kind: 'char', char: '2' } });
    expect(tell(begun, { kind: 'queried', because, typed: 'heta low' })).toMatchObject({
      entry: { text: '2' },
      notice: because,
    });
    expect(tell(state, { kind: 'queried', because, typed: null }).entry).toBeNull();
  });

  it('starts the wait of a step once', async () => {
    const { state, tell } = await begin();
    expect(tell(state, { kind: 'step', step: state.step }, 99_000).stepAt).toBe(state.stepAt);
    expect(tell(state, { kind: 'step', step: 'boil.lid' }, 99_000).stepAt).toBe(99_000);
  });
});

describe('the small line of what happened', () => {
  const happened = (...events: readonly Partial<Happened>[]) => {
    const log = events.map((event, index) => ({ ...event, seq: index + 1, t: index }) as Happened);
    return lastEvents({ log, length: log.length }).map(({ said }) => printerWords(said));
  };
  const printerWords = (said: Parameters<typeof contextSay>[0]) => contextSay(said);
  const contextSay = (said: ReturnType<typeof message>) => `${said.id} ${JSON.stringify(said.values ?? {})}`;

  it('names checks, lid and phases, the newest reading of a feed only, and nothing of a gap', () => {
    const fed = (value: number): Partial<Happened> =>
      ({ kind: 'reading', value, unit: 'F', of: 'syrup', by: 'feed' }) as Partial<Happened>;
    const said = happened(
      { kind: 'reading', value: 33, unit: 'F', of: 'ice', by: 'hands' } as Partial<Happened>,
      { kind: 'lid', on: true },
      { kind: 'lid', on: false },
      { kind: 'at', phase: 'fold' },
      fed(220),
      { kind: 'gap', seconds: 90, sure: true },
      fed(221),
    );
    expect(said[0]).toMatch(/event\.reading.*221/);
    expect(said.filter((one) => one.startsWith('event.reading'))).toHaveLength(1);
    expect(said.slice(1, 4).join()).toMatch(/at fold.*lid off.*lid on/);
    expect(said.at(-1)).toMatch(/event\.check.*33/);
    expect(said).toHaveLength(5);
  });
});

describe('in lines, for somebody who types', () => {
  const led = async (prompts: boolean) => {
    const one = bench();
    await play(one, wholeCook.slice(0, 17));
    let happens: (said: readonly ReturnType<typeof message>[]) => void = () => undefined;
    let saves: (state: { problem: ReturnType<typeof message> | null }) => void = () => undefined;
    let written = '';
    const mode = new LineMode({
      session: {
        type: (typed: string) => one.session.type(typed),
        advice: (now?: number) => one.session.advice(now),
        now: () => one.session.now(),
        onGap: () => () => undefined,
        onSaving: (listener: (state: never) => void) => {
          saves = listener as typeof saves;
          return () => undefined;
        },
      } as never,
      printerNow: () => plain,
      lines: (async function* () {
        written = '';
        happens([message('rehearsal.sees.boils')]);
        saves({ problem: message('line.held') });
        saves({ problem: null });
        one.time.now += 60_000;
        await one.session.type('trouble foam');
        happens([]);
        yield '';
        yield 'Quit';
        throw new Error('it read on');
      })(),
      write: (text) => {
        written += text;
      },
      columns: () => 60,
      prompts,
      onHappening: (listener) => {
        happens = listener;
        return () => undefined;
      },
    });
    await mode.run();
    return written;
  };

  it('what happens by itself never stands behind what is being typed', async () => {
    const written = await led(true);
    expect(written).toMatch(/^\n~ {2}\S/);
    expect(written).toMatch(/!! .*\n> /);
    expect(written.split('\n').filter((line) => /^> [^>\s]/.test(line))).toEqual([]);
    expect(await led(false)).not.toContain('> ');
    expect(written.split('\n').every((line) => line.length <= 62)).toBe(true);
  });

  it('says once that saving failed, and once that it works again', async () => {
    const shown = await shownAt(17);
    const ctx = { ascii: false };
    const problem = message('line.held');
    const failing: Shown = { ...shown, saving: { ...shown.saving, problem } };
    const first = speak(null, shown, ctx);
    const failed = speak(first, failing, ctx);
    expect(failed.lines.slice(first.lines.length)).toEqual([expect.stringContaining('not saved')]);
    const still = speak(failed, failing, ctx);
    expect(still.lines).toHaveLength(failed.lines.length);
    const again = speak(still, shown, ctx);
    expect(again.lines.slice(still.lines.length)).toHaveLength(1);
    const noticed = speak(
      again,
      { ...shown, input: { ...shown.input, notice: message('entry.burst') } },
      ctx,
    );
    expect(noticed.open.length).toBe(again.open.length + 1);
  });
});

describe('the screen of an odd moment', () => {
  it('has marks for a drift and for what could not be saved, and says why', async () => {
    const shown = await shownAt(17);
    const odd: Shown = {
      ...shown,
      advice: { ...shown.advice, drift: { seconds: 300, phase: 'boil' } },
      saving: { ...shown.saving, saving: false, heldCount: 3, problem: message('line.held') },
    };
    expect(page(odd, { columns: 120, rows: 40 })).toMatch(/5 min/);
    expect(page(odd)).toMatch(/NOT SAVED/i);
    expect(page(odd)).not.toBe(page(shown));
  });

  it('says what becomes of the cook that is left: kept, not kept, or a rehearsal', async () => {
    const shown = await shownAt(17);
    const leaving: Shown = { ...shown, input: { ...shown.input, leaving: true } };
    const said = [
      leaving,
      { ...leaving, saving: { ...leaving.saving, saving: false } },
      { ...leaving, advice: { ...leaving.advice, rehearsal: true } },
    ].map((one) => page(one));
    expect(new Set(said).size).toBe(3);
  });

  it('has what is typed, or what presses, above the curve', async () => {
    const shown = await shownAt(17, '230');
    const seen = (one: Shown, rows = 20) => {
      const lines = plotView(contextOf(one, unicode), usual, rows);
      return lines === null ? null : plainText(lines);
    };
    const typing: Shown = { ...shown, input: { ...shown.input, entry: { text: '238', of: 'digits' } } };
    expect(seen(typing)).toMatch(/^> 238▌/);
    expect(seen(typing)).not.toMatch(/Leave it still/);
    const urgent = plotView(
      contextOf({ ...shown, advice: { ...shown.advice, urgent: true } }, unicode),
      usual,
      20,
    );
    expect(urgent?.[0]?.[0]?.look).toBe('alarm');
    // Too low for a curve: it says so by not being there.
    expect(seen(shown, 3)).toBeNull();
    const nothing: Shown = { ...shown, trace: { ...shown.trace, syrup: [], middle: [] } };
    expect(seen(nothing)).toBeTruthy();
    expect(seen(nothing, 1)).toBeNull();
  });

  it('counts the warnings that have no room, and says what they rest on', async () => {
    const shown = await shownAt(17);
    const one = (id: string, evidence: boolean, signal: 'WARNING' | null) =>
      ({
        id,
        level: 'soon',
        signal,
        cause: message('entry.pasted'),
        consequence: message('entry.burst'),
        response: [message('entry.pasted'), message('entry.burst')],
        evidence: evidence ? message('entry.takes') : null,
        troubled: false,
      }) as never;
    const many: Shown = {
      ...shown,
      advice: {
        ...shown.advice,
        warnings: ['stalled', 'disagreement', 'unattended', 'past-window', 'lid-foams', 'heat-left-on'].map(
          (id) => one(id, id === 'stalled', null),
        ),
      },
    };
    expect(page(many)).toMatch(/\d more/);
    expect(page(many)).toContain('(');
  });

  it('does nothing more once it is closed', async () => {
    const one = bench();
    const model = modelOn(one);
    let told = 0;
    model.subscribe(() => {
      told += 1;
    });
    model.close();
    const before = model.shown;
    model.key({ kind: 'char', char: '2' });
    model.happened();
    await one.time.pass(5000);
    expect(told).toBe(0);
    expect(model.shown.advice).toEqual(before.advice);
  });
});

describe('numbers and names of an odd moment', () => {
  const rows = (lines: ReturnType<typeof farNumbers>) => plainText(lines ?? []);
  const drawn = (shown: Shown) =>
    rows(farNumbers(contextOf(shown, unicode), { digits: 'small', labels: 'line' }, 160));
  const has = (page: string, digits: string) =>
    blockLetters(digits, 'small', 400, false)?.every((row) => page.includes(row.trim())) === true;
  const ahead = (shown: Shown, typical: number): Shown => {
    const { forecast } = shown.advice;
    if (forecast === null) throw new Error('something is foreseen in the boil');
    const takeOffSeconds = { low: typical / 2, typical, high: 2 * typical };
    return { ...shown, advice: { ...shown.advice, timers: [], forecast: { ...forecast, takeOffSeconds } } };
  };

  it.each([
    [7.4, '7', 'S TO GO'],
    [43, '45', 'S TO GO'],
    [1500, '25', 'MIN TO GO'],
    [3720, '1:02', 'H TO GO'],
  ])('%s s to go are read from afar as %s %s', async (seconds, digits, unit) => {
    const page = drawn(ahead(await shownAt(20), seconds));
    expect(has(page, digits)).toBe(true);
    expect(page).toMatch(new RegExp(`\\s${unit}$`));
  });

  it('has no number of the mass where nothing measures it', async () => {
    const shown = await shownAt(20);
    const fold: Shown = {
      ...shown,
      advice: { ...shown.advice, phase: 'fold', timers: [], offTheHeat: false },
    };
    const without: Shown = { ...fold, facts: { ...fold.facts, thermometer: false } };
    expect(drawn(fold)).not.toBe('');
    expect(drawn(without)).toBe('');
  });

  it('points beyond the end of the glass where the syrup is colder or hotter than it shows', async () => {
    const shown = await shownAt(20);
    const { reading } = shown.facts;
    if (reading === null) throw new Error('the syrup was read');
    const at = (celsius: number) => {
      const lines = glass(
        contextOf(
          { ...shown, ghostCelsius: null, facts: { ...shown.facts, reading: { ...reading, celsius } } },
          unicode,
        ),
        30,
        14,
      );
      return plainText(lines ?? []).split('\n');
    };
    expect(at(15).at(-1)).toContain('▼');
    expect(at(180)[0]).toContain('▲');
    expect(at(115).join('\n')).toContain('◄');
  });

  it('draws a doubted reading only when somebody stands by it', async () => {
    const hottest = ({ trace }: Shown) => Math.max(...trace.syrup.map(({ high }) => high));
    const [denied, said] = [await shownAt(20, '300f', 'no', '233'), await shownAt(20, '300f', 'yes', '300f')];
    expect(hottest(denied)).toBeLessThan(120);
    expect(hottest(said)).toBeGreaterThan(140);
  });

  it('leaves the name of the recipe out where it has no room, never a mark', async () => {
    const shown = await shownAt(17);
    const long = 'Hill hall ginger pull '.repeat(5).trim();
    const odd: Shown = {
      ...shown,
      facts: { ...shown.facts, recipe: long },
      advice: { ...shown.advice, rehearsal: true },
    };
    expect(page(odd)).toContain('REHEARSAL');
    expect(page(odd)).not.toContain('Hill hall');
    expect(page(odd, { columns: 200, rows: 40 })).toContain(long);
  });

  it('names a phase that goes on beside the headline in brackets', async () => {
    const shown = await shownAt(20);
    const trail = shown.advice.trail.map((one) =>
      one.phase === 'fold' ? { ...one, state: 'also' as const } : one,
    );
    expect(page({ ...shown, advice: { ...shown.advice, trail } }, { columns: 160, rows: 40 })).toMatch(
      /\[BOIL\].*\(.*fold\)/,
    );
  });

  it('signs a caution with its word where it has one', async () => {
    const ctx = contextOf(await shownAt(20), unicode);
    const one = (signal: 'WARNING' | null) =>
      ({
        signal,
        cause: message('entry.pasted'),
        consequence: message('entry.burst'),
        response: [],
      }) as never;
    expect(plainText(caution(ctx, one('WARNING'), 200))).toMatch(/^WARNING {2}\S/);
    expect(plainText(caution(ctx, one(null), 200))).not.toMatch(/^WARNING/);
  });
});

describe('the second screen of an odd moment', () => {
  const watched = (play: Play) =>
    ({ kind: 'cook', cook: play.cook, advice: play.advice, printer: play.printer, isLed: true }) as const;

  it('says that it was stopped, and nothing else, when a cook was given up', () => {
    const play = new Play({ kitchen: hall }).until('boil.still').type('220f').type('stop');
    const { advice } = play;
    const scene = sceneOf(play.cook, { ...advice, troubles: [], phase: 'clean' });
    expect(scene.id).toBe('stopped');
    expect(scene.keep?.id).toMatch(/clean/);
    const gap = sceneOf(
      { ...play.cook, stopped: false },
      { ...advice, troubles: [], step: null, offTheHeat: false },
    );
    expect(gap.id).toBe('gap');
  });

  it('says at the end what was counted, or that it is done', () => {
    const end = (...typed: readonly string[]) => {
      const play = new Play({ kitchen: hall, from: 'wrap' }).type(...typed).until('over.end');
      return words(watchNumbers(play.cook, play.advice, play.printer).word, play.printer);
    };
    expect(end('count 112')).toContain('112');
    expect(end()).not.toMatch(/\d/);
  });

  it('is plain where a terminal has plain signs only', () => {
    const play = new Play({ kitchen: hall }).until('boil.still').type('220f');
    const plainSigns = plainText(watchFrame(watched(play), usual, { ascii: true }));
    expect(plainSigns).toMatch(/^[\n\u0020-\u007e]*$/);
    expect(plainText(watchFrame(watched(play), usual, unicode))).not.toBe(plainSigns);
  });

  it('says in the first line that it is a rehearsal', () => {
    const told = (rehearsal: boolean) => {
      const written: string[] = [];
      const play = new Play({ kitchen: hall }).until('boil.still').type('220f');
      new WatchLines(
        (text) => written.push(text),
        () => null,
      ).see({ ...watched(play), advice: { ...play.advice, rehearsal } });
      return written[0];
    };
    expect(told(true)).toMatch(/rehearsal/i);
    expect(told(false)).not.toMatch(/rehearsal/i);
  });

  it('says in lines what it waits for, once, each in the width of the window', () => {
    const written: string[] = [];
    const lines = new WatchLines(
      (text) => written.push(text),
      () => 40,
    );
    for (const what of ['a cook', 'a cook', 'its journal'] as const)
      lines.see({ kind: 'waiting', for: what, printer: plain } as never);
    expect(written).toHaveLength(2);
    expect(new Set(written).size).toBe(2);
    lines.see(watched(new Play({ kitchen: hall }).until('boil.still').type('220f')));
    expect(
      written
        .join('')
        .split('\n')
        .every((line) => line.length <= 40),
    ).toBe(true);
  });
});
