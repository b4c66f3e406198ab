import type { LetterSize } from './block-letters.js';
import { type Context, contextOf, type Script, type Size } from './context.js';
import type { Shown } from './model.js';
import { action, type ShoutSize } from './parts/action.js';
import { far } from './parts/far.js';
import { keysRow, lastEventsRow } from './parts/footer.js';
import { glass, glassWidth } from './parts/glass.js';
import { badges, header, phasesNow } from './parts/header.js';
import { numbers } from './parts/numbers.js';
import { panel, smallest, tooSmall } from './parts/panels.js';
import { isCurve, leastPlotRows, plot } from './parts/plot.js';
import { plotView } from './parts/plot-view.js';
import { cues, nextAndWatch, progress, sight, timers } from './parts/progress.js';
import { warnings } from './parts/warnings.js';
import { blank, clip, type Line, lineWidth, span } from './text.js';
import { viewShown } from './views.js';

/** How generously the body is set; tried from the most to the least. */
type Setting = {
  readonly withGlass: boolean;
  readonly withNumbers: boolean;
  readonly size: ShoutSize;
  readonly tight: boolean;
  readonly withItems: boolean;
  readonly withAhead: boolean;
  readonly withCues: boolean;
  /** The curve at the right of the letters. */
  readonly withPlot: boolean;
};

const roomForPlot: Size = { columns: 120, rows: 40 };
const roomFor = { letters: { columns: 110, rows: 36 }, huge: { columns: 180, rows: 50 } } as const;
const fits = (size: Size, least: Size): boolean => size.columns >= least.columns && size.rows >= least.rows;

const letterSizes = (size: Size): readonly LetterSize[] => {
  if (fits(size, roomFor.huge)) return ['huge', 'large', 'small'];
  return fits(size, roomFor.letters) ? ['large', 'small'] : ['small'];
};

/** Steps in which what is chosen has a list of its own behind a key: its items may go first. */
const listedElsewhere = (step: string | null): boolean => step === 'test.drop';

const settings = (size: Size, shown: Shown): readonly Setting[] => {
  const sizes = letterSizes(size);
  const generous: Setting = {
    withGlass: true,
    withNumbers: fits(size, roomFor.letters),
    size: 'line',
    tight: false,
    withItems: true,
    withAhead: true,
    withCues: false,
    withPlot: false,
  };
  const line = { ...generous, size: 'line' } as const;
  const bare = { ...line, withNumbers: false, tight: true };
  const unlisted = listedElsewhere(shown.advice.step) ? [{ ...line, withItems: false }] : [];
  const cued = shown.advice.cues.length > 0 ? [true, false] : [false];
  // What has to be done at once is written large before anything else has its place.
  const urgent = (one: Setting, letters: LetterSize): readonly Setting[] =>
    shown.advice.urgent ? [{ ...one, ...bare, size: letters, withGlass: false, withAhead: false }] : [];
  // In the largest windows it has its place under the action.
  const plotted: readonly LetterSize[] =
    fits(size, roomForPlot) && !fits(size, roomFor.huge) ? sizes.slice(-2) : [];
  const inLetters = (one: Setting): readonly Setting[] => [
    ...cued.flatMap((withCues) =>
      plotted.map((letters): Setting => ({ ...one, size: letters, withCues, withPlot: true })),
    ),
    ...sizes.flatMap((letters) => cued.map((withCues) => ({ ...one, size: letters, withCues }))),
    { ...one, size: 'small', tight: true },
    ...urgent(one, 'small'),
    ...cued.map((withCues): Setting => ({ ...one, size: 'slim', withCues, tight: !withCues })),
    ...urgent(one, 'slim'),
  ];
  return [
    ...inLetters(generous),
    ...unlisted.flatMap(inLetters),
    line,
    { ...line, tight: true },
    bare,
    { ...bare, withGlass: false },
    { ...bare, withGlass: false, withAhead: false },
    ...unlisted.map((one) => ({ ...one, ...bare, withGlass: false, withItems: false })),
    ...unlisted.map((one) => ({ ...one, ...bare, withGlass: false, withItems: false, withAhead: false })),
  ];
};

const text = (size: Size, width: number): number => Math.min(width, fits(size, roomFor.huge) ? 120 : 96);

