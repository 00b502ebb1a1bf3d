import { scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawText,
  emptyChart,
  type Quantity,
  readable,
} from "../frame/index.ts";
import { drawFootnote, drawLevelInterval } from "../marks/index.ts";
import {
  drawFigures,
  drawNames,
  figureGutter,
  nameGutter,
  paddedDomain,
  type ResponseRow,
  rowHeight,
} from "./response.ts";

export interface DifferenceRow extends ResponseRow {
  /** The interval leaves 0 out. */
  shown: boolean;
}

export interface DifferenceColumns extends ChartWords {
  quantity: Quantity;
  rows: readonly DifferenceRow[];
  /** Words for the two sides of zero, left and right. */
  sides: readonly [string, string];
  /** Said where no row has a value. Default: nothing to compare with the base. */
  nothing?: string;
  /** Below the picture, each in up to four lines. */
  footnotes?: readonly string[];
}

const TEXT_GUTTER = 188;

/** Paired difference of each variant to the base: filled dot where it is shown, open dot where it is not, both said in words. */
export function differenceChart(columns: DifferenceColumns, context: ChartContext): SVGSVGElement {
  const known = columns.rows.filter((row) => row.mean !== null);
  if (known.length === 0)
    return emptyChart(columns, columns.nothing ?? "There is nothing to compare with the base.", context);
  const frame = chartFrame(columns, context);
  const zero = { mean: 0, low: null, high: null };
  const names = nameGutter(columns.rows);
  const figures = figureGutter(columns.rows, TEXT_GUTTER);
  const value = scaleLinear()
    .domain(paddedDomain([...columns.rows, zero]))
    .range([frame.left + names, frame.right - figures]);
  const top = frame.top + 16;
  const row = rowHeight(columns.rows, names - 12);
  const bottom = top + columns.rows.length * row;
  const room = frame.right - frame.left - Math.abs(names - figures);
  const end = drawBottomAxis(frame.body, value, columns.quantity, top, bottom, frame.colour, room);
  drawZero(frame, columns.sides, value(0), value.range() as [number, number], top, bottom);
  columns.rows.forEach((entry, index) => {
    const y = top + (index + 0.5) * row;
    drawNames(frame, entry.name, y, names - 12);
    drawRow(frame, entry, value, y, figures);
  });
  return frame.finish((columns.footnotes ?? []).reduce((lower, note) => drawFootnote(frame, note, lower), end));
}

function drawZero(
  frame: ChartFrame,
  sides: readonly [string, string],
  x: number,
  [left, right]: [number, number],
  top: number,
  bottom: number,
): void {
  const line = frame.body.append("path").attr("d", `M${x.toFixed(1)},${top - 2}V${bottom}`);
  line.attr("stroke", frame.colour("ink")).attr("stroke-width", 1.4);
  const style = { fill: frame.colour("muted") };
  drawText(frame.body, left, top - 6, `← ${sides[0]}`, style);
  drawText(frame.body, right, top - 6, `${sides[1]} →`, { ...style, anchor: "end" });
}

function drawRow(
  frame: ChartFrame,
  row: DifferenceRow,
  value: (v: number) => number,
  y: number,
  figures: number,
): void {
  const group = readable(frame.body, `${row.name}: ${row.text}`);
  if (row.mean !== null) {
    drawLevelInterval(
      group,
      value(row.mean),
      row.low === null ? null : value(row.low),
      row.high === null ? null : value(row.high),
      y,
      { stroke: frame.colour(row.shown ? "line" : "muted"), paper: frame.colour("paper"), filled: row.shown },
    );
  }
  drawFigures(frame, row.text, y, figures - 12);
}
