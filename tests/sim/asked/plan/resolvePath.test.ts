import { describe, expect, it } from "vitest";
import { parsePath } from "../../../../sim/asked/plan/parsePath.ts";
import { resolvePath } from "../../../../sim/asked/plan/resolvePath.ts";

const JSON_PLAN = Object.freeze({
  name: "p",
  line: [
    { name: "hanging", buffer: 0 },
    { name: "cut no. 2", removals: [{ as: "condemned", share: 0.1 }], diversions: [{ to: "trim", share: 0.1 }] },
  ],
  crews: [],
});

function resolved(path: string) {
  return resolvePath(JSON_PLAN, parsePath(path) ?? []);
}

describe("resolvePath", () => {
  it.each([
    ["name", JSON_PLAN, "name"],
    ["line.hanging.buffer", JSON_PLAN.line[0], "buffer"],
    ["line[0].buffer", JSON_PLAN.line[0], "buffer"],
    ["line.hanging", JSON_PLAN.line, 0],
    ['line["cut no. 2"].removals.condemned.share', JSON_PLAN.line[1]!.removals![0], "share"],
    ['line["cut no. 2"].diversions.trim.share', JSON_PLAN.line[1]!.diversions![0], "share"],
    ["line.hanging.breakdowns", JSON_PLAN.line[0], "breakdowns"],
  ])("finds %s", (path, parent, key) => {
    const { place, fault } = resolved(path);
    expect(fault).toBeNull();
    expect(place?.parent).toBe(parent);
    expect(place?.key).toBe(key);
  });

  it.each([
    ["lin.hanging", "'lin' is not a key in the plan", "'name', 'line', 'crews'", "did you mean 'line'?"],
    ["line.hangin.buffer", "'hangin' is not a name in 'line'", "'hanging', 'cut no. 2'", "did you mean 'hanging'?"],
    ["line[2].buffer", "[2] is past the end of 'line'", "[0] to [1]", "counting begins at 0"],
    ["crews[0]", "[0] is past the end of 'crews'", "none, it is empty", "counting begins at 0"],
    ["crews.x", "'x' is not a name in 'crews'", "none", "write one of these"],
    [
      "line.hanging.buffer.x",
      "'line.hanging.buffer' has nothing inside",
      "a path that ends there or before",
      "shorten the path and give the whole value",
    ],
    ["[0]", "[0] counts into the plan, which is not a list", "a key", ""],
    ["line.hanging.__proto__", "'__proto__' is not a key in 'line.hanging'", "'name', 'buffer'", "write one of these"],
    [
      "constructor.prototype",
      "'constructor' is not a key in the plan",
      "'name', 'line', 'crews'",
      "write one of these",
    ],
    ["", "the path is empty", "a path into the plan", ""],
  ])("refuses %s: %s", (path, found, allowed, remedy) => {
    expect(resolved(path)).toEqual({ place: null, fault: { found, allowed, remedy } });
  });
});
