import type { Batch } from '../batch/batch.js';
import { planned } from '../batch/run-sheet.js';
import { type Moment, type MomentId, quietKelvin, type RunPlan } from '../batch/run-sheet-plan.js';
import { wrappingSeconds } from '../batch/run-sheet-times.js';
import type { PhaseId } from '../recipe/recipe.js';
import { wallCare } from '../recipe/wall-care.js';
import { handLimitCelsius } from '../sugar/skin.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { beside, sheetColumns, wrapped } from './layout.js';

/** When the pulling is, for people. */
export type PullTime = {
  /** Seconds since midnight of that day. */
  readonly at: number;
  /** With am and pm. */
  readonly twelve: boolean;
  /** ISO date. */
  readonly date: string;
};

export type RunSheetInput = {
  readonly batch: Batch;
  readonly plan: RunPlan;
  readonly pull: PullTime;
  /** Setting out should have begun so many seconds ago; null: there is time. */
  readonly shortNotice: { readonly seconds: number; readonly soonest: number } | null;
  /** Whether this kitchen's own times were used. */
  readonly from: 'trade' | 'kitchen';
};

const timeColumn = 9;
const listKelvin = 8;

type Said = { readonly what: Message; readonly why: Message | null };

const seconds = ({ plan }: RunSheetInput, phase: PhaseId) => {
  const [sheet] = plan.sheets;
  const one = sheet === undefined ? undefined : planned(sheet, phase);
  return one?.seconds ?? { low: 0, typical: 0, high: 0 };
};

const said = (input: RunSheetInput): Readonly<Record<MomentId, () => Said>> => {
  const { batch, plan, pull } = input;
  const { recipe, target, boil, dial, kitchen } = batch;
  const limit = handLimitCelsius(kitchen.hands);
  const measured = dial.present;
  const below = (kelvin: number) => ({ celsius: target.takeOffCelsius - kelvin, dial: measured });
  return {
    'set-out': () => ({
      what: message('run.set-out'),
      why: message('run.set-out.why', { dial: measured }),
    }),
    mix: () => ({ what: message('run.mix'), why: message('run.mix.why') }),
    light: () => ({
      what: message('run.light'),
      why: message('run.light.why', { starts: boil.startsCelsius }),
    }),
    still: () => ({
      what: message('run.still', { late: recipe.stir === 'late' }),
      why: message('run.still.why', { care: wallCare(recipe), seconds: seconds(input, 'boil') }),
    }),
    list: () => ({ what: message('run.list'), why: message('run.list.why', below(listKelvin)) }),
    quiet: () => ({ what: message('run.quiet'), why: message('run.quiet.why', below(quietKelvin)) }),
    off: () => ({
      what: message('run.off', below(0)),
      why: message('run.off.why', { feels: target.feels }),
    }),
    pour: () => ({ what: message('run.pour'), why: message('run.pour.why') }),
    fold: () => ({ what: message('run.fold'), why: message('run.fold.why', { limit, dial: measured }) }),
    second: () => ({
      what: message('run.second'),
      why: message('run.second.why', {
        keep: plan.held.keepCelsius,
        from: pull.at + plan.held.pouredBetween[0],
        to: pull.at + plan.held.pouredBetween[1],
        twelve: pull.twelve,
        limit,
      }),
    }),
    pull: () => ({
      what: message('run.pull'),
      why: message('run.pull.why', { seconds: seconds(input, 'pull'), limit }),
    }),
    cut: () => ({
      what: message('run.cut'),
      why: message('run.cut.why', { seconds: seconds(input, 'cut') }),
    }),
    rest: () => ({ what: message('run.rest'), why: message('run.rest.why', { seconds: plan.rest.seconds }) }),
    wrap: () => ({
      what: message('run.wrap', { damp: plan.rest.damp }),
      why: message('run.wrap.why', { pieces: batch.yield.pieces.typical, seconds: wrappingSeconds(batch) }),
    }),
    end: () => ({ what: message('run.end'), why: null }),
  };
};

/** The presenter's own lines stand where that phase begins; a phase's lines once, for the first batch. */
const cuesAt: Readonly<Partial<Record<MomentId, readonly PhaseId[]>>> = {
  mix: ['mix'],
  light: ['dissolve'],
  still: ['boil'],
  fold: ['fold'],
  pull: ['pull'],
  cut: ['cut'],
  rest: ['wrap'],
  end: ['clean', 'over'],
};

/** What the presenter may say at a moment; nobody talks from the quiet on until the pot is empty. */
export const cuesFor = (batch: Batch, { id, batch: number }: Moment, rests: boolean): readonly string[] => {
  if (number !== 1) return [];
  const phases = id === 'wrap' && !rests ? (['wrap'] as const) : (cuesAt[id] ?? []);
  return phases.flatMap((phase) => batch.recipe.cues[phase] ?? []);
};

