import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { quoted } from '../quoted.js';

/** What the full-screen console says of itself: keys, panels, notices. What a cook is told is not here. */
export const screenTexts = {
  // Keys, as short as a footer needs them.
  'key.digits': 'reading',
  'key.enter': 'take it',
  'key.done': 'done',
  'key.yes': 'yes',
  'key.no': 'no',
  'key.ok': 'ok, seen',
  'key.test': 'test in water',
  'key.felt': 'what it felt like',
  'key.heat': 'heat',
  'key.pot': 'pot off or on the ring',
  'key.pot.off': 'pot off',
  'key.pot.on': 'pot on',
  'key.lid': 'lid on or off',
  'key.lid.off': 'lid off',
  'key.lid.on': 'lid on',
  'key.middle': 'middle reading',
  'key.rope': 'rope',
  'key.weigh': 'weigh',
  'key.count': 'count',
  'key.over': 'trouble over',
  'key.trouble': 'trouble',
  'key.undo': 'undo',
  'key.bell': 'bell on or off',
  'key.bell.off': 'bell off',
  'key.bell.on': 'bell on',
  'key.words': 'type words',
  'key.help': 'keys',
  'key.skip': 'skip',
  'key.pause': 'pause',
  'key.leave': 'leave',
  'key.space': 'space',
  'key.0-9': '0-9',
  'key.close': 'any other key closes',
  'key.list.head': '| key | does | same as typing | when |\n|---|---|---|---|',
  'key.list.rehearsed': 'a rehearsal',
  'key.list.always': 'always',
  'key.list.asked': 'a question is open',
  'key.list.warned': 'a warning is open',
  'key.list.troubled': 'a trouble is open',
  'key.list.undoable': 'something can be taken back',
  'key.list.step': 'a step waits for it',

  // The scale that is read first.
  'key.scale': '°C or °F first',
  'key.scale.C': '°C first',
  'key.scale.F': '°F first',
  'scale.now': ({ shown: first, bare }: { shown: 'C' | 'F'; bare: 'C' | 'F' }) =>
    first === bare
      ? `°${first} first, as on the thermometer.`
      : `°${first} first. A bare number is still °${bare}; type ${first === 'C' ? '114c' : '238f'} for °${first}.`,
  'scale.differs': ({ shown: first, bare }: { shown: 'C' | 'F'; bare: 'C' | 'F' }) =>
    `°${first} first; thermometer and typed numbers °${bare}`,

  // Choosers.
  'choose.test': 'What did it feel like? One letter.',
  'choose.heat': 'What is the heat at? One letter.',
  'choose.trouble': 'What is wrong? One letter.',
  'choose.over': 'Which trouble is over? One letter.',
  'choose.rope': 'What does the rope do? One letter.',
  'choose.settle': 'What is true now? One letter.',
  'choose.keys': 'one letter chooses; Backspace goes back; digits are a reading',
  'choose.ring': 'The ring under the lifted pot is burning hot.',
  'choose.off-since': (v: { seconds: number }, p: Printer) => `off the ring for ${p.clock(v.seconds)}`,
  'choose.word': (v: { word: string }) => shown(v.word),
  'choose.trouble.one': (v: { name: string; cause: string }) => `${v.name.padEnd(12)}${v.cause}`,
  'choose.droops': 'droops: runs or bends down, pull on',
  'choose.holds': 'holds: keeps its shape',
  'choose.arms-out': 'arms out: nobody can pull any more',

  // What is typed.
  'entry.reading': (v: { unit: string }) => `°${v.unit} of the syrup; Enter takes it`,
  'entry.middle': (v: { unit: string }) => `°${v.unit} of the middle; Enter takes it`,
  'entry.takes': 'Enter takes it',
  'entry.words': 'Enter takes it, Backspace corrects, Esc throws it away.',
  'entry.pasted': 'Pasted, not yet taken. Enter takes it, Esc throws it away.',
  'entry.burst': 'Several keys at once: nothing was done. A word is typed after a colon.',
  'entry.no-key': (v: { key: string }) =>
    `${quoted(v.key)} is no key now. The question mark shows the keys; a word is typed after a colon.`,

  // Leaving.
  'leave.say': 'Leave now?',
  'leave.kept':
    'The cook is kept and goes on from here when you come back. The pot does not wait: heat off first.',
  'leave.not-kept':
    'Not everything is saved: what is not on the disk is lost. The pot does not wait: heat off first.',
  'leave.rehearsal':
    'A rehearsal ends when it is left, and what it came to is printed. Nothing is on the stove.',
  'leave.keys': 'y leaves    any other key stays    Ctrl+C again leaves',

  // The frame.
  'screen.too-small': (v: { columns: number; rows: number }) => `needs 80x24, has ${v.columns}x${v.rows}`,
  'screen.too-small.keys': 'make it larger, or q leaves',
  'screen.clock': ({ minutes }: { minutes: number }) =>
    minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`,
  'screen.rehearsal': 'REHEARSAL',
  'screen.from': (v: { phase: string }) => `began at ${v.phase}, earlier steps taken as done`,
  'screen.not-saved': (v: { count: number }, p: Printer) =>
    `NOT SAVED: ${p.count(v.count, 'event', 'events')}`,
  'screen.not-saved.block': 'NOT SAVED',
  'screen.bell-off': 'bell off',
  'screen.rang.look': '((!)) LOOK NOW',
  'screen.rang.next': '(.) next is due',
  'screen.reading': 'now',
  'screen.ghost': 'in 1 min',
  'screen.target': 'target',
  'screen.hands-limit': 'for hands',
  'screen.middle': 'middle',
  'screen.take-off': (v: { about: string }) => `off the ring in ${v.about}`,
  'screen.take-off.now': 'off the ring now',
  'screen.reached': 'target reached',
  'screen.share': (v: { fraction: number }, p: Printer) => `${p.percent(v.fraction)} of the boil`,
  'screen.read-again': (v: { seconds: number }, p: Printer) =>
    v.seconds <= 0 ? 'read again now' : `read again in ${p.time(v.seconds)}`,
  'screen.next': 'next',
  'screen.sight': 'pot',
  'screen.watch': 'watch',
  'screen.cue': 'say',
  'screen.also-open': (v: { names: readonly string[] }, p: Printer) => `also open: ${p.list(v.names)}`,
  'screen.more-warnings': (v: { count: number }, p: Printer) =>
    `${p.count(v.count, 'more warning', 'more warnings')}; o answers the first`,
  'screen.more': '...',
  'screen.due': 'DUE',
  'screen.level.now': 'ACT NOW',
  'screen.level.soon': 'ATTENTION',
  'screen.level.note': 'NOTE',
  'screen.since': (v: { seconds: number }, p: Printer) => `${p.clock(v.seconds)} ago`,
  'screen.big.now': (v: { ago: number | null }, p: Printer) =>
    v.ago === null ? 'no reading yet' : v.ago < 5 ? 'read just now' : `read ${p.time(v.ago)} ago`,
  'screen.big.target': 'target',
  'screen.big.time': 'off the ring in about',
  'screen.big.time.off': 'off the ring',
  'screen.big.limit': 'hands below',
  'screen.big.middle': 'middle',
  'screen.help': 'Keys now',
  'screen.help.words': 'Words',
  'screen.help.line': 'A colon, then any of these, then Enter. A key is only short for its word.',
  'screen.wait': 'saving ...',

  // The last events.
  'event.reading': (v: { value: number; unit: string }) => `${v.value} ${v.unit}`,
  'event.middle': (v: { value: number; unit: string }) => `middle ${v.value} ${v.unit}`,
  'event.check': (v: { of: string; value: number; unit: string }) => `${v.of} ${v.value} ${v.unit}`,
  'event.room': 'room',
  'event.weigh': (v: { grams: number; pieces: number | null }, p: Printer) =>
    `weigh ${p.grams(v.grams)}${v.pieces === null ? '' : ` of ${v.pieces}`}`,
  'event.water': (v: { grams: number }, p: Printer) => `water ${p.grams(v.grams)}`,
  'event.word': (v: { word: string }) => shown(v.word),

  // First run, unfinished cook.
  'questions.title': 'Three short questions, once',
  'questions.count': (v: { number: number; of: number }) => `${v.number} of ${v.of}`,
  'questions.keys': 'Enter takes it. Ctrl+C leaves.',
  'wait.disk': 'Looking for earlier cooks: the disk is slow.',
  'choice.continue': 'Continue.',
  'choice.unfinished': (v: { recipe: string; seconds: number; phase: string }, p: Printer) =>
    `An unfinished cook: ${shown(v.recipe)}, at ${v.phase}, left ${p.time(v.seconds)} ago.`,
  'choice.go-on': 'Go on with it.',
  'choice.next': (v: { others: number }, p: Printer) =>
    `Not that one; ${p.count(v.others, 'other is', 'others are')} unfinished too.`,
  'choice.leave': 'Leave.',
  'choice.new': 'Begin a new cook; the other is kept.',
  'choice.keys': 'one letter, or Enter for the first',
} as const;
