import { MOMENTS } from "../../asked/plan/index.ts";
import { advance, type DayState, recordOf, startDay } from "../engine/index.ts";
import { CHAIN_STATION, type CompiledLine, STATION } from "../line/index.ts";
import { type DayCourse, HEAD_COUNTS } from "./dayCourse.ts";
import { findDangers } from "./findDangers.ts";
import { sketchOf } from "./lineSketch.ts";
import { type HeadWays, PassLog } from "./passLog.ts";
import { Scribe } from "./scribe.ts";
import type { StepLog } from "./stepLog.ts";

/** Beyond so many passes (of heads past points of their way) a day is too long to be kept whole: some 100 MB. */
export const MAX_PASSES = 5_000_000;

/** Which day of a line is meant. */
interface DayDraws {
  seed: string;
  replication: number;
}

/** Instants between two places at which a recording may be left: some milliseconds. */
const INSTANTS_A_PART = 1000;

/**
 * Simulates one day as `runDay` does, event by event, and keeps its whole course. The record is that of `runDay` with
 * the same seed and replication, to the last digit, with what its time was owed to and the bottleneck of every moment. Throws `CourseTooLong` when heads pass more than `most` points.
 */
export function recordCourse(line: CompiledLine, draws: DayDraws, most = MAX_PASSES): DayCourse {
  const parts = recordInParts(line, draws, most);
  for (;;) {
    const { done, value } = parts.next();
    if (done) return value;
  }
}

/** The same, part by part: whoever asks for the next one may do something else before, or never ask. */
export function* recordInParts(
  line: CompiledLine,
  { seed, replication }: DayDraws,
  most = MAX_PASSES,
): Generator<undefined, DayCourse> {
  const passes = new PassLog(most);
  const day = startDay(line, { seed, replication, watcher: passes, binding: true });
  const scribe = new Scribe(day);
  let status: ReturnType<typeof advance> = "running";
  for (let instant = 1; ; instant++) {
    if (instant % INSTANTS_A_PART === 0) yield;
    scribe.look();
    const next = day.calendar.times[day.calendar.next()]!;
    if (day.finished || next > line.ceilingSeconds) {
      status = advance(day, line.ceilingSeconds);
      break;
    }
    status = advance(day, next);
    if (status === "stuck") break;
  }
  scribe.look();
  return courseOf(day, scribe, passes, status === "running" ? "ceiling" : status);
}

function courseOf(day: DayState, scribe: Scribe, passes: PassLog, status: "finished" | "ceiling" | "stuck"): DayCourse {
  const record = recordOf(day, status);
  const ways = passes.ways();
  countDone(day.line, ways, scribe.counts);
  return {
    sketch: sketchOf(day.line),
    record,
    ways,
    states: scribe.states.steps(),
    held: scribe.held.steps(),
    waiting: scribe.waiting.steps(),
    sections: scribe.sections.steps(),
    busy: scribe.busy.steps(),
    onDuty: scribe.onDuty.steps(),
    crates: scribe.crates.steps(),
    counts: scribe.counts.steps(),
    vessels: scribe.vessels.steps(),
    chainMoves: scribe.chainMoves.log.steps(),
    dangers: findDangers(day.line, ways, record.finishSeconds),
    moments: scribe.moments.column(),
  };
}

const CARCASS = 0;
const DONE = HEAD_COUNTS.indexOf("done");

/** A carcass is done when its last work at a station ended: what follows (chilling) is no work. */
function countDone({ stages }: CompiledLine, ways: HeadWays, counts: StepLog): void {
  const ends: number[] = [];
  for (let head = 0; head < ways.count; head++) {
    if (ways.destination[head] !== CARCASS) continue;
    let row = ways.from[head + 1]! - 1;
    while (row >= ways.from[head]! && !endsWork(stages.kind, ways.points[row]!)) row--;
    if (row >= ways.from[head]!) ends.push(ways.times[row]!);
  }
  ends.sort((a, b) => a - b);
  counts.set(DONE, 0, 0);
  for (const [index, seconds] of ends.entries()) counts.set(DONE, seconds, index + 1);
}

function endsWork(kind: Int8Array, point: number): boolean {
  const { length } = MOMENTS;
  const of = kind[Math.floor(point / length)];
  return MOMENTS[point % length] === "end" && (of === STATION || of === CHAIN_STATION);
}
