import { describe, it } from "vitest";
import type { TimeLimit } from "../../sim/asked/plan/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { limitedQueue, meanOfDistribution, pollaczekKhinchine } from "../oracle/queueFormulas.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, exponential, planOf, station, stream } from "../support/plans.ts";
import { meanPresent, replicate, shareBeyond, stateShare, throughput } from "../support/replicate.ts";
import { QUEUES } from "./register/queues.ts";

const checks = new OutsideChecks(QUEUES);
const WARM_UP = 2_000;
/** Relative standard error that will do for the share in the tail, by load: the smaller the share, the rougher. */
const TAIL_PRECISION: Record<number, number> = { 0.3: 0.1, 0.6: 0.04, 0.8: 0.01 };

const inSystemLimit: TimeLimit = {
  name: "in system",
  from: { stage: null, moment: "entry" },
  to: { stage: null, moment: "exit" },
  minSeconds: null,
  maxSeconds: 10,
  source: "test",
};

function singleServer(load: number, service: Varying, heads: number) {
  const line = [station("server", service, { buffer: Infinity })];
  return planOf(stream(exponential(1 / load), heads), line, { limits: [inSystemLimit] });
}

describe("one server, Poisson arrivals, unlimited queue", () => {
  it.each([
    [0.3, 70_000],
    [0.6, 110_000],
    [0.8, 420_000],
  ])(`${checks.title("1.1")}: load %d`, async (load, heads) => {
    const days = await replicate(singleServer(load, exponential(1), heads), `1.1 ${load}`, { warmUpHeads: WARM_UP });
    const present = load / (1 - load);
    checks.simulated("1.1", "L", days.map(meanPresent), present);
    checks.simulated("1.1", "Lq", queueOf(days), load * present);
    checks.simulated("1.1", "W", timesIn(days), 1 / (1 - load));
    checks.simulated(
      "1.1",
      "busy",
      days.map((day) => stateShare(day, 0, "working")),
      load,
    );
    const beyond = days.map((day) => shareBeyond(day, 0));
    const tail = Math.exp(-10 * (1 - load));
    checks.simulated("1.2", "share longer than 10", beyond, tail, { relative: TAIL_PRECISION[load]! });
    if (load !== 0.8) return;
    checks.printed("1.1", "L", present, "4");
    checks.printed("1.1", "Lq", load * present, "3.2");
    checks.printed("1.2", "P(W > 10)", Math.exp(-2), "0.135335");
  });

  it.each([
    [0.5, 0, 40_000],
    [0.5, 2, 200_000],
    [0.8, 0, 150_000],
    [0.8, 0.5, 220_000],
    [0.8, 2, 700_000],
  ])(`${checks.title("1.8")}: load %d, cv %d`, async (load, cv, heads) => {
    const service: Varying = cv === 0 ? constant(1) : { family: "gamma", mean: 1, cv };
    const days = await replicate(singleServer(load, service, heads), `1.8 ${load} ${cv}`, { warmUpHeads: WARM_UP });
    const waiting = pollaczekKhinchine(load, cv);
    checks.simulated("1.8", "Lq", queueOf(days), waiting);
    checks.simulated("1.8", "W", timesIn(days), 1 + waiting / load);
    if (load === 0.8) checks.printed("1.8", "Lq", waiting, { 0: "1.6", 0.5: "2.0", 2: "8.0" }[cv]!);
  });
});

describe("one server, so many places in all", () => {
  it.each([
    [0.8, 5, "0.0888195", "1.868332"],
    [1, 4, "0.200000", "2"],
    [1.25, 3, "0.338753", "1.775068"],
    [0.5, 2, null, null],
  ])("1.9, 1.10 M/M/1/K: load %d, K = %d", async (load, places, printedLost, printedPresent) => {
    const id = load === 0.8 ? "1.9" : "1.10";
    const line = [station("server", exponential(1), { buffer: places - 1 })];
    const plan = planOf(stream(exponential(1 / load), 60_000, "turn away"), line);
    const days = await replicate(plan, `${id} ${load} ${places}`);
    const probabilities = limitedQueue(load, places);
    const lost = probabilities[places]!;
    const present = meanOfDistribution(probabilities);
    checks.simulated(
      id,
      "lost",
      days.map((day) => day.heads.turnedAway / day.heads.arrived),
      lost,
      { relative: 0.01 },
    );
    checks.simulated(id, "throughput", days.map(throughput), load * (1 - lost));
    checks.simulated(id, "L", days.map(meanPresent), present);
    checks.simulated(id, "W", timesIn(days), present / (load * (1 - lost)));
    if (printedLost === null) return;
    checks.printed(id, "lost", lost, printedLost);
    checks.printed(id, "L", present, printedPresent);
  });
});

describe("tandem of unlimited queues", () => {
  it.each([
    [0.6, [1, 0.8, 0.9], 220_000],
    [0.4, [0.9, 0.7, 0.8, 1], 110_000],
  ])(`${checks.title("1.11")}: arrivals %d, services %j`, async (arrivals, rates, heads) => {
    const line = rates.map((rate, i) =>
      station(`s${i}`, exponential(1 / rate), { buffer: Infinity, section: `section ${i}` }),
    );
    const plan = planOf(stream(exponential(1 / arrivals), heads), line);
    const days = await replicate(plan, `1.11 ${arrivals}`, { warmUpHeads: WARM_UP });
    rates.forEach((rate, i) => {
      checks.simulated(
        "1.11",
        `L of ${i}`,
        days.map((day) => day.sections[i]!.wip.mean),
        arrivals / (rate - arrivals),
      );
    });
    const whole = rates.reduce((sum, rate) => sum + 1 / (rate - arrivals), 0);
    checks.simulated("1.11", "W", timesIn(days), whole);
    if (arrivals === 0.6) checks.printed("1.11", "W", whole, "10.833333");
  });
});

type Days = Awaited<ReturnType<typeof replicate>>;

function queueOf(days: Days): number[] {
  return days.map((day) => day.stages[0]!.queue.mean);
}

function timesIn(days: Days): number[] {
  return days.map((day) => day.timeInSystem.mean);
}

checks.close();
