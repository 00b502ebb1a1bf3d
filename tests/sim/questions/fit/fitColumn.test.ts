import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import type { Varying } from "../../../../sim/maths/random/index.ts";
import { type ColumnFit, fitColumn, fitPicture, planFragment, readTimes } from "../../../../sim/questions/fit/index.ts";
import { CYCLES, drawnTimes, UPTIMES } from "../../../support/timeStudies.ts";

const OPTIONS = { seed: "1", samples: 99 };

function fitOf(cells: readonly (number | string)[], heading = "skinning (s)"): ColumnFit {
  const { columns, faults } = readTimes(`${heading}\n${cells.join("\n")}\n`, { unit: null, by: null });
  expect(faults).toEqual([]);
  return fitColumn(columns![0]!, OPTIONS);
}

const uptimes = [...UPTIMES.ended, ...UPTIMES.open.map((time) => `${time}+`)];
const verdicts = ({ checks }: ColumnFit) => Object.fromEntries(checks.map(({ name, verdict }) => [name, verdict]));

describe("fitColumn", () => {
  it("fits all families to complete times, best AIC first", () => {
    const { fits, notFitted, summary, resolution, advice } = fitOf(CYCLES);
    expect(notFitted).toEqual([]);
    expect(fits).toHaveLength(8);
    expect(fits.map(({ aic }) => aic)).toEqual(fits.map(({ aic }) => aic).toSorted((a, b) => a - b));
    expect(fits[0]).toMatchObject({ family: "lognormal", behind: 0, objection: "" });
    expect(summary).toMatchObject({
      mean: expect.closeTo(7.16),
      median: expect.closeTo(6.8),
      min: 4.6,
      max: 12.1,
      needed: 119,
    });
    expect(resolution).toBeCloseTo(0.1, 9);
    expect(advice).toMatchObject({
      kind: "family",
      family: "lognormal",
      inPlan: { lognormal: { mean: "7.152 s", cv: 0.2403 } },
    });
  });

  it("fits what can be fitted to times that are still open, and shows no plain mean of them", () => {
    const { fits, notFitted, summary, open, advice } = fitOf(uptimes, "skinning: jam uptime (min)");
    expect(open).toEqual([600, 600, 600]);
    expect(notFitted.map(({ family }) => family)).toEqual(["triangular", "pert"]);
    expect(fits.find(({ family }) => family === "exponential")!.inPlan).toEqual({ exponential: { mean: "430.2 min" } });
    expect(summary).toBeNull();
    expect(advice.kind).toBe("family");
  });

  it("offers the observed times, zeros among them, where there are too few to fit", () => {
    const { fits, advice, checks } = fitOf([5.1, 0, 4.2]);
    expect(fits).toEqual([]);
    expect(advice).toMatchObject({ kind: "empirical", inPlan: { empirical: ["0 s", "4.2 s", "5.1 s"] } });
    expect(advice.words).toMatch(/2 times are too few to fit a distribution/);
    expect(checks.find(({ name }) => name === "number of times")!.verdict).toBe("strong");
  });

  it("takes all the time watched over the number that ended, where too few ended", () => {
    const { advice } = fitOf([100, 200, "300+"], "a: uptime (min)");
    expect(advice).toMatchObject({ family: "exponential", inPlan: { exponential: { mean: "300 min" } } });
    expect(fitOf(["300+", "20+"], "a: uptime (min)").advice.kind).toBe("nothing");
  });

  it("takes a constant for times that are all the same", () => {
    expect(fitOf(new Array(12).fill(4.2)).advice).toMatchObject({ kind: "constant", inPlan: "4.2 s" });
    expect(fitOf([4.2]).advice.words).toMatch(/^One time only/);
  });

  it("offers the observed times where every family is rejected", () => {
    const cells = [...drawnTimes({ family: "uniform", min: 1, max: 2 }, 60, "far"), ...new Array(60).fill(90)];
    expect(fitOf(cells.map((time) => Number(time).toFixed(2))).advice).toMatchObject({ kind: "empirical" });
  });

  it("prefers a family without limits to a triangular one with a lower AIC", () => {
    const law: Varying = { family: "triangular", min: 4.2, mode: 4.6, max: 5.4 };
    const found = fitOf(drawnTimes(law, 60, "limits").map((time) => time.toFixed(2)));
    expect(found.fits[0]!.family).toBe("triangular");
    expect(["triangular", "pert"]).not.toContain(found.advice.family);
  });

  it("objects to a normal distribution that a plan would have to cut", () => {
    const { fits } = fitOf(drawnTimes({ family: "exponential", mean: 10 }, 60, "cut").map((time) => time.toFixed(1)));
    expect(fits.find(({ family }) => family === "normal")!.objection).toMatch(
      / % of it lies below 0, which a plan cuts off/,
    );
  });

  it("runs every check, that of drift only where ten times ended", () => {
    expect(Object.keys(verdicts(fitOf(CYCLES)))).toHaveLength(8);
    expect(verdicts(fitOf(uptimes, "a: uptime (min)"))).toMatchObject({ drift: "not checked", runs: "fine" });
  });

  it("is a pure function of column and seed", () => {
    expect(fitOf(CYCLES)).toEqual(fitOf(CYCLES));
  });
});

