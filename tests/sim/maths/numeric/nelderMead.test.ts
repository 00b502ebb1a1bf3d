import { describe, expect, it } from "vitest";
import { nelderMead } from "../../../../sim/maths/numeric/index.ts";

describe("nelderMead", () => {
  it("finds the minimum of Rosenbrock's valley (1960) from his start", () => {
    const valley = ([x, y]: readonly number[]) => 100 * (y! - x! * x!) ** 2 + (1 - x!) ** 2;
    const { at, value } = nelderMead(valley, [-1.2, 1], [0.5, 0.5]);
    expect(at[0]).toBeCloseTo(1, 5);
    expect(at[1]).toBeCloseTo(1, 5);
    expect(value).toBeLessThan(1e-10);
  });

  it("finds a minimum with a corner, in three variables", () => {
    const { at } = nelderMead(
      ([x, y, z]) => Math.abs(x! - 3) + (y! + 1) ** 2 + Math.abs(z!) ** 1.5,
      [0, 0, 5],
      [1, 1, 1],
    );
    [3, -1, 0].forEach((expected, i) => {
      expect(at[i]).toBeCloseTo(expected, 3);
    });
  });

  it("keeps away from places that are not allowed, and leaves the start as it was", () => {
    const start = Object.freeze([2, 2]);
    const { at } = nelderMead(([x, y]) => (x! < 1 ? Number.NaN : x! * x! + y! * y!), start, [-0.5, -0.5]);
    expect(at[0]).toBeGreaterThanOrEqual(1);
    expect(at[0]).toBeCloseTo(1, 4);
    expect(at[1]).toBeCloseTo(0, 4);
  });

  it("ends sooner where less is asked for", () => {
    let calls = 0;
    const bowl = ([x, y]: readonly number[]) => {
      calls++;
      return (x! - 1) ** 2 + (y! - 2) ** 2;
    };
    nelderMead(bowl, [0, 0], [1, 1]);
    const all = calls;
    calls = 0;
    nelderMead(bowl, [0, 0], [1, 1], 1e-4);
    expect(calls).toBeLessThan(all);
  });
});
