import { readdirSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOMENTS, type Plan } from "../../sim/asked/plan/index.ts";
import { loadPlan, readInputFile } from "../../sim/cli/inputs.ts";
import { type DayRecord, runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { parallelLines, specPlan } from "../support/lineSpecs.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { randomPlan } from "../support/randomPlans.ts";
import { LITTLES_LAW } from "./register/littlesLaw.ts";

const checks = new OutsideChecks(LITTLES_LAW);
const FOLDER = "experiments/plans";

function simulate(plan: Plan, replication = 0): DayRecord {
  return runDay(compileLine(plan), { seed: "Little", replication, perHead: true });
}

/** Passing times of one head, stage by stage: entry, start, end, exit; NaN where it never passed. */
function rowOf(day: DayRecord, head: number): Float64Array {
  const width = day.stages.length * MOMENTS.length;
  return day.perHead!.times.subarray(head * width, (head + 1) * width);
}

/** Heads on the line: the sum of their times on it against the integral of their number. Who is still there stays to the end. */
function wholeLine(day: DayRecord): [sum: number, area: number] {
  const { destinations, heads } = day.perHead!;
  let sum = 0;
  for (let head = 0; head < heads; head++) {
    const known = rowOf(day, head).filter((time) => !Number.isNaN(time));
    const left = destinations[head]! < 0 ? day.finishSeconds : Math.max(...known);
    // Who was there when the day began is counted from then.
    sum += left - Math.max(0, Math.min(...known));
  }
  const present = day.sections.reduce((total, section) => total + section.wip.mean, 0);
  return [sum, present * day.finishSeconds];
}

/** Heads waiting at a station (or present at a dwell stage): the sum of their waits against the integral of the queue. */
function queue(day: DayRecord, stage: number): [sum: number, area: number] {
  const leaves = day.stages[stage]!.kind === "dwell" ? "exit" : "start";
  let sum = 0;
  for (let head = 0; head < day.perHead!.heads; head++) {
    const row = rowOf(day, head).subarray(stage * MOMENTS.length);
    const entry = row[MOMENTS.indexOf("entry")]!;
    if (Number.isNaN(entry)) continue;
    const left = row[MOMENTS.indexOf(leaves)]!;
    sum += (Number.isNaN(left) ? day.finishSeconds : left) - Math.max(0, entry);
  }
  return [sum, day.stages[stage]!.queue.mean * day.finishSeconds];
}

function compare(id: string, what: string, [sum, area]: [number, number]): void {
  checks.exact(id, what, area, sum, 1e-9);
}

describe("Little's law as an identity of one day", () => {
  it(checks.title("1.17"), () => {
    fc.assert(
      fc.property(randomPlan, fc.nat({ max: 9 }), (plan, replication) => {
        compare("1.17", JSON.stringify(plan), wholeLine(simulate(plan, replication)));
      }),
      { seed: 17, numRuns: 200, endOnFailure: true },
    );
  });

  it(checks.title("1.17 queues"), () => {
    fc.assert(
      fc.property(parallelLines, (spec) => {
        const day = simulate(specPlan(spec, 150));
        const worst = day.stages.map((_, stage) => {
          const [sum, area] = queue(day, stage);
          return Math.abs(sum - area) / Math.max(1, sum);
        });
        checks.exact("1.17 queues", JSON.stringify(spec), Math.max(...worst), 0, 1e-9);
        if (spec.interarrival === null) return;
        // From empty to empty: carcasses times their mean time in the system is the same integral again.
        const [sum, area] = wholeLine(day);
        expect(Math.abs(day.timeInSystem.mean * day.timeInSystem.count - sum)).toBeLessThan(1e-9 * sum);
        expect(Math.abs(area - sum)).toBeLessThan(1e-9 * sum);
      }),
      { seed: 18, numRuns: 200, endOnFailure: true },
    );
  });

  const plans = readdirSync(FOLDER).filter((name) => name.endsWith(".json"));

  it("finds plans to try it on", () => expect(plans.length).toBeGreaterThan(0));

  it.each(plans)("holds on the line of experiments/plans/%s", (name) => {
    const day = simulate(loadPlan(readInputFile(`${FOLDER}/${name}`)));
    const [sum, area] = wholeLine(day);
    expect(day.perHead!.heads).toBeGreaterThan(100);
    expect(Math.abs(area / sum - 1)).toBeLessThan(1e-9);
  });
});

checks.close();
