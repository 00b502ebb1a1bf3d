import { expect, test } from "vitest";
import { type LoadColumns, loadChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

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
