import { formatClock, formatDecimals } from "../../sim/text/units/index.ts";
import {
  type ChartContext,
  chartFrame,
  drawText,
  emptyChart,
  LINE_HEIGHT,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import type { Cell, ChartTable } from "./chartTable.ts";
import {
  BOARD_ROW,
  BOARD_STEP_SECONDS,
  type Board,
  type BoardDay,
  type BoardOrder,
  type BoardRows,
  boardHours,
  boardTime,
  type DaySpan,
  type OrderLabel,
  type WeekBoardColumns,
} from "./weekBoardColumns.ts";
import { drawBoardDay, drawBoardFill, drawOrder, orderLabel, orderWords } from "./weekBoardRows.ts";

/** Pixels of the names; what is longer than that in one word is cut. */
const MIN_GUTTER = 92;
const MAX_GUTTER = { wide: 170, narrow: 140 };
/** Of the gutter, for the number at the top of a row's scale. */
const SCALE_ROOM = 26;
const DAY_GAP = 6;
/** Width of a day without work. */
const CLOSED = 20;
const ROW_GAP = 5;
const MAX_NAME_LINES = 4;

/**
 * Days across and crews down, each half hour's people; below them lots, orders and what hangs in the chiller. In a narrow
 * picture the days stand below each other.
 */
export function weekBoardChart(columns: WeekBoardColumns, context: ChartContext): SVGSVGElement {
  if (!columns.days.some(({ works }) => works)) return emptyChart(columns, "No day of this sheet has work.", context);
  const frame = chartFrame(columns, context);
  const { defs, colour } = frame;
  const paints = {
    busy: textureFill(defs, frame.id("busy"), "rising", colour("range"), colour("line")),
    over: textureFill(defs, frame.id("over"), "cross", colour("beyond"), colour("limit")),
    evenLot: colour("fill0"),
    oddLot: colour("fill1"),
  };
  const board = { frame, columns, gutter: gutterOf(columns, frame.narrow), paints };
  const items = [
    { name: "with work in hand", fill: paints.busy },
    { name: "the same after the last shift", fill: paints.over },
    { name: "planned break", fill: colour("pause") },
  ];
  const key = drawKey(frame, items, frame.top - (frame.narrow ? LINE_HEIGHT : 4));
  const bottom = frame.narrow ? drawDown(board, key + 14) : drawAcross(board, key + 12);
  const lots = columns.days.some((day) => day.lots.length > 0)
    ? "A lot stands where its heads are hung; its number is that of the table of lots."
    : "";
  return frame.finish(bottom, lots, columns.footnote);
}

/** As wide as the longest word of a name; a wide picture has room for more than a word on a line. */
function gutterOf({ crews, fills }: WeekBoardColumns, narrow: boolean): number {
  const names = [...crews, ...fills].map(({ name }) => name).concat(LOTS, ORDERS);
  const pieces = narrow ? names.flatMap((name) => name.split(/(?<=[\s-])/)) : names;
  const widest = Math.max(...pieces.map((piece) => textWidth(piece, 11, true)));
  return Math.min(narrow ? MAX_GUTTER.narrow : MAX_GUTTER.wide, Math.max(MIN_GUTTER, Math.ceil(widest) + SCALE_ROOM));
}

function drawAcross(board: Board, top: number): number {
  const { frame, columns } = board;
  const spans = daySpans(board);
  const heads = columns.days.map((day, index) => (day.works ? headLines(day, spans[index]!) : []));
  const first = top + Math.max(...heads.map(({ length }) => length)) * LINE_HEIGHT + 8;
  const rows = rowsFrom(
    board,
    first,
    columns.orders.map((order) => orderLabel(board, order, spans[order.day]!)),
  );
  drawRowNames(board, rows);
  columns.days.forEach((day, index) => {
    const span = spans[index]!;
    heads[index]!.forEach((text, line) => {
      const style = line === 0 ? { bold: true } : { fill: frame.colour("muted") };
      drawText(frame.body, span.left, top + 10 + line * LINE_HEIGHT, text, style);
    });
    if (day.works) drawBoardDay(board, day, span, rows);
    else drawClosed(board, day, span, rows);
  });
  drawLower(board, rows, spans);
  return drawHours(board, spans, rows.bottom);
}

function drawDown(board: Board, top: number): number {
  const { frame, columns, gutter } = board;
  const span = { left: frame.left + gutter, right: frame.right - 6 };
  let y = top;
  columns.days.forEach((day, index) => {
    const orders = columns.orders.filter((order) => order.day === index);
    y = drawDayHead(board, day, orders, y);
    if (!day.works) return;
    const rows = rowsFrom(
      board,
      y,
      orders.map((order) => orderLabel(board, order, span)),
    );
    const spans = columns.days.map((_, other) => (other === index ? span : null));
    drawRowNames(board, rows);
    drawBoardDay(board, day, span, rows);
    drawLower(board, rows, spans);
    y = drawHours(board, spans, rows.bottom) + 16;
  });
  return y - 10;
}

/** Name and figures of a day across the whole width, and the orders of a day without work; returns where its rows begin. */
function drawDayHead({ frame }: Board, day: BoardDay, orders: readonly BoardOrder[], top: number): number {
  frame.body
    .append("path")
    .attr("d", `M${frame.left},${top - 4}H${frame.right}`)
    .attr("stroke", frame.colour("rule"));
  const room = frame.right - frame.left;
  const due = day.works ? [] : orders.map((order) => `order due ${orderWords(order)}`);
  const head = wrapText(dayName(day), room, 11, MAX_NAME_LINES, true);
  const words = [day.notes.join(", "), ...due].flatMap((text) => wrapText(text, room, 11, MAX_NAME_LINES));
  [...head, ...words].forEach((text, line) => {
    const style = line < head.length ? { bold: true } : { fill: frame.colour("muted") };
    drawText(frame.body, frame.left, top + 10 + line * LINE_HEIGHT, text, style);
  });
  // Above the rows stands what their scale counts.
  return top + (head.length + words.length) * LINE_HEIGHT + (day.works ? 24 : 10);
}

function dayName({ name, date }: BoardDay): string {
  return date === "" ? name : `${name}, ${date}`;
}

function daySpans({ frame, columns, gutter }: Board): DaySpan[] {
  const closed = columns.days.filter(({ works }) => !works).length;
  const room = frame.right - frame.left - gutter - closed * CLOSED - (columns.days.length - 1) * DAY_GAP;
  const width = Math.floor(room / (columns.days.length - closed));
  let left = frame.left + gutter;
  return columns.days.map(({ works }) => {
    const span = { left, right: left + (works ? width : CLOSED) };
    left = span.right + DAY_GAP;
    return span;
  });
}

function headLines({ name, date, notes }: BoardDay, { left, right }: DaySpan): string[] {
  const said = [date, ...notes].filter((text) => text !== "");
  return [...wrapText(name, right - left, 11, 1, true), ...said.flatMap((text) => wrapText(text, right - left, 11, 2))];
}

function rowsFrom(board: Board, top: number, labels: readonly OrderLabel[]): BoardRows {
  const { columns } = board;
  let y = top;
  const take = (name: string, height: number, more = 0) => {
    const place = y;
    y += Math.max(height, (nameLines(board, name).length + more) * LINE_HEIGHT) + ROW_GAP;
    return place;
  };
  const crews = columns.crews.map(({ name }) => take(name, BOARD_ROW.crew));
  const isHung = columns.days.some((each) => each.lots.length > 0);
  const lots = isHung ? take(LOTS, 2 * BOARD_ROW.lotTrack) : null;
  const { placed, height } = orderLines(labels, y);
  const orders = labels.length === 0 ? null : placed;
  if (orders !== null) take(ORDERS, height);
  const fills = columns.fills.map(({ name, places }) => take(name, BOARD_ROW.fill, places === null ? 1 : 2));
  return { crews, lots, orders, fills, top, bottom: y - ROW_GAP };
}

const LOTS = "lots hung";
const ORDERS = "orders due";

/** Orders that do not meet stand on one line. */
function orderLines(
  labels: readonly OrderLabel[],
  top: number,
): { placed: { label: OrderLabel; top: number }[]; height: number } {
  const lines: { top: number; height: number; ends: { from: number; to: number }[] }[] = [];
  let height = 0;
  const placed = labels.map((label) => {
    const span = extentOf(label);
    const found = lines.find(
      (line) =>
        label.lines.length * LINE_HEIGHT <= line.height &&
        line.ends.every(({ from, to }) => span.to < from || span.from > to),
    );
    if (found !== undefined) {
      found.ends.push(span);
      return { label, top: found.top };
    }
    const line = { top: top + height, height: label.lines.length * LINE_HEIGHT + 2, ends: [span] };
    height += line.height;
    lines.push(line);
    return { label, top: line.top };
  });
  return { placed, height };
}

function extentOf({ x, side, lines }: OrderLabel): { from: number; to: number } {
  const width = Math.max(...lines.map((line) => textWidth(line, 11))) + 16;
  return side === "right" ? { from: x - 8, to: x + width } : { from: x - width, to: x + 8 };
}

function nameLines({ gutter }: Board, name: string): string[] {
  return wrapText(name, gutter - SCALE_ROOM, 11, MAX_NAME_LINES, true);
}

function drawRowNames(board: Board, rows: BoardRows): void {
  const { frame, columns, gutter } = board;
  const scale = { anchor: "end", fill: frame.colour("muted") } as const;
  const name = (text: string, top: number) => {
    nameLines(board, text).forEach((line, i) => {
      drawText(frame.body, frame.left, top + 11 + i * LINE_HEIGHT, line, { bold: true });
    });
  };
  drawText(frame.body, frame.left + gutter - 5, rows.top - 4, "people", scale);
  columns.crews.forEach((crew, index) => {
    const top = rows.crews[index]!;
    name(crew.name, top);
    drawText(frame.body, frame.left + gutter - 5, top + 11, formatDecimals(crew.largest, 0), scale);
  });
  if (rows.lots !== null) name(LOTS, rows.lots);
  if (rows.orders !== null) name(ORDERS, rows.orders[0]!.top);
  columns.fills.forEach((fill, index) => {
    const top = rows.fills[index]!;
    const words = nameLines(board, fill.name).length;
    name(fill.name, top);
    const most =
      fill.places === null
        ? `most ${formatDecimals(fill.largest, 0)} heads`
        : `${formatDecimals(fill.places, 0)} places`;
    drawText(frame.body, frame.left, top + 11 + words * LINE_HEIGHT, most, { fill: frame.colour("muted") });
    if (fill.places === null) return;
    const limit = `most ${formatDecimals(fill.largest, 0)} heads`;
    drawText(frame.body, frame.left, top + 11 + (words + 1) * LINE_HEIGHT, limit, { fill: frame.colour("muted") });
  });
}

function drawLower(board: Board, rows: BoardRows, spans: readonly (DaySpan | null)[]): void {
  board.columns.fills.forEach((fill, index) => {
    drawBoardFill(board, fill, spans, rows.fills[index]!);
  });
  for (const { label, top } of rows.orders ?? []) drawOrder(board, label, top);
}

/** Its words stand upright in the narrow column. */
function drawClosed({ frame }: Board, day: BoardDay, { left, right }: DaySpan, rows: BoardRows): void {
  const end = rows.fills[0] ?? rows.bottom;
  const ground = frame.body
    .append("rect")
    .attr("x", left)
    .attr("y", rows.top)
    .attr("width", right - left);
  ground.attr("height", end - rows.top).attr("fill", frame.colour("pause"));
  const room = end - rows.top - 8;
  const notes = day.notes.join(", ");
  const words = [`${dayName(day)}: ${notes}`, `${day.name}: ${notes}`].find((each) => textWidth(each, 11) <= room);
  const [text = ""] = wrapText(words ?? notes, room, 11, 1);
  const upright = frame.body
    .append("g")
    .attr("transform", `translate(${(left + right) / 2 - 4},${rows.top + 6}) rotate(90)`);
  drawText(upright, 0, 0, text, { fill: frame.colour("muted") });
}

function drawHours({ frame, columns }: Board, spans: readonly (DaySpan | null)[], bottom: number): number {
  const muted = { fill: frame.colour("muted") };
  columns.days.forEach(({ works }, index) => {
    const span = spans[index] ?? null;
    if (span === null || !works) return;
    const time = boardTime(columns, span);
    for (const hour of boardHours(columns, span)) {
      drawText(frame.body, time(hour * 3600), bottom + 14, String(hour % 24), { ...muted, anchor: "middle" });
    }
  });
  drawText(frame.body, frame.left, bottom + 14, "clock time (h)", muted);
  return bottom + 18;
}

/** A row a half hour of every day of work: people of each crew with work in hand and on duty. */
export function weekBoardTable({ days, crews }: WeekBoardColumns): ChartTable {
  return {
    columns: [
      { name: "day", unit: "" },
      { name: "half hour from", unit: "clock time" },
      ...crews.flatMap(({ name }) => [
        { name: `${name}, with work in hand`, unit: "people" },
        { name: `${name}, on duty`, unit: "people" },
      ]),
    ],
    rows: days.flatMap(({ name, crews: found }) =>
      (found[0]?.busy ?? []).map((_, step): Cell[] => [
        name,
        formatClock(found[0]!.startClockSeconds + step * BOARD_STEP_SECONDS),
        ...found.flatMap(({ busy, present }) => [busy[step]!, present[step]!]),
      ]),
    ),
  };
}
