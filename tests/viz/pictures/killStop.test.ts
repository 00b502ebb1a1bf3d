import { expect, it, test } from "vitest";
import { type KillStopColumns, type KillStopRow, killStopChart } from "../../../viz/index.ts";
import { killStopReadings, killStopTable, killStopView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { killLineDay } from "../../support/killStopResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const CAUSES = ["breakdown", "chain stands", "planned break", "nobody there", "full behind", "full vessel"];

function stop(cause: string, from: number, to: number, changes: Partial<KillStopRow> = {}): KillStopRow {
  return {
    ...{ cause, where: "sticking", what: "", from, to, time: `from ${from} s, ${to - from} s` },
    ...{
      stunned: 0,
      stunnedMost: 0,
      bleeding: 12,
      bleedingMost: 14,
      caught: 0,
      longestWait: null,
      longestWaitWords: "",
    },
    ended: "The line was started again.",
    ...changes,
  };
}

const COLUMNS: KillStopColumns = {
  title: "Stops of the kill line",
  caption: "Each bar is a stop",
  subtitle: "Heads when it began; at most during it",
  description: "The kill line stopped six times.",
  startClockSeconds: 6 * 3600,
  endSeconds: 8 * 3600,
  pauses: [{ name: "breakfast", fromSeconds: 10_800, toSeconds: 11_700 }],
  causes: CAUSES,
  rows: [
    stop("breakdown", 1200, 3000, {
      ...{ what: "blade", stunned: 1, stunnedMost: 2, caught: 2, longestWait: 1790, longestWaitWords: "29.8 min" },
    }),
    stop("chain stands", 5000, 5600, { where: "bleeding chain", what: "a head is not finished at sticking" }),
    stop("planned break", 10_830, 11_730, { bleeding: 0, bleedingMost: 0 }),
    stop("nobody there", 14_000, 14_020),
    stop("full behind", 20_000, 21_000, {
      where: "skinning",
      what: "jam",
      caught: 1,
      longestWait: 20,
      longestWaitWords: "20 s",
    }),
    stop("full vessel", 26_500, 28_000, {
      where: "a bleeding trough with a very long name of its own",
      what: "blood tank",
    }),
  ],
  footnote: "",
};

test("each stop is a bar with its cause in words beside it, its heads and its longest wait", async () => {
  const svg = killStopChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/killStops.svg");
  const texts = textsOf(svg);
  for (const words of [
    "breakdown, blade",
    "planned break",
    "nobody there",
    "full behind, jam",
    "full vessel, blood tank",
  ])
    expect(texts).toContain(words);
  expect(texts).toContain("1; 2");
  expect(texts).toContain("29.8 min");
});

test("each cause has a texture of its own, and the key has only causes that were met", () => {
  const svg = killStopChart({ ...COLUMNS, rows: COLUMNS.rows.slice(0, 2) }, testContext());
  const fills = [...svg.querySelectorAll("rect[height='18']")].map((bar) => bar.getAttribute("fill"));
  expect(new Set(fills).size).toBe(2);
  // Once in the key, once beside the bar, where there is no room for more about it.
  expect(textsOf(svg).filter((text) => text === "chain stands")).toHaveLength(2);
  expect(textsOf(svg)).not.toContain("nobody there");
});

test("a stop of a second is still seen", () => {
  const svg = killStopChart({ ...COLUMNS, rows: [stop("breakdown", 100, 110)] }, testContext());
  const bar = svg.querySelector("rect[height='18']")!;
  expect(Number(bar.getAttribute("width"))).toBeGreaterThanOrEqual(3);
});

test("a day without stops says so", () => {
  const svg = killStopChart(
    { ...COLUMNS, rows: [], description: "The kill line did not stop on this day." },
    testContext(),
  );
  expect(textsOf(svg)).toContain("The kill line did not stop on this day.");
});

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

it("ends its clock a little after the kill line's last head, not after hours of chilling, and never before a stop's end", () => {
  const { day } = variant!;
  const endOf = (changes: Partial<typeof day>) =>
    killStopView(results, { ...variant!, day: { ...day, finishSeconds: 20_000, ...changes } })!.endSeconds;
  const lastStop = Math.max(...view.rows.map(({ to }) => to));
  const left = (toSeconds: number) =>
    day.stages.map((stage) => ({ ...stage, ownTime: stage.ownTime && { ...stage.ownTime, toSeconds } }));
  expect(endOf({ stages: left(1000) })).toBeCloseTo(1030, 9);
  expect(endOf({ stages: left(lastStop - 50) })).toBeCloseTo(1.03 * lastStop, 9);
  expect(endOf({ stages: [], workFinishSeconds: 2000 })).toBeCloseTo(2060, 9);
  expect(endOf({ stages: left(1000), finishSeconds: 1010 })).toBe(1010);
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
  expect(drawn.footnote).toMatch(/^The 24 longest of 60 stops are drawn/u);
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
