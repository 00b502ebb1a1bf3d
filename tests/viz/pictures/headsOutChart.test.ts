import { expect, test } from "vitest";
import { type HeadsOutColumns, headsOutChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: HeadsOutColumns = {
  title: "Heads in and heads out",
  caption: "What to look for",
  subtitle: "Counted from the day's start",
  description: "All out.",
  startClockSeconds: 6 * 3600,
  endSeconds: 36_000,
  shiftEndSeconds: 27_000,
  pauses: [{ name: "midday", fromSeconds: 14_400, toSeconds: 16_200 }],
  lines: [
    { label: "arrived: 4 000", role: "arrived", shape: "step", seconds: [0, 10_000], heads: [2000, 4000] },
    { label: "target: 4 000", role: "target", shape: "straight", seconds: [0, 24_000], heads: [0, 4000] },
    { label: "hung: 3 990 by 13:10", role: "hung", shape: "straight", seconds: [0, 25_800], heads: [0, 3990] },
    {
      label: "into chilling: 3 980 by 13:40",
      role: "chiller",
      shape: "straight",
      seconds: [0, 1800, 27_600],
      heads: [0, 0, 3980],
    },
    { label: "carcasses out: 3 980", role: "out", shape: "straight", seconds: [0, 6000, 36_000], heads: [0, 0, 3980] },
  ],
};

test("arrivals, target, heads hung, into the chiller and out share one axis, overtime is marked", async () => {
  await expect(picture(headsOutChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/headsOut.svg");
});

test("each line is named, and so is the time after the last shift", () => {
  const joined = textsOf(headsOutChart(COLUMNS, testContext())).join(" ");
  for (const text of ["arrived: 4 000", "target: 4 000", "carcasses out: 3 980", "after the last shift"])
    expect(joined).toContain(text);
});

test("a day within its shifts marks no overtime", () => {
  const texts = textsOf(headsOutChart({ ...COLUMNS, shiftEndSeconds: 40_000 }, testContext()));
  expect(texts).not.toContain("after the last shift");
});

test("a day without heads is said in words", () => {
  expect(textsOf(headsOutChart({ ...COLUMNS, lines: [] }, testContext()))[1]).toMatch(/^No head/);
});
