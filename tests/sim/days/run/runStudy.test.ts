import { describe, expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Procedure } from "../../../../sim/asked/study/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { endedDay, stableJson } from "../../../../sim/days/results/index.ts";
import {
  type DayRunner,
  DaySimulator,
  inThisThread,
  type OpenRunner,
  type RunOptions,
  runStudy,
  type SimulatedDay,
} from "../../../../sim/days/run/index.ts";
import { firstDays, nextDays, ruleResponse } from "../../../../sim/days/run/runStudy.ts";
import { compileLine, runDay, type Study, type StudyResults } from "../../../../sim/index.ts";
import { SLOWER_PLAN, threeVariants } from "../../../support/threeVariants.ts";

function run(change: Partial<Study> = {}, options: Partial<RunOptions> = {}): Promise<StudyResults> {
  return runStudy(threeVariants(change), { gambrel: "1.2.3", command: "c", ...options });
}

describe("runStudy", () => {
  it("runs every variant on the same random numbers: the same plan twice differs in nothing", async () => {
    const { variants } = await run();
    expect(variants[2]!.values).toEqual(variants[0]!.values);
    expect(variants[2]!.differences!.headsPerHour).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
  });

  it("gives each replication the day of that seed and number", async () => {
    const { variants } = await run();
    const line = compileLine(SLOWER_PLAN);
    const alone = [0, 1, 2, 3].map((replication) => measure(runDay(line, { seed: "seed", replication }), SLOWER_PLAN));
    expect(variants[1]!.values.headsPerHour).toEqual(alone.map((values) => values.headsPerHour));
  });

  it("draws replications that differ from each other", async () => {
    const { variants } = await run();
    expect(new Set(variants[0]!.values.headsPerHour).size).toBe(4);
  });

  it("tells the slower variant from the base", async () => {
    const { variants } = await run();
    expect(variants[1]!.differences!.headsPerHour!.high).toBeLessThan(0);
  });

  it("is a pure function of study and options, to the last byte", async () => {
    expect(stableJson(await run())).toBe(stableJson(await run()));
    expect(stableJson(await run())).not.toBe(stableJson(await run({ seed: "another" })));
  });

  it("keeps whole the first days that are drawn, with traces as asked, and of the other how it ended", async () => {
    const kinds = async (options: Partial<RunOptions>): Promise<(string | undefined)[]> =>
      (await run({}, options)).variants.map(({ day }) => day.traces?.out.kind);
    expect(await kinds({})).toEqual(["binned", "binned", undefined]);
    expect(await kinds({ traces: "none" })).toEqual([undefined, undefined, undefined]);
    expect(await kinds({ traces: "exact" })).toEqual(["exact", "exact", undefined]);
    expect(await kinds({ traces: "all" })).toEqual(["binned", "binned", "binned"]);
    const { drawn, variants } = await run();
    expect(drawn).toEqual([0, 1]);
    expect(variants.map(({ day }) => day.replication)).toEqual([0, 0, 0]);
    expect(variants.map(({ day }) => day.stages.length > 0)).toEqual([true, true, false]);
    // The third variant is today's plan once more: its day ended the same way.
    expect(variants[2]!.day).toEqual(endedDay(variants[0]!.day));
  });

  it("draws the same day of a variant as when every day is kept", async () => {
    const every = (await run({}, { traces: "all" })).variants[1]!;
    expect((await run()).variants[1]!).toEqual(every);
  });

  it("gives the same values whether or not traces are kept and heads are counted at each event", async () => {
    const plain = await run({}, { traces: "none" });
    const checked = await run({}, { traces: "exact", check: true });
    expect(checked.variants.map(({ values }) => values)).toEqual(plain.variants.map(({ values }) => values));
  });

  it("reports the start and each day as it is done", async () => {
    const seen: string[] = [];
    await run({ replications: 2 }, { progress: (done, total) => seen.push(`${done}/${total}`) });
    expect(seen).toEqual(["0/6", "1/6", "2/6", "3/6", "4/6", "5/6", "6/6"]);
  });

  it("gives way between days, so that a stop is heard, and then has no results", async () => {
    const controller = new AbortController();
    let done = 0;
    const stopped = run(
      {},
      {
        signal: controller.signal,
        progress: (days) => {
          done = days;
        },
        runner: inThisThread(async () => {
          if (done === 2) controller.abort(new Error("enough"));
        }),
      },
    );
    await expect(stopped).rejects.toThrow("enough");
    expect(done).toBe(2);
  });

  it("gives one replication a value without an interval", async () => {
    const { variants } = await run({ replications: 1 });
    expect(variants[0]!.estimates.headsPerHour).toMatchObject({ n: 1, halfWidth: null });
    expect(variants[1]!.differences!.headsPerHour!.words).toMatch(/Not enough simulated days/);
  });

  it("takes known days from a journal, notes the others, and ends with the same bytes", async () => {
    const noted: SimulatedDay[] = [];
    const whole = stableJson(await run({}, { journal: { known: [], note: (day) => noted.push(day) } }));
    expect(noted).toHaveLength(12);
    const known = noted.filter((_, index) => index % 4 !== 1).reverse();
    const seen: number[] = [];
    const later: SimulatedDay[] = [];
    const options = { journal: { known, note: (day: SimulatedDay) => later.push(day) } };
    const resumed = await run({}, { ...options, progress: (done) => seen.push(done) });
    expect(stableJson(resumed)).toBe(whole);
    expect(seen).toEqual([9, 10, 11, 12]);
    expect(later.map(({ variant, replication }) => `${variant}/${replication}`)).toEqual(["1/0", "2/1", "0/3"]);
  });

  it("passes over a day that comes twice", async () => {
    const noted: SimulatedDay[] = [];
    const twice: OpenRunner = (source) => {
      const simulator = new DaySimulator(source);
      return {
        async run(batches, done) {
          for (const batch of [...batches, ...batches].reverse()) done(simulator.simulateBatch(batch));
        },
        async close() {},
      };
    };
    const doubled = await run({}, { runner: twice, journal: { known: [], note: (day) => noted.push(day) } });
    expect(stableJson(doubled)).toBe(stableJson(await run()));
    expect(noted).toHaveLength(12);
  });

  it("lets a day that fails fail alone, and says which one it was", async () => {
    const noted: SimulatedDay[] = [];
    const poisoned: OpenRunner = (source) => {
      const here = inThisThread()(source) as DayRunner;
      return {
        ...here,
        run: (batches, done, signal) =>
          here.run(
            batches,
            ({ days, failed }) => {
              const bad = days.filter(({ variant, replication }) => variant === 1 && replication === 2);
              const message = "the chain broke";
              done({
                days: days.filter((day) => !bad.includes(day)),
                failed: [...failed, ...bad.map(({ variant, replication }) => ({ variant, replication, message }))],
              });
            },
            signal,
          ),
      };
    };
    const failing = run({}, { runner: poisoned, journal: { known: [], note: (day) => noted.push(day) } });
    await expect(failing).rejects.toThrow(/^1 day could not be simulated: variant "slower", day 3: the chain broke$/);
    expect(noted).toHaveLength(11);
  });

  it("mirrors the draws of every second day of antithetic pairs", async () => {
    const procedure = { ...PLAIN_PROCEDURE, antithetic: true };
    const { variants } = await run({ procedure });
    const line = compileLine(SLOWER_PLAN);
    const alone = [0, 1].flatMap((replication) =>
      [false, true].map((antithetic) => measure(runDay(line, { seed: "seed", replication, antithetic }), SLOWER_PLAN)),
    );
    expect(variants[1]!.values.headsPerHour).toEqual(alone.map((values) => values.headsPerHour));
  });
});

