import { describe, expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Procedure } from "../../../../sim/asked/study/index.ts";
import { stableJson } from "../../../../sim/days/results/index.ts";
import {
  DaySimulator,
  inThisThread,
  type OpenRunner,
  type RunOptions,
  runStudy,
  type SimulatedDay,
  splitBatches,
} from "../../../../sim/days/run/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

function run(procedure: Partial<Procedure>, options: Partial<RunOptions> = {}, replications = 60) {
  const study = threeVariants({ replications, procedure: { ...PLAIN_PROCEDURE, ...procedure } });
  return runStudy(study, { gambrel: "1.2.3", command: "c", ...options });
}

const UNTIL = { response: "headsPerHour", halfWidth: { kind: "relative", value: 0.01 }, of: "mean" } as const;
const STOPPING = { ...UNTIL, atLeast: 4, atMost: 60 };
const SELECTION = {
  ...{ response: "headsPerHour", better: null, difference: 5, probability: 0.95 },
  ...{ firstStage: 6, atMost: 60 },
};

/** Days in the wrong order, one at a time, some of them twice. */
const backwards: OpenRunner = (source) => {
  const simulator = new DaySimulator(source);
  return {
    async run(batches, done) {
      const days = splitBatches(batches, 1).reverse();
      for (const day of [...days, ...days.slice(0, 2)]) done(simulator.simulateBatch(day));
    },
    async close() {},
  };
};

