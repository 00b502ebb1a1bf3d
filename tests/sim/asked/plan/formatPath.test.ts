import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatPath } from "../../../../sim/asked/plan/formatPath.ts";
import { parsePath } from "../../../../sim/asked/plan/parsePath.ts";

describe("formatPath", () => {
  it.each([
    [[], ""],
    [["line", 4, "crew"], "line[4].crew"],
    [["line", "four-leg cutting", "positions"], 'line["four-leg cutting"].positions'],
    [["$schema"], "$schema"],
    [["crews", 0, "people", "shift 1"], 'crews[0].people["shift 1"]'],
  ])("writes %j as %s", (steps, path) => {
    expect(formatPath(steps)).toBe(path);
  });

  it("writes what parsePath reads back", () => {
    const step = fc.oneof(fc.string({ minLength: 1 }), fc.nat({ max: 999_999 }));
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 6 }), (steps) => {
        expect(parsePath(formatPath(steps))).toEqual(steps);
      }),
      { seed: 6 },
    );
  });
});
