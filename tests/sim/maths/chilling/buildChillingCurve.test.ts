import { describe, expect, it } from "vitest";
import { buildChillingCurve, type ChillingConditions, chillingOf } from "../../../../sim/maths/chilling/index.ts";

const USUAL: ChillingConditions = {
  startCelsius: 39,
  airCelsius: 0,
  coreCelsius: 4,
  airMetresPerSecond: 2,
  carcassLengthMetres: 0.36,
  carcassShare: 0.57,
  conductivity: 0.48,
  density: 1070,
  specificHeat: 3500,
};
const OTHERS: Partial<ChillingConditions>[] = [
  {},
  { airCelsius: -5 },
  { coreCelsius: 10 },
  { airMetresPerSecond: 0.2 },
  { airMetresPerSecond: 6 },
  { carcassLengthMetres: 0.15 },
  { startCelsius: 12, coreCelsius: 11.9 },
  { startCelsius: 39, coreCelsius: 36, airCelsius: -10 },
];

describe("buildChillingCurve", () => {
  it("has ascending weights from 0.5 to 8 kg, and both columns rise with them", () => {
    const { weightsKg, seconds, joules } = buildChillingCurve(USUAL);
    expect(weightsKg[0]).toBe(0.5);
    expect(weightsKg.at(-1)).toBe(8);
    for (const column of [weightsKg, seconds, joules]) {
      expect(column).toHaveLength(151);
      expect(column.every((value, row) => row === 0 || value > column[row - 1]!)).toBe(true);
    }
  });

  it.each(OTHERS)("is read off by straight lines to 0.03 %%, case %o", (other) => {
    const conditions = { ...USUAL, ...other };
    const { weightsKg, seconds, joules } = buildChillingCurve(conditions);
    let worst = 0;
    for (let row = 0; row + 1 < weightsKg.length; row += 5) {
      const exact = chillingOf(conditions, ((weightsKg[row]! + weightsKg[row + 1]!) / 2) * conditions.carcassShare);
      const error = (column: number[], value: number) => Math.abs((column[row]! + column[row + 1]!) / 2 / value - 1);
      worst = Math.max(worst, error(seconds, exact.seconds), error(joules, exact.joules));
    }
    expect(worst).toBeLessThan(3e-4);
  });

  it("takes no time for a carcass that is cold from the start", () => {
    const { seconds, joules } = buildChillingCurve({ ...USUAL, startCelsius: 3 });
    expect(new Set(seconds)).toEqual(new Set([0]));
    expect(new Set(joules)).toEqual(new Set([0]));
  });

  it("never ends in air that is not colder than the core is to be", () => {
    const { seconds, joules } = buildChillingCurve({ ...USUAL, airCelsius: 4 });
    expect(new Set(seconds)).toEqual(new Set([Number.POSITIVE_INFINITY]));
    // 0.5 kg x 0.57 x 3500 J/(kg K) x (39 - 4) K
    expect(joules[0]).toBeCloseTo(34_912.5, 3);
  });

  it("holds whole milliseconds and millijoules, so that engines which round differently agree", () => {
    const { seconds } = buildChillingCurve(USUAL);
    expect(seconds.every((value) => value === Math.round(value * 1000) / 1000)).toBe(true);
  });
});
