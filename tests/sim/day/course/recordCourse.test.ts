import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TimeLimit } from "../../../../sim/asked/plan/index.ts";
import {
  CourseTooLong,
  type DayCourse,
  HEAD_COUNTS,
  recordCourse,
  recordInParts,
  stepAt,
} from "../../../../sim/day/course/index.ts";
import { runDay, STATES } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { constant, crew, manual, pause, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";

const DRAWS = { seed: "course", replication: 0 };

/** A station of 4 s and one of 10 s with two places before it; heads every 6 s, four of them. Worked by hand. */
const HAND = planOf(stream(constant(6), 4), [station("first", 4, { buffer: 1 }), station("second", 10, { buffer: 2 })]);

/** From the arrival to leaving the line: some heads of the random plans take longer, some less. */
const IN_SYSTEM: TimeLimit = {
  name: "in system",
  from: { stage: null, moment: "entry" },
  to: { stage: null, moment: "exit" },
  minSeconds: 15,
  maxSeconds: 60,
  source: "invented for the test",
};

function present(course: DayCourse, seconds: number): number {
  const { ways } = course;
  let heads = 0;
  for (let head = 0; head < ways.count; head++) {
    const [from, to] = [ways.from[head]!, ways.from[head + 1]!];
    const gone = ways.destination[head]! >= 0 && ways.times[to - 1]! <= seconds;
    if (ways.times[from]! <= seconds && !gone) heads++;
  }
  return heads;
}

/** Position-seconds in each state, from the rows of the course. */
function secondsInStates(course: DayCourse, stage: number): number[] {
  const { states, sketch, record } = course;
  const { positionFrom, positions } = sketch.stages[stage]!;
  const seconds = STATES.map(() => 0);
  for (let position = positionFrom; position < positionFrom + positions; position++) {
    const last = states.from[position + 1]!;
    for (let row = states.from[position]!; row < last; row++) {
      const until = row + 1 < last ? states.times[row + 1]! : record.finishSeconds;
      seconds[states.values[row]!]! += until - states.times[row]!;
    }
  }
  return seconds;
}

describe("recordCourse", () => {
  it("can be asked for part by part, several days at once, and gives the same", () => {
    const line = compileLine(planOf(saturated(3000), [station("one", 4, { buffer: 3 }), station("two", 4)]));
    const draws = [0, 1].map((replication) => ({ seed: "parts", replication }));
    const recordings = draws.map((each) => recordInParts(line, each));
    const found: DayCourse[] = [];
    let parts = 0;
    while (found.length < recordings.length) {
      for (const recording of recordings) {
        const { done, value } = recording.next();
        if (done && value !== undefined) found.push(value);
        else parts++;
      }
    }
    expect(parts).toBeGreaterThan(2);
    expect(found).toEqual(draws.map((each) => recordCourse(line, each)));
  });

  it("keeps the way of every head, worked by hand", () => {
    const { ways, moments, counts } = recordCourse(compileLine(HAND), DRAWS);
    const way = (head: number) => [...ways.times.subarray(ways.from[head]!, ways.from[head + 1]!)];
    // Entry, start, end and exit at the first station, then at the second.
    expect(way(0)).toEqual([6, 6, 10, 10, 10, 10, 20, 20]);
    expect(way(1)).toEqual([12, 12, 16, 16, 16, 20, 30, 30]);
    expect([...ways.points.subarray(0, 8)]).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect([...ways.destination]).toEqual([0, 0, 0, 0]);
    expect([...moments]).toEqual([0, 6, 10, 12, 16, 18, 20, 22, 24, 28, 30, 40, 50]);
    const done = HEAD_COUNTS.indexOf("done");
    expect([19.9, 20, 39.9, 50].map((at) => stepAt(counts, done, at))).toEqual([0, 1, 2, 4]);
  });

  it("keeps what waits and what every position does, worked by hand", () => {
    const course = recordCourse(compileLine(HAND), DRAWS);
    const second = course.sketch.stages.findIndex(({ name }) => name === "second");
    expect([15, 17, 21, 23, 29].map((at) => stepAt(course.waiting, second, at))).toEqual([0, 1, 0, 1, 2]);
    const position = course.sketch.stages[second]!.positionFrom;
    const state = (at: number) => STATES[stepAt(course.states, position, at)];
    expect([0, 9, 10, 49, 50].map(state)).toEqual(["starved", "starved", "working", "working", "starved"]);
    expect([9, 10, 20, 39].map((at) => stepAt(course.held, position, at, -1))).toEqual([-1, 0, 1, 2]);
  });

  it("tells people at work and on duty through a break", () => {
    const line = [manual("cutting", 10, "cutters", { positions: 2, buffer: Infinity })];
    const day = { ...planOf(stream(constant(5), 20), line, { crews: [crew("cutters", 2)] }) };
    const plan = { ...day, day: { ...day.day, breaks: [pause("tea", 40, 30, { crews: ["cutters"] })] } };
    const course = recordCourse(compileLine(plan), DRAWS);
    expect([30, 50, 75].map((at) => stepAt(course.onDuty, 0, at))).toEqual([2, 0, 2]);
    expect([30, 60, 75].map((at) => stepAt(course.busy, 0, at))).toEqual([2, 0, 2]);
  });

  it("leaves the record of the same day run without it, to the last digit, on random plans", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const line = compileLine(plan);
        const { binding, ...record } = recordCourse(line, DRAWS).record;
        const { binding: alone, ...expected } = runDay(line, { ...DRAWS, binding: true });
        expect(record).toEqual(expected);
        expect(binding?.work).toEqual(alone?.work);
        expect(binding?.bottleneck.shares).toEqual(alone?.bottleneck.shares);
        // When it was where, which a day without a watcher does not keep.
        if (binding !== null) expect(binding.bottleneck.spans).not.toBeNull();
      }),
      { numRuns: 40, seed: 17 },
    );
  });

  it("agrees with the record on heads, queues and states, on random plans", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const course = recordCourse(compileLine(plan), DRAWS);
        const { record, moments, sketch } = course;
        for (const at of moments.filter((_, index) => index % 37 === 0)) {
          const [hung, out, takenOff] = [1, 3, 4].map((list) => stepAt(course.counts, list, at)) as [
            number,
            number,
            number,
          ];
          expect(present(course, at)).toBe(hung - out - takenOff);
        }
        for (const [stage, { kind }] of sketch.stages.entries()) {
          const queue = record.stages[stage]!.queue;
          const rows = course.waiting.values.subarray(course.waiting.from[stage]!, course.waiting.from[stage + 1]!);
          // A peak that lasted no time is in the record alone.
          expect(Math.max(...rows)).toBeLessThanOrEqual(queue.max);
          if (kind === "dwell" || !Number.isFinite(record.finishSeconds)) continue;
          const seconds = secondsInStates(course, stage);
          for (const [state, found] of seconds.entries()) {
            expect(found).toBeCloseTo(record.stages[stage]!.stateSeconds[state]!, 6);
          }
        }
      }),
      { numRuns: 40, seed: 18 },
    );
  });

  it("flags every head beyond a limit, and no other as beyond, on random plans", () => {
    let beyond = 0;
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const { record, dangers, ways } = recordCourse(compileLine({ ...plan, limits: [IN_SYSTEM] }), DRAWS);
        if (record.status !== "finished") return;
        for (const [limit, { beyond: counted }] of record.limits.entries()) {
          // Heads that were never hung before hanging ended are flagged while they wait, and counted nowhere.
          const flagged = dangers.filter(
            (each) => each.limit === limit && each.beyondSeconds < Infinity && ways.destination[each.head]! >= 0,
          );
          expect(flagged.length).toBe(counted);
          beyond += counted;
        }
      }),
      { numRuns: 60, seed: 19 },
    );
    expect(beyond).toBeGreaterThan(0);
  });

  it("refuses a day with more passes than it may keep", () => {
    const plan = planOf(saturated(200), [station("only", 1)]);
    expect(() => recordCourse(compileLine(plan), DRAWS, 799)).toThrow(CourseTooLong);
    expect(recordCourse(compileLine(plan), DRAWS, 810).record.heads.out.carcass).toBe(200);
  });
});
