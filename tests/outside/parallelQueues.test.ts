import { describe, it } from "vitest";
import type { TimeLimit } from "../../sim/asked/plan/index.ts";
import type { StepTrace } from "../../sim/day/engine/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { erlangB, erlangC, machineRepair, meanOfDistribution } from "../oracle/queueFormulas.ts";
import { failures } from "../support/chainPlan.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, crew, dwell, exponential, planOf, saturated, station, stream } from "../support/plans.ts";
import { meanPresent, replicate, shareBeyond, stateShare, watchedSeconds } from "../support/replicate.ts";
import { PARALLEL_QUEUES } from "./register/parallelQueues.ts";

const checks = new OutsideChecks(PARALLEL_QUEUES);

function waitLimit(maxSeconds: number): TimeLimit {
  return {
    name: `wait over ${maxSeconds}`,
    from: { stage: "servers", moment: "entry" },
    to: { stage: "servers", moment: "start" },
    minSeconds: null,
    maxSeconds,
    source: "test",
  };
}

describe("several servers, Poisson arrivals, unlimited queue", () => {
  it.each([
    ["1.3", 2, 1.5, 130_000, { wait: "0.642857", meanWait: "1.285714", present: "3.428571" }],
    ["1.4", 3, 2.4, 220_000, { wait: "0.647191", meanWait: "1.078652", present: "4.988764" }],
    ["1.5", 5, 4, 160_000, { wait: "0.554113", meanWait: "0.554113", present: "6.216450" }],
    ["1.5", 4, 2, 90_000, null],
  ] as const)(
    "%s M/M/c (Erlang C, Erlang 1917; V-closed): %d servers, load %d",
    async (id, servers, load, heads, printed) => {
      const line = [station("servers", exponential(1), { positions: servers, buffer: Infinity })];
      const plan = planOf(stream(exponential(1 / load), heads), line, { limits: [waitLimit(0), waitLimit(2)] });
      const days = await replicate(plan, `${id} ${servers} ${load}`, { warmUpHeads: 2_000 });
      const wait = erlangC(servers, load);
      const meanWait = wait / (servers - load);
      checks.simulated(
        id,
        "P(wait)",
        days.map((day) => shareBeyond(day, 0)),
        wait,
      );
      checks.simulated(
        id,
        "Wq",
        days.map((day) => day.limits[0]!.tally.mean),
        meanWait,
        { relative: 0.01 },
      );
      checks.simulated(id, "L", days.map(meanPresent), load + load * meanWait);
      const long = wait * Math.exp(-2 * (servers - load));
      checks.simulated(
        id,
        "P(Wq > 2)",
        days.map((day) => shareBeyond(day, 1)),
        long,
        { absolute: 0.002 },
      );
      if (printed === null) return;
      checks.printed(id, "P(wait)", wait, printed.wait);
      checks.printed(id, "Wq", meanWait, printed.meanWait);
      checks.printed(id, "L", load + load * meanWait, printed.present);
      if (id === "1.4") checks.printed(id, "P(Wq > 2)", long, "0.194930");
    },
  );
});

describe("places without a queue, arrivals turned away when full", () => {
  function lossPlan(places: number, load: number, dwellTime: Varying, mean: number, heads: number) {
    const line = [station("places", dwellTime, { positions: places })];
    return planOf(stream(exponential(mean / load), heads, "turn away"), line);
  }

  it.each([
    [1, 0.5, 40_000, "0.333333"],
    [2, 1, 40_000, "0.200000"],
    [5, 3, 40_000, "0.110054"],
    [10, 7, 40_000, "0.0787409"],
    [30, 20, 100_000, "0.00845750"],
  ])(`${checks.title("1.6")}: %d places, load %d`, async (places, load, heads, printed) => {
    const days = await replicate(lossPlan(places, load, exponential(1), 1, heads), `1.6 ${places} ${load}`);
    const lost = erlangB(places, load);
    // Small shares: 3 % of their value will do.
    checks.simulated(
      "1.6",
      "lost",
      days.map((day) => day.heads.turnedAway / day.heads.arrived),
      lost,
      { relative: 0.03 },
    );
    const working = days.map((day) => stateShare(day, 0, "working"));
    checks.simulated("1.6", "working", working, (load * (1 - lost)) / places);
    checks.printed("1.6", "lost", lost, printed);
  });

  const DWELLS: Varying[] = [
    constant(7),
    { family: "uniform", min: 2, max: 12 },
    { family: "erlang", mean: 7, k: 3 },
    { family: "lognormal", mean: 7, cv: 1.5 },
    { family: "gamma", mean: 7, cv: 2 },
  ];

  it.each(DWELLS)(`${checks.title("1.7")}: $family`, async (dwellTime) => {
    const days = await replicate(lossPlan(10, 7, dwellTime, 7, 60_000), `1.7 ${dwellTime.family}`);
    const lost = erlangB(10, 7);
    checks.simulated(
      "1.7",
      "lost",
      days.map((day) => day.heads.turnedAway / day.heads.arrived),
      lost,
      { relative: 0.02 },
    );
    checks.simulated("1.7", "present", days.map(meanPresent), 7 * (1 - lost));
    if (dwellTime.family === "constant") checks.printed("1.7", "present", 7 * (1 - lost), "6.448814");
  });
});

