import { describe, expect, it } from "vitest";
import type { Study } from "../../../../sim/asked/study/index.ts";
import { studyEffects } from "../../../../sim/days/run/studyEffects.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";

type Point = number[];

/** A study of these points, of which only the levels count; the first variant is the base, on no level. */
function studyOf(kind: "factorial" | "latin hypercube" | "one at a time", points: Point[]) {
  const variants = [points[0]!.map(() => -1), ...points].map((levels) => ({ levels }));
  const factors = points[0]!.map((_, factor) => ({ name: `factor ${factor}`, path: "", levels: [] }));
  return { design: { kind }, variants, factors, confidence: 0.999 } as unknown as Study;
}

const uniforms = uniformStream("effects", 0, "test", "luck");
const normal = () => normalQuantile(uniforms.next());

/** Values of the base and of the points, on days that move all alike, with own luck besides. */
function observed(points: Point[], value: (levels: Point) => number, days: number, luck: number): number[][] {
  const shifts = Array.from({ length: days }, () => 100 * normal());
  return [Number.NaN, ...points.map(value)].map((mean) => shifts.map((shift) => mean + shift + luck * normal()));
}

const FACTORIAL = [0, 1, 2].flatMap((a) => [0, 1].flatMap((b) => [0, 1].map((c) => [a, b, c])));
const value = ([a, b, c]: Point) => 500 + [0, 60, -60][a!]! + 20 * (2 * b! - 1) + 10 * (2 * b! - 1) * (2 * c! - 1);

describe("studyEffects", () => {
  it("ranks a factorial's factors and pairs by hand-worked shares, whatever days do to all points alike (false alarm 0.003)", () => {
    const { points, explained, ranked } = studyEffects(
      studyOf("factorial", FACTORIAL),
      observed(FACTORIAL, value, 30, 3),
    )!;
    // Variances over the levels: 2400, 400, 0 and of the pair 100; 2900 in all. Luck adds 9 / 30 to each mean.
    expect([points, ranked.map(({ factors }) => factors.join()).slice(0, 3)]).toEqual([12, ["0", "1", "1,2"]]);
    for (const [place, exact] of [24 / 29, 4 / 29, 1 / 29].entries()) {
      const { share } = ranked[place]!;
      expect(Math.abs(share.value - exact)).toBeLessThan(0.01);
      expect(share.low!).toBeLessThanOrEqual(exact);
      expect(share.high!).toBeGreaterThanOrEqual(exact);
      expect(share.high! - share.low!).toBeLessThan(0.09);
    }
    expect(Math.abs(ranked[1]!.total!.value - 5 / 29)).toBeLessThan(0.01);
    expect(ranked[0]).toMatchObject({ lowest: [2], highest: [1], total: { value: expect.closeTo(24 / 29, 1) } });
    // A step's span may be off by 3 sqrt(2 / (30 x 4)) times 3.29 (false alarm 0.001).
    expect(Math.abs(ranked[0]!.span - 120)).toBeLessThan(1.3);
    expect(ranked[2]).toMatchObject({ total: null, span: expect.closeTo(20, -1) });
    expect(ranked.slice(3).every(({ share }) => share.value < 0.01)).toBe(true);
    expect(explained).toBeGreaterThan(0.99);
  });

  it("ranks a hypercube's by curves, and says from where to where each moves the result (false alarm 0.002)", () => {
    const orders = [0, 1, 2].map((factor) => {
      const order = uniformStream("order", factor, "test", "points");
      const keys = Array.from({ length: 60 }, (_, level) => ({ level, key: order.next() }));
      return keys.sort((a, b) => a.key - b.key).map(({ level }) => level);
    });
    const points = orders[0]!.map((_, point) => orders.map((order) => order[point]!));
    const found = studyEffects(
      studyOf("latin hypercube", points),
      observed(points, ([a, b]) => 10 * a! + (b! - 29.5) ** 2 / 5, 4, 5),
    )!;
    // Over 60 levels: 100 x 300 for the line, 1/25 of the variance of a parabola, (60^2 - 1)(60^2 - 4) / 180.
    const [line, parabola] = [100 * 300, (3599 * 3596) / 180 / 25];
    const shares = found.ranked.map(({ factors, share }) => ({ factors: factors.join(), share }));
    expect(shares.slice(0, 2).map(({ factors }) => factors)).toEqual(["0", "1"]);
    for (const [place, exact] of [line, parabola].entries()) {
      const { low, high } = shares[place]!.share;
      expect(low!).toBeLessThanOrEqual(exact / (line + parabola));
      expect(high!).toBeGreaterThanOrEqual(exact / (line + parabola));
    }
    expect(found.ranked[0]).toMatchObject({ lowest: [0], highest: [59], span: expect.closeTo(590, -1.5) });
    expect(Math.abs(found.ranked[1]!.lowest[0]! - 29.5)).toBeLessThan(4);
    expect(found.explained).toBeGreaterThan(0.98);
  });

  it("leaves out days without a value, and gives no interval to one day of a factorial", () => {
    const values: (number | null)[][] = observed(FACTORIAL, value, 2, 0);
    values[5]![1] = null;
    const one = studyEffects(studyOf("factorial", FACTORIAL), values)!;
    expect(one.ranked[0]!.share).toEqual({ value: expect.closeTo(24 / 29, 9), low: null, high: null });
  });

  it("says nothing of other designs, of what does not vary and without a whole day", () => {
    const same = observed(FACTORIAL, () => 7, 3, 0);
    expect(studyEffects(studyOf("one at a time", FACTORIAL), observed(FACTORIAL, value, 3, 0))).toBeNull();
    expect(
      studyEffects(
        studyOf("factorial", FACTORIAL),
        same.map((row) => row.map(() => 7)),
      ),
    ).toBeNull();
    expect(studyEffects(studyOf("factorial", FACTORIAL), [...same.slice(0, 12), [null, null, null]])).toBeNull();
  });
});
