import { type DayCourse, lastAtOrBefore, rowAt, stepAt } from "../../../sim/day/course/index.ts";
import { does } from "../../../sim/text/kinds/index.ts";
import { type RailLayout, SIZE, type StagePlace } from "./layout.ts";

/** The order of MOMENTS in the course's points. */
const ENTRY = 0;
const START = 1;
const END = 2;
const EXIT = 3;

export type HeadLook = "waiting" | "in work" | "finished" | "moving" | "dwelling";

/** A head hanging in the picture. */
export interface HangingHead {
  head: number;
  x: number;
  /** The rail it hangs from. */
  y: number;
  look: HeadLook;
  /** Stage it is at, or the one it left last. */
  stage: number;
}

/** What is searched for every frame of the same day. */
export interface HeadIndex {
  /** First pass of each head, ascending. */
  begin: Float64Array;
  /** When the last of the heads up to each one had left the line. */
  gone: Float64Array;
}

export function indexHeads({ ways, record }: DayCourse): HeadIndex {
  const begin = new Float64Array(ways.count);
  const gone = new Float64Array(ways.count);
  let latest = 0;
  for (let head = 0; head < ways.count; head++) {
    begin[head] = ways.times[ways.from[head]!]!;
    latest = Math.max(latest, lastSeconds(ways, head, record.finishSeconds));
    gone[head] = latest;
  }
  return { begin, gone };
}

function lastSeconds(ways: DayCourse["ways"], head: number, end: number): number {
  return ways.destination[head] === -1 ? end : ways.times[ways.from[head + 1]! - 1]!;
}

/** A day at an instant on its layout, and the heads found there so far. */
interface Moment {
  course: DayCourse;
  layout: RailLayout;
  seconds: number;
  /** Position by head in hand. */
  atPosition: ReadonlyMap<number, number>;
  found: HangingHead[];
}

/**
 * Where every head hangs at `seconds`, in hanging order; heads in a store (a large chiller) and beyond the places drawn
 * are left out, they are told as numbers.
 */
export function headsAt(course: DayCourse, index: HeadIndex, layout: RailLayout, seconds: number): HangingHead[] {
  const { ways, record } = course;
  const last = lastAtOrBefore(index.begin, seconds);
  const queues = new Map<number, { head: number; since: number }[]>();
  const now: Moment = { course, layout, seconds, atPosition: positionsNow(course, seconds), found: [] };
  for (let head = firstPresent(index.gone, seconds); head <= last; head++) {
    if (lastSeconds(ways, head, record.finishSeconds) <= seconds) continue;
    const row = lastAtOrBefore(ways.times, seconds, ways.from[head]!, ways.from[head + 1]!);
    const stage = ways.points[row]! >> 2;
    const moment = ways.points[row]! & 3;
    const on = course.sketch.stages[stage]!;
    if (on.chain >= 0 && !(does(on, "carry stations") && moment === EXIT)) pushOnChain(now, head, row);
    else if (moment === EXIT) pushTravelling(now, head, row);
    else if (does(on, "hold heads")) pushDwelling(now, head, row);
    else if (moment === ENTRY) queues.set(stage, [...(queues.get(stage) ?? []), { head, since: ways.times[row]! }]);
    else pushAtPosition(now, head, stage, moment);
  }
  for (const [stage, queue] of queues) pushQueue(now, stage, queue);
  return now.found;
}

/** First head that may still be there. */
function firstPresent(gone: Float64Array, seconds: number): number {
  return lastAtOrBefore(gone, seconds) + 1;
}

/** Position by head in hand. */
function positionsNow({ held, sketch }: DayCourse, seconds: number): Map<number, number> {
  const at = new Map<number, number>();
  for (let position = 0; position < sketch.stageOfPosition.length; position++) {
    if (does(sketch.stages[sketch.stageOfPosition[position]!]!, "handle crates")) continue;
    const head = stepAt(held, position, seconds, -1);
    if (head >= 0) at.set(head, position);
  }
  return at;
}

function railY(layout: RailLayout, place: StagePlace): number {
  const row = layout.rows[place.row]!;
  const siding = place.look === "siding" ? SIZE.sidingDrop : 0;
  return row.y + (SIZE.rail + siding) * layout.scale;
}

function pushAtPosition({ layout, atPosition, found }: Moment, head: number, stage: number, point: number): void {
  const place = layout.stages[stage];
  if (!place || place.positions.length === 0) return;
  const first = layout.positionFrom[stage]!;
  const x = place.positions[(atPosition.get(head) ?? first) - first] ?? place.positions[0]!;
  found.push({ head, x, y: railY(layout, place), look: point === START ? "in work" : "finished", stage });
}

