import { expect, it } from "vitest";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import { atLevels, greedyPath, levelsOf } from "../../../../sim/questions/improve/greedyPath.ts";
import { spent } from "../../../../sim/questions/improve/space.ts";
import { caseQuestion } from "../../../support/improving.ts";

it("adds where the promise grows most, up to the total", () => {
  const question = caseQuestion();
  // Worth most with 8, 4 and 3: concave in each.
  const wanted = [8, 4, 3];
  const path = greedyPath(question.space, new Designs(question), ({ counts }) =>
    counts!.reduce((sum, count, index) => sum - (count - wanted[index]!) ** 2, 0),
  );
  expect(path[0]!.counts).toEqual([0, 0, 0]);
  expect(path.at(-1)!.counts).toEqual(wanted);
  expect(path.map(({ counts }) => spent(question.space, counts!))).toEqual(path.map((_, step) => step));
});

it("weighs what an option promises against its price, and leaves out what excludes another", () => {
  const question = caseQuestion({}, 8);
  const worth = [50, 0, 0, 0, 20, 0, 0, 0];
  const path = greedyPath(question.space, new Designs(question), ({ counts }) =>
    counts!.reduce((sum, count, index) => sum + count * worth[index]!, 0),
  );
  // 20 for 12 is more than 50 for 40.
  expect(path[1]!.counts!.indexOf(1)).toBe(4);
  expect(path[2]!.counts![0]).toBe(1);
});

it("gives the last design within each level", () => {
  const question = caseQuestion();
  const path = greedyPath(question.space, new Designs(question), () => 0);
  expect(levelsOf(question.space, 4)).toEqual([0, 5, 10, 15]);
  expect(atLevels(path, [5, 5, 15]).map((design) => design.spent)).toEqual([5, 15]);
});
