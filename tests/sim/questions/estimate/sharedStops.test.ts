import { describe, expect, it } from "vitest";
import { ceilings, estimateLine } from "../../../../sim/questions/estimate/index.ts";
import { chain, exponential, planOf, saturated, station } from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";

const LINE = [station("a", 4, { buffer: 200 }), station("b", 5, { buffer: 200 }), chain("rail", 9, 2, [])];
const plan = (changes: Parameters<typeof shared>[3], stops = ["a", "b", "rail"]) =>
  planOf(saturated(99), LINE, { sharedBreakdowns: [shared(stops, 90, 10, changes)] });
const ceiling = (of: ReturnType<typeof plan>, what: string) =>
  ceilings(of).find((each) => each.what === what)!.headsPerSecond;

describe("a shared breakdown in the estimate", () => {
  it("lowers the ceiling of each place that it stops as one of its own would: 1 / (1 + r/u)", () => {
    expect(ceiling(plan({}), "a")).toBeCloseTo(0.25 / (1 + 10 / 90), 12);
    expect(ceiling(plan({}), "b")).toBeCloseTo(0.2 / (1 + 10 / 90), 12);
    expect(ceiling(plan({}), "rail")).toBeCloseTo(0.5 / (1 + 10 / 90), 12);
    expect(ceiling(plan({}, ["a"]), "b")).toBeCloseTo(0.2, 12);
  });

  it("counts running time of all as the product of their shares of the slowest one's", () => {
    expect(ceiling(plan({ clock: "all running" }, ["a", "b"]), "b")).toBeCloseTo(0.2 / (1 + (10 / 90) * (4 / 5)), 12);
  });

  it("is counted once along the line, not at each place: common cause, not independent breakdowns", () => {
    const cycles = [station("a", exponential(5)), station("b", exponential(5), { buffer: 400 })];
    const rate = (sharedBreakdowns: ReturnType<typeof shared>[], line = cycles) =>
      estimateLine(planOf(saturated(99), line, { sharedBreakdowns })).headsPerSecond;
    const alone = rate([]);
    expect(rate([shared(["a", "b"], 900, 100)])).toBeCloseTo(alone / (1 + 100 / 900), 2);
  });
});
