import { expect, it } from "vitest";
import { responsesOf, usualResponses } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN } from "../../../support/wholeDay.ts";

it("starts with throughput, holds every limit and leaves stages and sections out", () => {
  const keys = usualResponses(HAND_MADE_PLAN);
  expect(keys[0]).toBe("headsPerHour");
  expect(keys).toContain("beyond.stick to evisceration");
  expect(keys.filter((key) => /^(queue|working|wip)\./.test(key))).toEqual([]);
});

it("names only responses that the plan has, each once", () => {
  const known = responsesOf(HAND_MADE_PLAN).map(({ key }) => key);
  const keys = usualResponses(HAND_MADE_PLAN);
  expect(known).toEqual(expect.arrayContaining(keys));
  expect(new Set(keys).size).toBe(keys.length);
});

it("adds of money, water, energy and hours only what every owner asks for", () => {
  const more = usualResponses(WHOLE_PLAN).slice(-6);
  expect(more).toEqual(["overtimeHours", "costPerHead", "costPerKg", "margin", "waterPerHead", "energyPerHead"]);
  expect(usualResponses(WHOLE_PLAN).filter((key) => /^(cost|revenue|water)\./.test(key))).toEqual([]);
});
