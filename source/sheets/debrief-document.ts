import { usualRoomCelsius } from '../batch/candy.js';
import { mostChanges } from '../lessons/changes.js';
import type { Story } from '../lessons/story.js';
import { type Message, message } from '../texts/message.js';
import { wallDate } from '../units/wall-clock.js';

/** A label and what stands beside it. */
export type DebriefRow = { readonly label: Message; readonly value: Message };

export type DebriefTable = {
  readonly heading: Message;
  readonly columns: readonly Message[];
  readonly rows: readonly (readonly Message[])[];
  /** Columns of numbers are set to the right. */
  readonly right: readonly number[];
  /** Cells hold phrases: set as blocks where there is no room. */
  readonly wordy?: boolean;
  readonly foot: Message | null;
  /** Said in its place; a table that has neither rows nor this is left out. */
  readonly whenEmpty: Message | null;
};

/** A debrief before it is a terminal text, Markdown or a page. */
export type DebriefDocument = {
  readonly title: Message;
  readonly rehearsal: Message | null;
  /** Where, with what, from which phase. */
  readonly circumstances: readonly Message[];
  /** What was damaged, lost or left open: said before anything that rests on it. */
  readonly caveats: readonly Message[];
  readonly lead: Message;
  readonly result: readonly DebriefRow[];
  readonly tables: readonly DebriefTable[];
  readonly remarks: readonly Message[];
  readonly changes: readonly { readonly action: Message; readonly because: Message }[];
  /** What is said where there are none. */
  readonly noChanges: Message;
  readonly foot: readonly Message[];
};

const nothing = message('debrief.nothing');

const wrongs = ({ troubles, warnings }: Story): { readonly troubles: number; readonly warnings: number } => ({
  troubles: troubles.length,
  warnings: warnings.filter(({ level }) => level !== 'note').length,
});

const leadOf = (story: Story): Message => {
  const { state, seconds, candy, yield: yields, pieces, phase } = story;
  if (state === 'unfinished') return message('debrief.unfinished', { phase, seconds });
  if (state === 'given up') return message('debrief.lead.given-up', { phase, seconds, ...wrongs(story) });
  return message('debrief.lead.finished', {
    pieces: pieces.counted,
    grams: yields.weighedGrams,
    firmness: candy?.firmness ?? null,
    moisture: candy?.moisture ?? null,
    seconds,
    ...wrongs(story),
  });
};

const offRow = ({ takenOff, offs, cook, pouredAt, readings }: Story): readonly DebriefRow[] => {
  const label = message('debrief.off.label');
  if (takenOff === null) return pouredAt === null ? [] : [{ label, value: message('debrief.off.none') }];
  const blind = !cook.thermometer || !readings.some(({ of }) => of === 'syrup');
  return [
    {
      label,
      value: blind
        ? message('debrief.off.blind', { t: takenOff.t, offs: offs.length })
        : message('debrief.off', {
            t: takenOff.t,
            celsius: takenOff.celsius,
            wanted: takenOff.wantedCelsius,
            askedAt: takenOff.askedAt,
            implied: takenOff.implied,
            offs: offs.length,
          }),
    },
  ];
};

const candyRows = ({ peak, candy, batch, state, pouredAt }: Story): readonly DebriefRow[] => {
  const window = batch.target.todayCelsius;
  const peakRow =
    peak === null
      ? []
      : [
          {
            label: message('debrief.peak.label'),
            value:
              peak.by === 'cold water'
                ? message('debrief.peak.fingers', { between: peak.between, window })
                : message('debrief.peak', {
                    celsius: peak.celsius,
                    between: peak.between,
                    window,
                    outside: peak.outsideKelvin,
                    t: peak.t,
                    open: state === 'unfinished' && pouredAt === null,
                  }),
          },
        ];
  if (candy === null) return peakRow;
  return [
    ...peakRow,
    {
      label: message('debrief.moisture.label'),
      value: message('debrief.moisture', { moisture: candy.moisture, between: candy.moistureFraction }),
    },
    {
      label: message('debrief.texture.label'),
      value: message('debrief.texture', {
        firmness: candy.firmness,
        range: candy.firmnessRange,
        room: batch.kitchen.room.celsius ?? usualRoomCelsius,
      }),
    },
  ];
};

