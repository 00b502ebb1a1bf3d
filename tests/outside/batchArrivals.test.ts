import { describe, it } from "vitest";
import type { LiveHandling, Load, Plan } from "../../sim/asked/plan/index.ts";
import { uniformStream } from "../../sim/maths/random/index.ts";
import { presentWithBulks } from "../oracle/queueFormulas.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, crateStep, exponential, planOf, station } from "../support/plans.ts";
import { replicate, stateShare } from "../support/replicate.ts";
import { BATCH_ARRIVALS } from "./register/batchArrivals.ts";

const checks = new OutsideChecks(BATCH_ARRIVALS);

const handling: LiveHandling = {
  way: "hand-slid",
  // Steps that keep no crate waiting.
  toHanging: [crateStep("unloading", 0), crateStep("crate feeding", 0)],
  back: [],
  cratesAtHanging: 1e9,
  fleet: null,
};

/** One crate a lorry, lorries as a Poisson stream, no time between lorry and hanging point: heads come in bulks. */
function crates(load: number, size: number, lorries: number, replication: number): Plan {
  const uniforms = uniformStream("bulk arrivals", replication, `${load} ${size}`, "arrival");
  let time = 0;
  const loads = Array.from({ length: lorries }, (_, number): Load => {
    time -= Math.log(1 - uniforms.next()) * (size / load);
    return {
      name: `lorry ${number}`,
      atSeconds: time,
      delay: null,
      comesShare: 1,
      crates: 1,
      headsPerCrate: size,
      deadOnArrivalShare: 0,
      liveWeightKg: constant(2.5),
    };
  });
  return planOf({ kind: "loads", loads }, [station("hanging", exponential(1))], {
    liveHandling: handling,
  });
}

describe("crates as bulk arrivals", () => {
  it.each([
    [0.6, 4, 26_000],
    [0.4, 5, 20_000],
    [0.5, 10, 16_000],
  ])(`${checks.title("B.1")}: load %d, %i heads a crate`, async (load, size, lorries) => {
    const runs = Array.from({ length: 20 }, (_, replication) => {
      const seed = `B.1 ${load} ${size} ${replication}`;
      return replicate(crates(load, size, lorries, replication), seed, { replications: 1 });
    });
    const days = (await Promise.all(runs)).flat();
    const hanging = days[0]!.stages.length - 1;
    const present = days.map((day) => day.stages[hanging]!.queue.mean + stateShare(day, hanging, "working"));
    checks.simulated("B.1", "L", present, presentWithBulks(load, size));
    checks.simulated(
      "B.1",
      "busy",
      days.map((day) => stateShare(day, hanging, "working")),
      load,
    );
    checks.simulated(
      "B.1",
      "W",
      days.map((day) => day.timeInSystem.mean),
      presentWithBulks(load, size) / load,
    );
  });
});

checks.close();