describe("dwell without limit", () => {
  // A dwell stage lets heads out in the order they came, so only a constant dwell makes it M/G/infinity; the other laws
  // run on a station with so many positions that none is ever short.
  it.each([
    ["dwell stage", dwell("bleeding", constant(10), Infinity)],
    ["station, exponential", station("bleeding", exponential(10), { positions: 30, buffer: Infinity })],
    [
      "station, uniform",
      station("bleeding", { family: "uniform", min: 0, max: 20 }, { positions: 30, buffer: Infinity }),
    ],
  ])(`${checks.title("1.12")}: %s`, async (name, stage) => {
    const entrance = station("entrance", constant(0), { buffer: Infinity, section: "before" });
    const plan = planOf(stream(exponential(5), 12_000), [entrance, { ...stage, section: "dwell" }]);
    const days = await replicate(plan, `1.12 ${name}`, { traces: "exact" });
    const counts = days.map((day) => presentShares(day.traces!.wip[1]!));
    checks.simulated("1.12", "mean", counts.map(meanOfDistribution), 2);
    checks.simulated("1.12", "variance", counts.map(varianceOf), 2, { relative: 0.01 });
    checks.simulated(
      "1.12",
      "none",
      counts.map((shares) => shares[0]!),
      Math.exp(-2),
      { relative: 0.01 },
    );
  });

  /** Share of time with 0, 1, 2, ... heads present. */
  function presentShares(trace: StepTrace): number[] {
    if (trace.kind !== "exact") throw new Error("exact traces were asked for");
    const shares: number[] = new Array<number>(64).fill(0);
    trace.times.forEach((time, i) => {
      const until = trace.times[i + 1] ?? trace.endSeconds;
      shares[trace.values[i]!]! += (until - time) / trace.endSeconds;
    });
    return shares;
  }

  function varianceOf(shares: number[]): number {
    const mean = meanOfDistribution(shares);
    return shares.reduce((sum, share, n) => sum + share * (n - mean) ** 2, 0);
  }
});

describe("machine repair: positions that work without a pause, fail while they run and wait for a fitter", () => {
  it.each([
    ["1.13", 5, 0.1, 0.5, 1],
    ["1.14", 6, 0.2, 1, 2],
    ["1.14", 8, 0.05, 0.1, 3],
  ])(
    "%s (Palm 1947; Feller vol. 1; V-closed): %i machines, failure %d, repair %d, %i fitters",
    async (id, machines, failure, repair, fitters) => {
      const breakdowns = [{ ...failures(failure, repair), crew: "fitters" }];
      const line = [station("machines", exponential(5), { positions: machines, breakdowns })];
      const plan = planOf(saturated(30_000), line, { crews: [crew("fitters", fitters)] });
      const days = await replicate(plan, `${id} ${machines}`, { warmUpHeads: 500 });
      const down = machineRepair(machines, failure, repair, fitters);
      const meanDown = meanOfDistribution(down);
      const busy = down.reduce((sum, share, n) => sum + share * Math.min(n, fitters), 0);
      checks.simulated(
        id,
        "mean down",
        days.map((day) => machines * stateShare(day, 0, "down")),
        meanDown,
      );
      checks.simulated(
        id,
        "availability",
        days.map((day) => stateShare(day, 0, "working")),
        1 - meanDown / machines,
      );
      const atWork = days.map((day) => day.crews[0]!.busySeconds / watchedSeconds(day));
      checks.simulated(id, "fitters busy", atWork, busy);
      MACHINE_FIGURES[machines]?.forEach((figure, i) => {
        checks.printed(
          id,
          `table ${i}`,
          [meanDown, 1 - meanDown / machines, busy, meanDown - busy, down[0]!][i]!,
          figure,
        );
      });
    },
  );

  /** Mean down, availability, fitters busy, machines waiting for one, none down. */
  const MACHINE_FIGURES: Record<number, string[]> = {
    5: ["1.424339", "0.715132", "0.715132", "0.709207", "0.284868"],
    6: ["1.115351", "0.814108", "0.976930", "0.138421"],
  };
});

checks.close();
