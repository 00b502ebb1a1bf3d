import { describe, expect, it } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { effectTable } from "../../../viz/report/effectTable.ts";
import { screeningResults } from "../../support/screeningResults.ts";

/** The same screening, its first result told in seconds of a day's end, each effect so many times as large. */
function asEndOfWork(results: StudyResults, times: number): StudyResults {
  const [first, ...others] = results.responses;
  const finish = {
    ...first!,
    key: "finish",
    label: "End of work",
    unit: "s after day start",
    format: "clock" as const,
  };
  const effects = results.screening![first!.key]!.map((each) => each && scaled(each, times));
  return { ...results, responses: [finish, ...others], screening: { ...results.screening, finish: effects } };
}

function scaled<Effects extends { muStar: number; muStarHalfWidth: number | null }>(
  effects: Effects,
  times: number,
): Effects {
  const half = effects.muStarHalfWidth;
  return { ...effects, muStar: effects.muStar * times, muStarHalfWidth: half === null ? null : half * times };
}

describe("the table of what factors do", () => {
  it("has a row a factor, the one that moves the first result most first", () => {
    const results = screeningResults();
    const { rows, rowsAre } = effectTable(results);
    expect(rowsAre).toBe("Factor");
    expect(rows.map(({ name, cells }) => [name, cells[0]!.value])).toEqual([
      ["time per head", "46 heads/h"],
      ["walking", "9 heads/h"],
      ["places", "6 heads/h"],
    ]);
  });

  it("writes all effects on one result in one unit, that of the largest", () => {
    const cells = effectTable(asEndOfWork(screeningResults(), 60)).rows.map(({ cells }) => cells[0]!.value);
    const units = new Set(cells.map((value) => value.split(" ").at(-1)));
    expect(cells.length).toBeGreaterThan(2);
    expect(units.size, cells.join("; ")).toBe(1);
  });
});
