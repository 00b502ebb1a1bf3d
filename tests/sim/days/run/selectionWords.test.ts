import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { selectionWords } from "../../../../sim/days/run/selectionWords.ts";
import { observe, startSelection } from "../../../../sim/maths/statistics/index.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };
const NAMES = ["base", "one more", "two more"];
const START = startSelection({ k: 3, n0: 2, delta: 5, alpha: 0.05, better: "more", atMost: 3 });

it("selectionWords says who was picked, with the promise and its limits", () => {
  const rows = [
    [1, 2, 30],
    [2, 3, 31],
  ];
  expect(selectionWords(observe(START, rows), NAMES, INFO)).toBe(
    '"two more" is the best of 3 with a probability of 95 % or more, after 2 days; ' +
      "variants within 5 carcasses/h of the best count as equal.",
  );
});

it("selectionWords says how far it is, that it stopped undecided, and that a value is missing", () => {
  const rows = [
    [1, 20, 3],
    [20, 2, 31],
    [4, 14, 17],
  ];
  expect(selectionWords(observe(START, rows.slice(0, 2)), NAMES, INFO, "antithetic pair")).toBe(
    "Undecided after 2 antithetic pairs; 3 of 3 variants are left.",
  );
  expect(selectionWords(observe(START, rows), NAMES, INFO)).toBe(
    'Undecided at the most days allowed (3 days): "base", "one more" and "two more" are left. "two more" has the best ' +
      "average, but is not shown to be the best. Allow more days, or let more than 5 carcasses/h count as equal.",
  );
  expect(selectionWords(observe(START, [[1, null, 2]]), NAMES, INFO)).toBe(
    'No choice is possible: "one more" has no value of this result on day 1.',
  );
});
