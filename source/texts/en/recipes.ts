import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { quoted } from '../quoted.js';

const oneOf = (allowed: readonly string[]): string =>
  allowed.length < 2 ? allowed.join('') : `${allowed.slice(0, -1).join(', ')} or ${allowed.at(-1)}`;
export const suggestion = (nearest: string | null): string =>
  nearest === null ? '' : ` Did you mean ${nearest}?`;
const span = (low: number, high: number, unit: string): string =>
  `${low} to ${high}${unit === '' ? '' : ` ${unit}`}`;

type NotKnown = { found: string; nearest: string | null; allowed: readonly string[] };

/** What is wrong with a recipe or kitchen file, before it is understood as either. */
export const fileTexts = {
  'yaml.place': ({ file, line, field }: { file: string; line: number; field: string }) =>
    `${escapeForTerminal(file)}:${line}: ${field === '' ? '' : `${escapeForTerminal(field)}: `}`,
  'yaml.too-long': ({ longest }: { found: number; longest: number }) =>
    `This file is longer than ${Math.round(longest / 1024)} kB, which no recipe or kitchen needs. Check that it is the right one.`,
  'yaml.too-deep':
    'This is nested deeper than any recipe or kitchen. Check the brackets and the indentation.',
  'yaml.empty': 'This holds no fields. Start with a line such as "kettlehand: 1", then "name: ...".',
  'yaml.not-yaml':
    'This is not YAML as it stands. Look at this line and the one above: a colon, quote or bracket is out of place.',
  'yaml.duplicate-key': 'This field is written twice. Keep one of them.',
  'yaml.tab': 'This line is indented with a tab. Use spaces.',
  'yaml.indent':
    'This line is indented differently from its neighbours, or a bracket above is not closed. Line them up with spaces, or close it.',
  'yaml.no-colon': 'A field needs a colon and a space behind its name here: "name: value".',
  'yaml.two-colons':
    'A field begins in the middle of another here. Put text that has a colon in quotes, and line the fields up.',
  'yaml.needs-quotes': 'This begins with a sign that YAML keeps for itself. Put the text in quotes.',
  'yaml.tag': 'A tag ("!name") is not read in these files. Remove it.',
  'yaml.unclosed': 'A bracket, brace or quote is opened and not closed here. Close it.',
  'yaml.several-documents': 'A second document starts here ("---"). Keep one recipe or kitchen in a file.',
  'yaml.alias':
    'A reference ("&name" or "*name") is not read in these files. Write it out, or put the text in quotes.',
  'yaml.unknown-key': ({ found, nearest, allowed }: NotKnown) =>
    `${quoted(found)} is no field here.${suggestion(nearest)} Fields: ${allowed.join(', ')}.`,
  'yaml.comma': ({ found }: { found: string }) =>
    `${quoted(found)} stands behind a comma, and between braces a comma starts a new field. Write a point, as in 17.5, or put quotes around the whole.`,
  'yaml.not-a-map': ({ found, allowed }: { found: string; allowed: readonly string[] }) =>
    `${quoted(found)} is here, and fields belong here${allowed.length === 0 ? '' : `: ${oneOf(allowed)}`}. Write "field: value", one a line or between braces.`,
  'yaml.not-a-list': ({ found }: { found: string }) =>
    `${quoted(found)} is here, and a list belongs here. Begin each line with "- ", or write [one, two].`,
  'yaml.list-too-long': ({ found, longest }: { found: number; longest: number }) =>
    `${found} are listed; at most ${longest} are read. Shorten the list.`,
  'yaml.not-a-text': ({ found }: { found: string }) =>
    `${quoted(found)} is here, and words belong here. Put them in quotes.`,
  'yaml.text-too-long': ({ found, longest }: { found: number; longest: number }) =>
    `This has ${found} characters; at most ${longest} can be shown. Shorten it.`,
  'yaml.number': ({ found, low, high, unit }: { found: string; low: number; high: number; unit: string }) =>
    `${quoted(found)} does not fit. Write a plain number from ${span(low, high, unit)}.`,
  'yaml.choice': ({ found, nearest, allowed }: NotKnown) =>
    `${quoted(found)} is not known here.${suggestion(nearest)} Write ${oneOf(allowed)}.`,
  'yaml.missing': 'This is missing. Add it.',
  'yaml.no-version': ({ key }: { key: string }) =>
    `The version of the format is missing. Add the line "${key}: 1" at the top.`,
  'yaml.newer': ({ found }: { found: string }) =>
    `This file was made for version ${escapeForTerminal(found)} of the format, by a newer kettlehand; this one reads version 1. Update kettlehand.`,
  'yaml.wrong-version': ({ key, found }: { key: string; found: string }) =>
    `${quoted(found)} is no version of the format. Write "${key}: 1".`,
} as const;

