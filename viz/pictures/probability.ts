import { line, scaleLinear } from "d3";
import type { ColumnFit, FitPicture } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawLeftAxis,
  emptyChart,
  isolated,
  type Quantity,
} from "../frame/index.ts";
import { fitTestWords } from "../words/index.ts";

export interface ProbabilityColumns extends ChartWords {
  /** Of the fitted values, along x, and of the observed ones, upwards: one unit. */
  fitted: Quantity;
  observed: Quantity;
  /** Ascending; `low` and `high` null where there is no band. */
  points: readonly { fitted: number; observed: number; low: number | null; high: number | null }[];
}

const GUTTER = 60;

const HEIGHT = 320;

/** Observed against fitted times of the family that is advised (or foremost); null where nothing was fitted. */
export function probabilityView(fit: ColumnFit, { quantiles }: FitPicture): ProbabilityColumns | null {
  if (quantiles === null) return null;
  const { family, points } = quantiles;
  const band =
    fit.open.length === 0
      ? "Band: 95 % of such points lie in it if the curve is right, each by itself"
      : "No band with open times";
  const tests = fitTestWords(fit.fits.find((each) => each.family === family)!);
  return {
    title: `${isolated(fit.heading)}: measured times and the fitted curve (${family})`,
    caption:
      "Points on the line: the curve fits. Points above it at the right: long times are longer than the curve says; below: shorter",
    subtitle: band,
    description: tests.join("; "),
    fitted: { kind: "number", label: `fitted (${family})`, unit: fit.unit },
    observed: { kind: "number", label: "observed", unit: fit.unit },
    points,
  };
}

/** Observed against fitted values of the same rank: on the line when the fit is right, in the band most of the time. */
export function probabilityChart(columns: ProbabilityColumns, context: ChartContext): SVGSVGElement {
  if (columns.points.length === 0)
    return emptyChart(columns, "Nothing was fitted, so there is nothing to show.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 22;
  const floor = top + HEIGHT;
  const [left, right] = [frame.left + GUTTER, frame.right - 20];
  const { points } = columns;
  const all = points.flatMap(({ fitted, observed, low, high }) => [fitted, observed, low ?? fitted, high ?? fitted]);
  const x = padded(points.map(({ fitted }) => fitted)).range([left, right]);
  const y = padded(all).range([floor, top]);
  drawLeftAxis(frame, y, columns.observed, { left, right, labelY: top - 12 });
  const bottom = drawBottomAxis(frame, x, columns.fitted, { top, y: floor });
  const banded = points.filter(({ low, high }) => low !== null && high !== null);
  if (banded.length > 1) {
    const ring = [
      ...banded.map(({ fitted, high }) => [x(fitted), y(high!)] as [number, number]),
      ...banded.toReversed().map(({ fitted, low }) => [x(fitted), y(low!)] as [number, number]),
    ];
    const band = frame.body.append("path").attr("d", `${line().digits(1)(ring)}Z`);
    band.attr("fill", frame.colour("range")).attr("fill-opacity", 0.55);
  }
  const ends = x.domain().map((value) => `${x(value).toFixed(1)},${y(value).toFixed(1)}`);
  const equal = frame.body.append("path").attr("d", `M${ends.join("L")}`);
  equal.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.5).attr("fill", "none");
  for (const { fitted, observed } of points) {
    const dot = frame.body.append("circle").attr("cx", x(fitted).toFixed(1)).attr("cy", y(observed).toFixed(1));
    dot.attr("r", 3.2).attr("fill", frame.colour("paper")).attr("stroke", frame.colour("line"));
    dot.attr("stroke-width", 1.5);
  }
  return frame.finish(bottom);
}

/** A scale with 4 % of air at both ends. */
function padded(values: readonly number[]) {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const air = (high - low) * 0.04 || 1;
  return scaleLinear().domain([low - air, high + air]);
}
