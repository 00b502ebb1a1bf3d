import { scaleLinear } from "d3";
import { formatClock, formatDecimals } from "../../sim/text/units/index.ts";
import { drawText, type Group, LINE_HEIGHT, readable, type TimeScale, textWidth, wrapText } from "../frame/index.ts";
import { stepBandPath, stepPath } from "../marks/index.ts";
import {
  BOARD_ROW,
  BOARD_STEP_SECONDS,
  type Board,
  type BoardCrewDay,
  type BoardDay,
  type BoardFill,
  type BoardOrder,
  type BoardRows,
  boardHours,
  boardTime,
  type DaySpan,
  type OrderLabel,
} from "./weekBoardColumns.ts";

/** A day's place on the board. */
interface Place extends DaySpan {
  rows: BoardRows;
  time: TimeScale;
}

/** Breaks, hours, people and lots of a day, and the end of its last shift. */
export function drawBoardDay(board: Board, day: BoardDay, span: DaySpan, rows: BoardRows): void {
  const { frame, columns } = board;
  const place = { ...span, rows, time: boardTime(columns, span) };
  drawGround(board, day, place);
  day.crews.forEach((crew, index) => {
    drawCrew(board, day, { crew, index }, place);
  });
  drawLots(board, day, place);
  if (day.shiftEnd === null) return;
  const line = frame.body
    .append("path")
    .attr("d", `M${fixed(place.time(day.shiftEnd))},${rows.top - 3}V${rows.bottom}`);
  line.attr("stroke", frame.colour("limit")).attr("stroke-dasharray", "3 2");
}

function drawGround({ frame, columns }: Board, { pauses }: BoardDay, { left, right, rows, time }: Place): void {
  const ground = frame.body.append("g");
  for (const { from, to } of pauses) {
    const x = Math.max(left, time(from));
    const width = Math.min(right, time(to)) - x;
    if (!(width > 0)) continue;
    const band = ground.append("rect").attr("x", fixed(x)).attr("y", rows.top).attr("width", fixed(width));
    band.attr("height", rows.bottom - rows.top).attr("fill", frame.colour("pause"));
  }
  for (const hour of boardHours(columns, { left, right })) {
    const path = `M${fixed(time(hour * 3600))},${rows.top}V${rows.bottom}`;
    ground.append("path").attr("d", path).attr("stroke", frame.colour("grid"));
  }
}

function drawCrew(
  { frame, columns, paints }: Board,
  day: BoardDay,
  { crew, index }: { crew: BoardCrewDay; index: number },
  { left, right, rows, time }: Place,
): void {
  const { name, largest } = columns.crews[index]!;
  const top = rows.crews[index]!;
  const floor = top + BOARD_ROW.crew;
  const share = formatDecimals(100 * crew.busyShare, 0);
  const words = `${name}, ${day.name}: ${crew.people} of ${largest} people, work in hand ${share} % of their time on duty`;
  const group = readable(frame.body, words);
  const height = scaleLinear()
    .domain([0, Math.max(1, largest)])
    .range([floor, top]);
  const starts = crew.busy.map((_, step) => crew.startClockSeconds + step * BOARD_STEP_SECONDS);
  const edges = [...starts, Math.min(columns.toSeconds, (starts.at(-1) ?? 0) + BOARD_STEP_SECONDS)];
  const cut = day.shiftEnd ?? columns.toSeconds;
  const tops = crew.busy.map(height);
  drawWork(
    group,
    paints.busy,
    edges.map((edge) => time(Math.min(edge, cut))),
    tops,
    floor,
  );
  drawWork(
    group,
    paints.over,
    edges.map((edge) => time(Math.max(edge, cut))),
    tops,
    floor,
  );
  const line = group
    .append("path")
    .attr("d", stepPath(starts.map(time), crew.present.map(height), time(edges.at(-1)!)));
  line.attr("fill", "none").attr("stroke", frame.colour("ink")).attr("stroke-width", 1.2);
  group.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  if (crew.people >= largest) return;
  const style = { anchor: "end", bold: true, fill: frame.colour("limit"), halo: frame.colour("paper") } as const;
  drawText(group, right, top + 10, `${crew.people} of ${largest}`, style);
}

/** Steps that the edges have pressed to nothing are not drawn. */
function drawWork(group: Group, fill: string, edges: readonly number[], tops: readonly number[], floor: number): void {
  const solid = tops.map((top, step) => (edges[step + 1]! > edges[step]! ? top : floor));
  const path = stepBandPath(
    edges,
    solid,
    solid.map(() => floor),
  );
  if (path !== "") group.append("path").attr("d", path).attr("fill", fill);
}

