import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawPauses,
  drawText,
  emptyChart,
  type Paint,
  type PauseBand,
  type Texture,
  type TimeScale,
  textureFill,
  timePlot,
  timeScale,
  wrapText,
} from "../frame/index.ts";
import { drawFootnote, drawKey, stepBandPath } from "../marks/index.ts";

export interface StateRow {
  name: string;
  /** shares[state][bin], 0..1; the states of a bin add up to 1, or to 0 where nothing was watched. */
  shares: readonly (readonly number[])[];
  /** Shares of the station's own time by state, on break left out; empty where it has none. */
  ownShares: readonly number[];
  /** Time on break, as a share of the time from its first head to its last. */
  breakShare: number | null;
  /** Shares of the whole day by the clock. */
  clockShares: readonly number[];
  /** From its first head to its last, seconds; null where no head could reach it. */
  own: { fromSeconds: number; toSeconds: number } | null;
  /** The largest shares in words, one or two lines. */
  note: readonly string[];
}

export interface StateColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  binSeconds: number;
  pauses: readonly PauseBand[];
  /** Names of the states, in stacking order from below. */
  states: readonly string[];
  rows: readonly StateRow[];
  footnote: string;
}

/** One look per state, in the order of the day record's states. */
const LOOKS: readonly { paint: Paint; texture: Texture; ink: Paint }[] = [
  { paint: "working", texture: "plain", ink: "ink" },
  { paint: "blocked", texture: "rising", ink: "ink" },
  { paint: "starved", texture: "dots", ink: "muted" },
  { paint: "noCrew", texture: "level", ink: "ink" },
  { paint: "down", texture: "cross", ink: "paper" },
  { paint: "onBreak", texture: "upright", ink: "rule" },
];

const ROW = 28;
const GAP = 8;
const GUTTER = 116;
const BAR = 64;
const NOTE = 178;

/** What each station did over the clock: stations in line order, each time bin filled by the shares of its states. */
export function stateChart(columns: StateColumns, context: ChartContext): SVGSVGElement {
  if (columns.rows.length === 0) return emptyChart(columns, "No station of this day has recorded states.", context);
  const frame = chartFrame(columns, context);
  const fills = LOOKS.map((look, state) =>
    textureFill(frame.defs, frame.id(`state-${state}`), look.texture, frame.colour(look.paint), frame.colour(look.ink)),
  );
  const time = timeScale(frame, columns.endSeconds, frame.left + GUTTER, frame.right - BAR - NOTE - 20);
  const key = columns.states.map((name, state) => ({ name, fill: fills[state]! }));
  const top = drawKey(frame, key, frame.top + 4) + 24;
  const bottom = top + columns.rows.length * (ROW + GAP) - GAP;
  const right = time.range()[1]!;
  timePlot(frame, top, bottom);
  drawPauses(frame.body, columns.pauses, time, top - 4, bottom + 4, frame.colour("pause"), frame.colour("muted"));
  drawText(frame.body, right + 12, top - 9, "share of own time", { fill: frame.colour("muted") });
  const edges = columns.rows[0]!.shares[0]!.map((_, bin) => time(bin * columns.binSeconds));
  edges.push(time(columns.endSeconds));
  columns.rows.forEach((row, index) => {
    drawRow(frame, row, fills, edges, time, top + index * (ROW + GAP));
  });
  const end = drawClockAxis(frame.body, time, columns.startClockSeconds, bottom + 8, frame.colour);
  return frame.finish(drawFootnote(frame, columns.footnote, end));
}

function drawRow(
  frame: ChartFrame,
  row: StateRow,
  fills: readonly string[],
  edges: readonly number[],
  time: TimeScale,
  top: number,
): void {
  const group = frame.body.append("g");
  const names = wrapText(row.name, GUTTER - 8, 11, 2, true);
  names.forEach((line, i) => {
    drawText(group, frame.left, top + ROW / 2 + 4 + (i - (names.length - 1) / 2) * 13, line, { bold: true });
  });
  const floor = edges.slice(1).map(() => top + ROW);
  row.shares.forEach((shares, state) => {
    const lower = [...floor];
    shares.forEach((share, bin) => {
      floor[bin]! -= share * ROW;
    });
    const path = stepBandPath(edges, floor, lower);
    if (path !== "") group.append("path").attr("d", path).attr("fill", fills[state]!);
  });
  const [left, right] = time.range() as [number, number];
  const outline = group
    .append("rect")
    .attr("x", left)
    .attr("y", top)
    .attr("width", right - left)
    .attr("height", ROW);
  outline.attr("fill", "none").attr("stroke", frame.colour("rule")).attr("stroke-width", 0.7);
  if (row.own !== null) drawOwnTime(frame, group, time(row.own.fromSeconds), time(row.own.toSeconds), top + ROW);
  drawOwnBar(frame, group, row, fills, right + 12, top);
}

/** A line below the strip from the station's first head to its last. */
function drawOwnTime(frame: ChartFrame, group: ChartFrame["body"], from: number, to: number, bottom: number): void {
  const y = bottom + 3;
  group
    .append("path")
    .attr("d", `M${from.toFixed(1)},${y - 2.5}V${y}H${to.toFixed(1)}V${y - 2.5}`)
    .attr("fill", "none")
    .attr("stroke", frame.colour("ink"))
    .attr("stroke-width", 1.2);
}

function drawOwnBar(
  frame: ChartFrame,
  group: ChartFrame["body"],
  row: StateRow,
  fills: readonly string[],
  x: number,
  top: number,
): void {
  let from = x;
  row.ownShares.forEach((share, state) => {
    if (share <= 0) return;
    const part = group
      .append("rect")
      .attr("x", from.toFixed(1))
      .attr("y", top + 5)
      .attr("width", (share * BAR).toFixed(1));
    part
      .attr("height", ROW - 10)
      .attr("fill", fills[state]!)
      .attr("stroke", frame.colour("muted"))
      .attr("stroke-width", 0.4);
    from += share * BAR;
  });
  const lines = row.note.flatMap((line) => wrapText(line, NOTE - 4, 11, 1));
  lines.forEach((line, i) => {
    drawText(group, x + BAR + 8, top + ROW / 2 + 4 + (i - (lines.length - 1) / 2) * 13, line);
  });
}
