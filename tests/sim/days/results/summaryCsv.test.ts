import { csvParse } from "d3";
import { describe, expect, it } from "vitest";
import { summaryCsv } from "../../../../sim/days/results/summaryCsv.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

describe("summaryCsv", () => {
  const rows = csvParse([...summaryCsv(handMadeResults())].join(""));

  it("has one row per variant and response", () => {
    expect(rows.map((row) => `${row.variant} ${row.response}`)).toEqual([
      "base headsPerHour",
      "base finish",
      "base beyond.chilling time",
      "'+1 person, skinning headsPerHour",
      "'+1 person, skinning finish",
      "'+1 person, skinning beyond.chilling time",
    ]);
  });

  it("gives the estimate with interval, n and unit", () => {
    // 450, 480, 510 an hour: mean 480, sd 30, half-width t(0.975, 2) x 30 / sqrt 3 = 4.302653 x 17.320508.
    expect(rows[0]).toMatchObject({ n: "3", mean: "480", sd: "30", unit: "carcasses/h", confidence: "0.95" });
    expect(Number(rows[0]!.high) - 480).toBeCloseTo(4.302653 * 17.320508, 4);
  });

  it("gives the paired difference and whether it is shown; the base has none", () => {
    expect(rows[3]).toMatchObject({ difference: "30", difference_n: "3", shown: "yes" });
    expect(rows[4]).toMatchObject({ difference: "0", shown: "no" });
    expect(rows[0]).toMatchObject({ difference: "", shown: "", p: "", joint_low: "" });
    expect(rows[3]).toMatchObject({ p: "0", holm_p: "0", joint_low: "30", joint_high: "30" });
  });

  it("leaves the cells of a response without any value empty, with n 0", () => {
    expect(rows[2]).toMatchObject({ n: "0", mean: "", low: "", difference: "" });
  });

  it("gives the gap to the best of the others where a direction is wanted", () => {
    expect(rows[0]).toMatchObject({ days: "3", best_gap: "-30", best_low: "-30", best_high: "0", may_be_best: "no" });
    expect(rows[3]).toMatchObject({ best_gap: "30", best_low: "0", best_high: "30", may_be_best: "yes" });
  });

  it("names each factor's level", () => {
    expect(rows[0]!["factor: people"]).toBe("4");
    expect(rows[3]!["factor: people"]).toBe("5");
  });

  it("writes the mean of a time of day as clock time and as a date with time, and of nothing else", () => {
    const results = handMadeResults();
    const { day, estimates } = results.variants[0]!;
    estimates.finish = { ...estimates.finish!, mean: 29_999.7 - day.startClockSeconds };
    const [number, finish] = csvParse([...summaryCsv(results)].join(""));
    expect(finish).toMatchObject({ mean_clock: "08:20:00", mean_date_time: "2001-01-01T08:20:00" });
    expect(number).toMatchObject({ mean_clock: "", mean_date_time: "" });
  });
});