describe("planFragment", () => {
  it("is understood by the plan reader, whatever was advised", () => {
    const fits = [
      fitOf(CYCLES),
      fitOf(uptimes, "skinning: jam uptime (min)"),
      fitOf([60, 70], "skinning: jam repair (s)"),
      fitOf([4, 4, 4], "skinning: travel (s)"),
      fitOf(["5+"], "skinning: jam uptime (s)"),
    ];
    const { line, sources } = planFragment(fits, "times.csv");
    expect(line).toHaveLength(1);
    const plan = {
      name: "one station",
      day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
      supply: { saturated: { heads: 10 } },
      line: [
        { kind: "station", work: "machine", ...line[0] },
        { name: "cold room", kind: "dwell", places: null, dwell: "1 h" },
      ],
      sources,
    };
    const { plan: read, faults } = readPlan(plan, { readText: () => "" });
    expect(faults).toEqual([]);
    expect(read!.line[0]).toMatchObject({
      cycleSeconds: { family: "lognormal", mean: 7.152 },
      travelSeconds: { family: "constant", value: 4 },
      breakdowns: [{ name: "jam", repairSeconds: { family: "empirical", values: [60, 70] } }],
    });
    expect(sources[0]).toEqual({
      path: "line.skinning.cycle",
      kind: "measured",
      note: "20 times of times.csv; lognormal by maximum likelihood",
    });
    expect(sources[1]!.note).toMatch(/^12 times of times.csv, 3 of them still open; /);
  });

  it("writes every family so that the plan reader gives the fit back", () => {
    for (const { family, inPlan, mean } of fitOf(CYCLES).fits) {
      const plan = {
        name: "one station",
        day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
        supply: { saturated: { heads: 10 } },
        line: [
          { name: "a", kind: "station", work: "machine", cycle: inPlan },
          { name: "b", kind: "dwell", places: null, dwell: "1 h" },
        ],
      };
      const { plan: read, faults } = readPlan(plan, { readText: () => "" });
      expect(faults).toEqual([]);
      expect((read!.line[0] as { cycleSeconds: Varying }).cycleSeconds.family).toBe(family);
      expect(mean).toBeGreaterThan(0);
    }
  });
});

describe("fitPicture", () => {
  it("has the steps, the foremost densities and the observed against the fitted times with their band", () => {
    const fit = fitOf(CYCLES);
    const { steps, densities, quantiles } = fitPicture(fit, "1");
    expect(steps.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(densities.map(({ family }) => family)).toContain(fit.advice.family);
    expect(densities).toHaveLength(3);
    expect(quantiles!.family).toBe(fit.advice.family);
    const inside = quantiles!.points.filter(({ observed, low, high }) => observed >= low! && observed <= high!);
    expect(inside.length).toBeGreaterThan(15);
  });

  it("draws one of gamma and Erlang, and the advised family in any case", () => {
    const fit = fitOf(CYCLES);
    const last = { ...fit, advice: { ...fit.advice, family: "weibull" as const } };
    const families = fitPicture(last, "1").densities.map(({ family }) => family);
    expect(families).toContain("weibull");
    expect(families.filter((family) => family === "gamma" || family === "erlang").length).toBeLessThan(2);
  });

  it("has no band with open times, and no fit where there is none", () => {
    const open = fitPicture(fitOf(uptimes, "a: uptime (min)"), "1");
    expect(open.quantiles!.points.every(({ low }) => low === null)).toBe(true);
    expect(fitPicture(fitOf([4, 5]), "1")).toMatchObject({ densities: [], quantiles: null });
  });
});
