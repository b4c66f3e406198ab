import { escapeForTerminal as shown } from '../../units/escape.js';
import type { cooksTexts } from '../en/cooks.js';
import type { Translated } from '../texts.js';
import { firmnessWord, handsWord, ingredientWord, stoveWord } from './words.js';

type Fault = Parameters<(typeof cooksTexts)['cooks.import.bad']>[0]['fault'];

const faults: Readonly<Record<Fault, (version: number | null) => string>> = {
  'not ours': () =>
    'ist kein ausgeführter Kochgang. Nenn eine Datei, die "kettlehand cooks export" gemacht hat',
  newer: (version) =>
    `ist von einem neueren Programm (Format ${version}; dieses kennt Format 1). Bring kettlehand auf den neuen Stand, dann lies sie ein`,
  'cut off': () =>
    'ist abgeschnitten: das Ende fehlt. Kopier sie noch einmal von dort, wo sie ausgeführt wurde',
  longer: () => 'hat am Ende etwas dazubekommen. Kopier sie noch einmal von dort, wo sie ausgeführt wurde',
  changed: () =>
    'wurde unterwegs geändert oder beschädigt: die Prüfsumme passt nicht. Kopier sie noch einmal von dort, wo sie ausgeführt wurde',
  'no cook': () => 'enthält keinen ganzen Kochgang. Führ ihn noch einmal aus',
};

const states: Readonly<Record<string, string>> = {
  finished: 'fertig',
  unfinished: 'offen',
  'given up': 'aufgegeben',
  damaged: 'beschädigt: die erste Zeile ist verloren',
};

const wanted = { cook: 'die id eines Kochgangs', file: 'die Datei eines ausgeführten Kochgangs' } as const;

