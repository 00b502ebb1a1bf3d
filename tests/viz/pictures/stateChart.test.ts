import { expect, test } from "vitest";
import { type StateColumns, stateChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const STATES = ["working", "blocked", "starved", "no crew", "down", "on break"];
const COLUMNS: StateColumns = {
  title: "What each station did",
  caption: "What to look for",
  subtitle: "Shares of position time",
  description: "Skinning worked most.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  binSeconds: 1800,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 5400 }],
  states: STATES,
  rows: [
    {
      name: "Skinning",
      shares: [
        [0.8, 0.5, 0, 0.2],
        [0.1, 0.2, 0, 0],
        [0.1, 0, 0, 0.5],
        [0, 0.1, 0, 0.2],
        [0, 0.2, 0, 0.1],
        [0, 0, 1, 0],
      ],
      ownShares: [0.6, 0.12, 0.04, 0.12, 0.12, 0],
      breakShare: 0.3,
      clockShares: [0.375, 0.075, 0.15, 0.075, 0.075, 0.25],
      own: { fromSeconds: 300, toSeconds: 6300 },
      note: ["working 60 %; on break 30 %", "blocked 12 %, no crew 12 %"],
    },
  ],
  footnote: "",
};

test("each bin is filled by the shares of its states, with the shares of the own time beside it", async () => {
  await expect(picture(stateChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/states.svg");
});

test("every state has a texture of its own and is named beside a sample of it", () => {
  const svg = stateChart(COLUMNS, testContext());
  for (const state of STATES) expect(textsOf(svg)).toContain(state);
  const tiles = [...svg.querySelectorAll("pattern")].map(
    (tile) => tile.querySelector("path")?.getAttribute("d") ?? "plain",
  );
  expect(new Set(tiles).size).toBe(6);
});

test("without recorded states the chart says so", () => {
  expect(textsOf(stateChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toBe(
    "No station of this day has recorded states.",
  );
});

test("a line below the strip goes from the station's first head to its last; without one there is none", () => {
  const strokes = (own: StateColumns["rows"][number]["own"]) =>
    [
      ...stateChart({ ...COLUMNS, rows: [{ ...COLUMNS.rows[0]!, own }] }, testContext()).querySelectorAll("path"),
    ].filter((path) => path.getAttribute("stroke-width") === "1.2");
  const [left, , right] = strokes({ fromSeconds: 0, toSeconds: 7200 })[0]!
    .getAttribute("d")!
    .match(/[\d.]+/g)!;
  const d = strokes({ fromSeconds: 1800, toSeconds: 5400 })[0]!
    .getAttribute("d")!
    .match(/[\d.]+/g)!
    .map(Number);
  expect(right).toBeDefined();
  const width = (d[3]! - d[0]!) * 2;
  expect(d[0]! - Number(left)).toBeCloseTo(width / 4, 0);
  expect(strokes(null)).toEqual([]);
});
