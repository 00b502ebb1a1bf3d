import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { type DayCourse, recordCourse, stepAt } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { type HangingHead, headsAt, indexHeads, movedAt } from "../../../../viz/page/scene/headsAt.ts";
import { layoutOf } from "../../../../viz/page/scene/layout.ts";
import { chain, constant, dwell, onChain, planOf, station, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";

function courseOf(plan: Plan): DayCourse {
  return recordCourse(compileLine(plan), { seed: "heads", replication: 0 });
}

function hanging(course: DayCourse, seconds: number, width = 1200): HangingHead[] {
  return headsAt(course, indexHeads(course), layoutOf(course.sketch, width), seconds);
}

describe("headsAt", () => {
  it("puts the first that waits next to the positions, and the one in work at its position", () => {
    const line = [station("first", 1, { buffer: 5 }), station("second", 30, { buffer: 5 })];
    const course = courseOf(planOf(stream(constant(2), 5), line));
    const heads = hanging(course, 10.5);
    expect(heads.map(({ head, look }) => [head, look])).toEqual([
      [0, "in work"],
      [4, "in work"],
      [1, "waiting"],
      [2, "waiting"],
      [3, "waiting"],
    ]);
    const x = (head: number) => heads.find((each) => each.head === head)!.x;
    expect(x(0)).toBeGreaterThan(x(1));
    expect(x(1)).toBeGreaterThan(x(2));
    expect(x(2)).toBeGreaterThan(x(3));
    expect(x(3)).toBeGreaterThan(x(4));
  });

  it("moves heads through a dwell stage in their order, evenly over their stay", () => {
    const line = [station("first", 1), dwell("bleeding", 100, 40)];
    const course = courseOf(planOf(stream(constant(10), 8), line));
    const spots = [60, 70, 80].map((at) => hanging(course, at).find(({ head }) => head === 0)!.x);
    expect(spots[1]! - spots[0]!).toBeCloseTo(spots[2]! - spots[1]!, 6);
    const order = hanging(course, 80).filter(({ look }) => look === "dwelling");
    expect(order.map(({ head }) => head)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    for (let i = 1; i < order.length; i++) expect(order[i]!.x).toBeLessThan(order[i - 1]!.x);
  });

  it("lets heads on a chain hang where their shackles are, also while it stands", () => {
    const slow = onChain("slow", 2, 1, 9, { ifUnfinished: "stop" });
    const course = courseOf(planOf(stream(constant(4), 10), [station("first", 1), chain("chain", 6, 2, [slow])]));
    // Two shackles to the window, then it holds the chain until the slow station is done.
    const head = hanging(course, 20).find((each) => each.head === 0)!;
    const place = layoutOf(course.sketch, 1200).stages[1]!;
    const step = (place.waiting.to - place.waiting.from) / 6;
    const hung = course.ways.times[course.ways.points.indexOf(1 * 4 + 1)]!;
    const moved = movedAt(course, 0, 20) - Math.floor(movedAt(course, 0, hung));
    expect(head.x).toBeCloseTo(place.waiting.from + (moved + 0.5) * step, 6);
    expect(movedAt(course, 0, 20)).toBeLessThan(20 / 2);
  });

  it("draws nobody twice, everybody within the picture, and no more than there are, on random plans", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const course = courseOf(plan);
        const layout = layoutOf(course.sketch, 900);
        const index = indexHeads(course);
        for (const at of course.moments.filter((_, row) => row % 53 === 0)) {
          const heads = headsAt(course, index, layout, at);
          expect(new Set(heads.map(({ head }) => head)).size).toBe(heads.length);
          const [hung, out, takenOff] = [1, 3, 4].map((list) => stepAt(course.counts, list, at)) as [
            number,
            number,
            number,
          ];
          expect(heads.length).toBeLessThanOrEqual(hung - out - takenOff);
          for (const { x, y } of heads) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(layout.width);
            expect(y).toBeGreaterThan(0);
            expect(y).toBeLessThan(layout.height);
          }
        }
      }),
      { numRuns: 30, seed: 23 },
    );
  });
});
