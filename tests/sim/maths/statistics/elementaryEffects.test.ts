import { describe, expect, it } from "vitest";
import { morrisTrajectories } from "../../../../sim/asked/study/draftScreening.ts";
import { elementaryEffects, type TrajectoryPoint } from "../../../../sim/maths/statistics/index.ts";

function walk(points: readonly number[][], response: (x: readonly number[]) => number | null): TrajectoryPoint[] {
  return points.map((point) => ({ point, value: response(point) }));
}

function drawn(factors: number, trajectories: number, response: (x: readonly number[]) => number) {
  return morrisTrajectories(factors, trajectories, 4, "morris").map((points) =>
    walk(
      points.map((levels) => levels.map((level) => level / 3)),
      response,
    ),
  );
}

/** The test function of Morris 1991, section 4, with its random coefficients set to 0: ten factors of twenty matter. */
function morris(x: readonly number[]): number {
  const w = x.map((value, index) =>
    [2, 4, 6].includes(index) ? 2 * ((1.1 * value) / (value + 0.1) - 0.5) : 2 * (value - 0.5),
  );
  let y = 0;
  for (let i = 0; i < 10; i++) y += 20 * w[i]!;
  for (let i = 0; i < 6; i++) for (let j = i + 1; j < 6; j++) y -= 15 * w[i]! * w[j]!;
  for (let i = 0; i < 5; i++)
    for (let j = i + 1; j < 5; j++) for (let l = j + 1; l < 5; l++) y -= 10 * w[i]! * w[j]! * w[l]!;
  return y + 5 * w[0]! * w[1]! * w[2]! * w[3]!;
}

describe("elementaryEffects", () => {
  it("is exact for a straight line: mu the slope, mu* its size, sigma 0", () => {
    const slopes = [3, -2, 0, 0.5];
    const line = (x: readonly number[]) => 7 + x.reduce((sum, value, factor) => sum + slopes[factor]! * value, 0);
    const found = elementaryEffects(drawn(4, 12, line), 4, 0.95);
    found.forEach((effect, factor) => {
      expect(effect!.n).toBe(12);
      expect(effect!.mu).toBeCloseTo(slopes[factor]!, 10);
      expect(effect!.muStar).toBeCloseTo(Math.abs(slopes[factor]!), 10);
      expect(effect!.sigma).toBeLessThan(1e-12);
    });
  });

  it("gives an interaction worked by hand: y = 12 x1 (x2 - 1/2) on two trajectories", () => {
    const product = ([one, two]: readonly number[]) => 12 * one! * (two! - 0.5);
    // First: y 0, then x1 0 -> 2/3 at x2 = 1: (4 - 0)/(2/3) = 6, then x2 1 -> 1/3: (-4/3 - 4)/(-2/3) = 8.
    const first = walk(
      [
        [0, 1],
        [2 / 3, 1],
        [2 / 3, 1 / 3],
      ],
      product,
    );
    // Second: x2 2/3 -> 0 at x1 = 1/3: (-2 - 2/3)/(-2/3) = 4, then x1 1/3 -> 1 at x2 = 0: (-6 + 2)/(2/3) = -6.
    const second = walk(
      [
        [1 / 3, 2 / 3],
        [1 / 3, 0],
        [1, 0],
      ],
      product,
    );
    const [one, two] = elementaryEffects([first, second], 2, 0.95);
    expect(one!.mu).toBeCloseTo(0, 12);
    expect(one!.muStar).toBeCloseTo(6, 12);
    expect(one!.sigma).toBeCloseTo(Math.sqrt(72), 12);
    expect(two!.mu).toBeCloseTo(6, 12);
    expect(two!.muStar).toBeCloseTo(6, 12);
    expect(two!.sigma).toBeCloseTo(Math.sqrt(8), 12);
  });

  it("sorts the factors of Morris' test function: three straight ones of slope 40, seven that interact, ten that do nothing", () => {
    const found = elementaryEffects(drawn(20, 20, morris), 20, 0.95).map((effect) => effect!);
    for (const effect of found.slice(7, 10)) {
      expect(effect.mu).toBeCloseTo(40, 9);
      expect(effect.sigma).toBeLessThan(1e-9);
    }
    for (const effect of found.slice(10)) expect(effect.muStar).toBeLessThan(1e-9);
    for (const effect of found.slice(0, 6)) {
      expect(effect.muStar).toBeGreaterThan(10);
      expect(effect.sigma).toBeGreaterThan(10);
    }
    // The seventh bends (its w is a curve) but interacts with none: from 2/3 to 0 or from 1 to 1/3 by the formula of w.
    const steep = (40 * (1.1 * (2 / 3))) / (2 / 3 + 0.1) / (2 / 3);
    const flat = (40 * (1 - 1.1 / 3 / (1 / 3 + 0.1))) / (2 / 3);
    expect(found[6]!.mu).toBeGreaterThan(flat);
    expect(found[6]!.mu).toBeLessThan(steep);
    expect(found[6]!.mu).toBe(found[6]!.muStar);
  });

  it("leaves out steps without a value, and a factor without any is null", () => {
    const holes = walk(
      [
        [0, 0],
        [1, 0],
        [1, 1],
      ],
      ([one, two]) => (one === 1 && two === 1 ? null : one!),
    );
    expect(elementaryEffects([holes], 2, 0.95)).toEqual([
      { n: 1, mu: 1, muStar: 1, muHalfWidth: null, muStarHalfWidth: null, sigma: null },
      null,
    ]);
  });

  it("refuses a step that moves two factors or none", () => {
    const bad = (next: number[]) => () => elementaryEffects([walk([[0, 0], next], () => 1)], 2, 0.95);
    expect(bad([1, 1])).toThrow(/moves 2 factors/);
    expect(bad([0, 0])).toThrow(/moves 0 factors/);
  });
});
