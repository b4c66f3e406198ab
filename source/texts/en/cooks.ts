import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';

type Fault = 'not ours' | 'newer' | 'cut off' | 'longer' | 'changed' | 'no cook';

const faults: Readonly<Record<Fault, (version: number | null) => string>> = {
  'not ours': () => 'is no exported cook. Name a file that "kettlehand cooks export" made',
  newer: (version) =>
    `was made by a newer program (format ${version}; this one knows format 1). Update kettlehand, then import it`,
  'cut off': () => 'is cut off: its end is missing. Copy it again from where it was exported',
  longer: () => 'has something added at its end. Copy it again from where it was exported',
  changed: () =>
    'was changed or damaged on the way: its checksum does not fit. Copy it again from where it was exported',
  'no cook': () => 'holds no whole cook. Export it again',
};

const states: Readonly<Record<string, string>> = {
  finished: 'finished',
  unfinished: 'unfinished',
  damaged: 'damaged: its first line is lost',
};

type Wanted = 'cook' | 'file' | 'cooks';
const wanted = { cook: 'the id of a cook', file: 'the file of an exported cook' } as const;

/** Earlier cooks: listed, compared, deleted, exported, imported. */
export const cooksTexts = {
  'files.exists': ({ path }: { path: string }) =>
    `${shown(path)} is there already and was left as it is. Name another file.`,

  'cooks.none': (v: { filtered: boolean; folder: string }) =>
    v.filtered
      ? 'No cook fits that. "kettlehand cooks" without options lists all.'
      : `No cooks yet in ${shown(v.folder)}. "kettlehand cook" makes one.`,
  'cooks.date': (v: { date: string | null }) => v.date ?? 'date not known',
  'cooks.state': (v: { state: string; rehearsal: boolean }) =>
    `${states[v.state] ?? v.state}${v.rehearsal ? ', rehearsal' : ''}`,
  'cooks.recipe': (v: { name: string | null }) => (v.name === null ? 'recipe not known' : shown(v.name)),
  'cooks.more': (v: { most: number }) =>
    `Only the newest ${v.most} were looked at. "--since" and "--recipe" look no further.`,
  'cooks.bad.since': (v: { found: string }) =>
    `"${shown(v.found)}" is no date. Type it as year, month and day: --since 2026-11-25.`,
  'cooks.bad.word': (v: { found: string; nearest: string | null }) =>
    `"${shown(v.found)}" is nothing that can be done with cooks.${v.nearest === null ? '' : ` Did you mean "${v.nearest}"?`} "kettlehand cooks --help" shows what can.`,
  'cooks.bad.needs': (v: { word: string; wants: Wanted; most: number }) =>
    `"kettlehand cooks ${v.word}" wants ${v.wants === 'cooks' ? `two to ${v.most} cooks` : wanted[v.wants]}. "kettlehand cooks" lists the cooks.`,
  'cooks.bad.only-list': (v: { word: string }) =>
    `--recipe, --since, --unfinished and --rehearsals choose what is listed; "${v.word}" takes cooks by their id.`,
  'cooks.bad.id-only': (v: { found: string }) =>
    `"${shown(v.found)}" is a path. Only cooks of the list are deleted, by their id.`,

  'cooks.delete.ask': (v: { id: string; recipe: string | null; date: string | null }) =>
    `Delete the cook ${shown(v.id)} (${v.recipe === null ? 'recipe not known' : shown(v.recipe)}${v.date === null ? '' : `, ${v.date}`}) for good? Type yes: `,
  'cooks.delete.done': (v: { id: string }) => `${shown(v.id)} is deleted.`,
  'cooks.delete.kept': (v: { id: string }) => `${shown(v.id)} was left as it is.`,
  'cooks.delete.needs-yes': (v: { id: string }) =>
    `Nobody can be asked here. To delete ${shown(v.id)} for good, add --yes.`,

  'cooks.export.done': (v: { id: string; path: string; events: number }, p: Printer) =>
    `${shown(v.id)} is exported to ${shown(v.path)}: ${p.count(v.events, 'event', 'events')}, with a checksum.`,
  'cooks.import.done': (v: { id: string; recipe: string | null; events: number }, p: Printer) =>
    `${shown(v.id)} is imported${v.recipe === null ? '' : ` (${shown(v.recipe)})`}: ${p.count(v.events, 'event', 'events')}. "kettlehand debrief ${shown(v.id)}" tells what happened.`,
  'cooks.import.bad': (v: { path: string; fault: Fault; version: number | null }) =>
    `${shown(v.path)} ${faults[v.fault](v.version)}. Nothing was written.`,
  'cooks.import.there': (v: { id: string; same: boolean }) =>
    v.same
      ? `The cook ${shown(v.id)} is here already, the very same. Nothing was written.`
      : `There is another cook ${shown(v.id)} here already, and it was left as it is. Nothing was written.`,

  'compare.title': (v: { name: string; count: number }) => `${v.count} cooks side by side: ${shown(v.name)}`,
  'compare.title.mixed': (v: { count: number }) => `${v.count} cooks side by side, of different recipes`,
  'compare.rehearsal': (v: { ids: readonly string[] }, p: Printer) =>
    `REHEARSAL, no candy was made: ${p.list(v.ids.map(shown))}`,
  'compare.mixed': 'These are different recipes: what differed is more than what was done otherwise.',
  'compare.heading.differed': 'What differed',
  'compare.heading.outcome': 'What came of it',
  'compare.same': 'Nothing in recipe, amounts, kitchen and hands.',
  'compare.true':
    'Temperatures are those of the syrup, corrected for each thermometer. * marks what differs.',
  'compare.cook': 'cook',
  'compare.date': 'date',
  'compare.state': 'state',
  'compare.recipe': 'recipe',
  'compare.batch': 'batch',
  'compare.window': 'window',
  'compare.altitude': 'altitude',
  'compare.stove': 'stove',
  'compare.thermometer': 'thermometer',
  'compare.hands': 'hands',
  'compare.portions': 'portions',
  'compare.humidity': 'humidity',
  'compare.seconds': 'whole time',
  'compare.boil': 'boil',
  'compare.off': 'off the heat',
  'compare.late': 'after asked',
  'compare.peak': 'hottest',
  'compare.moisture': 'water left',
  'compare.firmness': 'texture',
  'compare.tests': 'cold-water tests',
  'compare.fold': 'cool and fold',
  'compare.pull': 'pull',
  'compare.weighed': 'weighed',
  'compare.share': 'of what it held',
  'compare.counted': 'pieces',
  'compare.each': 'a piece',
  'compare.troubles': 'troubles',
  'compare.warnings': 'warnings',
  'compare.ingredient': (v: { name: string }) => shown(v.name),
  'compare.text': (v: { text: string }) => shown(v.text),
  'compare.grams': (v: { grams: number }, p: Printer) => p.grams(v.grams),
  'compare.time': (v: { seconds: number }, p: Printer) => p.time(v.seconds),
  'compare.degrees': (v: { celsius: number }, p: Printer) => p.degrees(v.celsius),
  'compare.span': (v: { between: readonly [number, number] }, p: Printer) =>
    p.dialSpan(v.between[0], v.between[1]),
  'compare.percent': (v: { fraction: number }, p: Printer) => p.percent(v.fraction),
  'compare.metres': (v: { metres: number }, p: Printer) => p.metres(v.metres),
  'compare.count': (v: { count: number }) => String(v.count),
  'compare.nothing': '-',
} as const;