/** What stands at the bottom of the body and keeps its place there. */
const bottom = (ctx: Context, setting: Setting, size: Size, width: number, most: number): readonly Line[] => {
  const measure = text(size, width);
  const ahead = setting.withAhead ? nextAndWatch(ctx, measure) : [];
  const now = progress(ctx, measure);
  // From the bottom up by how steadily it is there, so that each keeps its place.
  return [
    ...warnings(ctx, measure, most),
    ...(setting.withCues ? cues(ctx, measure) : []),
    ...sight(ctx, measure),
    ...timers(ctx, measure),
    ...ahead,
    ...(now.length === 0 && setting.tight ? [] : [now]),
  ];
};

/** At most this share of the body belongs to warnings; the first is always whole. */
const warningRows = (rows: number): number => Math.max(4, Math.floor(rows / 3));

type Body = {
  readonly lines: readonly Line[];
  readonly left: readonly Line[] | null;
  readonly leftWidth: number;
};

/** Parts of one frame that settings have in common, made when first asked for. */
const made = new WeakMap<Context, Map<string, unknown>>();
const once = <Part>(ctx: Context, name: string, make: () => Part): Part => {
  const parts = made.get(ctx) ?? new Map<string, unknown>();
  made.set(ctx, parts);
  if (!parts.has(name)) parts.set(name, make());
  return parts.get(name) as Part;
};

const set = (ctx: Context, setting: Setting, size: Size, rows: number): Body | null => {
  const leftWidth = glassWidth(size.columns);
  const left = setting.withGlass ? once(ctx, 'glass', () => glass(ctx, leftWidth, rows)) : null;
  const width = size.columns - (left === null ? 0 : leftWidth);
  const measure = text(size, width);
  const over = setting.withNumbers
    ? once(ctx, `numbers ${width}`, () => numbers(ctx, [...letterSizes(size).slice(-2), 'slim'], width))
    : null;
  const acted = action(ctx, { ...setting, width: setting.size === 'line' ? measure : width });
  const isBeside = acted !== null && setting.withPlot;
  const top = isBeside ? (left === null ? null : plotBeside(ctx, acted, measure)) : acted;
  if (top === null) return null;
  const { withAhead, withCues, tight } = setting;
  const under = once(ctx, `bottom ${width} ${withAhead} ${withCues} ${tight}`, () =>
    bottom(ctx, setting, size, width, warningRows(rows)),
  );
  const above = [...(over ?? []), ...(over === null ? [] : [blank]), ...top];
  const between = rows - above.length - under.length;
  if (between < (setting.tight ? 0 : 1)) return null;
  const curve = left === null || setting.withPlot ? [] : plotBetween(ctx, size, width, between);
  const empty = Array.from({ length: between - curve.length }, () => blank);
  return { lines: [...above, ...empty, ...curve, ...under], left, leftWidth };
};

/** Few heights, so that the curve keeps its own when a line comes or goes above it. */
const plotHeights = [24, 20, 16, 13, 10] as const;

/** The curve where nothing else stands, quietly, an empty row above and below it; nothing where there is no room. */
const plotBetween = (ctx: Context, size: Size, width: number, rows: number): readonly Line[] => {
  if (!fits(size, roomForPlot) || !isCurve(ctx)) return [];
  const height = plotHeights.find((one) => one + 2 <= rows);
  return height === undefined ? [] : [...plot(ctx, { width: text(size, width), height, calm: true }), blank];
};

/** Narrower than this a curve says nothing. */
const narrowestPlot = 44;
const besideGap = 3;

/** The curve at the right of the letters that the action begins with; null where it has no room there. */
const plotBeside = (ctx: Context, top: readonly Line[], width: number): readonly Line[] | null => {
  if (!isCurve(ctx)) return null;
  // Block letters end with an empty row.
  const height = top.findIndex((line, index) => index >= leastPlotRows - 1 && line.length === 0);
  if (height < leastPlotRows) return null;
  const letters = Math.max(...top.slice(0, height).map(lineWidth)) + besideGap;
  if (width - letters < narrowestPlot) return null;
  const curve = plot(ctx, { width: width - letters, height, calm: true });
  return top.map((line, index) => (index < height ? besides(line, letters, curve[index] ?? blank) : line));
};

/** The curve over the whole body; null where it is not wanted, or has no room. */
const asPlot = (ctx: Context, size: Size, rows: number): Body | null => {
  if (viewShown(ctx.shown.advice, ctx.shown.input.view) !== 'plot') return null;
  const lines = plotView(ctx, size, rows);
  return lines === null ? null : { lines, left: null, leftWidth: 0 };
};

