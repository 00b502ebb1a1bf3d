import { expect, test } from "vitest";
import { STATES, type StageRecord } from "../../../sim/day/engine/index.ts";
import { OWN_TIME, WORK_IN_HAND } from "../../../sim/day/observations/index.ts";
import { type StateColumns, stateChart } from "../../../viz/index.ts";
import type { Cell } from "../../../viz/pictures/chartTable.ts";
import { stateTable, stateView } from "../../../viz/pictures/index.ts";
import { OWN_TIME_WORDS, WORK_IN_HAND_WORDS } from "../../../viz/words/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const LEGENDS = [
  "working",
  "cannot pass its head on (blocked)",
  "waits for heads (starved)",
  "no crew",
  "broken down",
  "on break",
];

const COLUMNS: StateColumns = {
  title: "What each station did",
  caption: "What to look for",
  subtitle: "Shares of position time",
  description: "Skinning worked most.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  binSeconds: 1800,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 5400 }],
  states: LEGENDS,
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
      note: ["working 60 %; on break 30 %", "cannot pass on 12 %"],
    },
  ],
  footnote: "",
};

test("each bin is filled by the shares of its states, with the shares of the own time beside it", async () => {
  await expect(picture(stateChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/states.svg");
});

test("every state has a texture of its own and is named beside a sample of it", () => {
  const svg = stateChart(COLUMNS, testContext());
  for (const state of LEGENDS) expect(textsOf(svg)).toContain(state);
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

test("the states are the simulator's, in its order; the trade's words for waiting stand in the key once, with what they mean", () => {
  const study = syntheticStudy();
  const view = stateView(study, study.variants[0]!);
  expect(STATES).toEqual(["working", "blocked", "starved", "no crew", "down", "on break"]);
  expect(view.states).toEqual(LEGENDS);
  const others = [view.title, view.caption, view.subtitle, view.footnote, ...view.rows.flatMap(({ note }) => note)];
  expect(others.filter((words) => /starved|blocked/.test(words))).toEqual([]);
});

test("the shares of every bin add up to one, or to nothing where nothing was watched", () => {
  const study = syntheticStudy();
  for (const row of stateView(study, study.variants[0]!).rows) {
    row.shares[0]!.forEach((_, bin) => {
      const sum = row.shares.reduce((total, shares) => total + shares[bin]!, 0);
      expect(Math.min(Math.abs(sum - 1), Math.abs(sum))).toBeLessThan(1e-9);
    });
    for (const shares of [row.ownShares, row.clockShares]) {
      expect(shares.reduce((total, share) => total + share, 0)).toBeCloseTo(1, 9);
    }
  }
});

/** A station's day by the clock, 100 s, and its own time in it. */
function give(stage: StageRecord, clock: number[], own: number[]): void {
  stage.stateSeconds = clock;
  stage.ownTime = {
    fromSeconds: 10,
    toSeconds: 10 + own.reduce((sum, seconds) => sum + seconds, 0),
    stateSeconds: own,
  };
}

test("the note gives the working share of the own time, time on break beside it, and the largest losses that fit", () => {
  const study = syntheticStudy();
  const { stages } = study.variants[0]!.day;
  give(stages[2]!, [30, 5, 55, 0, 5, 5], [30, 5, 10, 0, 5, 10]);
  stages[3]!.ownTime = null;
  const { rows } = stateView(study, study.variants[0]!);
  expect(rows[2]).toMatchObject({
    note: ["working 60 %; on break 17 %", "waits for heads 20 %"],
    ownShares: [0.6, 0.1, 0.2, 0, 0.1, 0],
    breakShare: 10 / 60,
    clockShares: [0.3, 0.05, 0.55, 0, 0.05, 0.05],
  });
  give(stages[2]!, [30, 0, 0, 20, 10, 0], [30, 0, 0, 20, 10, 0]);
  expect(stateView(study, study.variants[0]!).rows[2]!.note).toEqual(["working 50 %", "no crew 33 %, broken 17 %"]);
  expect(rows[3]).toMatchObject({ note: ["no head could reach it"], ownShares: [], breakShare: null, own: null });
});

test("the finding names the busiest station by its own time, and where each other state took most", () => {
  const study = syntheticStudy();
  const { stages } = study.variants[0]!.day;
  // Half of every day is the chiller's: by the clock no station works more than 47 %.
  for (const stage of stages) give(stage, [20, 0, 80, 0, 0, 0], [20, 0, 30, 0, 0, 0]);
  give(stages[2]!, [47, 5, 45, 0, 3, 0], [47, 3, 1, 0, 2, 0]);
  const name = stages[2]!.name;
  expect(stateView(study, study.variants[0]!).description).toMatch(
    new RegExp(
      `^Busiest was ${name}: working 89 % of its own time. Most often unable to pass heads on: ${name}, 6 %. .*waiting for heads: .*, 60 %. Most often broken down: ${name}, 4 %.$`,
    ),
  );
});

test("the definition of own time stands below the picture, in the simulator's words", () => {
  const study = syntheticStudy();
  expect(stateView(study, study.variants[0]!).footnote).toContain(OWN_TIME);
  expect([OWN_TIME_WORDS, WORK_IN_HAND_WORDS]).toEqual([OWN_TIME, WORK_IN_HAND]);
});

test("a stage without states (a dwell without limit) is named below", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[13]!.stateSeconds = [];
  const view = stateView(study, study.variants[0]!);
  expect(view.rows).toHaveLength(13);
  expect(view.footnote).toContain("Not recorded: Chilling.");
});

const ferncote = exampleDay("ferncote");

test("state shares of a station add up to 100 %, of its own time and by the clock; every column says of what", () => {
  const { columns, rows } = stateTable(stateView(ferncote, ferncote.variants[0]!));
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