const yieldRows = ({ yield: yields, pieces, pouredAt, state }: Story): readonly DebriefRow[] => {
  const { weighedGrams, share, expectedGrams, cookedGrams } = yields;
  const { counted, expected, meanGrams: mean, wantedGrams: wanted, between } = pieces;
  if ((pouredAt === null || state === 'given up') && weighedGrams === null && counted === null) return [];
  const spread =
    between === null
      ? message('debrief.spread.none')
      : message('debrief.spread', { between, handfuls: pieces.handfuls.length, variation: pieces.variation });
  return [
    {
      label: message('debrief.yield.label'),
      value:
        weighedGrams === null || share === null
          ? message('debrief.yield.none', { expected: expectedGrams })
          : message('debrief.yield', {
              weighed: weighedGrams,
              cooked: cookedGrams,
              share,
              expected: expectedGrams,
            }),
    },
    {
      label: message('debrief.pieces.label'),
      value:
        counted === null
          ? message('debrief.pieces.none', { expected, mean, wanted })
          : message('debrief.pieces', { counted, expected, mean, wanted }),
    },
    ...(counted === null && between === null
      ? []
      : [{ label: message('debrief.spread.label'), value: spread }]),
  ];
};

const againstWords = {
  quicker: message('debrief.against.quicker'),
  slower: message('debrief.against.slower'),
  'as planned': message('debrief.against.planned'),
} as const;

const bySheet = (phases: Story['phases']): boolean =>
  phases.some(({ plannedBy }) => plannedBy === 'run sheet');

const phaseTable = ({ phases, seconds }: Story): DebriefTable => ({
  heading: message('debrief.heading.phases'),
  columns: [
    message('debrief.column.phase'),
    message('debrief.column.began'),
    message('debrief.column.took'),
    message(bySheet(phases) ? 'debrief.column.planned' : 'debrief.column.usual'),
    message('debrief.column.judged'),
  ],
  right: [1, 2],
  rows: [
    ...phases.map(({ phase, from, seconds: took, times, planned, against }) => [
      message('debrief.phase.name', { phase, times }),
      message('debrief.clock', { t: from }),
      message('debrief.time', { seconds: took }),
      planned === null ? nothing : message('debrief.span', planned),
      against === null ? message('debrief.against.planned') : againstWords[against],
    ]),
    [
      message('debrief.whole'),
      message('debrief.against.planned'),
      message('debrief.time', { seconds }),
      message('debrief.against.planned'),
      message('debrief.against.planned'),
    ],
  ],
  foot: message(bySheet(phases) ? 'debrief.source.run-sheet' : 'debrief.source.trade'),
  whenEmpty: null,
});

const testTable = ({ tests }: Story): DebriefTable => ({
  heading: message('debrief.heading.tests'),
  columns: [
    message('debrief.column.at'),
    message('debrief.column.felt'),
    message('debrief.column.dial'),
    message('debrief.column.verdict'),
  ],
  right: [0, 2],
  rows: tests.map(({ t, outcome, celsius, verdict }) => [
    message('debrief.clock', { t }),
    message('debrief.felt', { outcome }),
    celsius === null ? nothing : message('debrief.at-dial', { celsius }),
    message('debrief.verdict', { verdict }),
  ]),
  foot: null,
  whenEmpty: null,
});

