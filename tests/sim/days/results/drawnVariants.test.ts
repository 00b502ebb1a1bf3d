import { expect, it } from "vitest";
import { drawnVariants, type StudyResults } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

const RESULTS = handMadeResults();
const [info] = RESULTS.responses;

/** Today's plan and variants whose means differ from it by so much in the first response. */
function differing(...means: number[]): StudyResults {
  const [base, other] = RESULTS.variants;
  const variants = means.map((mean) => {
    const difference = { ...other!.differences![info!.key]!, mean };
    return { ...other!, differences: { [info!.key]: difference } };
  });
  return { ...RESULTS, variants: [base!, ...variants] };
}

it("draws today's plan and the variant to take", () => {
  const results = differing(1, 2, -3);
  expect(drawnVariants({ ...results, decision: { ...RESULTS.decision!, best: 2 } })).toEqual([0, 2]);
});

it("draws the variant that differs most, in either direction, where none is to be taken", () => {
  for (const best of [0, null]) {
    const decision = { ...RESULTS.decision!, best };
    expect(drawnVariants({ ...differing(1, -3, 2), decision })).toEqual([0, 2]);
    expect(drawnVariants({ ...differing(0, 0), decision })).toEqual([0, 1]);
  }
});

it("draws today's plan alone where there is nothing else", () => {
  expect(drawnVariants({ ...differing(), decision: null })).toEqual([0]);
});
