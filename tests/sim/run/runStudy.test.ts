import { describe, expect, it } from "vitest";
import { compileLine, type Plan, runDay, type Study, type StudyResults } from "../../../sim/index.ts";
import { measure } from "../../../sim/observations/index.ts";
import { stableJson } from "../../../sim/results/index.ts";
import { type RunOptions, runStudy } from "../../../sim/run/index.ts";
import { PLAIN_PROCEDURE } from "../../../sim/study/index.ts";
import { readSmallPlan } from "../../support/readSmallPlan.ts";

const PLAN = readSmallPlan();
const SLOWER: Plan = {
  ...PLAN,
  line: PLAN.line.map((stage) =>
    stage.name === "skinning" && stage.kind === "station"
      ? { ...stage, cycleSeconds: { family: "lognormal", mean: 30, cv: 0.3 } }
      : stage,
  ),
};

function study(change: Partial<Study> = {}): Study {
  return {
    name: "Study",
    question: "Which?",
    reader: "tests",
    seed: "seed",
    replications: 4,
    confidence: 0.95,
    responses: ["headsPerHour", "carcasses"],
    factors: [],
    variants: [
      { name: "base", levels: [], set: {}, insert: [], remove: [], plan: PLAN },
      { name: "slower", levels: [], set: {}, insert: [], remove: [], plan: SLOWER },
      { name: "base again", levels: [], set: {}, insert: [], remove: [], plan: PLAN },
    ],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
    ...change,
  };
}

function run(change: Partial<Study> = {}, options: Partial<RunOptions> = {}): Promise<StudyResults> {
  return runStudy(study(change), { gambrel: "1.2.3", command: "c", ...options });
}

describe("runStudy", () => {
  it("runs every variant on the same random numbers: the same plan twice differs in nothing", async () => {
    const { variants } = await run();
    expect(variants[2]!.values).toEqual(variants[0]!.values);
    expect(variants[2]!.differences!.headsPerHour).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
  });

  it("gives each replication the day of that seed and number", async () => {
    const { variants } = await run();
    const line = compileLine(SLOWER);
    const alone = [0, 1, 2, 3].map((replication) => measure(runDay(line, { seed: "seed", replication }), SLOWER));
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

  it("keeps the first day of each variant, with traces as asked and no others", async () => {
    const kinds = async (options: Partial<RunOptions>): Promise<(string | undefined)[]> =>
      (await run({}, options)).variants.map(({ day }) => day.traces?.out.kind);
    expect(await kinds({})).toEqual(["binned", "binned", "binned"]);
    expect(await kinds({ traces: "none" })).toEqual([undefined, undefined, undefined]);
    expect(await kinds({ traces: "exact" })).toEqual(["exact", "exact", "exact"]);
    expect((await run()).variants.map(({ day }) => day.replication)).toEqual([0, 0, 0]);
  });

  it("gives the same values whether or not traces are kept and heads are counted at each event", async () => {
    const plain = await run({}, { traces: "none" });
    const checked = await run({}, { traces: "exact", check: true });
    expect(checked.variants.map(({ values }) => values)).toEqual(plain.variants.map(({ values }) => values));
  });

  it("reports each day as it is done", async () => {
    const seen: string[] = [];
    await run({ replications: 2 }, { progress: (done, total) => seen.push(`${done}/${total}`) });
    expect(seen).toEqual(["1/6", "2/6", "3/6", "4/6", "5/6", "6/6"]);
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
        pause: async () => {
          if (done === 2) controller.abort(new Error("enough"));
        },
      },
    );
    await expect(stopped).rejects.toThrow("enough");
    expect(done).toBe(2);
  });

  it("gives one replication a value without an interval", async () => {
    const { variants } = await run({ replications: 1 });
    expect(variants[0]!.estimates.headsPerHour).toMatchObject({ n: 1, halfWidth: null });
    expect(variants[1]!.differences!.headsPerHour!.words).toMatch(/Not enough replications/);
  });
});
