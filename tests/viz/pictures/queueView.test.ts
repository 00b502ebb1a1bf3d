import { expect, test } from "vitest";
import { queueView } from "../../../viz/pictures/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

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
