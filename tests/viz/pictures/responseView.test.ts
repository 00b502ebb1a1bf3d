import { expect, test } from "vitest";
import { differenceView, responseView } from "../../../viz/pictures/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("variants keep the order of the study, the base case first, each with interval", () => {
  const study = syntheticStudy();
  const view = responseView(study, study.responses[0]!);
  expect(view.rows.map((row) => row.name)).toEqual(study.variants.map((variant) => variant.name));
  expect(view.rows[0]!.text).toBe("589 heads/h\n586 to 591");
  expect(view.base).toBe(0);
});

test("a variant without a value keeps its row and says so", () => {
  const study = syntheticStudy();
  delete study.variants[2]!.estimates.throughput;
  expect(responseView(study, study.responses[0]!).rows[2]).toMatchObject({ mean: null, text: "no value" });
});

test("differences leave the base case out and say whether they are shown", () => {
  const study = syntheticStudy();
  const view = differenceView(study, study.responses[0]!);
  expect(view.rows.map((row) => row.shown)).toEqual([true, false, true]);
  expect(view.rows[1]!.text).toBe("+1.0 heads/h, not shown\n\u22120.1 to +2.1");
  expect(view.sides).toEqual(["less: worse", "more: better"]);
});

test("differences of shares are drawn in percentage points", () => {
  const study = syntheticStudy();
  const info = study.responses[2]!;
  const view = differenceView(study, info);
  expect(view.rows[0]!.mean).toBeCloseTo(100 * study.variants[1]!.differences![info.key]!.mean, 12);
  expect(view.quantity).toMatchObject({ unit: "percentage points" });
});

test("where neither direction is wanted, none is called better", () => {
  const study = syntheticStudy();
  expect(differenceView(study, study.responses[4]!).sides).toEqual(["less", "more"]);
});
