import { expect, test } from "vitest";
import { STATES } from "../../../sim/engine/index.ts";
import { stateView } from "../../../viz/views/index.ts";
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
    expect(row.dayShares.reduce((total, share) => total + share, 0)).toBeCloseTo(1, 9);
  }
});

test("the note gives the working share and the two largest losses", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[2]!.stateSeconds = [60, 5, 25, 0, 10, 0];
  expect(stateView(study, study.variants[0]!).rows[2]!.note).toEqual(["working 60 %", "starved 25 %, down 10 %"]);
});

test("the finding names where each state took the largest share of the day", () => {
  const study = syntheticStudy();
  const { stages } = study.variants[0]!.day;
  for (const stage of stages) stage.stateSeconds = [20, 0, 80, 0, 0, 0];
  stages[2]!.stateSeconds = [60, 5, 25, 0, 10, 0];
  const name = stages[2]!.name;
  expect(stateView(study, study.variants[0]!).description).toMatch(
    new RegExp(
      `^The largest share of the day was worked at ${name}, 60 %. .*blocked at ${name}, 5 %;.* down at ${name}, 10 %`,
    ),
  );
});

test("a stage without states (a dwell without limit) is named below", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.stages[13]!.stateSeconds = [];
  const view = stateView(study, study.variants[0]!);
  expect(view.rows).toHaveLength(13);
  expect(view.footnote).toContain("Without states: Chilling.");
});
