import { expect, test } from "vitest";
import { type QueueColumns, queueChart } from "../../../viz/index.ts";
import { queueView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: QueueColumns = {
  title: "What waits",
  caption: "What to look for",
  subtitle: "Heads waiting",
  description: "Skinning ran full.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3000, toSeconds: 3600 }],
  panels: [
    {
      name: "Skinning",
      note: "heads: most 6, mean 2.0",
      capacity: 6,
      capacityText: "6 places",
      largest: 6,
      trace: { kind: "binned", binSeconds: 1800, low: [0, 1, 2, 0], high: [3, 6, 6, 1], mean: [1.5, 4, 5, 0.5] },
    },
    {
      name: "Post-mortem inspection",
      note: "heads: most 3, mean 1.0",
      capacity: null,
      capacityText: "no limit of places",
      largest: 3,
      trace: { kind: "exact", times: [0, 1000, 5000], values: [0, 3, 1] },
    },
  ],
  footnote: "Nothing ever waited before: Sticking.",
};

test("binned traces are bands with a mean line, exact ones step lines, capacity is a dashed line with its words", async () => {
  await expect(picture(queueChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/queues.svg");
});

test("capacity, break, unit and clock time are all written beside what they belong to", () => {
  const texts = textsOf(queueChart(COLUMNS, testContext()));
  for (const text of ["6 places", "breakfast", "heads: most 6, mean 2.0", "07:00", "clock time (h:min)"])
    expect(texts).toContain(text);
});

test("with nothing to draw the reason is said", () => {
  const svg = queueChart({ ...COLUMNS, panels: [], footnote: "Run without traces." }, testContext());
  expect(textsOf(svg)).toEqual(["What waits", "Run without traces."]);
});

test("one panel per stage, in line order, with capacity and unit in words", () => {
  const study = syntheticStudy();
  const { panels } = queueView(study, study.variants[0]!);
  expect(panels).toHaveLength(12);
  expect(panels[1]).toMatchObject({ name: "Stunning", capacity: 1, capacityText: "1 place" });
  expect(panels[1]!.note).toMatch(/^heads: most \d+, mean/);
});

test("a capacity far above all that happened is told and not drawn, so that the trace stays readable", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[2]!.places = 500;
  expect(queueView(study, study.variants[0]!).panels[0]).toMatchObject({ capacity: null, capacityText: "500 places" });
});

test("stages before which nothing waited are named instead of drawn", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[4]!.queue = { mean: 0, max: 0 };
  const view = queueView(study, study.variants[0]!);
  expect(view.panels).toHaveLength(11);
  expect(view.footnote).toBe("Nothing ever waited before: Sticking.");
});

test("places that JSON turned from no limit into null still have no limit", () => {
  const study = structuredClone(syntheticStudy());
  const first = study.variants[0]!.day.stages[2]!;
  (first as { places: unknown }).places = null;
  expect(queueView(study, study.variants[0]!).panels[0]!.capacityText).toBe("no limit of places");
});

test("a day without traces says that its queues cannot be drawn", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.traces = null;
  const view = queueView(study, study.variants[0]!);
  expect(view.panels).toEqual([]);
  expect(view.footnote).toContain("without traces");
});

test("a short exact trace stays exact, a long one is drawn in bins", () => {
  const study = syntheticStudy();
  const { day } = study.variants[0]!;
  const points = (count: number) => Array.from({ length: count }, (_, i) => i);
  day.traces!.queues[2] = {
    kind: "exact",
    name: "q",
    endSeconds: day.finishSeconds,
    times: points(10),
    values: points(10),
  };
  day.traces!.queues[3] = {
    kind: "exact",
    name: "q",
    endSeconds: day.finishSeconds,
    times: points(5000),
    values: points(5000),
  };
  const { panels } = queueView(study, study.variants[0]!);
  expect(panels.slice(0, 2).map((panel) => panel.trace.kind)).toEqual(["exact", "binned"]);
});

test("a stage without places of its own is not said to have no limit, nor to have run full", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[2]!.places = 0;
  const view = queueView(study, study.variants[0]!);
  expect(view.panels[0]).toMatchObject({ capacity: null, capacityText: "no places of its own" });
  expect(view.description).not.toContain("Shackling");
});
