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
      dayShares: [0.375, 0.075, 0.15, 0.075, 0.075, 0.25],
      note: ["working 38 %", "on break 25 %, starved 15 %"],
    },
  ],
  footnote: "",
};

test("each bin is filled by the shares of its states, with the shares of the day beside it", async () => {
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
