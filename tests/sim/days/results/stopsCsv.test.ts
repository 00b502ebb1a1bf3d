import { csvParse } from "d3";
import { expect, it } from "vitest";
import { dataDictionary, runFiles } from "../../../../sim/days/results/index.ts";
import { STOPS_COLUMNS, stopsCsv } from "../../../../sim/days/results/stopsCsv.ts";
import type { StudyResults } from "../../../../sim/days/results/studyResults.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";
import { killLineDay } from "../../../support/killStopResults.ts";

const rowsOf = (results: StudyResults) => csvParse([...stopsCsv(results)!].join(""));

it("writes one row a stop, clock and seconds, heads and wait", () => {
  // The day begins at 06:00; the break lasts from 119 s to 179 s, the breakdown from 200 s to 230 s.
  expect([...rowsOf(killLineDay())]).toMatchObject([
    {
      ...{
        stop: "1",
        began_clock: "06:01:59",
        began_date_time: "2001-01-01T06:01:59",
        began_s: "119",
        length_s: "60",
        cause: "planned break",
        step: "stunning",
      },
      ...{ further_causes: "planned break: sticking", stunned_heads: "0", caught_heads: "0", longest_wait_s: "0" },
    },
    {
      ...{ stop: "2", began_clock: "06:03:20", length_s: "30", cause: "breakdown", step: "sticking", detail: "jam" },
      ...{
        stunned_most_heads: "1",
        caught_heads: "1",
        longest_wait_s: "30",
        never_stuck_heads: "0",
        started_again: "yes",
      },
    },
  ]);
});

it("counts in a last row the stops that the record does not list", () => {
  const results = killLineDay();
  const { day } = results.variants[0]!;
  day.killStops = { ...day.killStops!, count: 5, seconds: 150.5, leftOut: 3 };
  expect(rowsOf(results).at(-1)).toMatchObject({ stop: "", cause: "3 more stops, not listed", length_s: "60.5" });
});

it("stands in the run folder and its dictionary, with the unit of every number in the heading", () => {
  const results = killLineDay();
  const files = runFiles({ results, plan: {}, studyText: null, reportHtml: "", charts: [] });
  expect(files.map(({ path }) => path)).toContain("stops.csv");
  const table = dataDictionary(results).tables.find(({ file }) => file === "stops.csv")!;
  expect(table.columns).toEqual(STOPS_COLUMNS);
  expect(rowsOf(results).columns).toEqual(STOPS_COLUMNS.map(({ name }) => name));
  for (const { name, unit } of STOPS_COLUMNS) if (unit !== "") expect(name).toMatch(/_(s|heads)$/);
});

it("is left out where no day has a record of stops", () => {
  expect(stopsCsv(handMadeResults())).toBeNull();
});
