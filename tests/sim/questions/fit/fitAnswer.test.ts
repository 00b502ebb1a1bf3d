import { describe, expect, it } from "vitest";
import type { Check, ColumnFit, Summary } from "../../../../sim/questions/fit/index.ts";
import { fitAnswer } from "../../../../sim/questions/fit/index.ts";

const summary = (needed: number): Summary => ({
  ...{ mean: 5.5, sd: 1.65, cv: 0.3, min: 2, median: 5.3, max: 11, meanLow: 4.84, meanHigh: 6.16, needed },
});
const LOGNORMAL = { lognormal: { mean: "5.5 s", cv: 0.3 } };

function column(
  more: Partial<ColumnFit> & { times?: number; inPlan?: unknown; kind?: ColumnFit["advice"]["kind"] } = {},
) {
  const { times = 40, inPlan = LOGNORMAL, kind = "family", ...rest } = more;
  return {
    ...{ heading: "skinning", unit: "s", ended: new Array<number>(times).fill(5), open: [], checks: [] as Check[] },
    ...{ summary: summary(30), advice: { kind, family: null, inPlan, words: "No time ended: watch longer." } },
    ...rest,
  };
}
const DRIFT: Check = { name: "drift", verdict: "strong", words: "Times grow by 20 % to the end.", p: 0.001 };

describe("what to use of measured times", () => {
  it("is the distribution where enough times were taken", () => {
    const found = fitAnswer([column()]);
    expect(found.answer).toBe("yes");
    expect(found.verdict).toBe("skinning: Use a lognormal with mean 5.5 s, cv 0.3: its mean is known within 5 %.");
    expect(fitAnswer([column({ inPlan: { exponential: { mean: "9 s" } } })]).verdict).toMatch(
      /Use an exponential with/,
    );
    expect(fitAnswer([column({ inPlan: "5 s", kind: "constant" })]).verdict).toMatch(/Use always 5 s/);
  });

  it("is to time more where the mean is not known as closely as matters, or nothing can be fitted yet", () => {
    const loose = fitAnswer([column({ summary: summary(60) })]);
    expect(loose.answer).toBe("undecided");
    expect(loose.verdict).toBe(
      "skinning: Use a lognormal with mean 5.5 s, cv 0.3 for now and time 20 more: its mean is known within 12 % only, and 5 % matter.",
    );
    expect(loose.next[0]).toBe("skinning: time 20 more.");
    const few = fitAnswer([column({ times: 5, summary: summary(20), kind: "empirical", inPlan: { empirical: {} } })]);
    expect(few.verdict).toBe(
      "skinning: Time 15 more: 5 are too few to fit anything; until then use the observed times themselves.",
    );
    expect(fitAnswer([column({ kind: "nothing", times: 0, summary: null, inPlan: null })])).toMatchObject({
      ...{ answer: "undecided", verdict: "skinning: No time ended: watch longer." },
    });
  });

  it("is nothing before a strong finding is looked into", () => {
    const found = fitAnswer([column({ checks: [DRIFT] })]);
    expect(found.answer).toBe("no");
    expect(found.verdict).toBe("skinning: Do not use these times yet (drift): Times grow by 20 % to the end.");
    expect(fitAnswer([column({ checks: [{ ...DRIFT, verdict: "look" }] })]).answer).toBe("yes");
  });

  it("is the times themselves where no family fits", () => {
    expect(fitAnswer([column({ kind: "empirical", inPlan: { empirical: {} } })]).answer).toBe("told");
  });

  it("is told in one sentence for several columns, the worst deciding", () => {
    const found = fitAnswer([
      column(),
      column({ heading: "trim", summary: summary(60) }),
      column({ heading: "hanging", checks: [DRIFT] }),
    ]);
    expect(found.answer).toBe("no");
    expect(found.verdict).toBe(
      "Use what is fitted for skinning; time more for trim (20); find out first what is wrong with hanging.",
    );
    expect(fitAnswer([column(), column({ heading: "trim" })]).verdict).toBe("Use what is fitted for all 2 columns.");
  });
});
