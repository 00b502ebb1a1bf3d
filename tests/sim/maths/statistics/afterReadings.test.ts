import { describe, expect, it } from "vitest";
import { afterReadings, normalQuantile, worthOfKnowing } from "../../../../sim/maths/statistics/index.ts";

const slices = (worlds: number) => Array.from({ length: worlds }, (_, world) => normalQuantile((world + 0.5) / worlds));
const NORMAL = slices(2000);
const meanSquare = (values: readonly number[]) => values.reduce((sum, value) => sum + value ** 2, 0) / values.length;
const centred = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
};

describe("afterReadings", () => {
  it.each([
    [5, 499.80728],
    [10, 758.754791],
    [40, 1114.21668],
    [Number.POSITIVE_INFINITY, 1295.360103],
  ])(
    "gives the closed-form value of %d readings of noise 20,000 for two options, difference N(5000, 8000^2): %d",
    (more, exact) => {
      // Raiffa and Schlaifer 1961: s = 8000^2 / sqrt(8000^2 + 20000^2 / n). What is known now is worth (20000 / 8000)^2 readings.
      const gain = NORMAL.map((score) => 8000 * score);
      const after = afterReadings(gain, NORMAL, 6.25, more).map((value) => 5000 + value);
      // 2,000 slices leave 5e-4 of it.
      expect(Math.abs(worthOfKnowing([after.map(() => 0), after]).value / exact - 1)).toBeLessThan(1e-3);
    },
  );

  it("leaves half of what the figure may be off by after three times the readings, whatever the scale and order of worlds", () => {
    const figure = [1.2, 0.9, 1.1, 0.8, 1, 1.3, 0.7, 1.4];
    const after = afterReadings(centred(figure.map((value) => 60 * value)), figure, 20, 60);
    const all = afterReadings(centred(figure.map((value) => 60 * value)), figure, 20, Number.POSITIVE_INFINITY);
    expect(1 - meanSquare(after) / meanSquare(all)).toBeCloseTo(0.25, 12);
    expect(after.reduce((sum, value) => sum + value, 0)).toBeCloseTo(0, 9);
  });

  it("is right for a curve: of exp(0.8 z) readings worth as much as known tell exp(s^2)(exp(s^2 / 2) - 1) of the variance", () => {
    const curve = centred(NORMAL.map((score) => Math.exp(0.8 * score)));
    const after = afterReadings(curve, NORMAL, 20, 20);
    const exact = centred(NORMAL.map((score) => Math.exp(0.8 * Math.SQRT1_2 * score + 0.16)));
    // Degrees beyond the sixth hold 3e-5 of the variance, slices leave 1 % of it on both sides.
    expect(Math.abs(meanSquare(after) / meanSquare(exact) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(meanSquare(after) / (Math.exp(0.64) * (Math.exp(0.32) - 1)) - 1)).toBeLessThan(0.01);
  });

  it("tells less of what bends than of what is straight, and nothing without readings", () => {
    const bent = centred(NORMAL.map((score) => score ** 2));
    expect(meanSquare(afterReadings(bent, NORMAL, 10, 10)) / meanSquare(bent)).toBeCloseTo(0.25, 3);
    expect(meanSquare(afterReadings(bent, NORMAL, 10, 0))).toBeLessThan(1e-20);
  });

  it("takes worlds of one value as one place, as draws have them", () => {
    const figure = [1, 1, 2, 2, 3, 3];
    const after = afterReadings([-1, -1, 0, 0, 1, 1], figure, 10, 30);
    expect(after[0]).toBe(after[1]);
    expect(after[5]! - after[0]!).toBeCloseTo(2 * Math.sqrt(0.75), 9);
  });
});