/** What is wrong with a recipe. */
export const recipeProblemTexts = {
  'recipe.value': (v: { field: string; code: string }) =>
    `${v.field} does not fit what the program expects there (${v.code}). Compare with a bundled file: kettlehand recipes show mint-pull.`,
  'recipe.kitchen-file': 'This is a kitchen file. Name a recipe here, and this file with --kitchen.',
  'recipe.unknown-item': ({ found, nearest }: { found: string; nearest: string | null }) =>
    `${quoted(found)} is not in the ingredient table.${suggestion(nearest)} List them with: kettlehand recipes items. Or describe it under "declared".`,
  'recipe.item-is-known': ({ found }: { found: string }) =>
    `${quoted(found)} is in the ingredient table already. Give yours another name.`,
  'recipe.item-name': ({ found }: { found: string }) =>
    `${quoted(found)} can't be the name of an item. Use small letters, digits and hyphens, for example malt-extract.`,
  'recipe.not-declared-here': ({ found }: { found: string }) =>
    `Only an item of your own is described here, and ${quoted(found)} is in the ingredient table. Remove this, or give it another name.`,
  'recipe.no-de': ({ item }: { item: string }) =>
    `${escapeForTerminal(item)} has no glucose solids, so no DE. Remove this field.`,
  'recipe.needs-de': 'Glucose solids are named, so their DE is needed. Add "de: 42" or what the tub says.',
  'recipe.composition-sum': ({ percent }: { percent: number }) =>
    `These parts add up to ${percent} %. Make them 100 %: fractions such as 0.8, and "other" for the rest.`,
  'recipe.needs-density': ({ item }: { item: string }) =>
    `How much a spoon or cup of ${escapeForTerminal(item)} weighs is not known. Write grams, or add "density" (kg per litre) where it is declared.`,
  'recipe.needs-drop': ({ item }: { item: string }) =>
    `${escapeForTerminal(item)} is not counted in drops. Write grams or a spoon.`,
  'recipe.needs-piece': ({ item }: { item: string }) =>
    `How much a piece of ${escapeForTerminal(item)} weighs is not known. Write grams.`,
  'recipe.absurd-amount': (
    { found, grams, most }: { found: string; grams: number; most: number },
    printer: Printer,
  ) =>
    `${quoted(found)} is ${printer.grams(grams)}; at most ${printer.grams(most)} of one ingredient fits a home batch. Check the number and its unit.`,
  'recipe.too-small': ({ grams, least }: { grams: number; least: number }, printer: Printer) =>
    `All ingredients together are ${printer.grams(grams)}. At least ${printer.grams(least)} are needed to cover a thermometer. Check the amounts.`,
  'recipe.no-sugar': 'There is no sugar in this. Add granulated-sugar, a syrup, honey or molasses.',
  'recipe.target-both': 'The target is given in Celsius and in Fahrenheit. Keep one of them.',
  'recipe.target-pair': ({ found }: { found: string }) =>
    `${quoted(found)} is no window. Write two numbers, the lower one first: [123, 126].`,
  'recipe.target-fahrenheit': ({ found, celsius }: { found: number; celsius: readonly [number, number] }) =>
    `${found} looks like Fahrenheit. Write celsius: [${celsius[0]}, ${celsius[1]}], or "fahrenheit" in place of "celsius".`,
  'recipe.target-range': ({
    found,
    low,
    high,
    unit,
  }: {
    found: number;
    low: number;
    high: number;
    unit: 'C' | 'F';
  }) => `${found} ${unit} is outside what pulled candy is cooked to. Write ${low} to ${high} ${unit}.`,
  'recipe.target-order': ({ low, high }: { low: number; high: number }) =>
    `The window runs from ${low} down to ${high}. Write the lower number first.`,
  'recipe.stir': ({ found }: { found: string }) =>
    `${quoted(found)} is not known here. Write { until: boil }, or { late: true } for molasses, honey, milk or cream.`,
  'recipe.stir-both':
    'This says both to stir until it boils and to stir late. Keep one: { until: boil }, or { late: true } for molasses, honey, milk or cream.',
  'recipe.cue-phase': ({ found, nearest, allowed }: NotKnown) =>
    `${quoted(found)} is no phase.${suggestion(nearest)} Phases: ${allowed.join(', ')}.`,
} as const;

