import { expect, test } from "vitest";
import { STATES, type StageRecord } from "../../../sim/day/engine/index.ts";
import { OWN_TIME, WORK_IN_HAND } from "../../../sim/day/observations/index.ts";
import { stateView } from "../../../viz/pictures/index.ts";
import { OWN_TIME_WORDS, WORK_IN_HAND_WORDS } from "../../../viz/words/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("the states are the simulator's, in its order", () => {
  const study = syntheticStudy();
  expect(stateView(study, study.variants[0]!).states).toEqual(STATES);
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

test("the note gives the working share of the own time, time on break beside it, and the two largest losses", () => {
  const study = syntheticStudy();
  const { stages } = study.variants[0]!.day;
  give(stages[2]!, [30, 5, 55, 0, 5, 5], [30, 5, 10, 0, 5, 10]);
  stages[3]!.ownTime = null;
  const { rows } = stateView(study, study.variants[0]!);
  expect(rows[2]).toMatchObject({
    note: ["working 60 %; on break 17 %", "starved 20 %, blocked 10 %"],
    ownShares: [0.6, 0.1, 0.2, 0, 0.1, 0],
    breakShare: 10 / 60,
    clockShares: [0.3, 0.05, 0.55, 0, 0.05, 0.05],
  });
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
      `^Busiest was ${name}: working 89 % of its own time. Most often unable to pass heads on: ${name}, 6 %. .*waiting for heads: .*, 60 %. Most often down: ${name}, 4 %.$`,
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
  expect(view.footnote).toContain("Without states: Chilling.");
});
