import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../../sim/asked/plan/plan.ts";
import { advance, type DayState, recordOf, runDay, STATES, startDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { randomPlan } from "../../../../support/randomPlans.ts";

/*
 * The definition once more, without any cleverness, as README.md tells it: read off the states of the positions at the end
 * of each instant, multiplied by the time to the next one.
 */

const NAMES: [RegExp, string][] = [
  [/^s0\b/u, "stunning"],
  [/^s1\b/u, "sticking"],
  [/^s2\b/u, "bleeding"],
];

/** A random plan whose first stages are called as those of a kill line. */
const killPlan = randomPlan.map((plan) => renamed(plan) as Plan);

function renamed(value: unknown): unknown {
  if (typeof value === "string") return NAMES.reduce((text, [from, to]) => text.replace(from, to), value);
  if (Array.isArray(value)) return value.map(renamed);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, renamed(each)]));
}

type Stage = DayState["stageAt"][number];

const is = (state: (typeof STATES)[number]) => {
  const code = STATES.indexOf(state);
  return (position: { state: number }) => position.state === code;
};

function fullVessel({ vessels }: Stage): boolean {
  return vessels.some(({ stopsFeeders, isFull }) => stopsFeeders && isFull);
}

function stands(day: DayState, stage: Stage, steps: Stage[]): boolean {
  const { chain, kind } = stage;
  const isOver = stage === day.hanging && day.hangingClosed;
  const positions = isOver ? stage.positions.filter(({ item }) => item !== null) : stage.positions;
  const isOnChain = chain !== null;
  if (isOnChain) return !is("working")(positions[0]!);
  if (kind === 1) {
    if (positions[0]!.item === null) return false;
    return positions[0]!.done || heldUp(day, stage, steps);
  }
  if (positions.length === 0 || positions.some(is("working"))) return false;
  if (positions.some(is("on break"))) return true;
  if (positions.some(is("no crew"))) {
    const atWork = steps.flatMap((step) => step.positions.filter(is("working"))).map(({ crew }) => crew);
    return !atWork.some((crew) => crew !== null && stage.crews.includes(crew));
  }
  if (positions.some(is("blocked")) && fullVessel(stage)) return true;
  if (positions.every(is("down"))) return true;
  return positions.some((position) => is("blocked")(position) && position.item !== null) && heldUp(day, stage, steps);
}

/** What a finished head waits for lies behind the kill line, and nothing moves there. */
function heldUp(day: DayState, stage: Stage, steps: Stage[]): boolean {
  const next = day.stageAt[stage.next];
  return next !== undefined && !steps.includes(next) && takesNothing(day, next, 0);
}

function takesNothing(day: DayState, stage: Stage | undefined, depth: number): boolean {
  if (stage === undefined || depth > 50) return false;
  const [first] = stage.positions;
  if (stage.kind === 1) {
    return first!.item === null || first!.done || takesNothing(day, day.stageAt[stage.next], depth + 1);
  }
  if (stage.kind === 2) return !is("working")(first!);
  if (stage.positions.some(is("working"))) return false;
  const own = stage.positions.some(is("on break")) || stage.positions.some(is("no crew")) || fullVessel(stage);
  if (own || stage.positions.every(is("down"))) return true;
  return stage.positions.some(is("blocked")) && takesNothing(day, day.stageAt[stage.next], depth + 1);
}

/** Some head is on the kill line or before it, or may still be hung, and the first has come. */
function expects(day: DayState, first: Stage, last: number): boolean {
  const waits = day.hangingClosed ? day.hanging.queue.length : 0;
  const before = day.stageAt.filter(({ index }) => index >= day.hanging.index && index <= last);
  const here = before.reduce((sum, { occupancy }) => sum + occupancy, 0) - waits;
  const mayCome = !day.hangingClosed && (day.line.supply.kind === "saturated" || day.toHang > 0);
  return first.own.hasBegun && (mayCome || here > 0);
}

describe("over random kill lines", () => {
  it("the stops and the shorter stands last exactly as long as the states say that the line stood", () => {
    let stood = 0;
    fc.assert(
      fc.property(killPlan, fc.nat(), (plan, replication) => {
        const line = compileLine(plan);
        fc.pre(line.killLine !== null);
        const day = startDay(line, { seed: "stops", replication, killStops: true });
        const steps = Array.from(line.killLine!.steps, (stage) => day.stageAt[stage]!);
        let seconds = 0;
        let status: ReturnType<typeof advance> = "running";
        while (status === "running" && day.now < line.ceilingSeconds) {
          const next = Math.min(day.calendar.times[day.calendar.next()]!, line.ceilingSeconds);
          const isStanding =
            expects(day, steps[0]!, line.killLine!.last) && steps.some((step) => stands(day, step, steps));
          const since = day.now;
          status = advance(day, next);
          if (isStanding) seconds += day.now - since;
        }
        const record = recordOf(day, status === "running" ? "ceiling" : status).killStops!;
        expect(record.seconds + record.shorter.seconds).toBeCloseTo(seconds, 6);
        const listed = record.stops.reduce((sum, stop) => sum + stop.toSeconds - stop.fromSeconds, 0);
        if (record.leftOut === 0) expect(listed).toBeCloseTo(record.seconds, 6);
        expect(record.caught).toBeGreaterThanOrEqual(record.neverStuck);
        stood += record.count;
      }),
      { seed: 17, numRuns: 120 },
    );
    // The property would hold as well on lines that never stand.
    expect(stood).toBeGreaterThan(100);
  });

  it("nothing of the day is changed by writing the stops down", () => {
    fc.assert(
      fc.property(killPlan, (plan) => {
        const line = compileLine(plan);
        const draws = { seed: "same", replication: 0 };
        const { killStops, ...day } = runDay(line, { ...draws, killStops: true });
        const { killStops: none, ...plain } = runDay(line, draws);
        expect(none).toBeNull();
        expect(day).toEqual(plain);
        expect(killStops === null).toBe(line.killLine === null);
      }),
      { seed: 18, numRuns: 60 },
    );
  });
});
