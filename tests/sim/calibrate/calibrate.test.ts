import { describe, expect, it } from "vitest";
import { doubtAbout } from "../../../sim/calibrate/explanation.ts";
import {
  type Calibration,
  calibrate,
  countingStages,
  type Observed,
  parametersOf,
  type Quantity,
  simulatedValues,
  usualCountingStage,
} from "../../../sim/calibrate/index.ts";
import { bestMultiple, gapsOf, meansOf, misfitOf } from "../../../sim/calibrate/misfit.ts";
import { responsesOf } from "../../../sim/observations/index.ts";
import type { Plan } from "../../../sim/plan/index.ts";
import { breakdown } from "../../support/breakdowns.ts";
import { constant, crew, dwell, exponential, manual, planOf, station, stream } from "../../support/plans.ts";

const HOUR = 3600;
const hours = [0, 1, 2].map(
  (hour): Quantity => ({
    kind: "count",
    label: `hour ${hour}`,
    fromSeconds: hour * HOUR,
    toSeconds: (hour + 1) * HOUR,
  }),
);

/** Heads every 6 s for three hours; two people at a bench that is the bottleneck, a machine that jams after it. */
const PLAN: Plan = planOf(
  stream(exponential(6), 1800, "wait"),
  [
    manual("bench", { family: "lognormal", mean: 13, cv: 0.3 }, "bench", {
      positions: 3,
      buffer: Number.POSITIVE_INFINITY,
    }),
    station(
      "machine",
      { family: "lognormal", mean: 4, cv: 0.1 },
      {
        buffer: 20,
        breakdowns: [breakdown(0, 0, { uptimeSeconds: exponential(1200), repairSeconds: exponential(40) })],
      },
    ),
    dwell("cold room", 60, 10_000),
  ],
  { crews: [crew("bench", 2)] },
);

function quantitiesOf(plan: Plan): Quantity[] {
  const finish = responsesOf(plan).find(({ key }) => key === "finish")!;
  return [...hours, { kind: "response", label: finish.label, info: finish }];
}

const simulation = (seed: string, quantities = quantitiesOf(PLAN)) => ({
  ...{ seed, quantities, countedAt: "machine", mostEvents: 1e7, beforeDay: async () => {} },
});

/** Days of another plan, as if somebody had written them down. */
async function observedOf(plan: Plan, days: number): Promise<Observed> {
  const quantities = quantitiesOf(plan);
  const values = await simulatedValues(plan, days, simulation("the real line", quantities));
  const list = quantities.map((quantity, i) => ({ heading: quantity.label, quantity, values: values[i]! }));
  return { lines: Array.from({ length: days }, (_, day) => day + 2), quantities: list, passedOver: [] };
}

function check(observed: Observed, beforeDay: () => Promise<void> = async () => {}): Promise<Calibration> {
  return calibrate(PLAN, observed, {
    ...{ seed: "1", days: 12, confidence: 0.95, countedAt: "machine", mostEvents: 1e7, beforeDay, progress: () => {} },
  });
}

const moved = (path: string, by: number) =>
  parametersOf(PLAN)
    .find((each) => each.path === path)!
    .moved(PLAN, by);

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
    expect(days).toBe(12);
  });

  it("finds the figure that was wrong, how far it has to move, and that it is plausible", async () => {
    const found = await check(await observedOf(moved("line.bench.cycle", 1.12), 8));
    expect(found.gap).toBe(true);
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
