import { describe, expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import { crateStep, planOf, station } from "../../../support/plans.ts";
import { runChecked } from "../../../support/timeline.ts";

const liveHandling = handling([crateStep("unloading", 0), crateStep("feeding", 0)], [], { cratesAtHanging: 99 });

/** Two loads of three heads; the first one may be withdrawn at inspection. */
function plan(chance: number) {
  const line = [
    station("hanging", 1),
    station("inspection", 1, {
      buffer: 99,
      removals: [
        { as: "condemned", share: 0.25 },
        { as: "withdrawn", share: 0 },
      ],
    }),
    station("packing", 1, { buffer: 99 }),
  ];
  const withdrawn = { chance, at: "inspection", as: "withdrawn" };
  const loads = [load("first", 0, 3, 1, { withdrawn }), load("second", 1, 3, 1)];
  return planOf({ kind: "loads", loads }, line, { liveHandling });
}

describe("a load that is withdrawn", () => {
  it("loses every head at the end of its stage, and no other load loses one more", () => {
    const [before, day] = [runChecked(plan(1e-9)), runChecked(plan(1))];
    expect(day.heads.out.withdrawn).toBe(3);
    // The draws of the inspection are taken all the same: what it condemns of the second load stays.
    const lost = (record: typeof day) => record.heads.out.condemned! + record.heads.out.carcass!;
    expect(lost(day)).toBe(3);
    expect(before.heads.out.withdrawn).toBe(0);
    expect(day.stages.find(({ name }) => name === "packing")!.processed).toBe(day.heads.out.carcass);
  });

  it("is so with its chance, once for the load", () => {
    // 400 days at 30 %: binomial, mean 120, standard deviation 9.2; 3.29 of them either way errs with probability 0.001.
    const line = compileLine(plan(0.3));
    const days = Array.from(
      { length: 400 },
      (_, replication) => runDay(line, { seed: "withdrawn", replication }).heads.out.withdrawn!,
    );
    expect(new Set(days)).toEqual(new Set([0, 3]));
    expect(Math.abs(days.filter((heads) => heads === 3).length - 120)).toBeLessThan(3.29 * 9.17);
  });
});
