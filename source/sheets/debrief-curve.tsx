import { area, line } from 'd3-shape';
import type { ReactElement } from 'react';
import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { alarmsOf, type CurveFrame, curveScales, minuteTicks } from './debrief-frame.js';
import { colours, cross, diamond, Legend, triangle } from './debrief-legend.js';

/** Sizes in the drawing's own units, which are CSS pixels at its natural width. */
export type CurveSize = {
  readonly id: 'wide' | 'narrow';
  readonly width: number;
  readonly height: number;
  readonly text: number;
  readonly right: number;
  readonly ticks: number;
};

export const curveSizes: readonly CurveSize[] = [
  { id: 'wide', width: 760, height: 430, text: 13, right: 84, ticks: 12 },
  { id: 'narrow', width: 360, height: 430, text: 13, right: 74, ticks: 5 },
];

type Drawn = {
  readonly story: Story;
  readonly frame: CurveFrame;
  readonly size: CurveSize;
  readonly printer: Printer;
  readonly x: (seconds: number) => number;
  readonly y: (celsius: number) => number;
  readonly plotWidth: number;
  readonly plotHeight: number;
  readonly say: (said: Message) => string;
};

const margin = { left: 40, top: 40, bottom: 44 } as const;
/** Width of a letter over the size of the text, about: for what has room. */
const letterWidth = 0.56;
const room = (text: string, size: number): number => text.length * size * letterWidth;

/** Grid, stages, window: what is known before anything happened. */
const Background = ({ story, frame, size, printer, y, plotWidth, plotHeight, say }: Drawn): ReactElement => {
  const [floor, ceiling] = frame.window;
  const names = spaced(
    [
      { celsius: story.batch.boil.startsCelsius, name: say(message('debrief.plot.boils')) },
      ...frame.stages.map(({ name, celsius }) => ({ name: say({ id: `stage.${name}` }), celsius })),
      ...(frame.handLimit === null
        ? []
        : [{ celsius: frame.handLimit, name: say(message('debrief.plot.for-hands')) }]),
    ].map((one) => ({ ...one, at: y(one.celsius) })),
    size.text + 1,
  );
  const numbers = spaced(
    [floor, ceiling, ...names.map(({ celsius }) => celsius), frame.low, 60, 20]
      .filter((celsius) => celsius >= frame.low)
      .map((celsius) => ({ celsius, at: y(celsius) })),
    size.text + 1,
  );
  return (
    <g>
      <rect
        x={0}
        y={y(ceiling)}
        width={plotWidth}
        height={Math.max(1, y(floor) - y(ceiling))}
        fill={`url(#hatch-${size.id})`}
        stroke={colours.window}
        strokeWidth={1}
      />
      <text x={6} y={y(ceiling) - 5} fontSize={size.text} className="strong">
        {say(message('debrief.plot.window'))}
      </text>
      {names.map(({ celsius, name, at }) => (
        <g key={name}>
          <line
            x1={0}
            x2={plotWidth}
            y1={y(celsius)}
            y2={y(celsius)}
            stroke={colours.grid}
            strokeDasharray="2 4"
          />
          <text x={plotWidth + 6} y={at + size.text / 3} fontSize={size.text} className="soft">
            {name}
          </text>
        </g>
      ))}
      {numbers.map(({ celsius, at }) => (
        <text
          key={celsius}
          x={-7}
          y={at + size.text / 3}
          fontSize={size.text}
          textAnchor="end"
          className={celsius === floor || celsius === ceiling ? 'strong' : 'soft'}
        >
          {printer.dialNumber(celsius)}
        </text>
      ))}
      <path d={`M0 0V${plotHeight}H${plotWidth}`} fill="none" stroke={colours.soft} />
      <path
        d={`M-5 ${y(frame.breakCelsius) + 3}l10 -6M-5 ${y(frame.breakCelsius) + 8}l10 -6`}
        stroke={colours.soft}
        fill="none"
      />
    </g>
  );
};

/** Of labels that would touch, the earlier one of the list stays. */
const spaced = <Label extends { readonly at: number }>(
  labels: readonly Label[],
  apart: number,
): readonly Label[] => {
  const kept: Label[] = [];
  for (const label of labels) if (!kept.some(({ at }) => Math.abs(at - label.at) < apart)) kept.push(label);
  return kept;
};

