import { expect, it } from "vitest";
import { usualResponses } from "../../../../sim/day/observations/index.ts";
import { stableJson } from "../../../../sim/days/results/index.ts";
import { compileLine, runDay, runSingleDay } from "../../../../sim/index.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";
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
