import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { precisionWords } from "../../../../sim/days/run/studyProgress.ts";
import { sequentialState } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE } from "../../../support/workedSample.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };

/** The half-width of the worked sample is 7.2247506. */
function words(wanted: number, atMost: number, values: readonly number[] = BASE_SAMPLE): string {
  const rule = { halfWidth: { kind: "absolute", value: wanted }, atLeast: 5, atMost } as const;
  return precisionWords(sequentialState(values, rule, 0.95, "amount"), INFO);
}

it("says that the mean is precise enough, with what was wanted", () => {
  expect(words(7.23, 100)).toBe(
    "Precise enough after 10 observations: half-width 7.22 carcasses/h, wanted 7.23 carcasses/h.",
  );
});

it("says that it is not yet, and how many observations come next", () => {
  expect(words(6, 100)).toBe(
    "Not precise enough after 10 observations: half-width 7.22 carcasses/h, wanted 6 carcasses/h; 15 in all come next.",
  );
  expect(words(6, 100, [])).toMatch(/^Not precise enough after 0 observations: no interval yet, wanted 6 carcasses/);
});

it("says that it stopped at the ceiling", () => {
  expect(words(1, 10)).toBe(
    "Stopped at the most observations allowed, 10, before the wanted precision: half-width 7.22 carcasses/h, wanted 1 carcasses/h.",
  );
});
