import { expect, test } from "vitest";
import { crewView } from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

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
