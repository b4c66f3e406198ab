import type { ReactElement, ReactNode } from 'react';
import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { alarmsOf } from './debrief-frame.js';

export const colours = {
  syrup: '#1f5a8a',
  mark: '#a3360b',
  soft: '#8a8a8a',
  grid: '#d9d9d9',
  window: '#b9862a',
} as const;

export const cross = (x: number, y: number): string => `M${x - 4} ${y - 4}l8 8M${x - 4} ${y + 4}l8 -8`;
export const diamond = (x: number, y: number): string => `M${x} ${y - 6}l6 6l-6 6l-6 -6z`;
export const triangle = (x: number, y: number): string => `M${x} ${y - 6}l6.5 11h-13z`;

const Key = ({
  children,
  said,
  printer,
}: {
  children: ReactNode;
  said: Message;
  printer: Printer;
}): ReactElement => (
  <li>
    <svg viewBox="0 0 22 14" aria-hidden="true">
      {children}
    </svg>
    {words(said, printer)}
  </li>
);

export const Legend = ({ story, printer }: { story: Story; printer: Printer }): ReactElement => {
  const has = (of: string, believed: boolean) =>
    story.readings.some((one) => one.of === of && one.believed === believed);
  return (
    <ul className="legend">
      {has('syrup', true) ? (
        <Key said={message('debrief.plot.reading')} printer={printer}>
          <circle cx={11} cy={7} r={3.5} fill="#fff" stroke={colours.syrup} strokeWidth={1.6} />
        </Key>
      ) : null}
      {story.track.length > 0 ? (
        <Key said={message('debrief.plot.believed')} printer={printer}>
          <rect y={2} width={22} height={10} fill={colours.syrup} opacity={0.14} />
          <line x1={0} x2={22} y1={7} y2={7} stroke={colours.syrup} strokeWidth={1.6} />
        </Key>
      ) : null}
      {story.readings.some(({ believed }) => !believed) ? (
        <Key said={message('debrief.plot.doubted')} printer={printer}>
          <path d={cross(11, 7)} stroke={colours.mark} strokeWidth={1.6} />
        </Key>
      ) : null}
      {has('middle', true) ? (
        <Key said={message('debrief.plot.middle')} printer={printer}>
          <rect x={7.5} y={3.5} width={7} height={7} fill="#444" />
        </Key>
      ) : null}
      {story.tests.length > 0 ? (
        <Key said={message('debrief.plot.test')} printer={printer}>
          <path d={diamond(11, 7)} fill={colours.window} />
        </Key>
      ) : null}
      {alarmsOf(story).length > 0 ? (
        <Key said={message('debrief.plot.trouble')} printer={printer}>
          <path d={triangle(11, 7)} fill={colours.mark} />
        </Key>
      ) : null}
      <Key said={message('debrief.plot.break')} printer={printer}>
        <path d="M6 9l10 -6M6 14l10 -6" stroke={colours.soft} fill="none" />
      </Key>
    </ul>
  );
};
