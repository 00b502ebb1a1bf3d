import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { serialThroughput } from "../../../../sim/questions/estimate/estimateLine.ts";
import { estimateLine } from "../../../../sim/questions/estimate/index.ts";
import { dwell, planOf, saturated, station } from "../../../support/plans.ts";
import { plantLikeLine } from "../../../support/randomLines.ts";
import { replicate, throughput } from "../../../support/replicate.ts";
import { serial } from "../../../support/serialStations.ts";

const LINES = 24;

/** What the room's README states. */
const MOST = 0.1;

const USUAL = 0.04;

describe("estimateLine", () => {
  it(`lies within ${MOST * 100} % of the simulation on ${LINES} random lines, ${USUAL * 100} % as the root of the mean square`, async () => {
    const plans = fc.sample(plantLikeLine, { numRuns: LINES, seed: 20 });
    const errors: number[] = [];
    for (const [index, plan] of plans.entries()) {
      const days = await replicate(plan, `estimateLine ${index}`, { replications: 4, warmUpHeads: 500 });
      const simulated = days.reduce((sum, day) => sum + throughput(day), 0) / days.length;
      errors.push(estimateLine(plan).headsPerSecond / simulated - 1);
    }
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(MOST);
    expect(Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / LINES)).toBeLessThan(USUAL);
  }, 180_000);

  it("coarse puts lines in the order that fine does, where they differ by more than 15 %, and never above it", () => {
    const plans = fc.sample(plantLikeLine, { numRuns: 6, seed: 22 });
    const found = plans.map((plan) => ({
      fine: estimateLine(plan).headsPerSecond,
      coarse: estimateLine(plan, "coarse").headsPerSecond,
    }));
    const apart = found.flatMap((one) =>
      found.filter(({ fine }) => one.fine > fine * 1.15).map((other) => [one, other]),
    );
    expect(apart.length).toBeGreaterThan(3);
    for (const [one, other] of apart) expect(one!.coarse).toBeGreaterThan(other!.coarse);
    for (const { fine, coarse } of found) expect(coarse).toBeLessThan(fine * 1.001);
  });

  it("is never above the lowest ceiling of the line", () => {
    for (const plan of fc.sample(plantLikeLine, { numRuns: 5, seed: 21 })) {
      const { headsPerSecond, ceilings } = estimateLine(plan);
      expect(headsPerSecond).toBeLessThanOrEqual(ceilings[0]!.headsPerSecond);
    }
  });

  it("gives a dwell between two stations the use of its free places", () => {
    const between = (places: number): Plan =>
      planOf(saturated(9), [
        station("a", { family: "exponential", mean: 5 }),
        dwell("bleeding", 60, places),
        station("b", { family: "exponential", mean: 5 }),
      ]);
    const [tight, roomy] = [between(13), between(30)].map((plan) => estimateLine(plan).headsPerSecond);
    expect(roomy).toBeGreaterThan(tight! * 1.05);
  });

  it("takes places without limit for two lines apart", () => {
    const line = [station("a", 4), station("b", { family: "exponential", mean: 5 }, { buffer: Infinity })];
    expect(estimateLine(planOf(saturated(9), line)).headsPerSecond).toBeCloseTo(0.2, 12);
  });

  it("lets a gate take places away", () => {
    const line = (gated: boolean): Plan =>
      planOf(
        saturated(9),
        [
          station("a", { family: "exponential", mean: 5 }),
          station("b", { family: "exponential", mean: 5 }, { buffer: 4 }),
        ],
        gated ? { gates: [{ name: "g", from: "a", to: { stage: "b", moment: "start" }, atMost: 1 }] } : {},
      );
    expect(estimateLine(line(true)).headsPerSecond).toBeCloseTo(0.2 * (2 / 3), 4);
    expect(estimateLine(line(false)).headsPerSecond).toBeCloseTo(0.2 * (6 / 7), 4);
  });
});

const off = (found: number, exact: number) => Math.abs(found / exact - 1);

describe("serialThroughput", () => {
  it("takes times that hardly vary for what they are, to 3 %: constants of 1 s with 3 places between", () => {
    const line = [serial(1, 0, { squaredCv: 0 }), serial(1, 3, { squaredCv: 0 }), serial(1, 3, { squaredCv: 0 })];
    expect(off(serialThroughput(line), 1)).toBeLessThan(0.03);
  });

  it("is no other than the decomposition where everything varies enough", () => {
    expect(off(serialThroughput([serial(1, 0), serial(1, 1)]), 0.75)).toBeLessThan(1e-4);
  });

  it("knows two lognormal stations without places (1 / E[max], coefficient of variation 0.3) to 1 %", () => {
    const station = serial(1, 0, { squaredCv: 0.09 });
    expect(off(serialThroughput([station, station]), 0.85878)).toBeLessThan(0.01);
  });

  it("gives a lone station its own rate", () => {
    expect(serialThroughput([serial(4, 0, { squaredCv: 0 })])).toBe(0.25);
  });
});