/** The first one that waits stands next to the positions; more than the places hold stand at idle positions. */
function pushQueue(
  { course, layout, atPosition, found }: Moment,
  stage: number,
  queue: { head: number; since: number }[],
): void {
  const place = layout.stages[stage];
  if (!place) return;
  queue.sort((a, b) => a.since - b.since || a.head - b.head);
  const y = railY(layout, place);
  const { places, positionFrom, positions } = course.sketch.stages[stage]!;
  const taken = new Set([...atPosition.values()].map((position) => position - positionFrom));
  const idle = place.positions.filter((_, index) => index < positions && !taken.has(index));
  const surplus = Math.min(idle.length, Math.max(0, queue.length - places));
  const spots = [
    ...idle.slice(0, surplus),
    ...Array.from({ length: place.shown }, (_, k) => place.waiting.to - (k + 0.5) * place.pitch),
  ];
  for (const [rank, { head }] of queue.entries()) {
    const x = spots[rank];
    if (x === undefined) return;
    found.push({ head, x, y, look: "waiting", stage });
  }
}

/** Heads move through a dwell stage as their stay goes by; since they leave in order none overtakes another. */
function pushDwelling({ course: { ways }, layout, seconds, found }: Moment, head: number, row: number): void {
  const stage = ways.points[row]! >> 2;
  const place = layout.stages[stage];
  if (!place || place.look === "store") return;
  const [from, to] = [ways.times[startRow(ways, head, row, stage)]!, exitSeconds(ways, head, row, stage)];
  const share = to > from ? Math.min(1, (seconds - from) / (to - from)) : 1;
  const { from: left, to: right } = place.waiting;
  const look = (ways.points[row]! & 3) === END ? "finished" : "dwelling";
  found.push({ head, x: left + share * (right - left), y: railY(layout, place), look, stage });
}

function startRow(ways: DayCourse["ways"], head: number, row: number, stage: number): number {
  let at = row;
  while (at > ways.from[head]! && ways.points[at - 1]! >> 2 === stage) at--;
  return at;
}

function exitSeconds(ways: DayCourse["ways"], head: number, row: number, stage: number): number {
  for (let at = row; at < ways.from[head + 1]!; at++) if (ways.points[at] === stage * 4 + EXIT) return ways.times[at]!;
  return Infinity;
}

/** On a chain a head hangs where its shackle is, which was within its step to the loading point when it was hung on. */
function pushOnChain({ course, layout, seconds, found }: Moment, head: number, row: number): void {
  const { ways, sketch } = course;
  const chain = sketch.stages[ways.points[row]! >> 2]!.chain;
  const { stage, shackles } = sketch.chains[chain]!;
  const place = layout.stages[stage];
  if (!place) return;
  let at = row;
  while (at > ways.from[head]! && ways.points[at] !== stage * 4 + START) at--;
  const moved = movedAt(course, chain, seconds) - Math.floor(movedAt(course, chain, ways.times[at]!));
  const share = Math.min(1, (moved + 0.5) / shackles);
  const x = place.waiting.from + share * (place.waiting.to - place.waiting.from);
  const on = ways.points[row]! >> 2;
  const inWork = does(sketch.stages[on]!, "stand on a chain") && (ways.points[row]! & 3) === START;
  found.push({ head, x, y: railY(layout, place), look: inWork ? "in work" : "moving", stage: on });
}

/** How far the chain has moved, in shackles: straight between the rows of the course. */
export function movedAt({ chainMoves: moves }: DayCourse, chain: number, seconds: number): number {
  const row = rowAt(moves, chain, seconds);
  if (row < 0) return 0;
  const [from, moved] = [moves.times[row]!, moves.values[row]!];
  if (row + 1 >= moves.from[chain + 1]!) return moved;
  const [to, next] = [moves.times[row + 1]!, moves.values[row + 1]!];
  return moved + ((next - moved) * (seconds - from)) / (to - from);
}

/** Between two stages a head moves evenly from one to the next; at a row's end it goes on in the next row. */
function pushTravelling({ course: { ways }, layout, seconds, found }: Moment, head: number, row: number): void {
  const stage = ways.points[row]! >> 2;
  const next = ways.points[row + 1]! >> 2;
  const [from, to] = [layout.stages[stage], layout.stages[next]];
  if (!from || !to) return;
  const [left, entered] = [ways.times[row]!, ways.times[row + 1]!];
  const share = entered > left ? (seconds - left) / (entered - left) : 1;
  found.push({ head, ...between(layout, from, to, share), look: "moving", stage });
}

function rightEnd(place: StagePlace): number {
  return place.positions.length > 0 && place.look !== "chain" ? place.positions.at(-1)! : place.waiting.to;
}

function between(layout: RailLayout, from: StagePlace, to: StagePlace, share: number): { x: number; y: number } {
  const start = { x: rightEnd(from), y: railY(layout, from) };
  const end = { x: to.waiting.from, y: railY(layout, to) };
  if (from.row >= to.row) {
    return { x: start.x + share * (end.x - start.x), y: start.y + share * (end.y - start.y) };
  }
  // Out at the right end of one row, in at the left end of the next.
  const [out, into] = [layout.rows[from.row]!.rail.to - start.x, end.x - layout.rows[to.row]!.rail.from];
  const way = share * (out + into);
  return way < out ? { x: start.x + way, y: start.y } : { x: layout.rows[to.row]!.rail.from + (way - out), y: end.y };
}