const Phases = ({ story, frame, size, x, plotHeight, say }: Drawn): ReactElement => (
  <g>
    {story.spans
      .filter(({ phase, from, to }) => phase !== 'over' && to > frame.from && from < frame.to)
      .map(({ phase, from, to }, index) => {
        const left = x(Math.max(from, frame.from));
        const width = x(Math.min(to, frame.to)) - left;
        const name = say(message(`phase.${phase}`));
        return (
          <g key={from}>
            <rect x={left} y={-36} width={width} height={18} fill={index % 2 === 0 ? '#eeeeee' : '#dedede'} />
            <line x1={left} x2={left} y1={-18} y2={plotHeight} stroke="#efefef" />
            {room(name, size.text) + 4 <= width ? (
              <text x={left + 4} y={-22.5} fontSize={size.text}>
                {name}
              </text>
            ) : null}
          </g>
        );
      })}
  </g>
);

const TimeAxis = ({ frame, size, x, plotWidth, plotHeight, say }: Drawn): ReactElement => (
  <g>
    {minuteTicks(frame, size.ticks).map((seconds) => (
      <g key={seconds}>
        <line x1={x(seconds)} x2={x(seconds)} y1={plotHeight} y2={plotHeight + 4} stroke={colours.soft} />
        <text
          x={x(seconds)}
          y={plotHeight + 6 + size.text}
          fontSize={size.text}
          textAnchor="middle"
          className="soft"
        >
          {seconds / 60}
        </text>
      </g>
    ))}
    <text
      x={plotWidth}
      y={plotHeight + 9 + 2 * size.text}
      fontSize={size.text}
      textAnchor="end"
      className="soft"
    >
      {say(message('debrief.plot.axis'))}
    </text>
  </g>
);

/** A drawn path; none where nothing is drawn. */
export const pathOf = (path: string | null): string => path ?? '';

const eightyPercent = 1.2816;

const Syrup = ({ story, x, y }: Drawn): ReactElement => {
  const band = area<Story['track'][number]>()
    .x(({ t }) => x(t))
    .y0(({ celsius, sd }) => y(celsius - eightyPercent * sd))
    .y1(({ celsius, sd }) => y(celsius + eightyPercent * sd));
  const believed = line<Story['track'][number]>()
    .x(({ t }) => x(t))
    .y(({ celsius }) => y(celsius));
  const track = [...story.track];
  return (
    <g>
      <path d={pathOf(band(track))} fill={colours.syrup} opacity={0.14} />
      <path d={pathOf(believed(track))} fill="none" stroke={colours.syrup} strokeWidth={1.6} />
    </g>
  );
};

const Readings = ({ story, x, y }: Drawn): ReactElement => (
  <g>
    {story.readings.map(({ seq, t, celsius, of, believed }) => {
      if (!believed)
        return <path key={seq} d={cross(x(t), y(celsius))} stroke={colours.mark} strokeWidth={1.6} />;
      return of === 'middle' ? (
        <rect key={seq} x={x(t) - 3.5} y={y(celsius) - 3.5} width={7} height={7} fill="#444" />
      ) : (
        <circle
          key={seq}
          cx={x(t)}
          cy={y(celsius)}
          r={3}
          fill="#fff"
          stroke={colours.syrup}
          strokeWidth={1.6}
        />
      );
    })}
  </g>
);

