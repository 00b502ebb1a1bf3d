import { expect, it } from "vitest";
import { usualResponses } from "../../../../sim/day/observations/index.ts";
import { stableJson } from "../../../../sim/days/results/index.ts";
import { exitsPerMinute } from "../../../../sim/days/run/runSingleDay.ts";
import { compileLine, runDay, runSingleDay } from "../../../../sim/index.ts";
import { exponential, planOf, saturated, station } from "../../../support/plans.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";

const PROVENANCE = { gambrel: "1.2.3", command: "gambrel day" };

const PLAN = readSmallPlan();

it("is one variant with one replication of every usual response", () => {
  const results = runSingleDay(PLAN, "s", "none", PROVENANCE);
  expect(results.study).toMatchObject({ seed: "s", replications: 1, command: "gambrel day" });
  expect(results.variants).toHaveLength(1);
  expect(results.responses.map(({ key }) => key)).toEqual(usualResponses(PLAN));
  expect(results.variants[0]!.estimates.carcasses).toMatchObject({ n: 1, low: null });
});

it("is the very day that a study has under that replication number", () => {
  const day = runDay(compileLine(PLAN), { seed: "s", replication: 3, traces: "exact", binding: true, killStops: true });
  expect(runSingleDay(PLAN, "s", "exact", { ...PROVENANCE, replication: 3, check: true }).variants[0]!.day).toEqual(
    day,
  );
});

it("can be written as JSON when the day was cut off before every lorry came", () => {
  const short = { ...PLAN, day: { ...PLAN.day, ceilingSeconds: 1000 } };
  const results = runSingleDay(short, "s", "binned", PROVENANCE);
  expect(results.variants[0]!.day.status).toBe("ceiling");
  expect(JSON.parse(stableJson(results)).variants[0].values).toMatchObject({
    unfinished: [1],
    headsPerHour: [null],
    "lorry.emptied.max": [null],
  });
});

it("says what the line can do where the supply never ends, and the same whatever traces are kept", () => {
  const plan = planOf(saturated(1000), [station("skinning", 6)]);
  const found = runSingleDay(plan, "1", "none", PROVENANCE).capacity!;
  // One position of 6 s is never without a head: ten a minute, 600 an hour, no more and no less.
  expect(found.headsPerHour!.mean).toBeCloseTo(600, 0);
  expect(runSingleDay(plan, "1", "exact", PROVENANCE).capacity).toEqual(found);
  expect(runSingleDay(readSmallPlan(), "1", "none", PROVENANCE).capacity).toBeNull();
});

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
