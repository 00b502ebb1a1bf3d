import { describe, expect, it } from "vitest";
import { doubtAbout } from "../../../../sim/questions/calibrate/explanation.ts";
import {
  type Calibration,
  calibrate,
  countingStages,
  type Observed,
  type Quantity,
  simulatedValues,
  usualCountingStage,
} from "../../../../sim/questions/calibrate/index.ts";
import { bestMultiple, gapsOf, meansOf, misfitOf } from "../../../../sim/questions/calibrate/misfit.ts";
import {
  observedOf,
  CALIBRATED as PLAN,
  parameterAt,
  simulationOf as simulation,
} from "../../../support/calibrationPlan.ts";
import { constant, dwell, planOf, station, stream } from "../../../support/plans.ts";

function check(observed: Observed, beforeDay: () => Promise<void> = async () => {}): Promise<Calibration> {
  return calibrate(PLAN, observed, {
    ...{ seed: "1", days: 12, confidence: 0.95, countedAt: "machine", mostEvents: 1e7, beforeDay, progress: () => {} },
  });
}

const moved = (path: string, by: number) => parameterAt(path).moved(PLAN, by);

describe("simulatedValues", () => {
  it("counts the heads whose work at the stage ends within each stretch (worked by hand)", async () => {
    const plan = planOf(stream(constant(100), 5, "wait"), [station("a", 40), station("b", 10)]);
    const stretches = [
      [0, 140],
      [140, 250],
      [0, 10_000],
    ].map(
      ([fromSeconds, toSeconds]): Quantity => ({
        kind: "count",
        label: "",
        fromSeconds: fromSeconds!,
        toSeconds: toSeconds!,
      }),
    );
    const of = { ...simulation("1", stretches), countedAt: "a" };
    const [first, second, all] = (await simulatedValues(plan, 1, of)).map(([value]) => value);
    // Heads come at 100, 200, ... and are 40 s at a: the one that ends at 140 belongs to the stretch that begins there.
    expect([first, second, all]).toEqual([0, 2, 5]);
  });

  it("adds up to the heads of the day, and gives the same days for the same seed", async () => {
    const whole: Quantity[] = [{ kind: "count", label: "", fromSeconds: 0, toSeconds: 1e9 }];
    expect(await simulatedValues(PLAN, 3, simulation("1", whole))).toEqual([[1800, 1800, 1800]]);
    const once = await simulatedValues(PLAN, 2, simulation("1"));
    expect(await simulatedValues(PLAN, 2, simulation("1"))).toEqual(once);
    expect(await simulatedValues(PLAN, 2, simulation("2"))).not.toEqual(once);
  });
});

describe("calibrate", () => {
  it("finds no fault with a plan whose own days were observed, and looks for no explanation", async () => {
    let days = 0;
    const found = await check(await observedOf(PLAN, 6), async () => {
      days++;
    });
    expect(found).toMatchObject({ gap: false, explanations: [], observedDays: 6, days: 12 });
    expect(found.noticeable!.map(({ label }) => label)).toHaveLength(5);
    expect(days).toBeLessThan(12 + 5 * 12 * 4);
  });

  it("finds the figure that was wrong, how far it has to move, and that it is plausible", async () => {
    const found = await check(await observedOf(moved("line.bench.cycle", 1.12), 8));
    expect(found).toMatchObject({ gap: true, noticeable: null });
    expect(found.quantities.filter(({ comparison }) => comparison!.shown).length).toBeGreaterThan(1);
    const bench = found.explanations.find(({ path }) => path === "line.bench.cycle")!;
    expect(bench).toMatchObject({ kind: "cycle", from: 13, closes: true, plausible: true, left: [] });
    expect(bench.to / bench.from).toBeGreaterThan(1.09);
    expect(bench.to / bench.from).toBeLessThan(1.15);
    expect(bench.removed).toBeGreaterThan(0.9);
    expect(found.explanations[0]).toBe(bench);
  });

  it("calls a move implausible that nobody would have overlooked", async () => {
    const found = await check(await observedOf(moved("line.bench.cycle", 1.5), 5));
    const bench = found.explanations.find(({ path }) => path === "line.bench.cycle")!;
    expect(bench).toMatchObject({ plausible: false, doubt: expect.stringMatching(/more than a fifth/) });
    expect(bench.to / bench.from).toBeGreaterThan(1.4);
  });

  it("finds a person who was there and is not in the plan", async () => {
    const found = await check(await observedOf(moved("crews.bench.people", 1), 5));
    const people = found.explanations.find(({ kind }) => kind === "people")!;
    expect(people).toMatchObject({ from: 2, to: 3, closes: true, plausible: true });
  });

  it("is stopped between two days", async () => {
    let days = 0;
    const stop = async () => {
      if (days++ === 3) throw new Error("stopped");
    };
    await expect(check(await observedOf(PLAN, 2), stop)).rejects.toThrow("stopped");
  });
});

describe("the measure of a gap", () => {
  const yardstick = { targets: [10, null, 4], errors: [2, 1, 1] };

  it("is the difference in standard errors, nothing where there is nothing to compare", () => {
    expect(gapsOf([6, 5, 5], yardstick)).toEqual([2, 0, -1]);
    expect(gapsOf([null, 5, 5], yardstick)).toEqual([0, 0, -1]);
    expect(misfitOf([2, 0, -1])).toBe(5);
    expect(meansOf([[1, null, 3], [null]])).toEqual([2, null]);
  });

  it("tells how far a straight effect has to go (least squares, worked by hand)", () => {
    expect(bestMultiple([2, 0, -1], [1, 0, 0])).toBe(2);
    expect(bestMultiple([2, 0, -1], [1, 0, -0.5])).toBe(2);
    expect(bestMultiple([2, 0, -1], [0, 0, 0])).toBe(0);
  });
});

describe("what is plausible", () => {
  it("has limits for each kind of figure, both ways", () => {
    expect([doubtAbout("cycle", 1.2), doubtAbout("uptime", 0.5), doubtAbout("people", -1)]).toEqual(["", "", ""]);
    expect(doubtAbout("cycle", 1.21)).toMatch(/fifth/);
    expect(doubtAbout("repair", 0.4)).toMatch(/twice/);
    expect(doubtAbout("people", 2)).toMatch(/two people/);
  });
});

describe("where heads are counted", () => {
  it("is the last place of work on the line unless somebody says otherwise", () => {
    expect(usualCountingStage(PLAN)).toBe("machine");
    expect(countingStages(PLAN)).toEqual(["bench", "machine", "cold room"]);
    const aside = planOf(stream(constant(9), 5, "wait"), [
      station("a", 4),
      station("hand", 4, { offLine: true, next: "a" }),
    ]);
    expect(usualCountingStage(aside)).toBe("a");
    expect(usualCountingStage(planOf(stream(constant(9), 5, "wait"), [dwell("only", 4, 9)]))).toBe("only");
  });
});
