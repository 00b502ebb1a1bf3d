import { expect, test } from "vitest";
import { type LoadColumns, loadChart } from "../../../viz/index.ts";
import { loadTable, loadView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const COLUMNS: LoadColumns = {
  title: "Lorries and crates",
  caption: "Long bars are animals that wait",
  subtitle: "One day",
  description: "Two lorries.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  loads: [
    {
      name: "first lorry",
      note: "60 crates",
      dueSeconds: 0,
      arrivedSeconds: 300,
      unloadedSeconds: 1500,
      emptiedSeconds: 3000,
      washedSeconds: 3300,
      leftSeconds: 3400,
      words: "first lorry: in 06:05, unloaded 06:25",
    },
    {
      name: "second lorry",
      note: "60 crates",
      dueSeconds: 3600,
      arrivedSeconds: 3600,
      unloadedSeconds: 5000,
      emptiedSeconds: null,
      washedSeconds: null,
      leftSeconds: null,
      words: "second lorry: in 07:00",
    },
  ],
  panels: [
    {
      name: "crates in lairage",
      note: "most 60",
      capacity: 80,
      capacityText: "80 crates",
      largest: 60,
      trace: { kind: "exact", times: [0, 400, 3000, 5000], values: [0, 60, 10, 50] },
    },
  ],
  footnote: "",
};

test("each lorry's crates go through their phases above the line of its stay", async () => {
  const svg = loadChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/loads.svg");
  const [first, second] = [...svg.querySelectorAll("[data-value]")];
  expect(first!.querySelectorAll("rect")).toHaveLength(3);
  expect(second!.querySelectorAll("rect")).toHaveLength(2);
});

test("a lorry that never leaves has an open end, one that was late a tick where it was due", () => {
  const stays = [...loadChart(COLUMNS, testContext()).querySelectorAll("[data-value]")].map((row) =>
    [...row.querySelectorAll("path")].map((path) => path.getAttribute("d")!),
  );
  expect(stays[0]).toHaveLength(2);
  expect(stays[1]).toHaveLength(1);
  expect(stays[1]![0]).toMatch(/l-5,-4m5,4l-5,4$/);
  expect(stays[0]![0]).toMatch(/v8$/);
});

test("without washing in the plan the key leaves it out", () => {
  const loads = COLUMNS.loads.map((load) => ({ ...load, washedSeconds: null }));
  expect(textsOf(loadChart({ ...COLUMNS, loads }, testContext())).join()).not.toContain("washed");
});

test("a day without lorries says so", () => {
  expect(textsOf(loadChart({ ...COLUMNS, loads: [] }, testContext()))[1]).toMatch(/^No lorry/);
});

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
  expect(view.description).toContain(`${loads.length} of them still had heads in their crates at the end`);
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

test("a lorry that came when the day was over is counted and not drawn", () => {
  const after = base.day.finishSeconds + 600;
  const loads = base.day.loads.map((load, index) => (index === 0 ? { ...load, arrivedSeconds: after } : load));
  const view = loadView(results, { ...base, day: { ...base.day, loads } })!;
  expect(view.loads.length).toBe(loads.length - 1);
  expect(view.footnote).toBe("1 lorry came after the end of the day.");
});

const ferncote = exampleDay("ferncote");

test("a lorry's times are clock times, and what did not happen is empty", () => {
  const loads = loadView(ferncote, ferncote.variants[0]!)!;
  const { columns, rows } = loadTable({ ...loads, loads: loads.loads.map((load) => ({ ...load, leftSeconds: null })) });
  expect(columns.at(-1)).toEqual({ name: "lorry out", unit: "clock time" });
  expect(rows[0]![3]).toMatch(/^\d\d:\d\d:\d\d$/);
  expect(rows[0]!.at(-1)).toBeNull();
});
