import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { jointEffects, normalQuantile } from "../../../../sim/maths/statistics/index.ts";

/** `figures` columns of numbers on (0, 1), one in each slice (Latin hypercube). */
function hypercube(figures: number, points: number, seed: string): number[][] {
  return Array.from({ length: figures }, (_, figure) => {
    const uniforms = uniformStream(seed, figure, "test", "points");
    const order = Array.from({ length: points }, (_, point) => ({ point, key: uniforms.next() }));
    return order.sort((a, b) => a.key - b.key).map(({ point }) => (point + uniforms.next()) / points);
  });
}

const at = (columns: readonly number[][], point: number) => columns.map((column) => column[point]!);
function effectsOf(columns: readonly number[][], value: (at: number[]) => number, noise = 0, confidence = 0.999) {
  const response = columns[0]!.map((_, point) => value(at(columns, point)));
  return jointEffects({ response, noise, figures: columns.map((column) => [column]), grid: false, confidence })!;
}

const ishigami = (u: number[]) => {
  const [x, y, z] = u.map((value) => Math.PI * (2 * value - 1)) as [number, number, number];
  return Math.sin(x) + 7 * Math.sin(y) ** 2 + 0.1 * (z * z) ** 2 * Math.sin(x);
};

describe("jointEffects", () => {
  it("finds first-order and total indices of Ishigami and Homma's function (1990), in their intervals (false alarm 0.006)", () => {
    const { figures, pairs, explained } = effectsOf(hypercube(3, 320, "ishigami"), ishigami);
    const exact = [
      [0.3139051911, 0.5575888552],
      [0.4424111448, 0.4424111448],
      [0, 0.2436836641],
    ];
    for (const [figure, { alone, total }] of figures.entries())
      for (const [index, share] of [alone, total].entries()) {
        expect(Math.abs(share.value - exact[figure]![index]!)).toBeLessThan(0.06);
        expect(share.low!).toBeLessThanOrEqual(exact[figure]![index]!);
        expect(share.high!).toBeGreaterThanOrEqual(exact[figure]![index]! - 1e-3);
      }
    expect(pairs[0]!.figures).toEqual([0, 2]);
    expect(Math.abs(pairs[0]!.share.value - 0.2436836641)).toBeLessThan(0.05);
    expect(explained).toBeGreaterThan(0.97);
  });

  it("finds those of the g-function with a = 0, 1, 4.5, 9 (Saltelli and Sobol 1995)", () => {
    const a = [0, 1, 4.5, 9];
    const { figures } = effectsOf(hypercube(4, 400, "g-function"), (u) =>
      a.reduce((product, each, figure) => (product * (Math.abs(4 * u[figure]! - 2) + each)) / (1 + each), 1),
    );
    const exact = [
      [0.716492935, 0.787369701],
      [0.179123234, 0.2422676],
      [0.0236857169, 0.0343267445],
      [0.00716492935, 0.0104633847],
    ];
    for (const [figure, { alone, total }] of figures.entries()) {
      expect(Math.abs(alone.value - exact[figure]![0]!)).toBeLessThan(0.06);
      expect(Math.abs(total.value - exact[figure]![1]!)).toBeLessThan(0.06);
      // Curves of so few points pass over the kinks of what matters least: those two are told a little small.
      if (figure > 1) continue;
      expect(total.low!).toBeLessThanOrEqual(exact[figure]![1]!);
      expect(total.high!).toBeGreaterThanOrEqual(exact[figure]![1]!);
    }
  });

  it("covers the indices of 1 + 2x + 3y + 4xy by 95 % intervals in 51 of 60 designs of 30 points at least (false alarm 0.001 each)", () => {
    const exact = [
      [0.3779527559, 0.4094488189],
      [0.5905511811, 0.6220472441],
    ];
    const held = [0, 0, 0, 0];
    for (let design = 0; design < 60; design++) {
      const { figures } = effectsOf(
        hypercube(2, 30, `product ${design}`),
        ([x, y]) => 1 + 2 * x! + 3 * y! + 4 * x! * y!,
        0,
        0.95,
      );
      for (const [place, { low, high }] of figures.flatMap(({ alone, total }) => [alone, total]).entries())
        if (low! <= exact.flat()[place]! && exact.flat()[place]! <= high!) held[place]!++;
    }
    for (const times of held) expect(times).toBeGreaterThanOrEqual(51);
  });

  it("gives a figure that does nothing hardly anything, whatever the luck (false alarm 0.001)", () => {
    const columns = hypercube(3, 60, "nothing");
    const uniforms = uniformStream("nothing", 0, "test", "luck");
    const { figures } = effectsOf(columns, ([x]) => 10 * x! + normalQuantile(uniforms.next()), 1);
    // x has a variance of 8.33, luck 1: of 60 points one curve's chance share is about 0.002.
    expect(figures[0]!.alone.value).toBeGreaterThan(0.9);
    for (const { alone, total } of figures.slice(1)) {
      expect(alone.low).toBe(0);
      expect(total.value).toBeLessThan(0.1);
    }
  });

  it("splits a full factorial exactly, levels in any order, and takes the luck of days off", () => {
    // Effects -6, 0, 6 and -2, 2, and a pair of which each cell is 1 off: variances by hand 24, 4 and 2/3 over the six points.
    const [a, b] = [
      [0, 0, 1, 1, 2, 2],
      [0, 1, 0, 1, 0, 1],
    ] as [number[], number[]];
    const together = [1, -1, -1, 1, 0, 0];
    const response = a.map((level, point) => 50 + [0, 6, -6][level]! + [2, -2][b[point]!]! + together[point]!);
    const otherDays = [
      response.map((value) => value + 1),
      response.map((value, point) => value + (point < 3 ? 1 : -1)),
    ];
    const { variance, figures, pairs, explained } = jointEffects({
      ...{ response, noise: 0, figures: [[a], [b]], grid: true, otherDays, confidence: 0.95 },
    })!;
    // Sums of squares 6 x (24, 4, 2/3), by 5 degrees of freedom.
    expect(variance).toBeCloseTo(34.4, 9);
    expect(figures.map(({ alone }) => alone.value)).toEqual(
      [24 / (86 / 3), 4 / (86 / 3)].map((share) => expect.closeTo(share, 9)),
    );
    expect(figures[0]!.total.value).toBeCloseTo((24 + 2 / 3) / (86 / 3), 9);
    expect(pairs).toHaveLength(1);
    expect(pairs[0]!.share.value).toBeCloseTo(2 / 86, 9);
    expect(pairs[0]!.values).toEqual(together.map((value) => expect.closeTo(value, 9)));
    expect(figures[0]!.values.slice(0, 5)).toEqual([0, 0, 6, 6, -6].map((value) => expect.closeTo(value, 9)));
    expect(explained).toBeCloseTo(1, 9);
    const noisy = jointEffects({ response, noise: 2, figures: [[a], [b]], grid: true, confidence: 0.95 })!;
    // Chance gives two terms of the first figure 2 x 2, one of the second 2: off their sums of squares 144 and 24.
    expect(noisy.figures[0]!.alone.value).toBeCloseTo((144 - 4) / 5 / 32.4, 9);
    expect(noisy.figures[1]!.alone.value).toBeCloseTo((24 - 2) / 5 / 32.4, 9);
    expect(noisy.figures[0]!.alone.low).toBeNull();
  });

  it("finds nothing to share out where nothing varies but luck", () => {
    expect(
      jointEffects({ response: [1, 2, 1], noise: 1, figures: [[[0, 1, 2]]], grid: false, confidence: 0.95 }),
    ).toBeNull();
  });
});
