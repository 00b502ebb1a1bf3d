import { describe, expect, it } from "vitest";
import { withAllowance } from "../../../../../sim/asked/plan/parts/toPace.ts";
import { relativeError } from "../../../../support/relativeError.ts";

const H = 3600;
const steps = [
  { after: 0, share: 0.09 },
  { after: 4 * H, share: 0.15 },
];

describe("rest allowances", () => {
  it("lengthen the basic time by their share, from so long after the start of each shift", () => {
    const paces = withAllowance([], { steps, of: "basic time", source: "x" }, [0, 8 * H]);
    expect(paces.map(({ fromSeconds, speed }) => [fromSeconds / H, speed])).toEqual([
      [0, 1 / 1.09],
      [4, 1 / 1.15],
      [8, 1 / 1.09],
      [12, 1 / 1.15],
    ]);
  });

  it("of 11 % make a cycle 1.11 times as long on basic time and 1.123596 times of the shift (ILO, Introduction to Work Study, from memory; the quotient by algebra)", () => {
    const longer = (of: "basic time" | "shift") =>
      1 / withAllowance([], { steps: [{ after: 0, share: 0.11 }], of, source: "x" }, [0])[0]!.speed;
    expect(relativeError(longer("basic time"), 1.11)).toBeLessThan(1e-12);
    expect(relativeError(longer("shift"), 1.123596)).toBeLessThan(1e-6);
  });

  it("come on top of the speed by the hour, which keeps its upper rate", () => {
    const pace = [
      { fromSeconds: 0, speed: 0.5, mostPerSecond: null },
      { fromSeconds: 2 * H, speed: 1, mostPerSecond: 0.2 },
    ];
    const paces = withAllowance(pace, { steps: [{ after: H, share: 0.25 }], of: "basic time", source: "x" }, [0]);
    expect(paces).toEqual([
      { fromSeconds: 0, speed: 0.5, mostPerSecond: null },
      { fromSeconds: H, speed: 0.4, mostPerSecond: null },
      { fromSeconds: 2 * H, speed: 0.8, mostPerSecond: 0.2 },
    ]);
  });

  it("that are not there leave the speed as it is", () => {
    const pace = [{ fromSeconds: 0, speed: 0.5, mostPerSecond: null }];
    expect(withAllowance(pace, null, [0])).toBe(pace);
  });
});
