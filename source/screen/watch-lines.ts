import { type Message, message, words } from '../texts/message.js';
import { escapeForTerminal } from '../units/escape.js';
import { wrapped } from './lines.js';
import type { Watched } from './watch-frame.js';
import { watchNumbers } from './watch-numbers.js';
import { sceneOf } from './watch-scene.js';

type Seen = Watched & { kind: 'cook' };

/** A new reading alone is a line no more often than this, seconds of the cook: it is read aloud. Our judgement. */
const readingSeconds = 30;

/** What was written last, so that nothing is written twice. */
type Told = {
  readonly scene: string;
  readonly word: string;
  readonly keep: string | null;
  readonly cues: string;
  readonly quiet: boolean;
  readonly readAt: number;
};

/**
 * An onlooker's lines, for a pipe or a screen reader: only what is new is appended.
 */
export class WatchLines {
  #told: Told | null = null;
  #waits: string | null = null;

  constructor(
    private readonly write: (text: string) => void,
    private readonly columns: () => number | null,
  ) {}

  see(watched: Watched): void {
    if (watched.kind === 'cook') {
      this.#waits = null;
      this.#cook(watched);
      return;
    }
    this.#told = null;
    if (this.#waits !== watched.for)
      this.#line(
        words(message(watched.for === 'a cook' ? 'watch.waiting' : 'watch.waiting.journal'), watched.printer),
      );
    this.#waits = watched.for;
  }

  #cook(seen: Seen): void {
    const { cook, advice, printer } = seen;
    const say = (said: Message): string => words(said, printer);
    const scene = sceneOf(cook, advice);
    const numbers = watchNumbers(cook, advice, printer);
    const word = say(numbers.word);
    const before = this.#told;
    const readAt = cook.lastReading?.t ?? Number.NEGATIVE_INFINITY;
    const keep = scene.keep?.id ?? null;
    const cues = scene.cues.join('\n');
    const isOtherScene = before?.scene !== scene.id;
    const isOtherWord = before?.word !== word;
    const isRead = numbers.number !== null && readAt - (before?.readAt ?? readAt) >= readingSeconds;
    const becomesQuiet = scene.quiet && before?.quiet !== true;
    if (before === null) this.#title(seen);
    const isNews = isOtherScene || isOtherWord || isRead;
    if (!isNews && !becomesQuiet) return;
    this.#told = { scene: scene.id, word, keep, cues, quiet: scene.quiet, readAt };
    const figures = [printer.clock(advice.now), word, ...(numbers.number === null ? [] : [numbers.number])];
    const left = numbers.left === null ? [] : [`${say(numbers.left)}.`];
    const stage = numbers.wordLabel === null || !isOtherWord ? [] : [say(numbers.wordLabel)];
    const told = isOtherScene ? [say(scene.what), say(scene.why)] : [];
    if (isNews) this.#line([`[${figures.join(', ')}]`, ...told, ...stage, ...left].join(' '));
    if (isOtherScene && scene.has !== null) this.#line(`    ${say(scene.has)}`);
    if (scene.keep !== null && before?.keep !== keep) this.#line(`!! ${say(scene.keep)}`);
    if (becomesQuiet) this.#line(`!! ${say(message('watch.quiet'))}`);
    if (before?.cues !== cues)
      for (const cue of scene.cues)
        this.#line(`    ${say(message('watch.cue'))} “${escapeForTerminal(cue)}”`);
  }

  #title({ cook, advice, printer }: Seen): void {
    const rehearsal = advice.rehearsal ? ` (${words(message('screen.rehearsal'), printer)})` : '';
    this.#line(`${escapeForTerminal(cook.batch.recipe.name)}${rehearsal}`);
  }

  #line(line: string): void {
    const columns = this.columns();
    this.write(`${columns === null ? line : wrapped(line, columns)}\n`);
  }
}
