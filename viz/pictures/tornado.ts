import type { Doubt, DoubtEstimate } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  chartFrame,
  emptyChart,
  type Quantity,
  textureFill,
} from "../frame/index.ts";
import { drawKey, drawLevelInterval } from "../marks/index.ts";
import { doubtName, quoted, responseFormat, variantTold } from "../words/index.ts";
import { type BarWords, barRows } from "./barRows.ts";
import { type ChartTable, quantityUnit, textColumn } from "./chartTable.ts";
import { MAX_TOLD } from "./response.ts";

/** How much of the span one figure owes, in the unit of differences of the response. */
export interface TornadoRow extends BarWords {
  isGuess: boolean;
  /** By how much the span would be narrower on average if this figure were known, with its interval. */
  narrower: number;
  low: number;
  high: number;
  /** Part of what is not known, 0 to 1. */
  share: number;
}

export interface TornadoColumns extends ChartWords {
  quantity: Quantity;
  /** The figure that owes most first. */
  rows: readonly TornadoRow[];
}

const MAX_ROWS = 12;
const BAR = 20;
const HEIGHT = 14;

/** What each figure does to the first result, by the plan that is told; null where nothing is not known. */
export function tornadoView(doubt: Doubt): TornadoColumns | null {
  const told = variantTold(doubt);
  const estimate = doubt.estimates[0]?.[told] ?? null;
  if (estimate === null || !(estimate.notKnown?.value ?? 0)) return null;
  const info = doubt.responses[0]!;
  const { calendar, figures, variants } = doubt;
  const format = responseFormat(info, calendar.startClockSeconds, undefined, calendar.period);
  const fine = (estimate.days.high - estimate.days.low) / 20;
  const rows = estimate.figures
    .flatMap(({ share, narrower }, figure) => {
      if (share === null) return [];
      const [low, high] = [share.low, share.high].map((part) => narrowerBy(estimate, part)) as [number, number];
      const text = `${format.size(narrower, fine)} narrower (${format.sizeRange(Math.min(low, narrower), high, fine)})\n${Math.round(100 * share.value)} % of what is not known`;
      const scale = format.differenceScale;
      const row = { narrower: narrower * scale, low: Math.min(low, narrower) * scale, high: high * scale };
      return [
        {
          name: doubtName(figures[figure]!),
          text,
          isGuess: figures[figure]!.kind === "guess",
          ...row,
          share: share.value,
        },
      ];
    })
    .sort((a, b) => b.narrower - a.narrower);
  const of = variants.length > 1 ? ` with ${quoted(variants[told]!)}` : "";
  return {
    title: `Which figure to measure first${of}`,
    caption: "On top: the figure whose measuring narrows the span most",
    subtitle: `By how much the span of ${calendar.period}s would be narrower on average if one figure were known exactly and the others as now. Bars do not add up; a range reaches as far as ${doubt.counts.worlds} worlds leave it open`,
    description: rows
      .slice(0, MAX_TOLD)
      .map(({ name, text }) => `${name}: ${text.replace("\n", ", ")}.`)
      .join(" "),
    quantity: narrowerQuantity(format.differenceQuantity),
    rows,
  };
}

/** The span less what stays of it once so much of what is not known is known. */
function narrowerBy({ days, notKnown }: DoubtEstimate, share: number): number {
  return (days.high - days.low) * (1 - Math.sqrt(1 - Math.min(1, share) * notKnown!.value));
}

function narrowerQuantity(quantity: Quantity): Quantity {
  return { ...quantity, label: "narrower if it were known" };
}

export function tornadoChart(columns: TornadoColumns, context: ChartContext): SVGSVGElement {
  const rows = columns.rows.slice(0, MAX_ROWS);
  if (rows.length === 0) return emptyChart(columns, "No uncertain figure moves this result.", context);
  const frame = chartFrame(columns, context);
  const { colour, defs, id } = frame;
  const guess = textureFill(defs, id("guess"), "rising", colour("starved"), colour("muted"));
  const measured = colour("starved");
  const key = [
    ...(rows.some(({ isGuess }) => isGuess) ? [{ name: "a guess", fill: guess }] : []),
    ...(rows.some(({ isGuess }) => !isGuess) ? [{ name: "measured", fill: measured }] : []),
  ];
  const top = drawKey(frame, key, frame.top) + 12;
  const domain = [0, Math.max(...rows.map(({ high }) => high)) * 1.05 || 1] as const;
  const style = { stroke: colour("ink"), paper: colour("paper"), filled: true };
  const end = barRows(frame, rows, { domain, quantity: columns.quantity, top, bar: BAR }, (group, row, value, y) => {
    const rect = group
      .append("rect")
      .attr("x", value(0).toFixed(1))
      .attr("y", y - HEIGHT / 2)
      .attr("height", HEIGHT);
    rect
      .attr("width", Math.max(0, value(row.narrower) - value(0)).toFixed(1))
      .attr("fill", row.isGuess ? guess : measured);
    rect.attr("stroke", colour("ink")).attr("stroke-width", 0.8);
    drawLevelInterval(group, value, { mean: row.narrower, low: row.low, high: row.high }, y, style);
  });
  const more = columns.rows.length - rows.length;
  return frame.finish(end, more === 0 ? "" : `${more} more figures, each of which narrows it less, are in the table.`);
}

export function tornadoTable({ quantity, rows }: TornadoColumns): ChartTable {
  const unit = quantityUnit(quantity);
  const columns = ["narrower by", "low", "high"].map((name) => ({ name, unit }));
  return {
    columns: [textColumn("figure"), textColumn("known by"), ...columns, { name: "of what is not known", unit: "%" }],
    rows: rows.map(({ name, isGuess, narrower, low, high, share }) => [
      ...[name, isGuess ? "a guess" : "measured"],
      ...[narrower, low, high, 100 * share],
    ]),
  };
}
