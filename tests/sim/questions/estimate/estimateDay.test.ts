import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { type Plan, readPlan } from "../../../../sim/asked/plan/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { estimateDay } from "../../../../sim/questions/estimate/index.ts";
import { constant, dwell, planOf, station, stream } from "../../../support/plans.ts";
import { replicate } from "../../../support/replicate.ts";

const FOLDER = resolve(import.meta.dirname, "../../../../experiments/plans");
const FILES = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
/** What the room's README states. */
const MOST = 0.1;

function read(name: string): Plan {
  const { plan } = readPlan(JSON.parse(readFileSync(resolve(FOLDER, name), "utf8")), { readText: () => "" });
  return plan!;
}

describe("estimateDay", () => {
  it.each(FILES)(`%s: the estimate lies within ${MOST * 100} percent of the simulated day`, async (name) => {
    const plan = read(name);
    const days = await replicate(plan, `estimateDay ${name}`, { replications: 10 });
    const simulated = days.reduce((sum, day) => sum + measure(day, plan).headsPerHour!, 0) / days.length;
    expect(Math.abs(estimateDay(plan).headsPerHour / simulated - 1)).toBeLessThan(MOST);
  });

  it("ends a day that has too few heads soon after the last of them", () => {
    const plan = planOf(stream(constant(60), 60), [station("a", 5), station("b", 7)]);
    expect(estimateDay(plan).workFinishSeconds).toBeGreaterThan(3600);
    expect(estimateDay(plan).workFinishSeconds).toBeLessThan(3600 + 60);
  });

  it("lets a chiller that is full hold the line up, and one that is not yet full not", () => {
    const withPlaces = (places: number) =>
      planOf(stream(constant(1), 500), [station("a", 5), dwell("chilling", 10_000, places)]);
    const finish = (places: number) => estimateDay(withPlaces(places)).workFinishSeconds;
    expect(finish(500)).toBeLessThan(2600);
    expect(Math.abs(finish(250) - (10_000 + 250 * 5)) / finish(250)).toBeLessThan(0.02);
  });

  it("counts the heads hung before hanging stops", () => {
    const plan = planOf(stream(constant(1), 2000), [station("a", 10)]);
    const early = { ...plan, day: { ...plan.day, closing: { rule: "stop hanging" as const, atSeconds: 3600 } } };
    const { carcasses, workFinishSeconds } = estimateDay(early);
    expect(Math.abs(carcasses - 360)).toBeLessThan(5);
    // One of 500 parts, 40 s of hanging, may be cut off.
    expect(workFinishSeconds).toBeGreaterThan(3570);
    expect(workFinishSeconds).toBeLessThanOrEqual(3610);
  });
});