const forecastTable = ({ forecasts, track, offs }: Story): DebriefTable => ({
  heading: message('debrief.heading.forecast'),
  columns: [message('debrief.column.before'), message('debrief.column.said'), message('debrief.column.held')],
  right: [0],
  rows: forecasts.map(({ beforeSeconds, said, within }) => [
    message('debrief.time.exact', { seconds: beforeSeconds }),
    message('debrief.said', said),
    message(within ? 'debrief.yes' : 'debrief.no'),
  ]),
  foot: null,
  // Foreseen, and off before its time or never: nothing came that it could be held against.
  whenEmpty:
    offs.length > 0 && track.some(({ takeOffSeconds }) => takeOffSeconds !== null)
      ? message('debrief.forecast.unheld')
      : null,
});

const warningTable = ({ warnings }: Story): DebriefTable => ({
  heading: message('debrief.heading.warnings'),
  columns: [message('debrief.column.at'), message('debrief.column.what'), message('debrief.column.answered')],
  right: [0],
  rows: warnings.map(({ raisedAt, endedAt, endedBy, cause, inTime, withinSeconds }) => [
    message('debrief.clock', { t: raisedAt }),
    cause,
    message('debrief.answered', {
      seconds: endedAt === null ? null : endedAt - raisedAt,
      by: endedBy,
      inTime,
      within: withinSeconds,
    }),
  ]),
  foot: null,
  whenEmpty: message('debrief.warnings.none'),
});

const troubleTable = ({ troubles }: Story): DebriefTable => ({
  heading: message('debrief.heading.troubles'),
  columns: [
    message('debrief.column.at'),
    message('debrief.column.what'),
    message('debrief.column.first'),
    message('debrief.column.over'),
    message('debrief.column.order'),
  ],
  right: [0],
  wordy: true,
  rows: troubles.map(({ at, name, phase, firstSeconds, withinSeconds, inTime, order, acts, overAt }) => [
    message('debrief.clock', { t: at }),
    message('debrief.trouble', { name, phase }),
    message('debrief.trouble.first', { seconds: firstSeconds, within: withinSeconds, inTime }),
    overAt === null ? nothing : message('debrief.time.exact', { seconds: overAt - at }),
    message('debrief.trouble.order', { order, acts: acts.map(({ act }) => act) }),
  ]),
  foot: null,
  whenEmpty: null,
});

/** The story as headed parts, in the order in which it is read; `damage`: what the journal lost. */
export const debriefDocument = (
  story: Story,
  damage: readonly Message[],
  twelveHours: boolean,
): DebriefDocument => {
  const { batch, cook, readings, startedAt, seconds, rehearsal, from, gaps, notes, changes } = story;
  return {
    title: message('debrief.title', { name: batch.recipe.name }),
    rehearsal: rehearsal ? message('debrief.rehearsal') : null,
    circumstances: [
      message('debrief.when', {
        date: startedAt === null ? null : wallDate(startedAt, twelveHours),
        seconds,
      }),
      message('debrief.place', {
        altitudeMetres: batch.air.altitudeMetres,
        boils: batch.air.waterBoilsCelsius,
        from: batch.air.from,
      }),
      message('debrief.dial', {
        id: batch.dial.present && (cook.thermometer || readings.length > 0) ? batch.dial.id : null,
        unit: batch.dial.unit,
        basis: batch.dial.basis,
      }),
    ],
    caveats: [
      ...damage,
      ...(from === null ? [] : [message('debrief.from', { phase: from })]),
      ...gaps.map((gap) => message('debrief.lost', gap)),
    ],
    lead: leadOf(story),
    result: [...offRow(story), ...candyRows(story), ...yieldRows(story)],
    tables: [
      phaseTable(story),
      testTable(story),
      troubleTable(story),
      warningTable(story),
      forecastTable(story),
    ].filter(({ rows, whenEmpty }) => rows.length > 0 || whenEmpty !== null),
    remarks: notes.map((remark) => message('debrief.remark', remark)),
    changes: changes.slice(0, mostChanges),
    noChanges: message('debrief.changes.none', { state: story.state }),
    foot: [message('debrief.foot'), message('debrief.foot.defer')],
  };
};
