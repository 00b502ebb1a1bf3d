import { expect, test } from "vitest";
import { curveView } from "../../../viz/pictures/index.ts";
import { syntheticCurve, syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

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
