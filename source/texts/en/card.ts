import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { capital } from '../capital.js';

type Span = readonly [low: number, high: number];

/** The card for the wall: what to go on by when the screen is dark. */
export const cardTexts = {
  'card.title': ({ name }: { name: string }) => escapeForTerminal(name),
  'card.for': 'For the wall. Power cut, dead laptop: go on from here.',
  'card.place': (
    { boils, id, basis, unit }: { boils: number; id: string | null; basis: string; unit: string },
    p: Printer,
  ) =>
    id === null
      ? `No thermometer: cold water decides. Water boils here at ${p.degrees(boils)}.`
      : `Numbers as "${escapeForTerminal(id)}" shows them in °${unit} (${basis === 'taken as right' ? 'not checked' : 'corrected'}). Water boils here at ${p.degrees(boils)}.`,
  'card.date': ({ date }: { date: string }) => date,
  'card.pull': ({ time }: { time: string }) => `hands on it at ${time}`,

  'card.off.label': 'OFF THE HEAT',
  'card.off': ({ celsius }: { celsius: number }, p: Printer) => p.dial(celsius),
  'card.off.blind': ({ feels }: { feels: string }) => feels,
  'card.off.then': ({ window, feels, dial }: { window: Span; feels: string; dial: boolean }, p: Printer) =>
    dial
      ? `onto the trivet. It rests at ${p.dialSpan(window[0], window[1])}: ${feels} in cold water.`
      : 'in cold water. Then onto the trivet.',

  'card.heading.numbers': 'On the way',
  'card.boils': 'it boils from about',
  'card.quiet': 'quiet, low heat, read every half minute',
  'card.first-test': 'cup of cold water ready',
  'card.off-row': 'off the heat, test',
  'card.past': 'past the window: hard candy',
  'card.rescue': 'above it no water in, ever',
  'card.never': 'never: it scorches. Off, no water',
  'card.number': ({ celsius }: { celsius: number }, p: Printer) => p.dialNumber(celsius),

  'card.heading.stages': 'What fingers feel in cold water',
  'card.from': ({ celsius }: { celsius: number }, p: Printer) => p.dialNumber(celsius),
  'card.heading.test': 'The cold-water test',
  'card.test.1': 'Pot off the ring, onto the trivet.',
  'card.test.2': 'New metal or plastic cup, cold tap water, no ice.',
  'card.test.3': 'Half a teaspoon in, ten seconds under water, an adult feels it.',
  'card.test.4': ({ feels }: { feels: string }) =>
    `One stage softer than ${feels}: back on, low, test again in a minute. Softer still: medium, three minutes. Trust fingers before the dial.`,

  'card.heading.way': 'The way through',
  'card.way.mix': ({ things }: { things: readonly string[] }) =>
    `Stove off, cold pot: ${things.map(escapeForTerminal).join(', ')}. Scrape the wall. Read list 1.`,
  'card.way.dissolve': ({ minutes }: { minutes: number }) =>
    `Low to medium heat. Stir until no grit is left, about ${minutes} min.`,
  'card.way.boil': (
    v: { late: boolean; care: 'lid' | 'brush' | 'none-late-stir'; dial: boolean; minutes: Span },
    _p: Printer,
  ) => {
    const wall = {
      lid: ' Lid on 2-3 min, opened away from the face.',
      brush: ' Damp brush on the wall, once. No lid.',
      'none-late-stir': ' No lid.',
    };
    return `${v.late ? 'Boil, stirring slowly along the bottom.' : 'Boil. Nobody stirs.'}${wall[v.care]} ${
      v.dial ? 'Read every 2 min' : 'Test every few minutes'
    }; ${v.minutes[0]} to ${v.minutes[1]} min. Foam half way up: heat down.`;
  },
  'card.way.near': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    `${dial ? `From ${p.dial(celsius)}` : 'From the first firm ball'}: heat low, nobody talks to the pot. Read list 2.`,
  'card.way.off': (
    { celsius, feels, dial }: { celsius: number; feels: string; dial: boolean },
    p: Printer,
  ) =>
    dial
      ? `${p.dial(celsius)} or ${feels}, whichever comes first: OFF, onto the trivet. Ring off. Test.`
      : `${capital(feels)}: OFF, onto the trivet. Ring off.`,
  'card.way.flavour': ({ things }: { things: readonly string[] }) =>
    things.length === 0
      ? 'Wait until the bubbling sinks.'
      : `Bubbling sunk: ${things.map(escapeForTerminal).join(', ')}, a little at a time, face away.`,
  'card.way.later': ({ things, phase }: { things: readonly string[]; phase: 'boil' | 'fold' | 'pull' }) =>
    `${{ boil: 'Into the boil', fold: 'While folding', pull: 'While pulling' }[phase]}: ${things.map(escapeForTerminal).join(', ')}.`,
  'card.way.pour': ({ scrape }: { scrape: boolean }) =>
    `Path clear, slab ready? Pour low, away from you${scrape ? '' : ', do not scrape'}. Emptied pot: wait 3 min, then hot tap water, never cold.`,
  'card.way.fold': 'Leave it 2-3 min. Edges to the middle with the scraper, 2-3 times. Tools only.',
  'card.way.hands': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    dial
      ? `Middle ${p.degrees(celsius)} or less: read list 3, then hands.`
      : '20 min for 1 cm, 45 for more; cut it open, an adult touches a crumb. Read list 3, then hands.',
  'card.way.pull': 'Pull with fingertips, fold, pull, until light, satin and stiff: 5 to 20 min.',
  'card.way.cut': ({ cut, damp }: { cut: number; damp: boolean }, p: Printer) =>
    `Ropes, cut every ${p.millimetres(cut)}, adults. ${damp ? 'Wrap at once: damp air.' : 'Rest 10-30 min, wrap.'}`,

  'card.heading.roles': 'Who',
  'card.role.pot': 'Pot: one adult, nothing else',
  'card.role.slab': 'Slab: scraper, trivet, flavour',
  'card.role.floor': 'Floor: one for 6-8 children',
  'card.role.scribe': 'Scribe: times, readings',

  'card.heading.list': ({ number }: { number: 1 | 2 | 3 }) =>
    ({ 1: '1  Before heat', 2: '2  Before pouring', 3: '3  Before hands' })[number],
  'card.list.1.1': 'Hands washed 20 s; hair tied, cuts covered, nobody ill',
  'card.list.1.2': 'Children behind a line 1 m from stove, path and slab',
  'card.list.1.3': 'Lid and dry mitts at hand; cool running water near',
  'card.list.1.4': ({ litres }: { litres: number }, p: Printer) => `Pot of ${p.litres(litres)} or more`,
  'card.list.1.5': 'Surface, scraper, scissors greased; cups and hand bowl filled',
  'card.list.1.6': (
    { contains, check, unknown }: { contains: readonly string[]; check: readonly string[]; unknown: boolean },
    p: Printer,
  ) =>
    `Allergies asked: ${[
      contains.length > 0 ? p.list(contains.map(escapeForTerminal)) : 'none in the recipe',
      ...(check.length > 0 ? [`packets: ${p.list(check.map(escapeForTerminal))}`] : []),
      ...(unknown ? ['some unknown'] : []),
    ].join('; ')}`,
  'card.list.2.1': 'Path from stove to slab clear and dry',
  'card.list.2.2': 'Trivet down, slab greased and level',
  'card.list.2.3': 'One adult pours, named; dry mitts on',
  'card.list.2.4': 'Everyone else stands back, children first',
  'card.list.2.5': 'Flavour measured, at the trivet',
  'card.list.3.1': ({ celsius, dial }: { celsius: number; dial: boolean }, p: Printer) =>
    dial
      ? `Middle measured: ${p.degrees(celsius)} or less`
      : 'Cut open, a crumb from the middle touched by an adult',
  'card.list.3.2': 'Rings and watch off, hands washed',
  'card.list.3.3': ({ hands }: { hands: 'butter' | 'oil' | 'starch' | 'dry' }) =>
    `Hands: ${{ butter: 'butter, thin', oil: 'oil, thin', starch: 'starch', dry: 'dry' }[hands]}; no protection from heat`,
  'card.list.3.4': 'Bowl of cool water beside the work; scissors away',
  'card.list.3.5': 'Children: a small piece from an adult, never the mass',
  'card.list.3.6': 'Eat only what you pulled; dropped is waste',

  'card.heading.burn': 'BURN',
  'card.burn.1': 'Cool running water, now, 20 minutes. Others: heat off, pot off the ring.',
  'card.burn.2': 'Rings, watch, sleeve off under the water, first minute. Stuck sugar stays.',
  'card.burn.3': 'An eye: rinse 20 minutes. Keep them warm; then cover loosely. No ice, fat or cream.',
  'card.burn.4':
    'Call for help: face, eye, hand, joint, genitals; larger than their palm; white or leathery; any child; any doubt.',
  'card.heading.fire': 'FIRE IN THE PAN',
  'card.fire.1': 'Slide the lid on. Heat off. Do not move it. No water.',
  'card.fire.2': 'Not out at once: everybody out, door closed, call the fire service.',
  'card.heading.more': 'ALSO',
  'card.more.1': 'Over the rim: knob off first, slide it sideways, no water.',
  'card.more.2': 'Smells burnt: off, window open, no water in.',
  'card.more.3': 'Choking, allergic reaction: emergency number and aider, now.',
  'card.heading.power': 'POWER OUT',
  'card.power.1': 'Knob off. Pot stays, lid off, one adult beside it.',
  'card.power.2': 'Power back: low heat first; do not scrape.',
  'card.power.3': 'On the slab: fold and pull on, it needs no power.',
  'card.call': 'Emergency number',
  'card.here': 'We are at (address)',
  'card.aider': 'Trained first aider',
  'card.foot':
    'The person in charge, local rules for kitchens and children, food law and trained first aid come before this card. Not for children under four; eat seated; it is sticky.',
} as const;
