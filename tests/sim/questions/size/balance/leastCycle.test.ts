import { describe, expect, it } from "vitest";
import { leastCycle } from "../../../../../sim/questions/size/balance/leastCycle.ts";
import { bruteForce } from "./bruteForce.ts";
import { INSTANCES } from "./instances.ts";

describe("leastCycle", () => {
  const cases = Object.entries(INSTANCES).flatMap(([name, { tasks, cycles }]) =>
    Object.entries(cycles).map(([stations, cycle]) => ({ name, tasks, stations: Number(stations), cycle })),
  );

  it.each(cases)(
    "finds the least cycle known for $name on $stations stations: $cycle",
    ({ tasks, stations, cycle }) => {
      const found = leastCycle(tasks, stations)!;
      expect(found.cycleSeconds).toBe(cycle);
      expect(found.balance.people).toBeLessThanOrEqual(stations);
      expect(Math.max(...found.balance.posts.map(({ loadSeconds }) => loadSeconds))).toBe(cycle);
    },
  );

  it("shares out a pooled line with walking so that no cycle a thousandth shorter would do", () => {
    const tasks = {
      seconds: [5, 9, 3.5, 17, 2],
      before: [
        [0, 1],
        [1, 2],
        [2, 3],
        [3, 4],
      ] as [number, number][],
      walking: [1.2, 1.2, 0.4, 1.2, 2],
      pooled: true,
    };
    for (const people of [1, 2, 3, 4, 6]) {
      const { cycleSeconds } = leastCycle(tasks, people)!;
      expect(bruteForce(tasks, cycleSeconds)).toBeLessThanOrEqual(people);
      expect(bruteForce(tasks, cycleSeconds * 0.999)).toBeGreaterThan(people);
    }
  });

  it("has no answer without people", () => {
    expect(leastCycle({ seconds: [1], before: [], walking: [0], pooled: true }, 0)).toBeNull();
  });
});
