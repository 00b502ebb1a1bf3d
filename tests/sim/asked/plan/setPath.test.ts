import { describe, expect, it } from "vitest";
import { setPathInPlace } from "../../../../sim/asked/plan/setPath.ts";

describe("setPathInPlace", () => {
  it("sets by key, name and index, and may add a last key", () => {
    const plan = { line: [{ name: "a", buffer: 1 } as Record<string, unknown>] };
    expect(setPathInPlace(plan, "line.a.buffer", 2)).toBeNull();
    expect(setPathInPlace(plan, "line[0].positions", 3)).toBeNull();
    expect(plan).toEqual({ line: [{ name: "a", buffer: 2, positions: 3 }] });
  });

  it("copies the value, so that variants share nothing", () => {
    const value = { exponential: { mean: "5 s" } };
    const plan = { line: [{ name: "a" } as Record<string, unknown>] };
    setPathInPlace(plan, "line.a.cycle", value);
    expect(plan.line[0]!.cycle).toEqual(value);
    expect(plan.line[0]!.cycle).not.toBe(value);
  });

  it("changes nothing when the path leads nowhere", () => {
    const plan = Object.freeze({ line: Object.freeze([Object.freeze({ name: "a" })]) });
    expect(setPathInPlace(plan, "line.b.buffer", 2)?.found).toBe("'b' is not a name in 'line'");
    expect(setPathInPlace(plan, "line.a.__proto__", {})?.found).toBe("'__proto__' is not a key in 'line.a'");
  });
});
