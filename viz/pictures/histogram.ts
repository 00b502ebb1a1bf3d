import { line, scaleLinear, tickStep } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { ColumnFit, FamilyFit, FitPicture } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawLeftAxis,
  drawText,
  emptyChart,
  isolated,
  type Quantity,
  SERIES,
  wrapText,
} from "../frame/index.ts";
import { drawLineKey, type LineSample } from "../marks/index.ts";
import { fitTestWords } from "../words/index.ts";

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

/** Plain steps lie up to a factor of 2.5 apart; this makes the next smaller one the likely choice. */
const FINER = 1.5;

const CAPTION = "A good curve follows the bars at both ends, not only in the middle. Two humps: two kinds of work";

/** How the times of a column are spread, with the foremost fits. */
export function histogramView(fit: ColumnFit, picture: FitPicture): HistogramColumns {
  const width = binWidth(fit);
  const bins = binsOf(fit, picture, width);
  const curves = picture.densities.map(({ family, x, density }) => ({
    text: curveWords(fit.fits.find((each) => each.family === family)!),
    points: x.map((at, i) => ({ x: at, share: density[i]! * width })),
  }));
  return {
    title: `${isolated(fit.heading)}: measured times and fitted curves`,
    caption: curves.length === 0 ? "" : CAPTION,
    subtitle: subtitle(fit, picture),
    description: fit.advice.words,
    quantity: { kind: "number", label: isolated(fit.heading), unit: fit.unit },
    bins,
    curves,
  };
}

function subtitle({ ended, open, zeros }: ColumnFit, { densities }: FitPicture): string {
  const times = `${ended.length} times${zeros > 0 ? `, ${zeros} of 0 left out` : ""}`;
  const still = open.length > 0 ? `; ${open.length} still open count as longer times` : "";
  return `${times}${still}${densities.length > 0 ? ". Curves: the best first; a lower AIC (Akaike 1974) is a better fit" : ""}`;
}

function curveWords(fit: FamilyFit): string[] {
  const behind = fit.behind === 0 ? "lowest AIC" : `AIC ${formatDecimals(fit.behind, 1)} above`;
  return [fit.family, behind, ...fitTestWords(fit)];
}

/** Freedman and Diaconis 1981, rounded down to a plain step that is a whole multiple of the step of the stopwatch. */
function binWidth({ ended, resolution }: ColumnFit): number {
  if (ended.length === 0) return 1;
  const at = (p: number) => ended[Math.min(ended.length - 1, Math.floor(p * ended.length))]!;
  const span = ended.at(-1)! - ended[0]!;
  const wished = (2 * (at(0.75) - at(0.25))) / Math.cbrt(ended.length) || span / 8;
  const plain = span > 0 ? tickStep(0, span, Math.min(40, Math.max(6, (FINER * span) / wished))) : resolution || 1;
  return resolution > 0 ? Math.max(1, Math.round(plain / resolution)) * resolution : plain;
}

function binsOf({ resolution }: ColumnFit, { steps }: FitPicture, width: number): HistogramColumns["bins"] {
  if (steps.length === 0) return [];
  // Edges lie between two readings of the stopwatch, so that no reading lies on one.
  const start = Math.floor((steps[0]!.time + resolution / 2) / width) * width - resolution / 2;
  const count = Math.floor((steps.at(-1)!.time - start) / width + 1e-9) + 1;
  const shares = new Array<number>(count).fill(0);
  for (const { time, share } of steps) shares[Math.floor((time - start) / width + 1e-9)]! += share;
  return shares.map((share, k) => ({ from: start + k * width, to: start + (k + 1) * width, share }));
}

/** How values are spread, as bars, with the curves fitted to them; each curve is named beside a piece of its line. */
export function histogramChart(columns: HistogramColumns, context: ChartContext): SVGSVGElement {
  if (columns.bins.length === 0) return emptyChart(columns, "There are no values to show.", context);
  const frame = chartFrame(columns, context);
  const top = (frame.narrow ? drawLineKey(frame, samplesOf(frame, columns), frame.top) : frame.top) + 22;
  const floor = top + HEIGHT;
  const left = frame.left + GUTTER;
  const right = frame.right - (columns.curves.length > 0 && !frame.narrow ? LABEL_GUTTER : 12);
  const X = [...columns.bins.flatMap(({ from, to }) => [from, to]), ...columns.curves.flatMap(pointsX)];
  const x = scaleLinear()
    .domain([Math.min(...X), Math.max(...X)])
    .range([left, right]);
  const y = scaleLinear()
    .domain([0, Math.max(...tallest(columns))])
    .nice()
    .range([floor, top]);
  drawLeftAxis(frame, y, { kind: "share", label: "share in each bar" }, { left, right, labelY: top - 12 });
  const bottom = drawBottomAxis(frame, x, columns.quantity, { y: floor });
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
  if (!frame.narrow) drawNames(frame, columns, right + 16, top);
  return frame.finish(bottom);
}

function samplesOf(frame: ChartFrame, { curves }: HistogramColumns): LineSample[] {
  return curves.map(({ text }, index) => {
    const stroke = frame.colour(SERIES[index % SERIES.length]!);
    return { name: text.join(", "), stroke, width: 2, dash: DASHES[index % DASHES.length]! };
  });
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
