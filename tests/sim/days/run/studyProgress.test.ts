import { describe, expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Procedure, type StoppingRule } from "../../../../sim/asked/study/index.ts";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { studyProgress } from "../../../../sim/days/run/studyProgress.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };
const RULE: StoppingRule = {
  ...{ response: "t", halfWidth: { kind: "absolute", value: 8 }, of: "mean", atLeast: 4, atMost: 100 },
};
const DAYS = [BASE_SAMPLE, VARIANT_SAMPLE];

function progress(change: Partial<StoppingRule>, procedure: Partial<Procedure> = {}, days = DAYS) {
  const study = { confidence: 0.95, procedure: { ...PLAIN_PROCEDURE, stopping: { ...RULE, ...change }, ...procedure } };
  return studyProgress(days, study, INFO);
}

describe("studyProgress", () => {
  it("goes on until every variant is precise enough, by the one that needs most", () => {
    // Half-widths 7.2247506 of the base and 7.7893... of the variant (SciPy: sd 10.8893...).
    const found = progress({ halfWidth: { kind: "absolute", value: 7.4 } });
    expect(found.variants.map((one) => one!.kind)).toEqual(["enough", "more"]);
    expect(found).toMatchObject({ kind: "more", nextDays: found.variants[1]!.next });
    expect(progress({}).kind).toBe("enough");
  });

  it("looks at paired differences where the rule says so; the base has none", () => {
    const found = progress({ of: "difference", halfWidth: { kind: "absolute", value: 1.91 } });
    expect(found).toMatchObject({ kind: "enough", nextDays: 10 });
    expect(found.variants[0]).toBeNull();
    expect(found.variants[1]!.halfWidth).toBeCloseTo(1.9016478, 6);
  });

  it("takes a relative half-width of a difference as a share of the base's mean", () => {
    const found = progress({ of: "difference", halfWidth: { kind: "relative", value: 0.01 } });
    expect(found.variants[1]!.wanted).toBeCloseTo(6.06, 10);
  });

  it("counts antithetic pairs as observations and days in twos", () => {
    const found = progress({ halfWidth: { kind: "absolute", value: 0.5 }, atMost: 14 }, { antithetic: true });
    expect(found.variants[0]!.n).toBe(5);
    expect(found).toMatchObject({ kind: "more", nextDays: 14 });
  });

  it("says that a ceiling was hit before the wanted precision", () => {
    expect(progress({ halfWidth: { kind: "absolute", value: 1 }, atMost: 10 })).toMatchObject({
      kind: "ceiling",
      nextDays: 10,
    });
  });

  it("begins with the least number", () => {
    expect(progress({}, {}, [[], []])).toMatchObject({ kind: "more", nextDays: 4 });
  });

  it("refuses a study without a stopping rule", () => {
    expect(() => progress({}, { stopping: null })).toThrow(/no stopping rule/);
  });
});
