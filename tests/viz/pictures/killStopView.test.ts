import { expect, it } from "vitest";
import { killStopReadings, killStopTable, killStopView } from "../../../viz/pictures/index.ts";
import { killLineDay } from "../../support/killStopResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const results = killLineDay();
const [variant] = results.variants;
const view = killStopView(results, variant!)!;

it("has a row for each stop with its cause, heads and longest wait in words", () => {
  expect(view.rows).toMatchObject([
    {
      cause: "planned break",
      where: "stunning",
      what: "",
      from: 119,
      to: 179,
      time: "06:01:59, 1 min",
      longestWait: null,
    },
    { cause: "breakdown", where: "sticking", what: "jam", stunnedMost: 1, caught: 1, longestWaitWords: "30 s" },
  ]);
  expect(view.rows[0]!.ended).toBe(
    "Then also planned break at sticking. No head was stunned or bleeding then. The line was started again.",
  );
});

it("finds how often, how long and who was caught", () => {
  expect(view.description).toBe(
    "The kill line stopped 2 times, 1 of them by plan, for 1 min 30 s in all; the longest that was not planned lasted 30 s. 1 head was caught between stunning and sticking; the longest wait of one was 30 s.",
  );
});

it("draws the longest of many, in the order of the day, and says of how many", () => {
  const { day } = variant!;
  const [, stop] = day.killStops!.stops;
  const stops = Array.from({ length: 60 }, (_, index) => {
    return { ...stop!, fromSeconds: 100 * index, toSeconds: 100 * index + 20 + ((7 * index) % 60) };
  });
  const many = { ...variant!, day: { ...day, killStops: { ...day.killStops!, stops, count: 60 } } };
  const drawn = killStopView(results, many)!;
  expect(drawn.rows).toHaveLength(24);
  expect(Math.min(...drawn.rows.map(({ from, to }) => to - from))).toBe(20 + 36);
  expect(drawn.rows.map(({ from }) => from)).toEqual(drawn.rows.map(({ from }) => from).sort((a, b) => a - b));
  expect(drawn.footnote).toMatch(/^Drawn are the 24 longest of 60 stops/u);
});

it("is read off as a table, and at an instant", () => {
  expect(killStopTable(view).rows[1]).toEqual([
    "06:03:20",
    30,
    "breakdown",
    "sticking",
    "jam",
    0,
    1,
    10,
    10,
    1,
    30,
    "The line was started again.",
  ]);
  const [{ spans } = { spans: [] }] = killStopReadings(view).spans;
  const at = (second: number) => spans.filter(({ from, to }) => second >= from && second < to).map(({ text }) => text);
  expect(spans).toContainEqual({ from: 200, to: 230, text: "breakdown, sticking" });
  // One reading at every instant, the last one too.
  const { endSeconds } = view;
  for (let second = 0; second <= endSeconds; second++) expect(at(second)).toHaveLength(1);
  expect([at(0), at(199), at(229), at(230), at(endSeconds)].flat()).toEqual([
    "no stop in this picture",
    "no stop in this picture",
    "breakdown, sticking",
    "no stop in this picture",
    "no stop in this picture",
  ]);
});

it("is null where the stops of the day were not written down", () => {
  const study = syntheticStudy();
  expect(killStopView(study, study.variants[0]!)).toBeNull();
});
