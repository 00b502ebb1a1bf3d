import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { constant, planOf, station, stream } from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";
import { runChecked } from "../../../support/timeline.ts";

it("tells how often each struck and how long all stood for it", () => {
  // Down 8-13 and 20-25: the timeline is worked in tests/sim/day/engine/sharedBreakdowns.test.ts.
  const line = [station("a", 4, { buffer: Infinity }), station("b", 6, { buffer: Infinity })];
  const plan = planOf(stream(constant(1), 2), line, { sharedBreakdowns: [shared(["a", "b"], 7, 5)] });
  const values = measure(runChecked(plan, { binding: true }), plan);
  expect(values).toMatchObject({
    "sharedBreakdown.board.stops": 2,
    "sharedBreakdown.board.down": 10,
    "bound.sharedBreakdown.board": 10,
    "bound.work.b": 12,
  });
});
