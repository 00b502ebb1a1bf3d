import { expect, test } from "vitest";
import type { Cell } from "../../../viz/pictures/chartTable.ts";
import {
  bindingTable,
  bottleneckTable,
  limitTable,
  limitView,
  loadTable,
  loadView,
  massTable,
  massView,
  slopeTable,
  stateTable,
  stateView,
} from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const results = exampleDay("ferncote");
const base = results.variants[0]!;
const WORDS = { title: "", caption: "", subtitle: "", description: "" };

test("state shares of a station add up to 100 %, of its own time and by the clock; every column says of what", () => {
  const { columns, rows } = stateTable(stateView(results, base));
  expect(columns.map(({ unit }) => unit)).toEqual([
    "",
    "clock time",
    "clock time",
    ...new Array(5).fill("% of own time"),
    "% from first to last head",
    ...new Array(6).fill("% of the day"),
  ]);
  const sum = (cells: readonly Cell[]) => cells.reduce<number>((total, share) => total + Number(share), 0);
  for (const [name, , , ...shares] of rows) {
    if (shares[0] !== null) expect(sum(shares.slice(0, 5)), String(name)).toBeCloseTo(100, 6);
    expect(sum(shares.slice(6)), String(name)).toBeCloseTo(100, 6);
  }
});

test("a lorry's times are clock times, and what did not happen is empty", () => {
  const loads = loadView(results, base)!;
  const { columns, rows } = loadTable({ ...loads, loads: loads.loads.map((load) => ({ ...load, leftSeconds: null })) });
  expect(columns.at(-1)).toEqual({ name: "lorry out", unit: "clock time" });
  expect(rows[0]![3]).toMatch(/^\d\d:\d\d:\d\d$/);
  expect(rows[0]!.at(-1)).toBeNull();
});

test("what became of the live weight adds up to it", () => {
  const { rows } = massTable(massView(results, base)!);
  const [live, ...flows] = rows.map((row) => Number(row[2]));
  expect(flows.reduce((sum, kilograms) => sum + kilograms, 0) / live!).toBeCloseTo(1, 9);
});

test("the bars of a limit hold the heads that the axis shows", () => {
  const limit = base.day.limits[0]!;
  const view = limitView(results, base, limit);
  const { rows } = limitTable(view);
  expect(rows).toHaveLength(view.bins.length);
  expect(rows.reduce((sum, row) => sum + Number(row[2]), 0)).toBeLessThanOrEqual(limit.tally.count + 1e-6);
});

test("binding path, slopes and bottleneck keep their figures and units", () => {
  const binding = {
    ...WORDS,
    footnote: "",
    kinds: ["work"],
    rows: [{ stage: "a", cause: "work", kind: 0, seconds: 9, low: 8, high: null, text: "" }],
  };
  expect(bindingTable(binding).rows).toEqual([["a", "work", 9, 8, null]]);
  const slope = { name: "a", secondsPerTenth: 3, low: 1, high: 5, text: "" };
  expect(slopeTable({ ...WORDS, nothing: "", footnotes: [], rows: [slope] })).toMatchObject({
    columns: [{ name: "time" }, { name: "end of work", unit: "s for 0.1 s more" }, {}, {}],
    rows: [["a", 3, 1, 5]],
  });
  const strip = {
    ...{ ...WORDS, footnote: "", startClockSeconds: 0, endSeconds: 9, pauses: [], stages: [{ name: "a", note: "" }] },
    spans: [
      { stage: "a", from: 0, to: 4, kind: "sole" as const },
      { stage: "a", from: 5, to: 6, kind: "sole" as const },
      { stage: "a", from: 4, to: 5, kind: "shifting" as const },
    ],
  };
  expect(bottleneckTable(strip).rows).toEqual([["a", 5, 1]]);
});
