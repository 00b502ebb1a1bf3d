import { describe, expect, it } from "vitest";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import { Estimates, marginPerCarcass, promiseOf } from "../../../../sim/questions/improve/predict.ts";
import { Trials } from "../../../../sim/questions/improve/trials.ts";
import { caseQuestion, simulateHere } from "../../../support/improving.ts";

const question = caseQuestion({}, 6);
const { base } = new Designs(question);
const END = (6 * 60 + 20) * 60;

describe("promiseOf", () => {
  it("reckons carcasses an hour from the start of the first shift, and overtime beyond the last one's end", () => {
    const start = base.plan.day.shifts[0]!.fromSeconds;
    const guess = { finishSeconds: start + 3600, carcasses: 500 };
    expect(promiseOf(base, guess, "throughput", 0) * 3600).toBeCloseTo(500, 9);
    const end = base.plan.day.shifts[0]!.toSeconds;
    expect(end - start).toBe(END - 6 * 3600);
    expect(promiseOf(base, { ...guess, finishSeconds: end + 60 }, "overtime", 0)).toBe(-60);
  });

  it("reckons pay: twelve people at 60 EUR an hour for 20 min, and 10 min of overtime at half as much again", () => {
    const finishSeconds = base.plan.day.shifts[0]!.toSeconds + 600;
    expect(promiseOf(base, { finishSeconds, carcasses: 100 }, "margin", 5)).toBeCloseTo(500 - 240 - 180, 9);
  });

  it("agrees with the simulated margin of the days that the margin of a carcass was taken from", async () => {
    const [trial] = await new Trials(question, simulateHere, "1", false).of([base], 3);
    const each = marginPerCarcass(trial!, "margin");
    const mean = (key: string) => trial!.responses[key]!.reduce((sum: number, value) => sum + value!, 0) / 3;
    const guess = { finishSeconds: mean("finish"), carcasses: mean("carcasses") };
    expect(promiseOf(base, guess, "margin", each)).toBeCloseTo(mean("margin"), 6);
  });
});

describe("Estimates", () => {
  it("works each out once, and no more than asked for", () => {
    const estimates = new Estimates(1);
    expect(estimates.of(base)!.carcasses).toBeCloseTo(150, 6);
    expect(estimates.of(base)).toBe(estimates.of(base));
    expect(estimates.left).toBe(0);
    expect(estimates.of({ ...base, key: "another" })).toBeNull();
  });
});
