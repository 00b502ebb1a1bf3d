import { expect, test } from "vitest";
import { heatMapView } from "../../../viz/pictures/index.ts";
import { syntheticCurve, syntheticFactorial } from "../../support/syntheticStudy.ts";

const study = syntheticFactorial();
const info = study.responses[0]!;

test("a study of two factors has a cell for every variant that lies on their levels", () => {
  const view = heatMapView(study, info)!;
  const on = study.variants.filter(({ levels }) => levels.every((level) => level >= 0));
  expect(view.cells).toHaveLength(on.length);
  expect(view.cells.map(({ column, row }) => [column, row])).toEqual(on.map(({ levels }) => levels));
  expect(view.cells[0]!.words).toMatch(/ at 95 %, \d+ simulated days\)$/);
  expect(view.cells[0]!.detail).toMatch(/^± /);
});

test("base, best and what cannot be told from the best are marked", () => {
  const copy = structuredClone(study);
  copy.variants.forEach((variant, index) => {
    variant.againstBest = { [info.key]: { gap: index - 2, low: -9, high: 9, mayBeBest: index > 0 } };
  });
  const marks = heatMapView(copy, info)!.cells.map(({ mark }) => mark);
  expect(marks[0]).toBe("base");
  expect(marks.filter((mark) => mark === "best")).toHaveLength(1);
  expect(marks.filter((mark) => mark === "not told from the best")).toHaveLength(marks.length - 2);
  const less = heatMapView(copy, { ...info, better: "less" })!.cells.map(({ mark }) => mark);
  expect(less[0]).toBe("base and best");
});

test("the two ends of the shading are written so that they differ", () => {
  const copy = structuredClone(study);
  copy.variants.forEach((variant, index) => {
    variant.estimates[info.key]!.mean = index === 0 ? 596.83 : 596.96;
  });
  expect(heatMapView(copy, info)!.ends).toEqual(["596.83 heads/h", "596.96 heads/h"]);
});

test("the title has the unit of figures that stand bare in the cells, and none where every cell has its own", () => {
  expect(heatMapView(study, info)!.title).toContain(", heads/h, by ");
  const clock = { ...info, label: "End of work", unit: "s after day start", format: "clock" } as const;
  expect(heatMapView(study, clock)!.title).toMatch(/^End of work by /);
});

test("one factor, or none, makes no map", () => {
  const curve = syntheticCurve();
  expect(heatMapView(curve, curve.responses[0]!)).toBeNull();
});
