import type { Cook } from '../cook/cook.js';
import { hazardById } from '../cook/hazards/table.js';
import type { SurpriseName } from '../rehearsal/surprises.js';
import type { RehearsalVerdict } from '../rehearsal/verdict.js';
import { beside, wrapped } from '../sheets/layout.js';
import type { PullTime } from '../sheets/run-sheet.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';

const hazardName = (id: string): Message =>
  hazardById(id) === undefined ? { id: id as TextId } : { id: `hazard.${id}.cause` as TextId };

/** What to change, with the words for a warning or a phase in place of its id. */
const changesOf = ({ changes }: RehearsalVerdict, say: (said: Message) => string): readonly Message[] =>
  changes.map((one) => {
    const values = (one.values ?? {}) as { readonly hazard?: string; readonly phase?: string };
    return {
      id: one.id,
      values: {
        ...values,
        ...(values.hazard === undefined ? {} : { name: say(hazardName(values.hazard)) }),
        ...(values.phase === undefined ? {} : { phase: say({ id: `phase.${values.phase}` as TextId }) }),
      },
    };
  });

const head = (cook: Cook, verdict: RehearsalVerdict, surprise: SurpriseName | null): Message =>
  message('rehearsal.title', { recipe: cook.batch.recipe.name, seed: verdict.seed, surprise });

/** Hands on it so early or late; by the clock where the plan is for one. */
const pullingOf = ({ at, plannedAt }: { at: number; plannedAt: number }, pull: PullTime | null): Message =>
  message('rehearsal.pulling', {
    at,
    plannedAt,
    clock: pull === null ? null : { at: pull.at, twelve: pull.twelve },
  });

/** What a rehearsal came to, for people: one text, ending in a newline. */
export const rehearsalText = (
  cook: Cook,
  verdict: RehearsalVerdict,
  surprise: SurpriseName | null,
  pull: PullTime | null,
  printer: Printer,
): string => {
  const say = (said: Message): string => words(said, printer);
  const item = (text: string): string[] => beside('  -', text, 4);
  const phases = verdict.phases.map((one) =>
    message('rehearsal.phase', { ...one, phase: say({ id: `phase.${one.phase}` as TextId }) }),
  );
  const warnings = verdict.warnings.map((one) =>
    message('rehearsal.warning', { ...one, name: say(hazardName(one.id)) }),
  );
  return `${[
    ...wrapped(say(head(cook, verdict, surprise))),
    say(message('rehearsal.took', verdict)),
    ...(verdict.pulling === null ? [] : wrapped(say(pullingOf(verdict.pulling, pull)))),
    ...(verdict.rest === null ? [] : wrapped(say(message('rehearsal.rest', verdict.rest)))),
    ...(verdict.hands === null ? [] : wrapped(say(message('rehearsal.hands', verdict.hands)))),
    ...(verdict.answered === null ? [] : wrapped(say(message('rehearsal.answered', verdict.answered)))),
    '',
    ...phases.map((one) => `  ${say(one).trimEnd()}`),
    '',
    say(warnings.length === 0 ? message('rehearsal.no-warnings') : message('rehearsal.warnings')),
    ...warnings.flatMap((one) => wrapped(`  ${say(one)}`, undefined, 9)),
    '',
    say(message('rehearsal.changes')),
    ...changesOf(verdict, say).flatMap((one) => item(say(one))),
  ].join('\n')}\n`;
};

/** The same for programs. `journal` is the list of events as a journal keeps them, without its stamps and sums. */
export const rehearsalJson = (
  cook: Cook,
  verdict: RehearsalVerdict,
  surprise: SurpriseName | null,
  printer: Printer,
) => ({
  version: 1,
  rehearsal: true,
  recipe: cook.batch.recipe.name,
  seed: verdict.seed,
  surprise,
  verdict: {
    ...verdict,
    changes: changesOf(verdict, (said) => words(said, printer)).map((one) => ({
      id: one.id,
      text: words(one, printer),
    })),
  },
  journal: cook.log.slice(0, cook.length),
});
