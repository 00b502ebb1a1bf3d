import { describe, expect, it } from "vitest";
import type { Varying } from "../../sim/maths/random/index.ts";
import { textbook } from "../oracle/distributionFunctions.ts";
import { expectedMaximum } from "../oracle/expectedMaximum.ts";
import { limitedConstantService } from "../oracle/queueFormulas.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, exponential, planOf, saturated, station } from "../support/plans.ts";
import { replicate, throughput } from "../support/replicate.ts";
import { passes, runChecked } from "../support/timeline.ts";
import { NON_EXPONENTIAL_LINES } from "./register/nonExponentialLines.ts";

const checks = new OutsideChecks(NON_EXPONENTIAL_LINES);

function pair(first: Varying, second: Varying, places: number, heads = 15_000) {
  return planOf(saturated(heads), [station("first", first), station("second", second, { buffer: places })]);
}

const UNIFORM: Varying = { family: "uniform", min: 0, max: 2 };
const GAMMA: Varying = { family: "gamma", mean: 1, cv: 0.5 };
const LOGNORMAL: Varying = { family: "lognormal", mean: 1, cv: 0.3 };
const TRIANGULAR: Varying = { family: "triangular", min: 3, mode: 5, max: 10 };
const WEIBULL: Varying = { family: "weibull", mean: 1.2, cv: 0.8 };
const ERLANG: Varying = { family: "erlang", mean: 0.9, k: 3 };
const PERT: Varying = { family: "pert", min: 0.5, mode: 1, max: 2.5 };
const NORMAL: Varying = { family: "normal", mean: 1, sd: 0.6 };

const PAIRS: [id: string, first: Varying, second: Varying, figure: string | null][] = [
  ["3.2", UNIFORM, UNIFORM, "0.750000"],
  ["3.3", GAMMA, GAMMA, "0.785276"],
  ["3.4", LOGNORMAL, LOGNORMAL, "0.858780"],
  ["3.5", TRIANGULAR, TRIANGULAR, "0.146240"],
  ["3.1", exponential(1), UNIFORM, null],
  ["3.1", WEIBULL, ERLANG, null],
  ["3.1", PERT, NORMAL, null],
  ["3.1", LOGNORMAL, WEIBULL, null],
];

describe("two stations without places start together: throughput 1 / E[max]", () => {
  it.each(PAIRS)("%s (renewal argument, worked here; V-num): %j, %j", async (id, first, second, figure) => {
    const [a, b] = [textbook(first), textbook(second)];
    const expected = 1 / expectedMaximum(a.cdf, b.cdf, Math.max(a.mean, b.mean));
    if (figure !== null) checks.printed(id, "1 / E[max]", expected, figure);
    const days = await replicate(pair(first, second, 0), `${id} ${first.family} ${second.family}`, {
      warmUpHeads: 100,
    });
    checks.simulated(id, "throughput", days.map(throughput), expected);
  });
});

describe("exponential, then constant", () => {
  it.each([
    ["3.6", 0, "0.731059"],
    ["3.7", 1, "0.823657"],
    ["3.7", 2, "0.869563"],
    ["3.7", 5, "0.926829"],
  ])("%s M/D/1/K (Keilson 1966; Gross and Harris; V-num): %d places", async (id, places, figure) => {
    const expected = limitedConstantService(places + 2);
    checks.printed(id, "embedded chain", expected, figure);
    const days = await replicate(pair(exponential(1), constant(1), places), `${id} ${places}`, { warmUpHeads: 500 });
    checks.simulated(id, "throughput", days.map(throughput), expected);
  });

  it("3.6 closed form 1 / (1 + exp(-1))", () => {
    checks.exact("3.6", "embedded chain", limitedConstantService(2), 1 / (1 + Math.exp(-1)), 1e-12);
  });
});

describe("constant cycle times", () => {
  it.each([
    [
      [2, 3, 1],
      [0, 0],
    ],
    [
      [2, 3, 1],
      [4, 0],
    ],
    [
      [2, 3, 1],
      [1, 7],
    ],
    [
      [1.7, 0.4, 2.9, 2.9, 1],
      [0, 2, 1, 0],
    ],
  ])(`${checks.title("3.8")}: cycles %j, places %j`, (cycles, places) => {
    const line = cycles.map((cycle, i) => station(`s${i}`, cycle, { buffer: places[i - 1] ?? 0 }));
    const day = runChecked(planOf(saturated(200), line));
    const longest = Math.max(...cycles);
    const whole = cycles.reduce((sum, cycle) => sum + cycle, 0);
    const out = passes(day, `s${cycles.length - 1}`, "exit").slice(0, 200);
    const worst = Math.max(...out.map((time, head) => Math.abs(time / (whole + longest * head) - 1)));
    checks.exact("3.8", "worst leaving time", worst, 0, 1e-12);
    expect(out).toHaveLength(200);
  });
});

checks.close();
