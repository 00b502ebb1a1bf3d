import { expect, test } from "vitest";
import { type ResponseColumns, responseChart } from "../../../viz/index.ts";
import { differenceView, responseTable, responseView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: ResponseColumns = {
  title: "Throughput",
  caption: "What to look for",
  subtitle: "Mean and 95 % interval",
  description: "One more is best.",
  quantity: { kind: "number", label: "Throughput", unit: "heads/h" },
  rows: [
    { name: "As it is", mean: 588, low: 584, high: 592, text: "588 heads/h\n584 to 592" },
    { name: "One more at evisceration", mean: 625, low: 622, high: 628, text: "625 heads/h\n622 to 628" },
    { name: "Never ran", mean: null, low: null, high: null, text: "no value" },
  ],
  base: 0,
};

test("one row per variant in the order given, dot and interval, the base's interval as a band", async () => {
  await expect(picture(responseChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/response.svg");
});

test("a variant without a value has words and no dot", () => {
  const svg = responseChart(COLUMNS, testContext());
  expect(svg.querySelectorAll("circle").length).toBe(2);
  expect(textsOf(svg)).toContain("no value");
});

test("one value alone, without interval, gets a dot and no band", () => {
  const rows = [{ name: "the plan", mean: 600, low: null, high: null, text: "600 heads/h" }];
  const svg = responseChart({ ...COLUMNS, rows }, testContext());
  expect(svg.querySelectorAll("circle").length).toBe(1);
  expect(textsOf(svg)).not.toContain("interval of the base");
});

test("no value at all is said in words", () => {
  expect(textsOf(responseChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toMatch(/^No simulated day/);
});

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

test("a few variants are told one by one, each with its interval", () => {
  const study = syntheticStudy();
  const text = responseView(study, study.responses[0]!).description;
  expect(text.match(/20 simulated days/g)).toHaveLength(4);
});

test("many variants are told by today's plan, lowest and highest", () => {
  const study = syntheticFactorial();
  const text = responseView(study, study.responses[0]!).description;
  expect(text).toMatch(
    /^Today's plan, “4 places, 4\.8 s”.*Lowest of 12 variants “4 places, 6\.0 s”.*Highest “32 places, 4\.8 s”/,
  );
  expect(differenceView(study, study.responses[0]!).description).toMatch(/^11 of 11 differences are shown\. Lowest/);
});

test("responses keep mean and interval as numbers, clock times as text", () => {
  const { columns, rows } = responseTable(responseView(syntheticStudy(), syntheticStudy().responses[0]!));
  expect(columns.map(({ unit }) => unit)).toEqual(["", "heads/h", "heads/h", "heads/h"]);
  const { mean, low, high } = syntheticStudy().variants[0]!.estimates.throughput!;
  expect(rows[0]).toEqual(["As it is", mean, low, high]);
  expect(responseTable(responseView(syntheticStudy(), syntheticStudy().responses[1]!)).rows[0]![1]).toMatch(
    /^\d\d:\d\d:\d\d$/,
  );
});
