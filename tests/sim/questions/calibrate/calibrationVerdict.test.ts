import { describe, expect, it } from "vitest";
import type { ComparedQuantity, Explanation } from "../../../../sim/questions/calibrate/index.ts";
import { calibrationVerdict } from "../../../../sim/questions/calibrate/index.ts";

const FINISH = { key: "finish", label: "End of work", unit: "s", format: "clock", better: "less" } as const;

function compared(difference: number, shown: boolean, noticeable: number): ComparedQuantity {
  const side = { days: 10, mean: 30_000, low: null, high: null, min: 0, max: 0, p025: 0, p975: 0 };
  return {
    ...{ info: FINISH, stretch: null, values: [] },
    comparison: {
      ...{ observed: side, simulated: side, difference, low: 0, high: 0, p: 0.5, standardError: 1 },
      ...{ shown, noticeable },
    },
  };
}
const JAMS: Explanation = {
  ...{ kind: "repair", label: "mean repair time of “jam” at skinning", path: "", from: 65, to: 88, removed: 0.974 },
  ...{ left: [], closes: true, plausible: true, doubt: "" },
};
const of = (quantities: ComparedQuantity[], explanations: Explanation[] = []) =>
  calibrationVerdict({ quantities, explanations, observedDays: 10 });

describe("whether a plan fits observed days", () => {
  it("is yes where no difference shows and one that matters would have", () => {
    expect(of([compared(60, false, 240)])).toMatchObject({
      answer: "yes",
      verdict:
        "Yes: the plan fits the 10 observed days; a difference of 4 min or more in ‘End of work’ would have been found in four of five cases.",
    });
  });

  it("cannot be told where one that matters could hide, and says how many days would tell", () => {
    const found = of([compared(60, false, 600)]);
    expect(found.answer).toBe("undecided");
    expect(found.verdict).toMatch(/^No difference shows, but the 10 observed days cannot tell .* and 5 min matter\.$/);
    expect(found.next).toEqual(["About 40 observed days would tell."]);
    expect(of([compared(60, false, 6000)]).next[0]).toMatch(/^Time the figures themselves/);
    expect(of([{ ...compared(0, false, 1), comparison: null }]).answer).toBe("undecided");
  });

  it("is nearly where what shows is less than matters", () => {
    const found = of([compared(-120, true, 60)]);
    expect(found.answer).toBe("too small");
    expect(found.verdict).toMatch(/^Nearly: .*End of work 2(\.\d+)? min earlier than in the plan; 5 min matter\)\.$/);
  });

  it("is no with the largest gap and what explains most of it", () => {
    const found = of([compared(720, true, 60), compared(-120, true, 60)], [JAMS]);
    expect(found.answer).toBe("no");
    expect(found.verdict).toMatch(
      /^No: the plan does not fit the 10 observed days \(End of work 12(\.\d+)? min later than in the plan\); mean repair time of “jam” at skinning would explain 97 % of it, were it 1 min 28 s instead of 1 min 5 s\.$/,
    );
    expect(found.next[0]).toMatch(/^Measure mean repair time/);
    expect(of([compared(720, true, 60)]).verdict).toMatch(/; no single figure explains it\.$/);
    const doubtful = { ...JAMS, plausible: false, doubt: "it would have been noticed" };
    expect(of([compared(720, true, 60)], [doubtful]).verdict).toMatch(/, which is hard to believe\.$/);
  });
});
