import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { compare } from "../../../../sim/questions/calibrate/compare.ts";
import { calibrate, type NoticeableFigure, simulatedValues } from "../../../../sim/questions/calibrate/index.ts";
import { multipleFound, noiseOf } from "../../../../sim/questions/calibrate/noise.ts";
import { CALIBRATED, observedOf, parameterAt, quantitiesOf, simulationOf } from "../../../support/calibrationPlan.ts";

const [OBSERVED_DAYS, DAYS] = [6, 40];

async function noticeable(days: number, seed: string): Promise<NoticeableFigure[]> {
  const { seed: _, ...rest } = simulationOf(seed);
  const options = { ...rest, seed, days: DAYS, confidence: 0.95, progress: () => {} };
  return (await calibrate(CALIBRATED, await observedOf(CALIBRATED, days, `${seed} seen`), options)).noticeable!;
}

/** In how many of `studies` new comparisons a difference is shown, when the line is as `figure` says. */
async function timesFound(
  { kind, path, from, to }: NoticeableFigure,
  studies: number,
  drawn: readonly (readonly (number | null)[])[],
): Promise<number> {
  const quantities = quantitiesOf(CALIBRATED);
  const line = parameterAt(path).moved(CALIBRATED, kind === "people" ? to! - from : to! / from);
  const seen = await simulatedValues(line, studies * OBSERVED_DAYS, simulationOf("new line"));
  const part = (days: readonly (number | null)[], study: number, count: number) =>
    days.slice(study * count, (study + 1) * count);
  return Array.from({ length: studies }).filter((_, study) =>
    quantities.some(
      (_, i) => compare(part(seen[i]!, study, OBSERVED_DAYS), part(drawn[i]!, study, DAYS), 4, 0.95)!.shown,
    ),
  ).length;
}

describe("what a calibration could have noticed", { timeout: 120_000 }, () => {
  /**
   * Sizes come from 40 simulated days, whose spread is known to 11 %; so a size is found in 0.6 to 0.95 of new cases. 30
   * studies: 14 found or fewer has a probability of 0.03 at 0.6 and of 0.0001 at 0.8 (binomial), for each figure.
   */
  it("is found in about four of five new cases, by figures of the plan", async () => {
    const figures = await noticeable(OBSERVED_DAYS, "1");
    const sized = figures.filter(({ kind, to }) => to !== null && kind !== "people");
    expect(sized.map(({ path }) => path)).toEqual([
      "line.bench.cycle",
      "line.machine.cycle",
      "line.machine.breakdowns.jam.repair",
    ]);
    const drawn = await simulatedValues(CALIBRATED, 30 * DAYS, simulationOf("new plan"));
    for (const figure of sized) {
      const found = await timesFound(figure, 30, drawn);
      expect(found).toBeGreaterThan(14);
    }
    // The bottleneck is noticed when it takes a fiftieth longer, the machine after it only when it becomes one.
    const by = (path: string) => figures.find((each) => each.path === path)!;
    expect(by("line.bench.cycle").to! / 13).toBeLessThan(1.03);
    expect(by("line.machine.cycle").to!).toBeGreaterThan(5.5);
    expect(by("crews.bench.people")).toMatchObject({ from: 2, to: 1 });
    expect(by("line.machine.breakdowns.jam.uptime")).toMatchObject({ to: null, limit: 240 });
  });

  it.each(["a", "b", "c"])(
    "repairs that take four fifths longer are found, or told as what would not have been noticed (days %s)",
    async (seed) => {
      const path = "line.machine.breakdowns.jam.repair";
      const line = parameterAt(path).moved(CALIBRATED, 1.8);
      const { seed: _, ...rest } = simulationOf(seed);
      const options = { ...rest, seed, days: DAYS, confidence: 0.95, progress: () => {} };
      const found = await calibrate(CALIBRATED, await observedOf(line, OBSERVED_DAYS, `${seed} seen`), options);
      const repair = found.noticeable?.find((figure) => figure.path === path);
      expect(found.gap || repair!.to === null || repair!.to > 1.8 * repair!.from).toBe(true);
    },
  );

  it("gets finer with more observed days", async () => {
    const size = async (days: number) => (await noticeable(days, "1"))[0]!.to!;
    expect(await size(40)).toBeLessThan(await size(3));
  });
});

describe("multipleFound", () => {
  const uniforms = uniformStream("multipleFound", 0, "days", "values");
  const base = [0, 1].map(() => Array.from({ length: 200 }, () => 50 + 10 * normalQuantile(uniforms.next())));
  const quantity = quantitiesOf(CALIBRATED)[0]!;
  const observed = base.map(() => ({ heading: "", quantity, values: new Array<number>(8).fill(50) }));
  const noise = noiseOf(observed, base, 0.95, "1");

  /** Normal days of sd 10, known limits: (2.24 + 1.13) x 10 x sqrt(1/8 + 1/200) = 12.1 for one of two quantities. */
  it("is the size that Student's test would find, in sizes of the shift", () => {
    expect(multipleFound([12.1, 0], [1, 1], noise)).toBeGreaterThan(0.85);
    expect(multipleFound([12.1, 0], [1, 1], noise)).toBeLessThan(1.25);
    expect(multipleFound([24.2, 0], [1, 1], noise)).toBeCloseTo(multipleFound([12.1, 0], [1, 1], noise) / 2, 12);
    expect(multipleFound([12.1, 12.1], [1, 1], noise)).toBeLessThan(multipleFound([12.1, 0], [1, 1], noise));
    expect(multipleFound([12.1, 0], [2, 1], noise)).toBeGreaterThan(1.2 * multipleFound([12.1, 0], [1, 1], noise));
    expect(multipleFound([0, 0], [1, 1], noise)).toBe(Number.POSITIVE_INFINITY);
  });

  it("reckons with no quantity that has no value on some day", () => {
    const holed = [base[0]!, [...base[1]!.slice(1), null]];
    expect(multipleFound([0, 50], [1, 1], noiseOf(observed, holed, 0.95, "1"))).toBe(Number.POSITIVE_INFINITY);
  });
});
