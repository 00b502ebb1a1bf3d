import { type ScaleLinear, scaleLinear } from "d3";
import { type ChartFrame, drawBottomAxis, type Group, type Quantity, readable } from "../frame/index.ts";
import { drawFigures, drawNames, figureGutter, nameGutter, rowHeight } from "./response.ts";
import { stackedRows } from "./stackedRows.ts";

/** Words of a row: its name at the left, figures in one or two lines at the right; in a narrow picture both above the bar. */
export interface BarWords {
  name: string;
  text: string;
}

export interface BarPlot {
  /** Ends of the axis below. */
  domain: readonly [number, number];
  quantity: Quantity;
  /** First free pixel, and pixels that a bar is high. */
  top: number;
  bar: number;
}

export type BarScale = ScaleLinear<number, number>;

const MIN_FIGURES = 120;

/** Rows of level bars over one axis; `draw` draws a row's bar about the pixel `y`. Returns the lower edge. */
export function barRows<Row extends BarWords>(
  frame: ChartFrame,
  rows: readonly Row[],
  plot: BarPlot,
  draw: (group: Group, row: Row, value: BarScale, y: number) => void,
): number {
  const { quantity, top } = plot;
  const put = (row: Row, value: BarScale, y: number) =>
    draw(readable(frame.body, `${row.name}: ${row.text}`), row, value, y);
  if (frame.narrow) {
    const places = stackedRows(frame, rows, top, plot.bar);
    const value = scaleLinear().domain(plot.domain).range([places.left, places.right]);
    const end = drawBottomAxis(frame, value, quantity, { top, y: places.bottom });
    places.drawWords();
    rows.forEach((row, index) => {
      put(row, value, places.middles[index]!);
    });
    return end;
  }
  const names = nameGutter(rows);
  const figures = figureGutter(rows, MIN_FIGURES);
  const value = scaleLinear()
    .domain(plot.domain)
    .range([frame.left + names, frame.right - figures]);
  const height = rowHeight(rows, names - 12);
  const room = frame.right - frame.left - Math.abs(names - figures);
  const end = drawBottomAxis(frame, value, quantity, { top, y: top + rows.length * height, labelRoom: room });
  rows.forEach((row, index) => {
    const y = top + (index + 0.5) * height;
    drawNames(frame, row.name, y, names - 12);
    put(row, value, y);
    drawFigures(frame, row.text, y, figures - 12);
  });
  return end;
}
