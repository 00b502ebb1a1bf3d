import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewestPeople } from "../../../../../sim/questions/size/balance/fewestPeople.ts";
import type { Tasks } from "../../../../../sim/questions/size/balance/tasks.ts";
import { bruteForce } from "./bruteForce.ts";
import { INSTANCES } from "./instances.ts";

describe("fewestPeople", () => {
  const cases = Object.entries(INSTANCES).flatMap(([name, { tasks, stations }]) =>
    Object.entries(stations).map(([cycle, most]) => ({ name, tasks, cycle: Number(cycle), most })),
  );

  it.each(cases)("finds the fewest stations known for $name at a cycle of $cycle: $most", ({ tasks, cycle, most }) => {
    const found = fewestPeople(tasks, cycle)!;
    expect(found).toMatchObject({ people: most, exact: true });
    expect(fewestPeople(tasks, cycle, most - 1)).toBeNull();
    const order = found.posts.flatMap((post) => post.tasks);
    expect(order.toSorted((a, b) => a - b)).toEqual(tasks.seconds.map((_, task) => task));
    for (const [a, b] of tasks.before) expect(order.indexOf(a)).toBeLessThan(order.indexOf(b));
    for (const { loadSeconds, people } of found.posts) {
      expect(people).toBe(1);
      expect(loadSeconds).toBeLessThanOrEqual(cycle);
    }
  });

  it("finds what trying every way finds, posts pooled or not, with and without walking: 300 random lines", () => {
    fc.assert(
      fc.property(lines(), fc.integer({ min: 4, max: 25 }), (tasks, cycle) => {
        expect(fewestPeople(tasks, cycle)?.people ?? null).toBe(bruteForce(tasks, cycle));
      }),
      { seed: 61, numRuns: 300 },
    );
  });

  it("lets nobody do a task longer than the cycle alone, and several people where they may share it", () => {
    const tasks = { seconds: [25], before: [], walking: [0] };
    expect(fewestPeople({ ...tasks, pooled: false }, 10)).toBeNull();
    expect(fewestPeople({ ...tasks, pooled: true }, 10)!.posts).toEqual([
      { tasks: [0], people: 3, loadSeconds: 25 / 3 },
    ]);
  });

  it("counts the way to each task of a post that has more than one", () => {
    const line = (walking: number): Tasks => ({
      seconds: [4, 4],
      before: [[0, 1]],
      walking: [walking, walking],
      pooled: false,
    });
    expect(fewestPeople(line(1), 10)!.posts).toEqual([{ tasks: [0, 1], people: 1, loadSeconds: 10 }]);
    expect(fewestPeople(line(1.1), 10)!.posts.map(({ tasks }) => tasks)).toEqual([[0], [1]]);
    expect(fewestPeople({ ...line(1.1), pooled: true }, 10)!.people).toBe(2);
  });

  it("takes the heuristic, and says so, for more tasks than it can look at in every set", () => {
    const seconds = Array.from({ length: 40 }, () => 3);
    const found = fewestPeople({ seconds, before: [], walking: seconds.map(() => 0), pooled: false }, 9)!;
    expect(found).toMatchObject({ people: 14, exact: false });
    expect(fewestPeople({ seconds, before: [], walking: seconds.map(() => 0), pooled: false }, 9, 13)).toBeNull();
  });
});

/** Up to six tasks, any order among them. */
function lines(): fc.Arbitrary<Tasks> {
  return fc
    .record({
      seconds: fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 6 }),
      arcs: fc.array(fc.tuple(fc.nat(5), fc.nat(5)), { maxLength: 5 }),
      walking: fc.array(fc.constantFrom(0, 1, 2.5), { minLength: 6, maxLength: 6 }),
      pooled: fc.boolean(),
    })
    .map(({ seconds, arcs, walking, pooled }) => {
      const before = arcs.filter(([a, b]) => a < b && b < seconds.length);
      return { seconds, before, walking, pooled };
    });
}
