import { expect, test } from "vitest";
import { estimateWords, responseFormat } from "../../../viz/words/index.ts";

const FORMAT = responseFormat({ key: "k", label: "L", unit: "heads/h", format: "number", better: "more" }, 0);
const ESTIMATE = { n: 20, mean: 588.2, sd: 9, halfWidth: 4.2, low: 584, high: 592.4, min: 570, max: 600 };

test("an estimate is never said without interval, confidence and number of replications", () => {
  expect(estimateWords(ESTIMATE, FORMAT, 0.95).phrase).toBe("588 heads/h (584 to 592 at 95 %, 20 simulated days)");
});

test("one day says that it has no interval", () => {
  const one = { ...ESTIMATE, n: 1, halfWidth: null, low: null, high: null };
  expect(estimateWords(one, FORMAT, 0.95).phrase).toBe("588 heads/h (one day, no interval)");
});

test("a response that no replication gave is said to have no value", () => {
  expect(estimateWords(undefined, FORMAT, 0.95)).toMatchObject({ mean: "no value", interval: "" });
});
