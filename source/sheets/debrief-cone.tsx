import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { ReactElement } from 'react';
import type { Story } from '../lessons/story.js';
import { message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type CurveSize, curveSizes, pathOf } from './debrief-curve.js';
import { type Foreseen, type ForeseenTrack, foreseenOf, mostSeconds } from './debrief-foreseen.js';

const margin = { left: 40, top: 12, right: 12, bottom: 44 } as const;
const height = 200;
const colour = '#1f5a8a';

const Cone = ({
  track,
  size,
  printer,
}: {
  track: ForeseenTrack;
  size: CurveSize;
  printer: Printer;
}): ReactElement => {
  const { points, from: first, came } = track;
  const plotWidth = size.width - margin.left - margin.right;
  const plotHeight = height - margin.top - margin.bottom;
  const top = mostSeconds(track);
  const x = scaleLinear().domain([first, came]).range([0, plotWidth]);
  const y = scaleLinear().domain([0, top]).range([plotHeight, 0]).clamp(true);
  const band = area<Foreseen>()
    .x(({ t }) => x(t))
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high));
  const typical = line<Foreseen>()
    .x(({ t }) => x(t))
    .y((one) => y(one.typical));
  const minutes = scaleLinear()
    .domain([0, top / 60])
    .ticks(4)
    .filter(Number.isInteger);
  const times = scaleLinear()
    .domain([first / 60, came / 60])
    .ticks(size.ticks)
    .filter(Number.isInteger);
  return (
    <svg
      className={size.id}
      viewBox={`0 0 ${size.width} ${height}`}
      role="img"
      aria-label={words(message('debrief.plot.forecast-alt'), printer)}
    >
      <g transform={`translate(${margin.left} ${margin.top})`}>
        {minutes.map((minute) => (
          <g key={minute}>
            <line x1={0} x2={plotWidth} y1={y(minute * 60)} y2={y(minute * 60)} stroke="#e4e4e4" />
            <text x={-7} y={y(minute * 60) + 4} fontSize={size.text} textAnchor="end" className="soft">
              {minute}
            </text>
          </g>
        ))}
        {times.map((minute) => (
          <text
            key={minute}
            x={x(minute * 60)}
            y={plotHeight + 4 + size.text}
            fontSize={size.text}
            textAnchor="middle"
            className="soft"
          >
            {minute}
          </text>
        ))}
        <text
          x={plotWidth}
          y={plotHeight + 7 + 2 * size.text}
          fontSize={size.text}
          textAnchor="end"
          className="soft"
        >
          {words(message('debrief.plot.axis'), printer)}
        </text>
        <path d={pathOf(band([...points]))} fill={colour} opacity={0.16} />
        <path d={pathOf(typical([...points]))} fill="none" stroke={colour} strokeWidth={1.6} />
        <line x1={x(first)} y1={y(came - first)} x2={x(came)} y2={y(0)} stroke="#333" strokeDasharray="5 3" />
      </g>
    </svg>
  );
};

/** What the forecast said all along against what came; null where it said too little. */
export const ConeFigure = ({ story, printer }: { story: Story; printer: Printer }): ReactElement | null => {
  const foreseen = foreseenOf(story);
  if (foreseen === null) return null;
  return (
    <figure className="cone">
      {curveSizes.map((size) => (
        <Cone key={size.id} track={foreseen} size={size} printer={printer} />
      ))}
      <ul className="legend">
        <li>
          <svg viewBox="0 0 22 14" aria-hidden="true">
            <rect y={2} width={22} height={10} fill={colour} opacity={0.16} />
            <line x1={0} x2={22} y1={7} y2={7} stroke={colour} strokeWidth={1.6} />
          </svg>
          {words(message('debrief.plot.foreseen'), printer)}
        </li>
        <li>
          <svg viewBox="0 0 22 14" aria-hidden="true">
            <line x1={0} x2={22} y1={7} y2={7} stroke="#333" strokeDasharray="5 3" />
          </svg>
          {words(message('debrief.plot.came'), printer)}
        </li>
      </ul>
    </figure>
  );
};
