import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { differenceInWords } from "../../../../sim/days/results/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

const THROUGHPUT: ResponseInfo = {
  key: "headsPerHour",
  label: "Throughput",
  unit: "carcasses/h",
  format: "number",
  better: "more",
};
const FINISH: ResponseInfo = { key: "finish", label: "Last head out", unit: "s", format: "clock", better: "less" };

describe("differenceInWords", () => {
  it("says a shown difference with its size, interval, confidence and number of pairs", () => {
    expect(differenceInWords(VARIANT_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!.words).toBe(
      "6.8 carcasses/h more than today's plan (4.9 to 8.7 carcasses/h at 95 %; on the same 10 days).",
    );
  });

  it("says later and earlier of a time of day", () => {
    expect(differenceInWords([700, 701], [100, 100], 0.95, FINISH)!.words).toMatch(
      /^10\.01 min later than today's plan/,
    );
    expect(differenceInWords([100, 100], [700, 701], 0.95, FINISH)!.words).toMatch(
      /^10\.01 min earlier than today's plan/,
    );
  });

  it("turns its words when the two change places", () => {
    expect(differenceInWords(BASE_SAMPLE, VARIANT_SAMPLE, 0.95, THROUGHPUT)!.words).toMatch(
      /^6\.8 carcasses\/h less than today's plan/,
    );
  });

  it("says that nothing is shown, that all days are the same, and that there are too few", () => {
    expect(differenceInWords([3, 1, 2, 2], [2, 2, 3, 1], 0.95, THROUGHPUT)!.words).toMatch(
      /^No difference from today's plan shown \(less than \d/,
    );
    expect(differenceInWords(BASE_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!.words).toBe(
      "The same as today's plan on all 10 days.",
    );
    expect(differenceInWords([5], [3], 0.95, THROUGHPUT)!.words).toMatch(/Not enough simulated days/);
    expect(differenceInWords([null], [3], 0.95, THROUGHPUT)).toBeNull();
  });

  it("gives no relative difference to a time of day, which has no natural zero", () => {
    expect(differenceInWords([100, 101], [40, 42], 0.95, FINISH)).toMatchObject({ relativeLow: null });
    expect(differenceInWords([100, 101], [40, 42], 0.95, THROUGHPUT)!.relativeLow).not.toBeNull();
  });
});