/** What a recipe is remarked on for; it can be cooked all the same. */
export const recipeNoteTexts = {
  'recipe.note.de-assumed': ({ item }: { item: string }) =>
    `The DE of ${escapeForTerminal(item)} is not given, so 42 is taken. The tub says it: add "de:".`,
  'recipe.note.no-doctor':
    'Nothing keeps this sugar from graining: no syrup, honey, molasses or acid. It turns into cream candy. Add glucose syrup, a third of the sugar or more, unless that is wanted.',
  'recipe.note.little-doctor': ({ ratio }: { ratio: number }) =>
    `Only ${Math.round(ratio * 100)} g of syrup solids go with 100 g of sugar: it may grain. Below about 20 g is low; 33 to 100 g is usual.`,
  'recipe.note.much-doctor': ({ ratio }: { ratio: number }) =>
    `${Math.round(ratio * 100)} g of syrup solids go with 100 g of sugar: soft, and sticky in a humid room. 33 to 100 g is usual.`,
  'recipe.note.much-acid': ({ acid }: { acid: string }) =>
    `So much ${acid} splits much of the sugar while it boils: soft and sticky. How much depends on the minutes of boiling.`,
  'recipe.note.stir-late': ({ items }: { items: readonly string[] }, printer: Printer) =>
    `${printer.list(items.map(escapeForTerminal))} ${items.length === 1 ? 'catches and scorches' : 'catch and scorch'} if nobody stirs late in the boil. Write stir: { late: true }.`,
  'recipe.note.stir-clear':
    'This is a clear syrup, and stirring it late makes it grain. Write stir: { until: boil }, unless grain is wanted.',
  'recipe.note.little-water': ({ grams, needed }: { grams: number; needed: number }, printer: Printer) =>
    `${printer.grams(grams)} of water is little to dissolve this sugar before it boils. About ${printer.grams(needed)} is safe; the boil drives it off again.`,
  'recipe.note.alcohol-early': ({ items }: { items: readonly string[] }, printer: Printer) =>
    `${printer.list(items.map(escapeForTerminal))} on alcohol ${items.length === 1 ? 'boils off hot syrup and its vapour burns. Put it' : 'boil off hot syrup and their vapour burns. Put them'} in at phase: flavour, off the heat, away from flame and ring.`,
  'recipe.note.flavour-early': ({ items }: { items: readonly string[] }, printer: Printer) =>
    `${printer.list(items.map(escapeForTerminal))} ${items.length === 1 ? 'boils away with the steam. Put it' : 'boil away with the steam. Put them'} in at phase: flavour, or while folding.`,
  'recipe.note.soda-early':
    'Baking soda foams. Put it in at phase: flavour, off the heat, a little at a time.',
  'recipe.note.feels': ({ feels, stage }: { feels: string; stage: string }) =>
    `The target temperature is ${stage}, and the cold-water outcome is written as ${feels}. One of the two is off; what fingers feel in cold water wins.`,
  'recipe.note.hot-target':
    'Above 150 °C sugar in a pulled candy is close to scorching. Watch colour and smell, and take it off early.',
  'recipe.note.allergens-unknown': ({ items }: { items: readonly string[] }, printer: Printer) =>
    `Allergens of ${printer.list(items.map(escapeForTerminal))} are not known. Read the bottle and write what it says: allergens: { contains: [], check: [] }.`,
  'recipe.note.glycerine':
    'Glycerine keeps the candy soft; its hold on water is not in the figures for humidity and firmness.',
} as const;

