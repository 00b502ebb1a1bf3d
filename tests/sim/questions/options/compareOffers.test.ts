import { describe, expect, it } from "vitest";
import { runStudy } from "../../../../sim/days/run/index.ts";
import { appraise, compareOffers, readOptions } from "../../../../sim/questions/options/index.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { offersFile } from "../../../support/offers.ts";

const { question } = readOptions(offersFile(), NO_FILES);
const results = await runStudy(question!.study, { gambrel: "test", command: "test", traces: "none" });
const found = compareOffers(question!, results);
const [same, fewer, fourth] = found.options as [
  (typeof found.options)[0],
  (typeof found.options)[0],
  (typeof found.options)[0],
];

describe("compareOffers", () => {
  it("makes a loss of its price of an option that changes nothing, without any luck in it", () => {
    expect(same.cashPerDay).toMatchObject({ mean: 0, sd: 0 });
    expect(same.worth.presentValue).toEqual({ mean: -1000, low: -1000, high: -1000 });
    expect(same.verdict).toBe("does not pay");
    expect(same.worth.paybackYears.mean).toBe(Number.POSITIVE_INFINITY);
    expect(same.againstBest!.mayBeBest).toBe(false);
  });

  it("makes of the cash of a day what the formulas make of it, and of its interval too", () => {
    const { mean, familyLow, familyHigh } = fourth.cashPerDay;
    const of = (perDay: number) => appraise(question!.offerCosts[2]!, perDay * 240, 0.05);
    expect(fourth.worth.presentValue.mean).toBeCloseTo(of(mean).presentValue, 9);
    expect(fourth.worth.presentValue.low).toBeCloseTo(of(familyLow!).presentValue, 9);
    expect(fourth.worth.paybackYears.low).toBeCloseTo(of(familyHigh!).paybackYears, 9);
    expect(fourth.worth.netPerYear.mean).toBeCloseTo(mean * 240 - 100, 9);
  });

  it("puts the pay of the people and the overtime against each other, day by day", () => {
    const { values } = results.variants[2]!;
    const base = results.variants[0]!.values;
    const differences = values.margin!.map((margin, day) => margin! - base.margin![day]!);
    expect(fewer.cashPerDay.mean).toBeCloseTo(differences.reduce((a, b) => a + b) / differences.length, 9);
  });

  it("never offers what breaks a limit more often or handles fewer heads, whatever it earns, and says why", () => {
    expect(same.harm).toBeNull();
    // The best earner of all, which handles 10 heads a day fewer.
    const variants = results.variants.map((variant, index) =>
      index !== 3
        ? variant
        : {
            ...variant,
            values: {
              ...variant.values,
              margin: results.variants[0]!.values.margin!.map((margin) => margin! + 1e6),
              carcasses: results.variants[0]!.values.carcasses!.map((heads) => heads! - 10),
            },
          },
    );
    const harmful = compareOffers(question!, { ...results, variants });
    expect(harmful.options[2]).toMatchObject({ verdict: "pays", harm: "it handles 10 fewer heads a day" });
    expect(harmful.options[2]!.words).toMatch(
      /should not be bought, whatever it earns: .* it handles 10 fewer heads a day\./u,
    );
    expect(harmful.options[2]!.againstBest).toBeNull();
    expect(harmful.words[0]).toMatch(/^Best is /u);
    expect(harmful.words[0]).not.toContain(harmful.options[2]!.name);
  });

  it("counts buying nothing among the choices", () => {
    const best = [found.nothing, ...found.options.map(({ againstBest }) => againstBest)];
    expect(best.some((each) => each?.mayBeBest)).toBe(true);
    expect(same.words).toMatch(/^"nothing new" does not pay: net present value .* Another choice is better\.$/);
  });
});