describe("a study run until it is precise", () => {
  it("stops when every variant is, with as many days of each", async () => {
    const { variants, procedure, study } = await run({ stopping: STOPPING });
    expect(procedure.stopping).toMatchObject({ kind: "enough", response: "headsPerHour" });
    for (const { estimates, days } of variants) {
      const { halfWidth, mean, n } = estimates.headsPerHour!;
      expect(halfWidth).toBeLessThanOrEqual(0.01 * mean);
      expect([days, n]).toEqual([study.replications, study.replications]);
    }
    expect(study.replications).toBeLessThan(60);
    expect(procedure.stopping!.words).toMatch(
      /^Precise enough after \d+ days of every variant: a half-width of 1 % of it/,
    );
  });

  it("tells the truth when it stopped at the most days before that", async () => {
    const tight = { ...STOPPING, atMost: 6, halfWidth: { kind: "absolute", value: 1e-6 } } as const;
    const { procedure, study } = await run({ stopping: tight });
    expect(study.replications).toBe(6);
    expect(procedure.stopping).toMatchObject({ kind: "ceiling" });
    expect(procedure.stopping!.words).toMatch(/^Stopped at the most days allowed, 6 .* Not reached by "base" \(/);
  });
});

describe("a study that picks the best", () => {
  it("drops the slower variant, which is then no longer run", async () => {
    const { variants, procedure } = await run({ selection: SELECTION });
    expect(procedure.selection!.dropped[0]).toMatchObject({ variant: 1 });
    const [base, slower] = variants;
    expect(slower!.days).toBeLessThanOrEqual(base!.days);
    expect(slower!.values.headsPerHour).toHaveLength(base!.days);
    expect(slower!.values.headsPerHour!.filter((value) => value !== null)).toHaveLength(slower!.days);
    expect(slower!.estimates.headsPerHour!.n).toBe(slower!.days);
    expect(procedure.selection!.verdict.kind).toBe("selected");
    expect(procedure.selection!.words).toMatch(/is the best of 3 with a probability of 95 % or more/);
    expect(variants.every(({ againstBest }) => againstBest === null)).toBe(true);
  });
});

describe("rounds", () => {
  const procedures: [string, Partial<Procedure>][] = [
    ["until precise", { stopping: STOPPING }],
    ["choose the best", { selection: SELECTION }],
    ["choose the best in antithetic pairs", { selection: SELECTION, antithetic: true }],
  ];
  it.each(procedures)("%s: the same bytes in any order, and resumed anywhere", async (_, procedure) => {
    const noted: SimulatedDay[] = [];
    const note = (day: SimulatedDay) => noted.push(day);
    const whole = stableJson(await run(procedure, { journal: { known: [], note } }));
    expect(stableJson(await run(procedure, { runner: backwards }))).toBe(whole);
    for (const count of [1, Math.floor(noted.length / 2), noted.length - 1]) {
      const known = noted.slice(0, count).reverse();
      const again: SimulatedDay[] = [];
      const resumed = await run(procedure, { journal: { known, note: (day) => again.push(day) } });
      expect(stableJson(resumed)).toBe(whole);
      expect(again).toHaveLength(noted.length - count);
    }
  });

  it("looks at no day beyond the round, though a journal may know it", async () => {
    const noted: SimulatedDay[] = [];
    await run({}, { journal: { known: [], note: (day) => noted.push(day) } }, 60);
    const alone = await run({ stopping: STOPPING });
    const known = await run({ stopping: STOPPING }, { journal: { known: noted, note: () => {} } });
    expect(stableJson(known)).toBe(stableJson(alone));
  });

  it("shows progress over what was asked for so far", async () => {
    const seen: [number, number][] = [];
    const { variants } = await run({ stopping: STOPPING }, { progress: (done, total) => seen.push([done, total]) });
    expect(seen[0]).toEqual([0, 12]);
    const all = 3 * variants[0]!.days;
    expect(seen.at(-1)).toEqual([all, all]);
  });

  it("ends with the days of a round that fail", async () => {
    const failing: OpenRunner = (source) => {
      const here = inThisThread(async () => {})(source) as { run: (...given: never[]) => Promise<void> };
      return {
        run: (batches, done, signal) =>
          batches.some(({ first }) => first > 0)
            ? Promise.resolve(done({ days: [], failed: [{ variant: 0, replication: 4, message: "no" }] }))
            : here.run(...([batches, done, signal] as never[])),
        async close() {},
      };
    };
    await expect(run({ stopping: STOPPING }, { runner: failing })).rejects.toThrow(/day 5: no/);
  });
});

describe("estimates", () => {
  it("rest on pairs where days are antithetic, and say what that gained", async () => {
    const { variants, procedure } = await run({ antithetic: true }, {}, 12);
    expect(procedure.observation).toBe("antithetic pair");
    const { n, reduction } = variants[0]!.estimates.headsPerHour!;
    expect(n).toBe(6);
    expect(reduction!.words).toMatch(/^6 antithetic pairs: .* than that of 12 independent days/);
    expect(variants[1]!.differences!.headsPerHour!.n).toBe(6);
  });

  it("are corrected by controls, which are estimated as they are", async () => {
    const plain = await run({}, {}, 20);
    const mean = plain.variants[0]!.estimates.headsPerHour!.mean + 1;
    const found = await run({ controls: [{ response: "headsPerHour", mean }] }, {}, 20);
    const [control, other] = [found.variants[0]!.estimates.headsPerHour!, found.variants[0]!.estimates.carcasses!];
    expect(control).toEqual(plain.variants[0]!.estimates.headsPerHour);
    expect(other.reduction).toMatchObject({ antitheticRatio: null, controls: [{ key: "headsPerHour" }] });
    expect(other.reduction!.words).toMatch(/^1 of 1 controls used/);
    expect(other.mean).not.toBe(plain.variants[0]!.estimates.carcasses!.mean);
  });
});

it("a family of comparisons is shown by Holm's p and the joint interval", async () => {
  const { variants } = await run({}, {}, 6);
  const found = variants[1]!.differences!.headsPerHour!;
  expect(found).toMatchObject({ joint: true, comparisons: 2, shown: true });
  expect(found.familyLow).toBeLessThan(found.low!);
  expect(found.holmP).toBeGreaterThanOrEqual(found.p!);
  expect(variants[1]!.againstBest!.headsPerHour).toMatchObject({ mayBeBest: false });
});
