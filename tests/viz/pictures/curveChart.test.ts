import { expect, test } from "vitest";
import { type CurveColumns, curveChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

function points(shift: number) {
  return [2, 4, 8].map((x) => ({
    x,
    mean: 600 - 40 / x + shift,
    low: 598 - 40 / x + shift,
    high: 602 - 40 / x + shift,
  }));
}

const COLUMNS: CurveColumns = {
  title: "Throughput by places",
  caption: "What to look for",
  subtitle: "95 % interval",
  description: "Levels off.",
  quantity: { kind: "number", label: "Throughput", unit: "heads/h" },
  xLabel: "places",
  xLevels: [2, 4, 8].map((x) => ({ x, text: String(x) })),
  lines: [{ label: "", points: points(0) }],
  lineLabel: "",
};
const TWO = {
  ...COLUMNS,
  lineLabel: "cycle time",
  lines: [
    { label: "4.8 s", points: points(0) },
    { label: "6.0 s", points: points(-60) },
  ],
};

test("one factor is one curve with a band and an interval at each level", async () => {
  await expect(picture(curveChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/curve.svg");
});

test("two factors are one line per level of the second, named at its end, told apart by dash and dot too", async () => {
  await expect(picture(curveChart(TWO, testContext()))).toMatchFileSnapshot("../../pictures/curves.svg");
  expect(textsOf(curveChart(TWO, testContext()))).toEqual(expect.arrayContaining(["cycle time:", "4.8 s", "6.0 s"]));
});

test("no points are said in words", () => {
  expect(textsOf(curveChart({ ...COLUMNS, lines: [] }, testContext()))[1]).toMatch(/^No replication/);
});
