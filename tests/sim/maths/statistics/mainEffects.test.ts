import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { mainEffects, normalQuantile } from "../../../../sim/maths/statistics/index.ts";

/** `figures` columns of numbers on (0, 1), one in each slice (Latin hypercube). */
function hypercube(figures: number, worlds: number, seed: string): number[][] {
  return Array.from({ length: figures }, (_, figure) => {
    const uniforms = uniformStream(seed, figure, "test", "worlds");
    const order = Array.from({ length: worlds }, (_, world) => ({ world, key: uniforms.next() }));
    return order.sort((a, b) => a.key - b.key).map(({ world }) => (world + uniforms.next()) / worlds);
  });
}

const alone = (columns: readonly number[][]) => columns.map((column) => [column]);
const sharesOf = (found: ReturnType<typeof mainEffects>) => found.figures.map(({ share }) => share!);

describe("mainEffects", () => {
  it("finds the indices of Ishigami and Homma's function (1990), whose third figure does nothing alone", () => {
    const columns = hypercube(3, 640, "ishigami").map((column) => column.map((u) => Math.PI * (2 * u - 1)));
    const response = columns[0]!.map((x, world) => {
      const [y, z] = [Math.sin(columns[1]![world]!), columns[2]![world]!];
      return Math.sin(x) + 7 * y ** 2 + 0.1 * (z * z) ** 2 * Math.sin(x);
    });
    const found = mainEffects(response, alone(columns), 0, 0.999);
    expect(Math.abs(found.variance / 13.844587941 - 1)).toBeLessThan(0.1);
    for (const [figure, exact] of [0.3139051911, 0.4424111448, 0].entries()) {
      const { value, low, high } = sharesOf(found)[figure]!;
      expect(Math.abs(value - exact)).toBeLessThan(0.03);
      expect(low).toBeLessThanOrEqual(exact);
      expect(high).toBeGreaterThanOrEqual(exact);
    }
  });

  it("finds the indices of the g-function with a = 0, 1, 4.5, 9 (Saltelli and Sobol 1995)", () => {
    const columns = hypercube(4, 1024, "g-function");
    const a = [0, 1, 4.5, 9];
    const response = columns[0]!.map((_, world) =>
      a.reduce(
        (product, each, figure) => (product * (Math.abs(4 * columns[figure]![world]! - 2) + each)) / (1 + each),
        1,
      ),
    );
    const shares = sharesOf(mainEffects(response, alone(columns), 0, 0.95));
    for (const [figure, exact] of [0.716492935, 0.179123234, 0.0236857169, 0.00716492935].entries())
      expect(Math.abs(shares[figure]!.value - exact)).toBeLessThan(0.03);
  });

  it("splits 1 + 2x + 3y + 4xy as it is: 0.378, 0.591 and 0.031 together (false alarm 0.002)", () => {
    const [x, y] = hypercube(2, 600, "product") as [number[], number[]];
    const response = x.map((value, world) => 1 + 2 * value + 3 * y[world]! + 4 * value * y[world]!);
    const shares = sharesOf(mainEffects(response, alone([x, y]), 0, 0.999));
    for (const [figure, exact] of [0.3779527559, 0.5905511811].entries()) {
      const { low, high } = shares[figure]!;
      expect(low).toBeLessThanOrEqual(exact);
      expect(high).toBeGreaterThanOrEqual(exact);
      expect(high - low).toBeLessThan(0.2);
    }
  });

  it("takes off what the luck of few days adds: 3 + 2a - 1.5b with 40 worlds, intervals that hold (false alarm 0.001)", () => {
    // Contributions as in Song and Nelson 2015 (from memory): variances 0.16 and 0.2025, and a third figure that does nothing.
    const exact = [0.4413793, 0.5586207, 0];
    const times = 150;
    const held = [0, 0, 0];
    const sums = [0, 0, 0];
    for (let time = 0; time < times; time++) {
      const columns = hypercube(3, 40, `linear ${time}`).map((column) => column.map(normalQuantile));
      const luck = uniformStream(`luck ${time}`, 0, "test", "luck");
      const [a, b] = columns as [number[], number[]];
      // Four days with a standard deviation of 0.6 each.
      const response = a.map((value, world) => 3 + 0.4 * value - 0.45 * b[world]! + 0.3 * normalQuantile(luck.next()));
      const shares = sharesOf(mainEffects(response, alone(columns), 0.09, 0.95));
      for (const [figure, { value, low, high }] of shares.entries()) {
        if (low <= exact[figure]! && exact[figure]! <= high) held[figure]!++;
        sums[figure]! += value;
      }
    }
    // Below 132 of 150 happens with probability 0.001 where 95 % hold.
    for (const count of held) expect(count).toBeGreaterThanOrEqual(132);
    for (const [figure, sum] of sums.entries()) expect(Math.abs(sum / times - exact[figure]!)).toBeLessThan(0.02);
  });

  it("takes a figure with several numbers as one, and figures one by one where there are too many for one fit", () => {
    const columns = hypercube(12, 24, "many");
    const [x, y] = columns as [number[], number[]];
    const response = x.map((value, world) => 10 * value + y[world]!);
    const together = mainEffects(response, [[x, y], [columns[2]!]], 0, 0.95);
    expect(together.figures[0]!.share!.value).toBeGreaterThan(0.99);
    const shares = sharesOf(mainEffects(response, alone(columns), 0, 0.95));
    expect(shares[0]!.value).toBeGreaterThan(0.95);
    expect(Math.max(...shares.slice(2).map(({ value }) => value))).toBeLessThan(0.25);
  });

  it("says what a figure adds in each world, and nothing where the response does not vary", () => {
    const [x] = hypercube(1, 40, "adds") as [number[]];
    const { figures } = mainEffects(
      x.map((value) => 5 + 2 * value),
      [[x]],
      0,
      0.95,
    );
    for (const [world, value] of x.entries()) expect(figures[0]!.values[world]).toBeCloseTo(2 * (value - 0.5), 2);
    const flat = mainEffects(
      x.map(() => 5),
      [[x]],
      0,
      0.95,
    );
    expect(flat).toMatchObject({ variance: 0, figures: [{ variance: 0, share: null }] });
  });
});
