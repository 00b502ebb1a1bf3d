import { scaleLinear } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawClockGrid,
  drawPauses,
  drawText,
  emptyChart,
  type Group,
  LINE_HEIGHT,
  type PauseBand,
  type TimeScale,
  timePlot,
  timeScale,
  wrapText,
} from "../frame/index.ts";
import { drawFootnote, drawTrace, type TraceColumns } from "../marks/index.ts";

export interface QueuePanel {
  name: string;
  /** A line of figures below the name, say "most 8, mean 4.7 heads". */
  note: string;
  /** Height of the capacity line; null draws none. */
  capacity: number | null;
  capacityText: string;
  largest: number;
  trace: TraceColumns;
}

export interface QueueColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  pauses: readonly PauseBand[];
  panels: readonly QueuePanel[];
  /** Said below the panels: what was left out. */
  footnote: string;
}

export const PANEL = 50;
export const GAP = 16;
/** Many panels stand closer, so that the picture fits on a sheet of paper without being made smaller. */
const CLOSE_PANEL = 34;
const CLOSE_GAP = 10;
const MOST_ROOMY = 11;
export const GUTTER = 182;
export const RIGHT_GUTTER = 84;

/** Heads waiting before each station over the clock: one panel a station, shared time axis, capacity line with its label. */
export function queueChart(columns: QueueColumns, context: ChartContext): SVGSVGElement {
  if (columns.panels.length === 0) return emptyChart(columns, columns.footnote, context);
  const frame = chartFrame(columns, context);
  const time = timeScale(frame, columns.endSeconds, frame.left + GUTTER, frame.right - RIGHT_GUTTER);
  const top = frame.top + 14;
  const roomy = columns.panels.length <= MOST_ROOMY;
  const [height, gap] = roomy ? [PANEL, GAP] : [CLOSE_PANEL, CLOSE_GAP];
  const bottom = top + columns.panels.length * (height + gap) - gap;
  timePlot(frame, top, bottom);
  drawPauses(frame.body, columns.pauses, time, top, bottom, frame.colour("pause"), frame.colour("muted"));
  drawClockGrid(frame.body, time, columns.startClockSeconds, top, bottom, frame.colour);
  columns.panels.forEach((panel, index) => {
    drawPanel(frame, panel, columns.endSeconds, time, top + index * (height + gap), height);
  });
  const end = drawClockAxis(frame.body, time, columns.startClockSeconds, bottom + 6, frame.colour);
  return frame.finish(drawFootnote(frame, columns.footnote, end));
}

/** One panel of a shared time axis: words at the left, trace over its scale, capacity line with its label at the right. */
export function drawPanel(
  frame: ChartFrame,
  panel: QueuePanel,
  endSeconds: number,
  time: TimeScale,
  top: number,
  height: number,
): void {
  const group = frame.body.append("g");
  const floor = top + height;
  const [left, right] = time.range() as [number, number];
  const value = scaleLinear()
    .domain([0, Math.max(1, panel.largest, panel.capacity ?? 0)])
    .range([floor, top + 3]);
  drawPanelWords(frame, group, panel, top);
  drawText(group, left - 5, value(value.domain()[1]!) + 5, formatDecimals(value.domain()[1]!, 0), {
    anchor: "end",
    fill: frame.colour("muted"),
  });
  drawText(group, left - 5, floor + 3, "0", { anchor: "end", fill: frame.colour("muted") });
  group.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  drawTrace(frame, group, panel.trace, endSeconds, time, value);
  if (panel.capacity !== null) {
    const line = group.append("path").attr("d", `M${left},${value(panel.capacity)}H${right}`);
    line.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.5).attr("stroke-dasharray", "6 3");
  }
  const words = wrapText(panel.capacityText, RIGHT_GUTTER - 8, 11, 3);
  const middle = top + (height - words.length * LINE_HEIGHT) / 2 + 11;
  const labelY = panel.capacity === null ? middle : value(panel.capacity) + 4;
  const ink = frame.colour(panel.capacity === null ? "muted" : "limit");
  words.forEach((line, i) => {
    drawText(group, right + 8, labelY + i * LINE_HEIGHT, line, { fill: ink });
  });
}

function drawPanelWords(frame: ChartFrame, group: Group, panel: QueuePanel, top: number): void {
  const lines = wrapText(panel.name, GUTTER - 34, 11, 2, true);
  lines.forEach((line, i) => {
    drawText(group, frame.left, top + 10 + i * LINE_HEIGHT, line, { bold: true });
  });
  drawText(group, frame.left, top + 10 + lines.length * LINE_HEIGHT, panel.note, { fill: frame.colour("muted") });
}