/** Off the heat, poured: lines through the whole height, named at the bottom where nothing else stands. */
const Lines = ({ story, frame, size, x, y, plotHeight, plotWidth, say }: Drawn): ReactElement => {
  const poured = story.pouredAt;
  const offs = story.offs.filter(({ t }) => t >= frame.from && t <= frame.to);
  const name = say(message('debrief.plot.off'));
  const pouredName = say(message('debrief.plot.poured'));
  return (
    <g>
      {offs.map(({ t, celsius }, index) => {
        const last = index === offs.length - 1;
        return (
          <g key={t}>
            <line
              x1={x(t)}
              x2={x(t)}
              y1={y(celsius ?? frame.window[0])}
              y2={plotHeight}
              stroke={colours.mark}
              strokeDasharray="5 3"
            />
            {last && x(t) > room(name, size.text) + 8 ? (
              <text x={x(t) - 5} y={plotHeight - 8} fontSize={size.text} textAnchor="end">
                {name}
              </text>
            ) : null}
          </g>
        );
      })}
      {poured === null ? null : (
        <g>
          <line x1={x(poured)} x2={x(poured)} y1={0} y2={plotHeight} stroke="#555" />
          {x(poured) + room(pouredName, size.text) + 8 < plotWidth ? (
            <text x={x(poured) + 5} y={plotHeight - 8} fontSize={size.text}>
              {pouredName}
            </text>
          ) : null}
        </g>
      )}
    </g>
  );
};

const Tests = ({ frame, size, x, y, say }: Drawn): ReactElement => {
  const placed = spaced(
    frame.tests.map((one) => ({ ...one, at: y(one.celsius) })).toReversed(),
    size.text + 2,
  );
  return (
    <g>
      {frame.tests.map(({ told, celsius }) => (
        <path key={told.t} d={diamond(x(told.t), y(celsius))} fill={colours.window} stroke="#fff" />
      ))}
      {placed.map(({ told, at }) => {
        const text = say(message('debrief.felt', { outcome: told.outcome }));
        const left = x(told.t) - 10 > room(text, size.text);
        return (
          <text
            key={told.t}
            x={x(told.t) + (left ? -10 : 10)}
            y={at + size.text / 3}
            fontSize={size.text}
            textAnchor={left ? 'end' : 'start'}
            stroke="#fff"
            strokeWidth={3}
            paintOrder="stroke"
          >
            {text}
          </text>
        );
      })}
    </g>
  );
};

const Alarms = ({ story, frame, x }: Drawn): ReactElement => (
  <g>
    {alarmsOf(story)
      .filter((t) => t >= frame.from && t <= frame.to)
      .map((t) => (
        <path key={t} d={triangle(x(t), -8)} fill={colours.mark} />
      ))}
  </g>
);

const Curve = ({
  story,
  frame,
  size,
  printer,
}: Pick<Drawn, 'story' | 'frame' | 'size' | 'printer'>): ReactElement => {
  const plotWidth = size.width - margin.left - size.right;
  const plotHeight = size.height - margin.top - margin.bottom;
  const drawn: Drawn = {
    story,
    frame,
    size,
    printer,
    plotWidth,
    plotHeight,
    ...curveScales(frame, plotWidth, plotHeight),
    say: (said) => words(said, printer),
  };
  const alt = message('debrief.plot.alt', {
    peak: story.peak?.celsius ?? null,
    window: frame.window,
    minutes: (frame.to - frame.from) / 60,
  });
  return (
    <svg
      className={size.id}
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={words(alt, printer)}
    >
      <defs>
        <pattern
          id={`hatch-${size.id}`}
          width={7}
          height={7}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width={7} height={7} fill="#fdf6e6" />
          <line x1={0} x2={0} y1={0} y2={7} stroke={colours.window} strokeWidth={1} opacity={0.45} />
        </pattern>
      </defs>
      <g transform={`translate(${margin.left} ${margin.top})`}>
        <Phases {...drawn} />
        <Background {...drawn} />
        <Lines {...drawn} />
        <Syrup {...drawn} />
        <Readings {...drawn} />
        <Tests {...drawn} />
        <Alarms {...drawn} />
        <TimeAxis {...drawn} />
        <text x={-7} y={-22.5} fontSize={size.text} textAnchor="end" className="soft">
          {words(message('debrief.plot.unit', { unit: printer.unit }), printer)}
        </text>
      </g>
    </svg>
  );
};

/** Temperature against time in two sizes, one of which the page shows. */
export const CurveFigure = ({
  story,
  frame,
  printer,
}: {
  story: Story;
  frame: CurveFrame;
  printer: Printer;
}): ReactElement => (
  <figure className="curve">
    {curveSizes.map((size) => (
      <Curve key={size.id} story={story} frame={frame} size={size} printer={printer} />
    ))}
    <Legend story={story} printer={printer} />
  </figure>
);
