import { describe, expect, it } from "vitest";
import { adviceResponse, adviceStudy, advise, chooseChanges, whyStudy } from "../../../sim/advice/index.ts";
import type { Plan } from "../../../sim/plan/index.ts";
import { runStudy } from "../../../sim/run/index.ts";
import { breakdown } from "../../support/breakdowns.ts";
import { crew, exponential, manual, planOf, saturated, station, stream } from "../../support/plans.ts";

const OPTIONS = { seed: "advice", replications: 12, confidence: 0.95 };
const MADE = { gambrel: "test", command: "test" };

/** Skinning is slower than all others, and jams; everything before and after it waits. */
const KNOWN: Plan = planOf(
  stream(exponential(5), 250),
  [
    manual("hanging", exponential(4), "hangers", { buffer: 20 }),
    station("skinning", exponential(9), {
      buffer: 4,
      breakdowns: [breakdown(0, 0, { uptimeSeconds: exponential(600), repairSeconds: exponential(90) })],
    }),
    manual("evisceration", exponential(6), "cutters", { buffer: 4, positions: 2 }),
    station("chilling", 2, { buffer: 4 }),
  ],
  { crews: [crew("hangers", 1), crew("cutters", 2)] },
);

async function advised(plan: Plan) {
  const base = await runStudy(whyStudy(plan, OPTIONS), MADE);
  const why = base.variants[0]!.why!;
  const { study, changes } = adviceStudy(plan, why, OPTIONS);
  const results = await runStudy(study, MADE);
  return { why, results, changes, advice: advise(results, changes)! };
}

describe("a line whose bottleneck is known", async () => {
  const { why, results, changes, advice } = await advised(KNOWN);

  it("is told to be bound by it, in seconds and momentary bottleneck alike", () => {
    expect(why.stages[0]!.stage).toBe("skinning");
    expect(why.stages[0]!.share.low).toBeGreaterThan(0.8);
    expect(why.parts[0]).toMatchObject({ cause: "work", stage: "skinning" });
    // It jams: more work brings more jams, which one day cannot show.
    expect(why.withheldSlopes.map(({ parameter, stage }) => [parameter, stage])).toEqual([
      ["cycle time", "skinning"],
      ["uptime", "skinning"],
    ]);
    const alone = [...why.bottleneck].sort((a, b) => b.sole.mean - a.sole.mean)[0]!;
    expect(alone.stage).toBe("skinning");
    expect(alone.sole.mean).toBeGreaterThan(0.5);
  });

  it("has parts that add up to its end of work", () => {
    const sum = why.parts.reduce((total, { seconds }) => total + seconds.mean, 0);
    expect(sum / why.total.mean).toBeGreaterThan(0.99);
    expect(sum / why.total.mean).toBeLessThanOrEqual(1.000001);
  });

  it("is advised to change that first: one position more there is worth most", () => {
    expect(advice.changes[0]).toMatchObject({ kind: "position", of: "skinning" });
    expect(advice.changes[0]!.difference.shown).toBe(true);
    expect(advice.changes[0]!.difference.mean).toBeLessThan(0);
    const jams = advice.changes.find(({ kind, of }) => kind === "no breakdowns" && of === "skinning")!;
    expect(jams.difference.high).toBeLessThan(0);
    // Two cutters at two positions: a third has nowhere to work.
    expect(advice.changes.some(({ kind }) => kind === "person")).toBe(false);
  });

  it("says so in words, with intervals", () => {
    expect(advice.words[0]).toMatch(
      /^Skinning binds \d+ % \(\d+ to \d+\) of the day; one position more at skinning is worth .+ \(.+ to .+\); no breakdowns at skinning is worth /,
    );
    expect(advice.words.at(-1)).toMatch(/^No difference shown: /);
  });

  it("names a variant for each change, with what it sets", () => {
    expect(results.variants.slice(1).map(({ name }) => name)).toEqual(changes.map(({ label }) => label));
    const more = results.variants.find(({ name }) => name === "one position more at skinning")!;
    expect(more.set).toEqual({ "line.skinning.positions": 2 });
  });
});

describe("changes worth a try", () => {
  it("are people where work waited for them", async () => {
    const line = [manual("a", exponential(4), "pair"), manual("b", exponential(5), "pair", { buffer: 5 })];
    const plan = planOf(stream(exponential(4), 150), line, { crews: [crew("pair", 1)] });
    const { advice, why } = await advised(plan);
    expect(why.withheldSlopes.find(({ stage }) => stage === "a")!.reason).toContain("pair");
    const person = advice.changes.find(({ kind }) => kind === "person")!;
    expect(person).toMatchObject({ of: "pair", label: "one person more in pair" });
    expect(person.difference.high).toBeLessThan(0);
    // The slope is not to be trusted: the quicker cycle that was tried speaks instead.
    expect(advice.words[0]).not.toContain("one second less");
    expect(advice.words[0]).toContain("5 % quicker is worth");
  });

  it("leave the plan as it was", async () => {
    const before = structuredClone(KNOWN);
    const base = await runStudy(whyStudy(KNOWN, { ...OPTIONS, replications: 2 }), MADE);
    for (const { apply } of chooseChanges(KNOWN, base.variants[0]!.why!)) expect(apply(KNOWN)).not.toEqual(KNOWN);
    expect(KNOWN).toEqual(before);
  });
});

describe("what a change is worth", () => {
  it("is told in the end of work, in throughput without an end, in carcasses when hanging stops at an hour", () => {
    expect(adviceResponse(KNOWN)).toBe("finish");
    expect(adviceResponse({ ...KNOWN, supply: saturated(10) })).toBe("headsPerHour");
    const closing = { rule: "stop hanging" as const, atSeconds: 100 };
    expect(adviceResponse({ ...KNOWN, day: { ...KNOWN.day, closing } })).toBe("carcasses");
  });
});