/** A panel covers the action; the glass stays beside it and what warns below it where there is room. */
const covered = (ctx: Context, size: Size, rows: number): Body | null => {
  const leftWidth = glassWidth(size.columns);
  const left = glass(ctx, leftWidth, rows);
  const beside = left === null ? null : panel(ctx, size.columns - leftWidth);
  const goesBeside = beside !== null && beside.length <= rows;
  const lines = goesBeside ? beside : panel(ctx, size.columns);
  if (lines === null) return null;
  const width = size.columns - (goesBeside ? leftWidth : 0);
  const warned = warnings(ctx, text(size, width), Math.max(0, rows - lines.length));
  const between = rows - lines.length - warned.length;
  const under = between >= 0 ? [...Array.from({ length: between }, () => blank), ...warned] : [];
  return { lines: [...lines, ...under].slice(0, rows), left: goesBeside ? left : null, leftWidth };
};

/** Nothing fits: as much as there is room for, and a sign that it is not all. */
const clipped = (ctx: Context, setting: Setting, size: Size, rows: number): Body => {
  const all = action(ctx, { ...setting, size: 'line', width: size.columns }) ?? [];
  const under = warnings(ctx, size.columns, warningRows(rows));
  const kept = Math.max(1, rows - under.length - 1);
  return {
    lines: [...all.slice(0, kept), [span(ctx.signs.bullet.repeat(3))], ...under].slice(0, rows),
    left: null,
    leftWidth: 0,
  };
};

const besides = (left: Line | undefined, leftWidth: number, right: Line): Line =>
  left === undefined
    ? right
    : [...left, span(' '.repeat(Math.max(0, leftWidth - lineWidth(left)))), ...right];

/** Rows that are not the body: trail, badges, events, keys. */
const frameRows = 4;
/** Beside the far view only the phase, badges, what was taken last, and keys stand. */
const farFrameRows = 3;

/** The far view, whole; null where another view is wanted, something covers it, or it has no room. */
const fromAfar = (ctx: Context, size: Size): readonly Line[] | null => {
  const { advice, input } = ctx.shown;
  if (viewShown(advice, input.view) !== 'far' || panel(ctx, size.columns) !== null) return null;
  const body = far(ctx, size, size.rows - farFrameRows);
  if (body === null) return null;
  const phases = phasesNow(ctx);
  return [
    [...phases, ...badges(ctx, size.columns - lineWidth(phases))],
    ...body.lines,
    lastEventsRow(ctx, size.columns),
    keysRow(ctx, size.columns),
  ];
};

export type Frame = {
  /** Exactly as many as the window has rows, none wider than it. */
  readonly lines: readonly Line[];
  /** Something had to be left out. */
  readonly clipped: boolean;
};

/** The whole screen as rows. Pure: the same picture for the same state, size and style. */
export const frame = (shown: Shown, size: Size, style: Script): Frame => {
  const ctx = contextOf(shown, style);
  const { columns, rows } = size;
  const filled = (lines: readonly Line[]): readonly Line[] =>
    [...lines, ...Array.from({ length: Math.max(0, rows - lines.length) }, () => blank)]
      .slice(0, rows)
      .map((line) => clip(line, columns));
  if (columns < smallest.columns || rows < smallest.rows)
    return { lines: filled(tooSmall(ctx, size)), clipped: false };
  const afar = fromAfar(ctx, size);
  if (afar !== null) return { lines: filled(afar), clipped: false };
  const bodyRows = rows - frameRows;
  const all = settings(size, shown);
  let body = covered(ctx, size, bodyRows);
  const isClipped = body !== null && body.left === null && (panel(ctx, columns)?.length ?? 0) > bodyRows;
  body ??= asPlot(ctx, size, bodyRows);
  for (const setting of all) body ??= set(ctx, setting, size, bodyRows);
  const last = all.at(-1);
  const { lines, left, leftWidth } = body ?? clipped(ctx, last ?? (all[0] as Setting), size, bodyRows);
  const inner = Array.from({ length: bodyRows }, (_, index) =>
    besides(left?.[index], leftWidth, lines[index] ?? blank),
  );
  return {
    lines: filled([
      header(ctx, columns),
      badges(ctx, columns),
      ...inner,
      lastEventsRow(ctx, columns),
      keysRow(ctx, columns),
    ]),
    clipped: isClipped || body === null,
  };
};
