import type { Advice } from '../cook/advice.js';
import type { Doubt } from '../cook/cook.js';
import type { Queried } from '../cook/interpret.js';
import { type Message, message, words } from '../texts/message.js';
import { warningText } from '../texts/warning.js';
import type { Printer } from '../units/printer.js';

const rounded = (value: number, digits: number): number => {
  const factor = 10 ** digits;
  return Math.round(value * factor) / factor;
};

const span = (seconds: { low: number; typical: number; high: number }) => ({
  low: rounded(seconds.low, 1),
  typical: rounded(seconds.typical, 1),
  high: rounded(seconds.high, 1),
});

export type Questioned = { readonly typed: string; readonly because: Message; readonly kept: boolean } | null;

export const questionedBy = (queried: Queried): Questioned => ({
  typed: queried.typed,
  because: queried.because,
  kept: false,
});

export const questionedReading = (typed: string, doubt: Doubt): Questioned => ({
  typed,
  because: message('typed.reading-kept', { because: doubt.because }),
  kept: true,
});

/** One line of `follow --json`: the shape that other programs rely on. SI values, words in the kitchen's unit. */
export const adviceJson = (advice: Advice, printer: Printer, questioned: Questioned): unknown => {
  const say = (said: Message): string => words(said, printer);
  const { forecast, temperature, stages, question } = advice;
  return {
    version: 1,
    t: rounded(advice.now, 3),
    ...(advice.from === null ? {} : { from: advice.from }),
    phase: advice.phase,
    step: advice.step,
    say: say(advice.say),
    why: say(advice.why),
    items: advice.items.map(say),
    cues: advice.cues,
    cautions: advice.cautions.map((caution) => warningText(caution, printer)),
    question:
      question === null
        ? null
        : { id: question.id, text: say(question.text), answers: question.answers, safe: question.safe },
    temperature:
      temperature === null
        ? null
        : { celsius: rounded(temperature.celsius, 2), sd: rounded(temperature.sd, 2) },
    stages:
      stages === null
        ? null
        : Object.fromEntries(Object.entries(stages).map(([stage, p]) => [stage, rounded(p, 6)])),
    forecast:
      forecast === null
        ? null
        : {
            targetCelsius: rounded(forecast.targetCelsius, 2),
            takeOffCelsius: rounded(forecast.takeOffCelsius, 2),
            seconds: span(forecast.seconds),
            boilShare: rounded(forecast.boilShare, 4),
            watts: rounded(forecast.watts, 0),
            carryOverKelvin: rounded(forecast.carryOverKelvin, 2),
          },
    reached: advice.reached,
    offTheHeat: advice.offTheHeat,
    nextReadingSeconds: advice.nextReadingSeconds === null ? null : rounded(advice.nextReadingSeconds, 1),
    drift:
      advice.drift === null ? null : { seconds: rounded(advice.drift.seconds, 0), phase: advice.drift.phase },
    changesAt: advice.changesAt === null ? null : rounded(advice.changesAt, 3),
    timers: advice.timers.map(({ id, until, due }) => ({
      id,
      until: until === null ? null : rounded(until, 3),
      due,
    })),
    troubles: advice.troubles.map(({ name, since }) => ({ name, since: rounded(since, 3) })),
    warnings: advice.warnings.map((warning) => ({
      id: warning.id,
      level: warning.level,
      text: warningText(warning, printer),
    })),
    queried:
      questioned === null
        ? null
        : { typed: questioned.typed, because: say(questioned.because), kept: questioned.kept },
  };
};
