import { expect, it } from "vitest";
import { exitsPerMinute } from "../../../../sim/days/run/exitsPerMinute.ts";
import { compileLine, runDay } from "../../../../sim/index.ts";
import { exponential, planOf, saturated, station } from "../../../support/plans.ts";

it("counts what left in each whole minute while there was supply, on the stroke to the minute that begins", () => {
  // Done at 20 s, 40 s, 60 s ...; the last of the 11 heads is taken at 200 s, so three minutes count.
  const line = compileLine(planOf(saturated(11), [station("skinning", 20)]));
  expect(exitsPerMinute(line, { seed: "1", replication: 0 })).toEqual([2, 3, 3]);
});

it("agrees with the exact course of the same day", () => {
  const stages = [station("skinning", exponential(5)), station("evisceration", exponential(5), { buffer: 3 })];
  const line = compileLine(planOf(saturated(3000), stages));
  const day = { seed: "1", replication: 0 };
  const { traces, perHead } = runDay(line, { ...day, traces: "exact", perHead: true });
  if (traces!.out.kind !== "exact") throw new Error("not exact");
  const { times } = traces!.out;
  const minutes = Math.floor(Math.max(...perHead!.arrived) / 60);
  const expected = Array.from({ length: minutes }, (_, minute) =>
    times.slice(1).filter((at) => Math.floor(at / 60) === minute),
  ).map(({ length }) => length);
  expect(minutes).toBeGreaterThan(200);
  expect(exitsPerMinute(line, day)).toEqual(expected);
});

it("counts up to the cut of a day that is too long", () => {
  const plan = planOf(saturated(1000), [station("skinning", 20)]);
  const line = compileLine({ ...plan, day: { ...plan.day, ceilingSeconds: 200 } });
  expect(exitsPerMinute(line, { seed: "1", replication: 0 })).toEqual([2, 3, 3]);
});
