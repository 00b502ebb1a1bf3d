import { expect, test } from "vitest";
import { chartFiles, renderDayReport, renderReport } from "../../../viz/index.ts";
import { killLineDay, killLinePlan, killLineStudy, smoothPlan } from "../../support/killStopResults.ts";
import { syntheticSingleDay } from "../../support/syntheticStudy.ts";

const section = (page: string) => /<h2>Stops of the kill line<\/h2>([\s\S]*?)<\/section>/u.exec(page)?.[1] ?? null;

test("a day's report has the stops in a table and a picture, with the definition above them", () => {
  const found = section(renderDayReport(killLineDay()))!;
  expect(found).toContain("one of the steps from stunning to bleeding stands still for 10 s or longer");
  expect(found).toMatch(/<figure>/u);
  const cells = [...found.matchAll(/<tr><th scope="row">2<\/th>(.*?)<\/tr>/gu)].flatMap(([, row]) =>
    [...row!.matchAll(/<td>(.*?)<\/td>/gu)].map(([, cell]) => cell!.replaceAll("\u00a0", " ")),
  );
  expect(cells).toEqual([
    "06:03:20",
    "30 s",
    "breakdown at sticking (jam)",
    "0; 1",
    "10; 10",
    "30 s",
    "The line was started again.",
  ]);
  expect(chartFiles(killLineDay()).map(({ name }) => name)).toContain("base-kill-stops");
});

test("a day without stops says so and has no table of them", () => {
  const plan = smoothPlan();
  const found = section(renderDayReport(killLineDay({ ...plan, day: { ...plan.day, breaks: [] } })))!;
  expect(found).toContain("The kill line did not stop on this day.");
  expect(found).not.toContain("What stood and why");
});

test("a study's report has the means of each variant with their intervals, and one day as an example", async () => {
  const found = section(renderReport(await killLineStudy({ base: killLinePlan(), smooth: smoothPlan() })))!;
  const rows = [...found.matchAll(/<tr><th scope="row"><bdi>(.*?)<\/bdi><\/th>(.*?)<\/tr>/gu)];
  expect(rows.map(([, name]) => name)).toEqual(["base", "smooth"]);
  // The second one has its break and nothing else: one stop, none unplanned, 60 s, nobody caught.
  const cells = rows.map(([, , row]) => [...row!.matchAll(/<td>(.*?)<span class="range">(.*?)<\/span>/gu)]);
  const means = cells.map((row) => row.map(([, mean]) => mean));
  expect(means[0]).toEqual(["2 stops", "1 stop", "90 s", "30 s", "1 head", "30 s"]);
  expect(means[1]!.slice(0, 2)).toEqual(["1 stop", "0 stops"]);
  expect(cells[0]!.map(([, , range]) => range)[0]).toBe("2 to 2");
  expect(found).toContain("<summary>Every stop of this day</summary>");
});

test("a study that does not ask for stops has those of one day only", async () => {
  const study = await killLineStudy({ base: killLinePlan(), smooth: smoothPlan() }, ["headsPerHour"]);
  const found = section(renderReport(study))!;
  expect(found).not.toContain("Average of a day over");
  expect(found).toContain("<summary>Every stop of this day</summary>");
});

test("without a record of stops there is no such section", () => {
  expect(section(renderDayReport(syntheticSingleDay()))).toBeNull();
});
