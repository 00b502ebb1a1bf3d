import { describe, it } from "vitest";
import type { Gate } from "../../sim/asked/plan/plan.ts";
import { closedNetwork } from "../oracle/closedNetwork.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { exponential, planOf, saturated, station } from "../support/plans.ts";
import { replicate, throughput } from "../support/replicate.ts";
import { GATES } from "./register/gates.ts";

const checks = new OutsideChecks(GATES);

/**
 * A saturated line whose first start is held by a gate that opens when a head leaves the last stage: the free places of
 * the gate are the customers of a closed ring that "wait at the first station".
 */
async function gatedDays(means: readonly number[], atMost: number, seed: string) {
  const line = means.map((mean, index) =>
    station(`s${index}`, exponential(mean), { buffer: Infinity, section: `s${index}` }),
  );
  const gate: Gate = { name: "ring", from: "s0", to: { stage: `s${means.length - 1}`, moment: "end" }, atMost };
  return replicate(planOf(saturated(60_000), line, { gates: [gate] }), seed, { warmUpHeads: 2_000 });
}

describe("a gate that lets a constant number of heads be on the way", () => {
  it(checks.title("G.1"), async () => {
    for (const [stations, atMost] of [
      [2, 1],
      [2, 2],
      [2, 4],
      [3, 1],
      [3, 3],
      [3, 8],
      [4, 2],
      [4, 4],
      [4, 8],
    ] as const) {
      const days = await gatedDays(new Array(stations).fill(1), atMost, `G.1 ${stations} ${atMost}`);
      const expected = atMost / (atMost + stations - 1);
      checks.simulated("G.1", `${stations} stations, ${atMost} heads`, days.map(throughput), expected);
    }
  });

  it(checks.title("G.2"), async () => {
    const means = [1, 1.25, 0.8];
    for (const atMost of [2, 4, 7]) {
      const days = await gatedDays(means, atMost, `G.2 ${atMost}`);
      const exact = closedNetwork(means, atMost);
      checks.simulated("G.2", `throughput, ${atMost} heads`, days.map(throughput), exact.throughput);
      for (const stage of [1, 2]) {
        const heads = days.map((day) => day.sections[stage]!.wip.mean);
        checks.simulated("G.2", `heads at ${stage}, ${atMost} heads`, heads, exact.present[stage]!, { relative: 0.01 });
      }
      if (atMost === 7) continue;
      // Between the gate's points: in work at the first station, or anywhere behind it.
      const between = exact.throughput * means[0]! + exact.present[1]! + exact.present[2]!;
      checks.simulated(
        "G.2",
        `between the points, ${atMost} heads`,
        days.map((day) => day.gates[0]!.mean),
        between,
      );
    }
  });

  it(checks.title("G.3"), () => {
    for (const stations of [2, 3, 6]) {
      for (let customers = 1; customers <= 8; customers++) {
        const { throughput: found } = closedNetwork(new Array(stations).fill(2), customers);
        checks.exact("G.3", `${stations}, ${customers}`, found, customers / (customers + stations - 1) / 2, 1e-12);
      }
    }
  });
});

checks.close();
