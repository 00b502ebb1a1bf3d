import { expect, test } from "vitest";
import { estimateWords, responseFormat } from "../../../viz/words/index.ts";

const FORMAT = responseFormat({ key: "k", label: "L", unit: "heads/h", format: "number", better: "more" }, 0);
const ESTIMATE = { n: 20, mean: 588.2, sd: 9, halfWidth: 4.2, low: 584, high: 592.4, min: 570, max: 600 };

test("an estimate is never said without interval, confidence and number of replications", () => {
  expect(estimateWords(ESTIMATE, FORMAT, 0.95).phrase).toBe("588 heads/h (584 to 592 at 95 %, 20 simulated days)");
});

test("a share that was never seen is none in so many days, and what may be all the same", () => {
  const share = responseFormat({ key: "k", label: "L", unit: "", format: "share", better: "less" }, 0);
  const never = { ...ESTIMATE, mean: 0, sd: 0, halfWidth: 0.084, low: 0, high: 0.168 };
  expect(estimateWords(never, share, 0.95)).toEqual({
    mean: "0 %",
    interval: "none in 20 simulated days",
    phrase: "none in 20 simulated days (at most 17 % at 95 %)",
  });
});

test("one day says that it has no interval", () => {
  const one = { ...ESTIMATE, n: 1, halfWidth: null, low: null, high: null };
  expect(estimateWords(one, FORMAT, 0.95).phrase).toBe("588 heads/h (one day, no interval)");
});

test("a response that no replication gave is said to have no value", () => {
  expect(estimateWords(undefined, FORMAT, 0.95)).toMatchObject({ mean: "no value", interval: "" });
});