/** Words about a change of doctor. */
export const substitutionTexts = {
  'recipe.swap.water': ({ grams }: { grams: number }, printer: Printer) =>
    grams >= 0
      ? `${printer.grams(grams)} more water goes in, so that the pot starts as wet as before.`
      : `${printer.grams(-grams)} less water goes in, so that the pot starts as wet as before.`,
  'recipe.swap.sugar': ({ grams }: { grams: number }, printer: Printer) =>
    grams >= 0
      ? `${printer.grams(grams)} more granulated sugar goes in, to keep the balance.`
      : `${printer.grams(-grams)} less granulated sugar goes in: the new syrup brings some.`,
  'recipe.swap.rice':
    'Without corn: paler taste of malt, a little brown, foams more. Its strength differs from maker to maker: test in cold water, and take no target from a book. Some makers use barley: read the label.',
  'recipe.swap.honey':
    'With honey: tastes of honey, browner, softer and stickier in humid air; wrap at once. It foams and scorches: larger pot, no lid, stir late. Never for a child under one.',
  'recipe.swap.molasses':
    'With molasses: dark, strong, a little bitter, pulls to tan and not to white. It foams and scorches: larger pot, no lid, stir late.',
  'recipe.swap.invert':
    'With invert syrup: clear and mild, softer and stickier in humid air than with glucose syrup, because it holds water more. It browns sooner near the end.',
  'recipe.swap.rest-stays': 'Starch, butter, flavours and target stay as they were.',
  'recipe.swap.nothing': 'There is no glucose or corn syrup in this recipe to take out.',
  'recipe.swap.starch': ({ items }: { items: readonly string[] }, printer: Printer) =>
    `${printer.list(items.map(escapeForTerminal))} ${items.length === 1 ? 'is' : 'are'} still made of corn. For somebody who may not have corn, use potato or rice starch and describe it under "declared".`,
} as const;

const partNames: Readonly<Record<string, string>> = {
  water: 'water',
  sucrose: 'sucrose',
  glucoseSolids: 'glucose solids',
  invert: 'invert sugar',
  salt: 'salt',
  fat: 'fat',
  other: 'other',
};

const parts = (composition: Readonly<Record<string, number>>): string =>
  Object.entries(composition)
    .filter(([, share]) => share >= 0.0005)
    .toSorted(([, one], [, other]) => other - one)
    .map(([part, share]) => `${partNames[part] ?? part} ${Math.round(share * 1000) / 10} %`)
    .join(', ');

type Allergens = { contains: readonly string[]; check: readonly string[]; unknown: boolean };

const allergenWords = ({ contains, check, unknown }: Allergens, printer: Printer): string =>
  [
    contains.length > 0 ? `contains ${printer.list(contains.map(escapeForTerminal))}` : '',
    check.length > 0 ? `read the label for ${printer.list(check.map(escapeForTerminal))}` : '',
    unknown ? 'not all are known: read every label' : '',
  ]
    .filter((part) => part !== '')
    .join('; ') || 'none of those that are asked for';

const handWords: Readonly<Record<string, string>> = {
  butter: 'buttered',
  oil: 'oiled',
  starch: 'dusted with starch',
  dry: 'dry',
};

