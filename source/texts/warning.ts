import type { Printer } from '../units/printer.js';
import { type Message, words } from './message.js';

export type Warned = {
  readonly signal: 'DANGER' | 'WARNING' | 'CAUTION' | null;
  readonly cause: Message;
  readonly consequence: Message;
  readonly response: readonly Message[];
  readonly evidence: Message | null;
};

/** The danger, what it does, what to do first, and the evidence behind it; a signal word only where people can be hurt. */
export const warningText = (warning: Warned, printer: Printer): string => {
  const say = (said: Message): string => words(said, printer);
  const does = say(warning.consequence);
  const danger = does === '' ? say(warning.cause) : `${say(warning.cause)}: ${does}`;
  const signal = warning.signal === null ? '' : `${say({ id: `signal.${warning.signal}` })}. `;
  const first = warning.response[0] === undefined ? '' : ` ${say(warning.response[0])}`;
  const evidence = warning.evidence === null ? '' : ` (${say(warning.evidence)})`;
  return `${signal}${danger}.${first}${evidence}`;
};
