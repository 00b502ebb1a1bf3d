import { describe, it } from "vitest";
import {
  type BreakingServer,
  presentWithCalendarBreakdowns,
  presentWithRunningBreakdowns,
} from "../oracle/queueFormulas.ts";
import { failures } from "../support/chainPlan.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { exponential, planOf, saturated, station, stream } from "../support/plans.ts";
import { meanPresent, replicate, stateShare, throughput } from "../support/replicate.ts";
import { shared } from "../support/sharedBreakdowns.ts";
import { BREAKDOWN_CLOCKS } from "./register/breakdownClocks.ts";

const checks = new OutsideChecks(BREAKDOWN_CLOCKS);

const SERVERS: [server: BreakingServer, heads: number][] = [
  [{ arrivals: 0.5, failure: 0.05, repair: 0.25 }, 220_000],
  [{ arrivals: 0.3, failure: 0.2, repair: 0.4 }, 110_000],
];

function breakingServer({ arrivals, failure, repair }: BreakingServer, heads: number, clock: "calendar" | "running") {
  const breakdowns = [failures(failure, repair, clock)];
  return planOf(stream(exponential(1 / arrivals), heads), [
    station("server", exponential(1), { buffer: Infinity, breakdowns }),
  ]);
}

describe("M/M/1 whose server breaks down, work resumed", () => {
  it.each(SERVERS)(`${checks.title("1.15")}: %j`, async (server, heads) => {
    const days = await replicate(breakingServer(server, heads, "calendar"), `1.15 ${server.arrivals}`, {
      warmUpHeads: 2_000,
    });
    const { arrivals, failure, repair } = server;
    checks.simulated("1.15", "L", days.map(meanPresent), presentWithCalendarBreakdowns(server));
    checks.simulated(
      "1.15",
      "working",
      days.map((day) => stateShare(day, 0, "working")),
      arrivals,
    );
    checks.simulated(
      "1.15",
      "down",
      days.map((day) => stateShare(day, 0, "down")),
      failure / (failure + repair),
      {
        relative: 0.01,
      },
    );
  });

  it.each(SERVERS)(`${checks.title("1.16")}: %j`, async (server, heads) => {
    const days = await replicate(breakingServer(server, heads, "running"), `1.16 ${server.arrivals}`, {
      warmUpHeads: 2_000,
    });
    const { arrivals, failure, repair } = server;
    checks.simulated("1.16", "L", days.map(meanPresent), presentWithRunningBreakdowns(server));
    checks.simulated(
      "1.16",
      "working",
      days.map((day) => stateShare(day, 0, "working")),
      arrivals,
    );
    checks.simulated(
      "1.16",
      "down",
      days.map((day) => stateShare(day, 0, "down")),
      (arrivals * failure) / repair,
      {
        relative: 0.01,
      },
    );
  });

  it.each(["any running", "all running", "calendar"] as const)(`${checks.title("1.21")}: %s`, async (clock) => {
    // Cycles that never vary and no want of heads: all three always work but in the repairs, so the three clocks agree.
    const [uptime, repair] = [200, 50];
    const line = ["a", "b", "c"].map((name) => station(name, 1));
    const board = shared(["a", "b", "c"], 0, 0, {
      ...{ clock, uptimeSeconds: exponential(uptime), repairSeconds: exponential(repair) },
    });
    const plan = planOf(saturated(300_000), line, { sharedBreakdowns: [board] });
    const days = await replicate(plan, `1.21 ${clock}`, { warmUpHeads: 10 });
    checks.simulated("1.21", "throughput", days.map(throughput), 1 / (1 + repair / uptime));
    for (const stage of [0, 1, 2]) {
      const down = days.map((day) => stateShare(day, stage, "down"));
      checks.simulated("1.21", `down ${stage}`, down, repair / (uptime + repair), { relative: 0.01 });
    }
  });

  it("1.15, 1.16 the two clocks give the figures of the exact chains", () => {
    checks.printed("1.15", "L", presentWithCalendarBreakdowns(SERVERS[0]![0]), "2.333333");
    checks.printed("1.16", "L", presentWithRunningBreakdowns(SERVERS[0]![0]), "2.000000");
  });
});

checks.close();