const momentLines = (input: RunSheetInput, moment: Moment, printer: Printer): readonly string[] => {
  const { plan, pull, batch } = input;
  const { twelve } = pull;
  const time = message('run.at', { at: pull.at + moment.at, twelve });
  const range =
    moment.between === null
      ? []
      : [
          message('run.between', {
            from: pull.at + moment.between[0],
            to: pull.at + moment.between[1],
            twelve,
          }),
        ];
  const { what, why } = said(input)[moment.id]();
  const number =
    plan.everySeconds === null || moment.id === 'second' || moment.id === 'set-out'
      ? ''
      : `${words(message('run.batch', { batch: moment.batch }), printer)}: `;
  // Reasons are said once.
  const reasons = [...range, ...(moment.batch === 1 && why !== null ? [why] : [])];
  const reason = reasons.length === 0 ? [] : [reasons.map((one) => words(one, printer)).join(' ')];
  const cues = cuesFor(batch, moment, plan.rest.seconds.high > 0).map((cue) =>
    words(message('run.say', { cue }), printer),
  );
  const column = twelve ? timeColumn + 3 : timeColumn;
  return [
    ...beside(`  ${words(time, printer)}`, `${number}${words(what, printer)}`, column),
    ...[...reason, ...cues].flatMap((line) => beside('', line, column)),
  ];
};

/** What the same batches come to for the other crew, in numbers. */
const otherCrew = ({ plan, pull }: Pick<RunSheetInput, 'plan' | 'pull'>): Message => {
  const { crew, apartSeconds, endsAtFor } = plan;
  const { at, twelve } = pull;
  return crew === 'alone'
    ? message('run.with-help', {
        apartSeconds: apartSeconds.several,
        end: at + endsAtFor.several,
        twelve,
      })
    : message('run.alone', { apartSeconds: apartSeconds.alone, end: at + endsAtFor.alone, twelve });
};

const lateLines = ({ plan, pull }: RunSheetInput, printer: Printer): readonly string[] => {
  const { twelve } = pull;
  const planned = { at: pull.at, twelve };
  const said: readonly Message[] = [
    ...plan.late.map(({ seconds: late, pullsAt }) =>
      message('run.late', {
        minutes: Math.round(late / 60),
        pull: { at: pull.at + pullsAt, twelve },
        planned,
      }),
    ),
    ...(plan.everySeconds === null ? [] : [message('run.late.batches'), otherCrew({ plan, pull })]),
    message('run.early'),
    message('run.late.never'),
  ];
  return [
    words(message('run.late.heading'), printer),
    ...said.flatMap((one) => wrapped(`- ${words(one, printer)}`, sheetColumns, 2)),
  ];
};

/** The run sheet for people, lines of at most 78 columns, in the order in which things happen. */
export const runSheetText = (input: RunSheetInput, printer: Printer): string => {
  const { batch, plan, pull, shortNotice, from } = input;
  const { twelve } = pull;
  const first = plan.moments[0]?.at ?? 0;
  const lead = message('run.lead', {
    setOut: pull.at + first,
    end: pull.at + plan.endsAt,
    twelve,
    spareSeconds: plan.sheets[0]?.spareSeconds ?? 0,
    batches: plan.sheets.length,
    everySeconds: plan.everySeconds,
    crew: plan.crew,
  });
  const notice =
    shortNotice === null
      ? []
      : [
          message('run.short-notice', {
            late: shortNotice.seconds,
            soonest: { at: shortNotice.soonest, twelve },
          }),
        ];
  return [
    ...wrapped(words(message('run.title', { name: batch.recipe.name, ...pull }), printer)),
    '',
    ...[lead, ...notice].flatMap((one) => wrapped(words(one, printer))),
    '',
    ...plan.moments.flatMap((moment) => momentLines(input, moment, printer)),
    '',
    ...lateLines(input, printer),
    '',
    ...wrapped(words(message('run.paced', { from }), printer)),
    '',
  ].join('\n');
};

const whole = (value: number): number => Math.round(value);

/** The run sheet in `plan --json`: seconds from the first pulling; `at` and `date` are local. */
export const runSheetJson = ({ batch, plan, pull }: RunSheetInput) => ({
  date: pull.date,
  pullsAtSecondOfDay: pull.at,
  batches: plan.sheets.length,
  crew: plan.crew,
  everySeconds: plan.everySeconds === null ? null : whole(plan.everySeconds),
  apartSeconds: { several: whole(plan.apartSeconds.several), alone: whole(plan.apartSeconds.alone) },
  moments: plan.moments.map((moment) => ({
    id: moment.id,
    phase: moment.phase,
    batch: moment.batch,
    seconds: whole(moment.at),
    between: moment.between === null ? null : moment.between.map(whole),
    cues: cuesFor(batch, moment, plan.rest.seconds.high > 0),
  })),
  hands: plan.busy.map(({ who, batch: number, from, to }) => ({
    who,
    batch: number,
    from: whole(from),
    to: whole(to),
  })),
  held: {
    keepCelsius: plan.held.keepCelsius,
    pouredBetween: plan.held.pouredBetween.map(whole),
    slabSeconds: whole(plan.held.slabAt),
    handsBelowCelsius: plan.held.limitCelsius,
  },
  late: plan.late.map(({ seconds: late, pullsAt }) => ({ seconds: late, pullsAt })),
});
