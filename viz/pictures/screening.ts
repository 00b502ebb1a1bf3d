import { type ScaleLinear, scaleLinear } from "d3";
import type { ResponseInfo, StudyResults } from "../contract.ts";
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
  spreadLabels,
  wrapText,
} from "../frame/index.ts";
import { drawLevelInterval } from "../marks/index.ts";
import { rankedEffects, screeningWords, studyFormat } from "../words/index.ts";
import { type ChartTable, quantityUnit, textColumn } from "./chartTable.ts";
import { drawNumbered } from "./numberedPoints.ts";

/** One factor of a screening, in the unit of the response's differences. */
export interface ScreeningPoint {
  name: string;
  /** Mean size of the effect. */
  muStar: number;
  /** Half-width of that; null where it is not known. */
  halfWidth: number | null;
  /** Spread of the effect. */
  sigma: number;
}

export interface ScreeningColumns extends ChartWords {
  quantity: Quantity;
  /** The factor that matters most first. */
  points: readonly ScreeningPoint[];
}

const GUTTER = 64;

const LABEL_GUTTER = 190;

const HEIGHT = 280;

const MAX_LABELS = 16;

const LABEL_GAP = 16;

type Scale = ScaleLinear<number, number>;

/** What each factor of a screening does to a response; null where the study is no screening or nothing is known. */
export function screeningView(results: StudyResults, info: ResponseInfo): ScreeningColumns | null {
  const ranked = rankedEffects(results, info);
  if (ranked.length === 0) return null;
  const format = studyFormat(results, info);
  const scale = format.differenceScale;
  return {
    title: `${isolated(info.label)}: which factors matter`,
    caption: "Far right: worth a study of its own. Near 0: leave it as it is",
    subtitle:
      "Further right: the factor changes the result more. Higher: how much depends more on its own level or on other factors; above the dashed line, mostly on these",
    description: screeningWords(results, info, format).join(" "),
    quantity: format.differenceQuantity,
    points: ranked.map(({ name, effects }) => ({
      name,
      muStar: effects.muStar * scale,
      sigma: (effects.sigma ?? 0) * scale,
      halfWidth: effects.muStarHalfWidth === null ? null : effects.muStarHalfWidth * scale,
    })),
  };
}

/** Size against spread of every factor's effect (Morris 1991), each of the foremost ones named beside the plot. */
export function screeningChart(columns: ScreeningColumns, context: ChartContext): SVGSVGElement {
  if (columns.points.length === 0) return emptyChart(columns, "No factor has an effect to show.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 22;
  const floor = top + HEIGHT;
  const left = frame.left + GUTTER;
  const right = frame.right - labelGutter(frame);
  const x = scaleLinear()
    .domain([0, mostOf(columns, "muStar")])
    .range([left, right]);
  const y = scaleLinear()
    .domain([0, mostOf(columns, "sigma")])
    .range([floor, top]);
  const named = (label: string): Quantity => ({ ...columns.quantity, label });
  drawLeftAxis(frame, y, named("spread of the effect (\u03C3)"), { left, right, labelY: top - 10 });
  const bottom = drawBottomAxis(frame, x, named("mean size of the effect (\u03BC*)"), { top, y: floor });
  drawEqual(frame, x, y);
  const told = columns.points.slice(0, MAX_LABELS);
  drawLabels(frame, told, x, y);
  for (const { muStar, sigma, halfWidth } of columns.points) {
    const half = halfWidth ?? 0;
    const style = { stroke: frame.colour("line"), paper: frame.colour("paper"), filled: true };
    drawLevelInterval(
      frame.body,
      x,
      { mean: muStar, low: Math.max(0, muStar - half), high: muStar + half },
      y(sigma),
      style,
    );
  }
  return frame.finish(
    frame.narrow
      ? drawNumbered(
          frame,
          told.map(({ name }) => ({ name, text: "" })),
          bottom,
        )
      : bottom,
  );
}

/** A narrow picture numbers its points and tells below who they are. */
function labelGutter({ narrow }: ChartFrame): number {
  return narrow ? 44 : LABEL_GUTTER;
}

/** Upper end of an axis: room for every dot and interval; 1 where nothing differs from 0. */
function mostOf({ points }: ScreeningColumns, axis: "muStar" | "sigma"): number {
  const ends = points.map((point) => point[axis] + (axis === "muStar" ? (point.halfWidth ?? 0) : 0));
  return Math.max(...ends) * 1.08 || 1;
}

/** Where spread and size are the same. */
function drawEqual(frame: ChartFrame, x: Scale, y: Scale): void {
  const end = Math.min(x.domain()[1]!, y.domain()[1]!);
  frame.body
    .append("path")
    .attr("d", `M${x(0)},${y(0)}L${x(end).toFixed(1)},${y(end).toFixed(1)}`)
    .attr("stroke", frame.colour("muted"))
    .attr("stroke-dasharray", "5 4");
}

/** Names in a column beside the plot, each with a thin line from its dot. */
function drawLabels(frame: ChartFrame, told: readonly ScreeningPoint[], x: Scale, y: Scale): void {
  const [floor, top] = y.range() as [number, number];
  const places = spreadLabels(
    told.map(({ sigma }) => y(sigma)),
    LABEL_GAP,
    top + 4,
    floor - 4,
  );
  const at = frame.right - labelGutter(frame) + 16;
  told.forEach(({ name, muStar, sigma }, index) => {
    const place = places[index]!;
    frame.body
      .append("path")
      .attr("d", `M${x(muStar).toFixed(1)},${y(sigma).toFixed(1)}L${at - 4},${place.toFixed(1)}`)
      .attr("stroke", frame.colour("rule"))
      .attr("stroke-width", 0.7)
      .attr("fill", "none");
    const [line = ""] = wrapText(frame.narrow ? String(index + 1) : name, frame.right - at, 11, 1);
    drawText(frame.body, at, place + 4, line);
  });
}

export function screeningTable({ quantity, points }: ScreeningColumns): ChartTable {
  const unit = quantityUnit(quantity);
  return {
    columns: [
      textColumn("factor"),
      { name: "mean size", unit },
      { name: "half-width", unit },
      { name: "spread", unit },
    ],
    rows: points.map(({ name, muStar, halfWidth, sigma }) => [name, muStar, halfWidth, sigma]),
  };
}
