import { expect, it } from "vitest";
import { runFiles } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

const PARTS = { results: handMadeResults(), plan: { name: "x" }, studyText: "{ }", reportHtml: "<html>" };

it("holds the study as read, the results, the tables with their dictionary, the report and the charts", () => {
  const files = runFiles({ ...PARTS, charts: [{ name: "heads out.svg", svg: "<svg/>" }] });
  expect(files.map(({ path }) => path)).toEqual([
    ...["plan.json", "study.json", "results.json", "summary.csv", "values.csv", "values.parquet", "traces.csv"],
    ...["data-dictionary.json", "data-dictionary.csv", "report.html"],
    "charts/heads-out.svg",
  ]);
  expect(files[1]).toEqual({ path: "study.json", text: "{ }" });
});

it("keeps chart names from a plan inside the folder, and apart", () => {
  const charts = ["../../escape", "Escape", "escape!"].map((name) => ({ name, svg: "<svg/>" }));
  const paths = runFiles({ ...PARTS, studyText: null, charts }).map(({ path }) => path);
  expect(paths.slice(-3)).toEqual(["charts/escape.svg", "charts/escape-2.svg", "charts/escape-3.svg"]);
  expect(paths).not.toContain("study.json");
});
