import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { quotedBeginning } from '../quoted.js';
import { everyday } from './everyday.js';

/** What is said of a line that could not be taken: what was found, and what to type instead. */
export const typedTexts = {
  'typed.nothing': 'Nothing was typed. Digits are a reading; "done" is done; "help" shows the words.',
  'typed.unknown': (v: { typed: string; nearest: string | null }) => {
    const instead =
      everyday(v.typed, v.nearest) ??
      (v.nearest === null
        ? 'Type a reading (238), "done", or "help" for the words.'
        : `Did you mean ${quotedBeginning(v.nearest)}?`);
    return `${quotedBeginning(v.typed)} is not understood. ${instead}`;
  },
  'typed.too-long': (v: { length: number }) =>
    `A line of ${v.length} characters is too long to be meant. Type one thing at a time.`,
  'typed.reading': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not a temperature. Type digits, and f or c if need be: 238, 238f, 114.5c.`,
  'typed.middle': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not a temperature. Type it like this: middle 47c.`,
  'typed.check': (v: { typed: string; word: string }) =>
    `${quotedBeginning(v.typed)} is not a temperature. Type what the thermometer shows: ${v.word === 'ice' ? 'ice 0.5c' : 'boils 95c'}.`,
  'typed.room': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} does not say how the room is. Type it like this: room 19c 60%.`,
  'typed.heat': (v: { typed: string; allowed: readonly string[]; nearest: string | null }, p: Printer) =>
    `${quotedBeginning(v.typed)} is not on this knob. Type heat and one of ${p.list(v.allowed.map(escapeForTerminal))}${v.nearest === null ? '.' : `; did you mean ${quotedBeginning(`heat ${v.nearest}`)}?`}`,
  'typed.on-off': (v: { word: string }) =>
    `Is the ${v.word} on or off? Type "${v.word} on" or "${v.word} off".`,
  'typed.water': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not an amount of water. Type it like this: water 30ml.`,
  'typed.hands': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)}: whose hands? Type "hands visitors", "hands bare" (practised adults), "hands gloved" or "hands children".`,
  'typed.portion': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not a number of portions. Type it like this: portion 3 (1 to 50).`,
  'typed.trouble': (v: { typed: string; allowed: readonly string[]; nearest: string | null }, p: Printer) =>
    `${quotedBeginning(v.typed)} is not a trouble that is known. ${v.nearest === null ? `Type trouble and one of ${p.list(v.allowed)}.` : `Did you mean "trouble ${v.nearest}"?`}`,
  'typed.over': (v: { open: readonly string[] }, p: Printer) =>
    v.open.length === 0
      ? 'No trouble is open.'
      : v.open.length === 1
        ? `Only this one is open. Type "over ${v.open.join()}".`
        : `Which one is over? Type "over" and one of ${p.list(v.open)}.`,
  'typed.phase': (v: { typed: string; allowed: readonly string[]; nearest: string | null }, p: Printer) =>
    `${quotedBeginning(v.typed)} is not a phase. ${v.nearest === null ? `Type at and one of ${p.list(v.allowed)}.` : `Did you mean "at ${v.nearest}"?`}`,
  'typed.weigh': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not a weight. Type it like this: weigh 512g, or weigh 70g of 10.`,
  'typed.count': (v: { typed: string }) =>
    `${quotedBeginning(v.typed)} is not a number of pieces. Type it like this: count 63.`,
  'typed.no-question': (v: { answer: string }) =>
    `"${v.answer}" answers nothing: no question is open just now.`,
  'typed.too-early': (v: { question: string; seconds: number }, p: Printer) =>
    `Not yet: this is asked in ${p.time(v.seconds)}. Until then ${v.question === 'clean.cool' ? 'no water in' : 'tools only'}.`,
  'typed.not-an-answer': (v: { answer: string; answers: readonly string[] }, p: Printer) =>
    `"${v.answer}" does not answer this. Type one of ${p.list(v.answers)}.`,
  'typed.safety': (v: { answers: readonly string[] }) =>
    `This is a safety question: "done" does not answer it. Read it aloud, then type ${v.answers.map((one) => `"${one}"`).join(' or ')}.`,
  'typed.not-done':
    'This ends by what happens, not by "done". Type what you read or felt; "help" shows the words.',
  'typed.no-warning': (v: { id: string | null }) =>
    v.id === null ? 'There is no warning to answer.' : `No warning called ${quotedBeginning(v.id)} is open.`,
  'typed.no-undo': 'There is nothing to take back.',
  'typed.note': 'A note needs words: note the room got crowded.',
  'typed.mark': 'What is to be marked? Type it like this: mark recording.',
  'typed.reading-kept': (v: { because: string }) =>
    ({
      'out of range': 'This is not what syrup in a pot can have. Kept, and asked about.',
      jump: 'Faster than a hob can heat it. Kept, and asked about.',
      fall: 'Faster than a pot can cool on the ring. Kept, and asked about.',
      'too cold to boil': 'Too cold for a boiling syrup. Kept, and asked about.',
      'too hot so soon': 'Hotter than it should be by now. Kept, and asked about.',
      'colder than the room': 'Colder than the room it lies in. Kept, and asked about.',
      'other scale': 'On the other scale it would fit. Kept, and asked about.',
    })[v.because] ?? 'Kept, and asked about.',
  'typed.time': (v: { t: number; before: number }) =>
    `The time ${v.t} s lies before ${v.before} s: time never falls. Send a later one.`,
  'typed.feed-line':
    'This line is no {"t": seconds, "typed": "..."}. Send JSON lines or plain lines, not both.',
} as const;
