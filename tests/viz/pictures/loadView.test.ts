import { expect, test } from "vitest";
import { loadView } from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const results = exampleDay("parts/crates-by-lift");
const base = results.variants[0]!;

test("every lorry has its times, in order of arrival, and every crate step its queue", () => {
  const view = loadView(results, base)!;
  expect(view.loads.map(({ name }) => name)).toEqual(base.day.loads.map(({ name }) => name));
  for (const load of view.loads) {
    expect(load.words).toMatch(/: due \d\d:\d\d, in \d\d:\d\d, unloaded .*, crates washed .*, lorry out \d\d:\d\d$/);
    expect(load.washedSeconds!).toBeGreaterThanOrEqual(load.emptiedSeconds!);
    expect(load.leftSeconds!).toBeGreaterThanOrEqual(load.unloadedSeconds!);
  }
  const crates = base.day.stages.filter(({ kind, queue }) => kind === "crates" && queue.max > 0);
  expect(view.panels.map(({ name }) => name)).toEqual(crates.map(({ name }) => name));
});

test("the finding names the lorry whose animals waited longest", () => {
  const waits = base.day.loads.map((load) => load.emptiedSeconds! - load.arrivedSeconds!);
  const longest = base.day.loads[waits.indexOf(Math.max(...waits))]!;
  expect(loadView(results, base)!.description).toContain(`waited longest on ${longest.name}`);
});

test("what did not happen is left out of the words and counted", () => {
  const loads = base.day.loads.map((load) => ({
    ...load,
    emptiedSeconds: null,
    washedSeconds: null,
    leftSeconds: null,
  }));
  const view = loadView(results, { ...base, day: { ...base.day, loads } })!;
  expect(view.loads[0]!.words).not.toMatch(/washed|lorry out/);
  expect(view.description).toContain(`Of ${loads.length} not all heads were taken`);
});

test("many lorries: the first ones are drawn, the others counted", () => {
  const loads = Array.from({ length: 30 }, (_, i) => ({
    ...base.day.loads[0]!,
    name: `lorry ${i}`,
    arrivedSeconds: i,
  }));
  const view = loadView(results, { ...base, day: { ...base.day, loads } })!;
  expect(view.loads).toHaveLength(24);
  expect(view.footnote).toBe("6 later lorries are not drawn.");
});

test("a supply without loads has no such picture", () => {
  expect(loadView(results, { ...base, day: { ...base.day, loads: [] } })).toBeNull();
});

test("a lorry that did not come is counted and not drawn", () => {
  const loads = base.day.loads.map((load, index) => (index === 0 ? { ...load, arrivedSeconds: null } : load));
  const view = loadView(results, { ...base, day: { ...base.day, loads } })!;
  expect(view.loads.length).toBe(loads.length - 1);
  expect(view.footnote).toBe("1 lorry did not come.");
  expect(view.description).toContain(`${loads.length - 1} ${loads.length === 2 ? "lorry" : "lorries"} came.`);
  expect(view.description).toContain("1 lorry did not come.");
});
