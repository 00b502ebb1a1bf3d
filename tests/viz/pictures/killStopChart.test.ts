import { expect, test } from "vitest";
import { type KillStopColumns, type KillStopRow, killStopChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

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
