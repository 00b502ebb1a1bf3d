import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile, posteriorDraws } from "../../../../sim/maths/statistics/index.ts";

const WORLDS = 200;
const uniforms = uniformStream("posterior", 0, "test", "worlds");
const normals = (count: number) => Array.from({ length: count }, () => normalQuantile(uniforms.next()));
const [a, b] = [normals(WORLDS), normals(WORLDS)];
const moments = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return { mean, sd: Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length) };
};

/** A quantity 100 + 3 a + 4 b with luck of 5 on each of ten days. */
const SUM = a.map((score, world) => normals(10).map((luck) => 100 + 3 * score + 4 * b[world]! + 5 * luck));

describe("posteriorDraws", () => {
  it("gives the posterior of a normal mean by closed form: one line, 25 observed days (false alarm 0.001)", () => {
    const values = [a.map((score) => normals(10).map((luck) => 100 + 3 * score + 5 * luck))];
    const draws = posteriorDraws({ scores: [a], values, observed: [{ mean: 106, days: 25 }], draws: 400, seed: "1" });
    const { mean, sd } = moments(draws.map(([score]) => score!));
    // Precision 1 + 9 / (25 / 25) = 10 by the observed days: mean 3 x 6 / 10 = 1.8, sd 0.316. The line itself adds 2 x 2.5 / 200.
    expect(Math.abs(mean - 1.8)).toBeLessThan(0.15);
    expect(Math.abs(sd / 0.316 - 1)).toBeLessThan(0.15);
  });

  it("keeps what observed days cannot part: of 3 a + 4 b only the sum is known, so a and b hang together", () => {
    const observed = [{ mean: 110, days: 10_000 }];
    const draws = posteriorDraws({ scores: [a, b], values: [SUM], observed, draws: 600, seed: "2" });
    const [one, other] = [0, 1].map((figure) => draws.map((draw) => draw[figure]!)) as [number[], number[]];
    // Along (3, 4) / 5 all is told: 10 / 5 = 2. Across it nothing is: sd 1, so of a 4/5 and of b 3/5.
    expect(moments(one.map((score, draw) => (3 * score + 4 * other[draw]!) / 5)).sd).toBeLessThan(0.15);
    expect(Math.abs(moments(one).mean - 1.2)).toBeLessThan(0.1);
    expect(Math.abs(moments(other).mean - 1.6)).toBeLessThan(0.1);
    expect(Math.abs(moments(one).sd / 0.8 - 1)).toBeLessThan(0.1);
    expect(Math.abs(moments(other).sd / 0.6 - 1)).toBeLessThan(0.1);
  });

  it("does not count one observation twice: the same quantity twice tells as much as once", () => {
    const asked = { scores: [a, b], draws: 400, seed: "3" };
    const once = posteriorDraws({ ...asked, values: [SUM], observed: [{ mean: 104, days: 4 }] });
    const seen = { mean: 104, days: 4 };
    const twice = posteriorDraws({
      ...asked,
      values: [SUM, SUM.map((days) => days.map((value) => 2 * value))],
      observed: [seen, { mean: 208, days: 4 }],
    });
    const [first, second] = [once, twice].map((draws) => moments(draws.map(([score]) => score!)));
    expect(Math.abs(second!.mean - first!.mean)).toBeLessThan(0.02);
    expect(Math.abs(second!.sd / first!.sd - 1)).toBeLessThan(0.1);
  });

  it("learns nothing of what does nothing, nor from what never varies", () => {
    const flat = a.map(() => [7, 7]);
    const luck = a.map(() => normals(2));
    const observed = [
      { mean: 7, days: 5 },
      { mean: 0.3, days: 5 },
    ];
    const draws = posteriorDraws({ scores: [a], values: [flat, luck], observed, draws: 400, seed: "4" });
    const { mean, sd } = moments(draws.map(([score]) => score!));
    expect(Math.abs(mean)).toBeLessThan(0.2);
    expect(Math.abs(sd - 1)).toBeLessThan(0.13);
  });
});