/** Every other lot stands on another line, so that numbers find room. */
function drawLots({ frame, paints }: Board, { lots }: BoardDay, { rows, time }: Place): void {
  if (rows.lots === null) return;
  const taken = [0, 0];
  for (const lot of lots) {
    const track = lot.number % 2;
    const top = rows.lots + track * BOARD_ROW.lotTrack;
    const [left, right] = [time(lot.from), Math.max(time(lot.to), time(lot.from) + 1.5)];
    const group = readable(frame.body, lot.words);
    const bar = group
      .append("rect")
      .attr("x", fixed(left))
      .attr("y", top + 1)
      .attr("width", fixed(right - left));
    bar.attr("height", BOARD_ROW.lotTrack - 2).attr("fill", track === 0 ? paints.evenLot : paints.oddLot);
    bar.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    const text = String(lot.number);
    const middle = (left + right) / 2;
    const half = textWidth(text, 11) / 2;
    if (middle - half < taken[track]!) continue;
    drawText(group, middle, top + 11.5, text, { anchor: "middle" });
    taken[track] = middle + half + 2;
  }
}

/** What a filling is over the days of work, and what stays before and after; `spans` null: a day that is not drawn here. */
export function drawBoardFill(board: Board, fill: BoardFill, spans: readonly (DaySpan | null)[], top: number): void {
  const { frame, columns } = board;
  const floor = top + BOARD_ROW.fill;
  const height = scaleLinear()
    .domain([0, Math.max(fill.largest, fill.places ?? 0, 1)])
    .range([floor, top + 2]);
  let [level, worked] = [0, 0];
  columns.days.forEach((day, index) => {
    const before = level;
    const points = day.works ? fill.days[worked++]! : { times: [], values: [] };
    level = points.values.at(-1) ?? level;
    const span = spans[index] ?? null;
    if (span === null) return;
    const X = [columns.fromSeconds, ...points.times].map(boardTime(columns, span));
    const Y = [before, ...points.values].map(height);
    const area = stepBandPath(
      [...X, span.right],
      Y,
      Y.map(() => floor),
    );
    frame.body.append("path").attr("d", area).attr("fill", frame.colour("range"));
    const line = frame.body.append("path").attr("d", stepPath(X, Y, span.right));
    line.attr("fill", "none").attr("stroke", frame.colour("line")).attr("stroke-width", 1.3);
    frame.body.append("path").attr("d", `M${span.left},${floor}H${span.right}`).attr("stroke", frame.colour("rule"));
    if (fill.places === null) return;
    const limit = frame.body.append("path").attr("d", `M${span.left},${fixed(height(fill.places))}H${span.right}`);
    limit.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.3).attr("stroke-dasharray", "6 3");
  });
}

/** From the mark to its words. */
const MARK_ROOM = 9;
const MAX_ORDER_LINES = 4;
/** For the name of the row in a narrow picture. */
const NAME_ROOM = 78;

/** An order's words on one line on the side that has room for them; where none has, on several on the roomier one. */
export function orderLabel({ frame, columns, gutter }: Board, order: BoardOrder, span: DaySpan): OrderLabel {
  const clock = Math.min(columns.toSeconds, Math.max(columns.fromSeconds, order.at));
  const { works } = columns.days[order.day]!;
  const x = works ? boardTime(columns, span)(clock) : (span.left + span.right) / 2;
  const words = orderWords(order);
  const room = {
    right: frame.right - x - MARK_ROOM,
    left: x - MARK_ROOM - frame.left - (frame.narrow ? NAME_ROOM : gutter),
  };
  const side = textWidth(words, 11) <= room.right || room.right >= room.left ? "right" : "left";
  return { order, x, side, lines: wrapText(words, room[side], 11, MAX_ORDER_LINES) };
}

export function orderWords({ at, name, state }: BoardOrder): string {
  return `${formatClock(at)} ${name}: ${state}`;
}

/** A filled mark: ready in time; an open one: not. */
export function drawOrder({ frame }: Board, { order, x, side, lines }: OrderLabel, top: number): void {
  const group = readable(frame.body, `order ${orderWords(order)}`);
  const paint = frame.colour(order.met ? "line" : "limit");
  const mark = group.append("path").attr("d", `M${fixed(x)},${top + 2}l5,5l-5,5l-5,-5Z`);
  mark
    .attr("fill", order.met ? paint : frame.colour("paper"))
    .attr("stroke", paint)
    .attr("stroke-width", 1.5);
  lines.forEach((text, line) => {
    const style = { halo: frame.colour("paper"), anchor: side === "right" ? "start" : "end" } as const;
    drawText(group, x + (side === "right" ? MARK_ROOM : -MARK_ROOM), top + 11 + line * LINE_HEIGHT, text, style);
  });
}

function fixed(value: number): string {
  return value.toFixed(1);
}
