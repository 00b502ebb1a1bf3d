import { describe, it } from "vitest";
import { erlangC } from "../oracle/queueFormulas.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, crew, exponential, manual, pause, planOf, saturated, station, stream } from "../support/plans.ts";
import { meanPresent, replicate, stateShare, throughput } from "../support/replicate.ts";
import { passes, runChecked } from "../support/timeline.ts";
import { CREWS } from "./register/crews.ts";

const checks = new OutsideChecks(CREWS);

const POSITIONS = 6;

describe("people are the servers", () => {
  it.each([
    [2, 1.2, 90_000],
    [3, 2.1, 130_000],
  ])(`${checks.title("1.19")}: %i people, load %d`, async (people, load, heads) => {
    const line = [manual("cutting", exponential(1), "crew", { positions: POSITIONS, buffer: Infinity })];
    const plan = planOf(stream(exponential(1 / load), heads), line, { crews: [crew("crew", people)] });
    const days = await replicate(plan, `1.19 ${people}`, { warmUpHeads: 1_000 });
    const waiting = (load * erlangC(people, load)) / (people - load);
    checks.simulated("1.19", "L", days.map(meanPresent), load + waiting);
    const seconds = days.map((day) => day.crews[0]!.busySeconds / (day.finishSeconds - day.watchedFromSeconds));
    checks.simulated("1.19", "people busy", seconds, load);
    // Heads beyond the people, k of them, are geometric; min(k, idle positions) of them stand at a position without people.
    const share = load / people;
    let without = 0;
    for (let k = 1; k <= POSITIONS - people; k++) without += erlangC(people, load) * share ** k;
    const noCrew = days.map((day) => POSITIONS * stateShare(day, 0, "no crew"));
    checks.simulated("1.19", "positions without a crew", noCrew, without);
  });

  it.each([
    ["furthest downstream", 1, [0.7, 1.9]],
    ["furthest downstream", 2, [1.5, 1, 0.8]],
  ] as const)(`${checks.title("1.20")}: %s, %i people, %j`, async (rule, people, means) => {
    // As many positions as people everywhere, no buffer: each person sees a head through before taking the next.
    const line = means.map((mean, i) => manual(`s${i}`, exponential(mean), "crew", { positions: people }));
    const plan = planOf(saturated(12_000), line, { crews: [crew("crew", people, { rule })] });
    const days = await replicate(plan, `1.20 ${people}`, { warmUpHeads: 100 });
    const whole = means.reduce((sum, mean) => sum + mean, 0);
    checks.simulated("1.20", "throughput", days.map(throughput), people / whole);
  });
});

describe("a break, the head in hand finished first", () => {
  it.each([
    [7, 100, 60],
    [4.5, 33, 900],
    [11, 5, 30],
  ])(`${checks.title("K.1")}: cycle %d s, break at %d s for %d s`, (cycle, at, length) => {
    const plan = planOf(saturated(60), [manual("hanging", constant(cycle), "crew")], { crews: [crew("crew", 1)] });
    const breaks = [pause("break", at, length, { crews: ["crew"] })];
    const day = runChecked({ ...plan, day: { ...plan.day, breaks } });
    const before = Math.floor(at / cycle) + 1;
    const worst = passes(day, "hanging", "exit")
      .slice(0, 60)
      .map((time, head) => {
        const expected = (head + 1) * cycle + (head < before ? 0 : length);
        return Math.abs(time / expected - 1);
      });
    checks.exact("K.1", "worst leaving time", Math.max(...worst), 0, 1e-12);
  });
});

describe("a rule for who stands idle", () => {
  it.each([
    [3, 7, 2],
    [2, 9, 4],
    [5, 11, 6],
  ])(`${checks.title("K.2")}: before %d s, machine %d s, after %d s`, (before, machine, after) => {
    // The machine sets the pace. When it is done, its head is at the second task and the first one is free at the same
    // instant: by fixed order the idle person does the first, and begins the second when that is over.
    const line = [manual("a", before, "crew"), station("b", machine), manual("c", after, "crew")];
    const plan = planOf(saturated(60), line, { crews: [crew("crew", 1, { rule: "fixed order" })] });
    const starts = passes(runChecked(plan), "c", "start").slice(0, 60);
    const worst = starts.map((time, head) => Math.abs(time / (2 * before + (head + 1) * machine) - 1));
    checks.exact("K.2", "worst begin of the second task", Math.max(...worst), 0, 1e-12);
  });
});

checks.close();