/** Earlier cooks: listed, compared, deleted, exported, imported. */
export const deCooks = {
  'files.exists': ({ path }) => `${shown(path)} ist schon da und blieb, wie es ist. Nenn eine andere Datei.`,

  'cooks.none': (v) =>
    v.filtered
      ? 'Kein Kochgang passt dazu. "kettlehand cooks" ohne Optionen zählt alle auf.'
      : `Noch keine Kochgänge in ${shown(v.folder)}. "kettlehand cook" macht einen.`,
  'cooks.date': (v) => v.date ?? 'Datum nicht bekannt',
  'cooks.state': (v) => `${states[v.state] ?? v.state}${v.rehearsal ? ', Probelauf' : ''}`,
  'cooks.recipe': (v) => (v.name === null ? 'Rezept nicht bekannt' : shown(v.name)),
  'cooks.more': (v) =>
    `Nur die neuesten ${v.most} wurden angesehen. "--since" und "--recipe" sehen nicht weiter.`,
  'cooks.bad.since': (v) =>
    `"${shown(v.found)}" ist kein Datum. Tipp Jahr, Monat und Tag: --since 2026-11-25.`,
  'cooks.bad.word': (v) =>
    `"${shown(v.found)}" lässt sich mit cooks nicht tun.${v.nearest === null ? '' : ` Meintest du "${v.nearest}"?`} "kettlehand cooks --help" zeigt, was geht.`,
  'cooks.bad.needs': (v) =>
    `"kettlehand cooks ${v.word}" will ${v.wants === 'cooks' ? `zwei bis ${v.most} Kochgänge` : wanted[v.wants]}. "kettlehand cooks" zählt die Kochgänge auf.`,
  'cooks.bad.only-list': (v) =>
    `--recipe, --since, --unfinished und --rehearsals wählen, was aufgezählt wird; "${v.word}" nimmt Kochgänge mit ihrer id.`,
  'cooks.bad.id-only': (v) =>
    `"${shown(v.found)}" ist ein Pfad. Gelöscht werden nur Kochgänge aus der Liste, mit ihrer id.`,

  'cooks.delete.ask': (v) =>
    `Den Kochgang ${shown(v.id)} (${v.recipe === null ? 'Rezept nicht bekannt' : shown(v.recipe)}${v.date === null ? '' : `, ${v.date}`}) endgültig löschen? Tipp yes (ja): `,
  'cooks.delete.done': (v) => `${shown(v.id)} ist gelöscht.`,
  'cooks.delete.kept': (v) => `${shown(v.id)} blieb, wie er ist.`,
  'cooks.delete.needs-yes': (v) =>
    `Hier lässt sich niemand fragen. Um ${shown(v.id)} endgültig zu löschen, häng --yes an.`,

  'cooks.export.done': (v, p) =>
    `${shown(v.id)} ist ausgeführt nach ${shown(v.path)}: ${p.count(v.events, 'Ereignis', 'Ereignisse')}, mit Prüfsumme.`,
  'cooks.import.done': (v, p) =>
    `${shown(v.id)} ist eingelesen${v.recipe === null ? '' : ` (${shown(v.recipe)})`}: ${p.count(v.events, 'Ereignis', 'Ereignisse')}. "kettlehand debrief ${shown(v.id)}" erzählt, was geschah.`,
  'cooks.import.bad': (v) => `${shown(v.path)} ${faults[v.fault](v.version)}. Nichts wurde geschrieben.`,
  'cooks.import.there': (v) =>
    v.same
      ? `Der Kochgang ${shown(v.id)} ist schon hier, genau derselbe. Nichts wurde geschrieben.`
      : `Hier ist schon ein anderer Kochgang ${shown(v.id)}, und er blieb, wie er ist. Nichts wurde geschrieben.`,

  'compare.title': (v) => `${v.count} Kochgänge nebeneinander: ${shown(v.name)}`,
  'compare.title.mixed': (v) => `${v.count} Kochgänge nebeneinander, aus verschiedenen Rezepten`,
  'compare.rehearsal': (v, p) => `PROBELAUF, Bonbon wurde keines gemacht: ${p.list(v.ids.map(shown))}`,
  'compare.mixed':
    'Das sind verschiedene Rezepte: es unterscheidet sich mehr als das, was anders getan wurde.',
  'compare.heading.differed': 'Was anders war',
  'compare.heading.outcome': 'Was daraus wurde',
  'compare.same': 'Nichts an Rezept, Mengen, Küche und Händen.',
  'compare.true':
    'Temperaturen sind die des Sirups, für jedes Thermometer korrigiert. * zeigt, was sich unterscheidet.',
  'compare.cook': 'Kochgang',
  'compare.date': 'Datum',
  'compare.state': 'Stand',
  'compare.recipe': 'Rezept',
  'compare.batch': 'Ansatz',
  'compare.window': 'Zielbereich',
  'compare.altitude': 'Höhe',
  'compare.stove': 'Herd',
  'compare.thermometer': 'Thermometer (Art)',
  'compare.hands': 'Hände',
  'compare.portions': 'Portionen',
  'compare.humidity': 'Luftfeuchte',
  'compare.seconds': 'ganze Zeit',
  'compare.boil': 'Kochen',
  'compare.off': 'vom Herd',
  'compare.late': 'nach Aufruf',
  'compare.peak': 'am heißesten',
  'compare.moisture': 'Rest Wasser',
  'compare.firmness': 'Biss',
  'compare.tests': 'Wasserproben',
  'compare.fold': 'Kühlen, Falten',
  'compare.pull': 'Ziehen',
  'compare.weighed': 'gewogen',
  'compare.share': 'vom Inhalt',
  'compare.counted': 'Stücke',
  'compare.each': 'ein Stück',
  'compare.troubles': 'Probleme',
  'compare.warnings': 'Warnungen',
  'compare.ingredient': (v) => shown(ingredientWord(v.name)),
  'compare.text': (v) => shown(firmnessWord(stoveWord(handsWord(states[v.text] ?? v.text)))),
  'compare.grams': (v, p) => p.grams(v.grams),
  'compare.time': (v, p) => p.time(v.seconds),
  'compare.degrees': (v, p) => p.degrees(v.celsius),
  'compare.span': (v, p) => p.dialSpan(v.between[0], v.between[1]),
  'compare.percent': (v, p) => p.percent(v.fraction),
  'compare.metres': (v, p) => p.metres(v.metres),
  'compare.count': (v) => String(v.count),
  'compare.nothing': '-',
} as const satisfies Translated<typeof cooksTexts>;
