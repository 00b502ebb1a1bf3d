import { line, scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawLeftAxis,
  drawText,
  emptyChart,
  type Quantity,
  SERIES,
  wrapText,
} from "../frame/index.ts";

export interface HistogramColumns extends ChartWords {
  quantity: Quantity;
  /** Equal bins, ascending; `share` of all values in it, 0 to 1. */
  bins: readonly { from: number; to: number; share: number }[];
  /** Fitted curves, in shares per bin. `text`: its name, then what is said of it on lines of their own. */
  curves: readonly { text: readonly string[]; points: readonly { x: number; share: number }[] }[];
}

const GUTTER = 52;
const LABEL_GUTTER = 168;
const HEIGHT = 230;
const DASHES = ["", "7 3", "2 3"];
const SAMPLE = 26;

/** How values are spread, as bars, with the curves fitted to them; each curve is named beside a piece of its line. */
export function histogramChart(columns: HistogramColumns, context: ChartContext): SVGSVGElement {
  if (columns.bins.length === 0) return emptyChart(columns, "There are no values to show.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 22;
  const floor = top + HEIGHT;
  const left = frame.left + GUTTER;
  const right = frame.right - (columns.curves.length > 0 ? LABEL_GUTTER : 12);
  const X = [...columns.bins.flatMap(({ from, to }) => [from, to]), ...columns.curves.flatMap(pointsX)];
  const x = scaleLinear()
    .domain([Math.min(...X), Math.max(...X)])
    .range([left, right]);
  const y = scaleLinear()
    .domain([0, Math.max(...tallest(columns))])
    .nice()
    .range([floor, top]);
  drawLeftAxis(frame.body, y, { kind: "share", label: "share in each bar" }, left, right, top - 12, frame.colour);
  const bottom = drawBottomAxis(frame.body, x, columns.quantity, floor, floor, frame.colour);
  for (const { from, to, share } of columns.bins) {
    if (share <= 0) continue;
    const bar = frame.body.append("rect").attr("x", (x(from) + 0.5).toFixed(1));
    bar.attr("y", y(share).toFixed(1)).attr("width", Math.max(0.8, x(to) - x(from) - 1).toFixed(1));
    bar.attr("height", (floor - y(share)).toFixed(1)).attr("fill", frame.colour("fill0"));
  }
  columns.curves.forEach((curve, index) => {
    const path = line<{ x: number; share: number }>(
      (point) => x(point.x),
      (point) => y(Math.min(point.share, y.domain()[1]!)),
    ).digits(1)([...curve.points]);
    stroke(frame, path ?? "", index);
  });
  drawNames(frame, columns, right + 16, top);
  return frame.finish(bottom);
}

function pointsX({ points }: HistogramColumns["curves"][number]): number[] {
  return points.map(({ x }) => x);
}

/** Bars settle the height; a curve may rise to twice that (one that has no end at 0 is cut off). */
function tallest({ bins, curves }: HistogramColumns): number[] {
  const bar = Math.max(...bins.map(({ share }) => share));
  const curve = Math.max(0, ...curves.flatMap(({ points }) => points.map(({ share }) => share)));
  return [bar, Math.min(curve, 2 * bar)];
}

function stroke(frame: ChartFrame, path: string, index: number): void {
  const drawn = frame.body
    .append("path")
    .attr("d", path)
    .attr("fill", "none")
    .attr("stroke", frame.colour(SERIES[index % SERIES.length]!))
    .attr("stroke-width", 2);
  const dash = DASHES[index % DASHES.length]!;
  if (dash !== "") drawn.attr("stroke-dasharray", dash);
}

function drawNames(frame: ChartFrame, { curves }: HistogramColumns, left: number, top: number): void {
  let y = top + 8;
  curves.forEach(({ text }, index) => {
    stroke(frame, `M${left},${y - 4}h${SAMPLE}`, index);
    text.forEach((part, row) => {
      const at = left + SAMPLE + 6;
      const [shown = ""] = wrapText(part, frame.right - at, row === 0 ? 12 : 11, 1, row === 0);
      const style = row === 0 ? { bold: true, size: 12 } : { fill: frame.colour("muted") };
      drawText(frame.body, at, y, shown, style);
      y += 15;
    });
    y += 8;
  });
}
