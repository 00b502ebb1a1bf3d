import { expect, test } from "vitest";
import { type CrewColumns, crewChart } from "../../../viz/index.ts";
import { crewView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const COLUMNS: CrewColumns = {
  title: "People at work",
  caption: "White under the line is people who wait",
  subtitle: "Mean people in each half hour",
  description: "Evisceration busiest.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  binSeconds: 1800,
  panels: [
    { name: "evisceration", note: "people: at work 81 %", largest: 4, busy: [3.5, 3.8, 1, 3.1], present: [4, 4, 2, 4] },
    { name: "maintenance", note: "people: at work 4 %", largest: 1, busy: [0, 0.2, 0, 0], present: [1, 1, 1, 1] },
  ],
  footnote: "",
};

test("people with work in hand lie under the line of people on duty", async () => {
  await expect(picture(crewChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/crews.svg");
});

test("a plan without crews says so", () => {
  expect(textsOf(crewChart({ ...COLUMNS, panels: [] }, testContext()))[1]).toBe("The plan has no crew.");
});

test.each(["binned", "exact"] as const)("%s traces: what is drawn adds up to the crew's record", (traces) => {
  const results = exampleDay("parts/crews", traces);
  const base = results.variants[0]!;
  const view = crewView(results, base)!;
  expect(view.panels.map(({ name }) => name)).toEqual(base.day.crews.map(({ name }) => name));
  view.panels.forEach((panel, crew) => {
    const seconds = (values: readonly number[]) =>
      values.reduce((sum, value, bin) => {
        const covered = Math.min(view.binSeconds, base.day.finishSeconds - bin * view.binSeconds);
        return sum + value * covered;
      }, 0);
    const { busySeconds, presentSeconds, peopleMax } = base.day.crews[crew]!;
    expect(seconds(panel.busy)).toBeCloseTo(busySeconds, 4);
    expect(seconds(panel.present)).toBeCloseTo(presentSeconds, 4);
    expect(panel.largest).toBeLessThanOrEqual(peopleMax);
  });
});

test("the finding gives each crew's share, the busiest first; without traces it says so", () => {
  const results = exampleDay("parts/crews", "none");
  const base = results.variants[0]!;
  const view = crewView(results, base)!;
  const shares = [...view.description.matchAll(/(\d+) %/g)].map((match) => Number(match[1]));
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  expect(view.panels).toEqual([]);
  expect(view.footnote).toContain("without traces");
});

test("a plan without crews has no such picture", () => {
  const results = exampleDay("parts/crews", "none");
  const base = results.variants[0]!;
  expect(crewView(results, { ...base, day: { ...base.day, crews: [] } })).toBeNull();
});
