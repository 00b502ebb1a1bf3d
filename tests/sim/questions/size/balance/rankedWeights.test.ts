import { describe, expect, it } from "vitest";
import { positionalWeights, rankedWeights } from "../../../../../sim/questions/size/balance/rankedWeights.ts";
import { INSTANCES } from "./instances.ts";

const { tasks } = INSTANCES["Jackson 1956"]!;

/** Helgeson and Birnie 1961, on the instance of Jackson 1956, worked by hand with ties to the lower number. */
describe("ranked positional weights", () => {
  it("adds to each task all that come after it", () => {
    expect(positionalWeights(tasks)).toEqual([46, 19, 17, 19, 13, 17, 12, 15, 9, 9, 4]);
  });

  it.each([
    [7, 8],
    [9, 6],
    [10, 6],
    [13, 4],
    [14, 4],
    [21, 3],
  ])("takes, at a cycle of %i, %i stations: one too many at 10", (cycle, stations) => {
    expect(rankedWeights(tasks, cycle).people).toBe(stations);
  });

  it("fills the stations as the rule says, and never claims that fewer would not do", () => {
    const { posts, exact } = rankedWeights(tasks, 10);
    expect(posts.map((post) => post.tasks.map((task) => task + 1).toSorted((a, b) => a - b))).toEqual([
      [1, 2, 6],
      [4, 5],
      [3, 7],
      [8],
      [9, 10],
      [11],
    ]);
    expect(posts.map(({ loadSeconds }) => loadSeconds)).toEqual([10, 8, 8, 6, 10, 4]);
    const efficiency = 46 / (posts.length * 10);
    const smoothness = Math.hypot(...posts.map(({ loadSeconds }) => 10 - loadSeconds));
    expect([efficiency, smoothness]).toEqual([expect.closeTo(0.7666667, 7), expect.closeTo(7.7459667, 7)]);
    expect(exact).toBe(false);
  });
});
