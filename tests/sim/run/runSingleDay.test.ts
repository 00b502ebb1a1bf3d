import { expect, it } from "vitest";
import { compileLine, runDay, runSingleDay } from "../../../sim/index.ts";
import { usualResponses } from "../../../sim/observations/index.ts";
import { readSmallPlan } from "../../support/readSmallPlan.ts";

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
  const day = runDay(compileLine(PLAN), { seed: "s", replication: 3, traces: "exact" });
  expect(runSingleDay(PLAN, "s", "exact", PROVENANCE, 3).variants[0]!.day).toEqual(day);
});
