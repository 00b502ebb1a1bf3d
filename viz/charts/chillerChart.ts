import { scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawClockGrid,
  drawLeftAxis,
  drawPauses,
  drawText,
  emptyChart,
  type PauseBand,
  type TimeScale,
  timePlot,
  timeScale,
  wrapText,
} from "../frame/index.ts";
import { drawFootnote, drawTrace, type TraceColumns } from "../marks/index.ts";

/** What a chiller holds, or the heat it has to carry off, over the day. */
export interface ChillerPanel {
  label: string;
  unit: string;
  trace: TraceColumns;
  largest: number;
  /** Height of the capacity line; null draws none. */
  capacity: number | null;
  capacityText: string;
}

export interface ChillerColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  pauses: readonly PauseBand[];
  panels: readonly ChillerPanel[];
  footnote: string;
}

const PANEL = 120;
const GUTTER = 52;
const RIGHT_GUTTER = 96;

/** The fill of a chiller against its places, and below it the heat that comes out of the carcasses. */
export function chillerChart(columns: ChillerColumns, context: ChartContext): SVGSVGElement {
  if (columns.panels.length === 0) return emptyChart(columns, columns.footnote, context);
  const frame = chartFrame(columns, context);
  const time = timeScale(frame, columns.endSeconds, frame.left + GUTTER, frame.right - RIGHT_GUTTER);
  let top = frame.top;
  for (const panel of columns.panels) {
    drawChillerPanel(frame, panel, columns, time, top + 36);
    top += PANEL + 48;
  }
  timePlot(frame, frame.top + 36, top - 12);
  const end = drawClockAxis(frame.body, time, columns.startClockSeconds, top - 10, frame.colour);
  return frame.finish(drawFootnote(frame, columns.footnote, end));
}

function drawChillerPanel(
  frame: ChartFrame,
  panel: ChillerPanel,
  columns: ChillerColumns,
  time: TimeScale,
  top: number,
): void {
  const floor = top + PANEL;
  const [left, right] = time.range() as [number, number];
  const value = scaleLinear()
    .domain([0, Math.max(panel.largest, panel.capacity ?? 0) * 1.04 || 1])
    .range([floor, top]);
  drawPauses(frame.body, columns.pauses, time, top, floor, frame.colour("pause"), frame.colour("muted"));
  drawClockGrid(frame.body, time, columns.startClockSeconds, top, floor, frame.colour);
  const quantity = { kind: "number", label: panel.label, unit: panel.unit } as const;
  drawLeftAxis(frame.body, value, quantity, left, right, top - 22, frame.colour);
  drawTrace(frame, frame.body, panel.trace, columns.endSeconds, time, value);
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  if (panel.capacity !== null) {
    const line = frame.body.append("path").attr("d", `M${left},${value(panel.capacity).toFixed(1)}H${right}`);
    line.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.5).attr("stroke-dasharray", "6 3");
  }
  const labelY = panel.capacity === null ? top + 12 : value(panel.capacity) + 4;
  const fill = frame.colour(panel.capacity === null ? "muted" : "limit");
  wrapText(panel.capacityText, RIGHT_GUTTER - 10, 11, 3).forEach((text, i) => {
    drawText(frame.body, right + 8, labelY + i * 14, text, { fill });
  });
}
