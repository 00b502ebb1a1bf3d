import { describe, expect, it } from "vitest";
import { morrisTrajectories } from "../../../../sim/asked/study/draftScreening.ts";

describe("morrisTrajectories (Morris 1991)", () => {
  it("moves every factor once, one at a time, by half the levels, and stays on the grid", () => {
    for (const levels of [2, 4, 6, 20]) {
      for (const points of morrisTrajectories(5, 30, levels, "1")) {
        expect(points).toHaveLength(6);
        const moved = points.slice(1).map((point, step) => {
          const changes = point.flatMap((level, factor) => (level === points[step]![factor] ? [] : [factor]));
          expect(changes).toHaveLength(1);
          expect(Math.abs(point[changes[0]!]! - points[step]![changes[0]!]!)).toBe(levels / 2);
          return changes[0]!;
        });
        expect(moved.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4]);
        expect(points.flat().every((level) => Number.isInteger(level) && level >= 0 && level < levels)).toBe(true);
      }
    }
  });

  it("visits every level as often: chi-square of 2,000 starts under 16.27 (3 df, error probability 0.001)", () => {
    const counts = [0, 0, 0, 0];
    for (const points of morrisTrajectories(1, 2000, 4, "2")) counts[points[0]![0]!]! += 1;
    const chiSquare = counts.reduce((sum, count) => sum + (count - 500) ** 2 / 500, 0);
    expect(chiSquare).toBeLessThan(16.27);
  });

  it("is decided by its seed, and more trajectories leave the earlier ones as they were", () => {
    expect(morrisTrajectories(3, 2, 4, "a")).toEqual(morrisTrajectories(3, 5, 4, "a").slice(0, 2));
    expect(morrisTrajectories(3, 2, 4, "a")).not.toEqual(morrisTrajectories(3, 2, 4, "b"));
  });
});
