import { crewPhases, type Learned } from '../kitchen/learned.js';
import { type Message, message } from '../texts/message.js';

/** What a kitchen has learned, a sentence each; one that says so where it is nothing. */
export const learnedLines = (learned: Learned | undefined): readonly Message[] => {
  if (learned === undefined) return [message('learned.none')];
  const { thermometer, watts, carryOverKelvin, boxShare, minutes } = learned;
  const lines = [
    ...(thermometer === null ? [] : [message('learned.thermometer', thermometer)]),
    ...Object.entries(watts).map(([label, lesson]) => message('learned.watts', { label, ...lesson })),
    ...(carryOverKelvin === null ? [] : [message('learned.carry-over', carryOverKelvin)]),
    ...(boxShare === null ? [] : [message('learned.losses', boxShare)]),
    ...crewPhases.flatMap((phase) => {
      const lesson = minutes[phase];
      return lesson === undefined ? [] : [message('learned.minutes', { phase, ...lesson })];
    }),
  ];
  return lines.length === 0 ? [message('learned.none')] : lines;
};