/** What `kettlehand recipes` prints. */
export const shelfTexts = {
  'shelf.unknown-doctor': (
    v: { found: string; nearest: string | null; allowed: readonly string[] },
    p: Printer,
  ) =>
    v.nearest === null
      ? `What instead of the syrup? Type one of ${p.list(v.allowed)}: kettlehand recipes instead mint-pull honey.`
      : `"${escapeForTerminal(v.found.slice(0, 40))}" is not one of them. Did you mean ${v.nearest}?`,
  'shelf.unknown-recipe': ({ found, nearest }: { found: string; nearest: string | null }) =>
    `No recipe is called ${quoted(found)}.${suggestion(nearest)} List them with: kettlehand recipes list. For a file, write its path: ./${escapeForTerminal(found)}.yaml`,
  'shelf.unknown-action': ({ found, nearest }: { found: string; nearest: string | null }) =>
    `"recipes ${escapeForTerminal(found)}" is nothing to do.${suggestion(nearest)} Use: recipes list, recipes show NAME, recipes check FILE, recipes instead NAME SYRUP, recipes items.`,
  'shelf.name-needed': ({ action }: { action: 'show' | 'instead' }) =>
    `Which one? Use: recipes ${action} NAME${action === 'instead' ? ' SYRUP' : ''}. List them with: kettlehand recipes list.`,
  'shelf.file-needed': 'Which file? Use: recipes check FILE.',
  'shelf.folder-missing': ({ path }: { path: string }) =>
    `The recipes that come with the program are not at ${escapeForTerminal(path)}. Install it again.`,
  'shelf.row': (
    {
      name,
      low,
      high,
      feels,
      grams,
    }: { name: string; low: number; high: number; feels: string; grams: number },
    printer: Printer,
  ) =>
    `${escapeForTerminal(name)}: ${printer.degrees(low)} to ${printer.degrees(high)} at sea level, ${feels}, ${printer.grams(grams)} in the pot`,
  'shelf.title': ({ name, about }: { name: string; about: string }) =>
    about === '' ? escapeForTerminal(name) : `${escapeForTerminal(name)}\n${escapeForTerminal(about)}`,
  'shelf.ingredient': (
    {
      amount,
      grams,
      name,
      de,
      phase,
    }: { amount: string; grams: number; name: string; de: number | null; phase: string },
    printer: Printer,
  ) => {
    const mass = printer.grams(grams);
    const written = escapeForTerminal(amount);
    return `${phase.padEnd(8)} ${escapeForTerminal(name)}${de === null ? '' : ` (${de} DE)`}: ${written === mass ? mass : `${written} (${mass})`}`;
  },
  'shelf.target': ({ low, high, feels }: { low: number; high: number; feels: string }, printer: Printer) =>
    `Cook to ${printer.degrees(low)} to ${printer.degrees(high)} at sea level; in cold water ${feels}.`,
  'shelf.stir.until-boil': 'Stir until it boils, then leave it still.',
  'shelf.stir.late': 'Stir gently all through the last part of the boil.',
  'shelf.wall.lid': 'At the first boil: lid on for 2-3 minutes, staying beside it.',
  'shelf.wall.brush': 'Walls: a damp long-handled brush early in the boil. No lid.',
  'shelf.wall.none-late-stir': 'No lid: it foams. Scrape the walls while it is cold.',
  'shelf.handling': ({ hands, surface, dust }: { hands: string; surface: string; dust: string }) =>
    `Hands ${handWords[hands] ?? hands}, surface ${handWords[surface] ?? surface}${dust === 'none' ? '' : `, dusted with ${dust === 'starch' ? 'starch' : 'powdered sugar'} after cutting`}.`,
  'shelf.piece': ({ grams, ropeMillimetres }: { grams: number; ropeMillimetres: number }, printer: Printer) =>
    `Pieces of ${printer.grams(grams)} from a rope of ${printer.millimetres(ropeMillimetres)}.`,
  'shelf.balance': ({ ratio }: { ratio: number }) =>
    Number.isFinite(ratio)
      ? `${Math.round(ratio * 100)} g of syrup solids and invert sugar to 100 g of sugar.`
      : 'All of its sugar is of a kind that does not grain.',
  'shelf.allergens': ({ allergens }: { allergens: Allergens }, printer: Printer) =>
    `Allergens: ${allergenWords(allergens, printer)}.`,
  'shelf.item': (
    {
      id,
      name,
      roles,
      composition,
      de,
      density,
      allergens,
    }: {
      id: string;
      name: string;
      roles: readonly string[];
      composition: Readonly<Record<string, number>>;
      de: number | null;
      density: number;
      allergens: Allergens;
    },
    printer: Printer,
  ) =>
    [
      `${id}: ${name}, ${roles.join(', ')}`,
      `  ${parts(composition)}${de === null ? '' : `; ${de} DE`}; ${Math.round(density * 1000) / 1000} kg per litre`,
      `  allergens: ${allergenWords(allergens, printer)}`,
    ].join('\n'),
  'shelf.source': ({ source }: { source: string }) => `  source: ${source}`,
  'shelf.fine': ({ file, name }: { file: string; name: string }) =>
    `${escapeForTerminal(file)}: ${escapeForTerminal(name)} can be cooked.`,
  'shelf.kitchen-fine': ({ file }: { file: string }) =>
    `${escapeForTerminal(file)}: this kitchen can be used.`,
} as const;