const RULE = { response: "carcasses", halfWidth: { kind: "absolute", value: 1 }, of: "mean" } as const;

const STOPPING = { ...RULE, atLeast: 10, atMost: 40 };

const SELECTION = {
  ...{ response: "carcasses", better: null, difference: 1, probability: 0.95 },
  ...{ firstStage: 10, atMost: 100 },
};

function studyWith(change: Partial<Procedure>) {
  return threeVariants({ procedure: { ...PLAIN_PROCEDURE, ...change } });
}

/** Values that go up and down by `spread` about `mean`. */
function wave(mean: number, spread: number, days: number): number[] {
  return Array.from({ length: days }, (_, day) => mean + (day % 2 === 0 ? spread : -spread));
}

describe("nextDays", () => {
  it("runs the study's number of days, and no more, where there is no rule", () => {
    const study = studyWith({});
    expect([ruleResponse(study), firstDays(study), nextDays(study, [4, 4, 4], [])]).toEqual([null, [4, 4, 4], null]);
  });

  it("gives every variant as many days as the one that needs most", () => {
    const study = studyWith({ stopping: STOPPING });
    expect(firstDays(study)).toEqual([10, 10, 10]);
    // Half-width t(0.975, 9) x sd / sqrt 10 with sd = 2 sqrt(10/9): 1.508. 10 x 1.508^2 = 22.7, but at most doubled.
    const values = [wave(500, 2, 10), wave(500, 0.1, 10), wave(500, 0.1, 10)];
    expect(nextDays(study, [10, 10, 10], values)).toEqual([20, 20, 20]);
    expect(nextDays(study, [10, 10, 10], [values[1]!, values[1]!, values[1]!])).toBeNull();
  });

  it("stops at the most days allowed", () => {
    const study = studyWith({ stopping: STOPPING });
    const values = [wave(500, 90, 40), wave(500, 90, 40), wave(500, 90, 40)];
    expect(nextDays(study, [40, 40, 40], values)).toBeNull();
  });

  it("runs only those variants on that a selection has not dropped", () => {
    const study = studyWith({ selection: { ...SELECTION, better: "more" } });
    const values = [wave(500, 20, 10), wave(100, 21, 10), wave(500.5, 22, 10)];
    const next = nextDays(study, [10, 10, 10], values)!;
    expect(next[1]).toBe(10);
    // No margin is left at h^2 S^2 / delta^2: h^2 = 9 ((2 x 0.05 / 2)^(-2/9) - 1) = 8.51, S^2 = 4 x 10/9; 37.8.
    expect([next[0], next[2]]).toEqual([38, 38]);
  });

  it("counts both days of antithetic pairs", () => {
    const study = studyWith({ antithetic: true, selection: { ...SELECTION, better: "more" } });
    const days = (mean: number) => Array.from({ length: 10 }, (_, day) => mean + ((day * 7) % 5) * 9);
    const next = nextDays(study, [10, 10, 10], [days(500), days(100), days(501).reverse()])!;
    expect(next[1]).toBe(10);
    expect(next[0]! % 2).toBe(0);
    expect(next[0]).toBeGreaterThan(10);
  });
});
