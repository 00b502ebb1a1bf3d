import { expect, test } from "vitest";
import { type CurveColumns, curveChart } from "../../../viz/index.ts";
import { curveTable, curveView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { syntheticCurve, syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

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
  expect(textsOf(curveChart({ ...COLUMNS, lines: [] }, testContext()))[1]).toMatch(/^No simulated day/);
});

test("a numeric factor becomes a curve over its values, not over its ranks", () => {
  const study = syntheticCurve();
  const view = curveView(study, study.responses[0]!)!;
  expect(view.lines).toHaveLength(1);
  expect(view.lines[0]!.points.map((point) => point.x)).toEqual([2, 4, 8, 16, 32]);
});

test("a second factor becomes one labelled line per level", () => {
  const study = syntheticFactorial();
  const view = curveView(study, study.responses[0]!)!;
  expect(view.lines.map((line) => [line.label, line.points.length])).toEqual([
    ["4.8 s", 4],
    ["5.4 s", 4],
    ["6.0 s", 4],
  ]);
});

test("levels with one unit put it on the axis; mixed units, words or fewer than three levels make no curve", () => {
  const study = syntheticCurve();
  const withLevels = (levels: string[]) => ({ ...study, factors: [{ ...study.factors[0]!, levels }] });
  const info = study.responses[0]!;
  expect(curveView(withLevels(["2 s", "4 s", "8 s", "16 s", "32 s"]), info)!.xLabel).toBe(
    "places before evisceration, s",
  );
  expect(curveView(withLevels(["2 s", "4 min", "8 s", "16 s", "32 s"]), info)).toBeNull();
  expect(curveView(withLevels(["few", "some", "many"]), info)).toBeNull();
  expect(curveView(withLevels(["2", "4"]), info)).toBeNull();
});

test("a list of variants without factors makes no curve", () => {
  const study = syntheticStudy();
  expect(curveView(study, study.responses[0]!)).toBeNull();
});

test("a variant that leaves the factor at the base's value is no point of the curve", () => {
  const study = syntheticCurve();
  study.variants[0]!.levels = [-1];
  expect(curveView(study, study.responses[0]!)!.lines[0]!.points).toHaveLength(4);
});

test("a curve has a row a level, with a second factor one for each of its levels", () => {
  const curve = syntheticCurve();
  expect(curveTable(curveView(curve, syntheticStudy().responses[0]!)!).rows.map(([level]) => level)).toEqual([
    "2",
    "4",
    "8",
    "16",
    "32",
  ]);
  const both = syntheticFactorial();
  const table = curveTable(curveView(both, syntheticStudy().responses[0]!)!);
  expect(table.rows).toHaveLength(12);
  expect(table.columns[0]!.name).toBe("skinning cycle time");
});
