import { describe, expect, it } from "vitest";
import { runStudy } from "../../../../sim/days/run/index.ts";
import { whyStudy } from "../../../../sim/questions/why/index.ts";
import { crew, manual, planOf, saturated, station } from "../../../support/plans.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const MADE = { gambrel: "test", command: "test" };

describe("why the work of each variant ends when it does", () => {
  it("is told for every variant, most first, and adds up", async () => {
    const { variants } = await runStudy(threeVariants({ why: true }), MADE);
    for (const { why, estimates } of variants) {
      const means = why!.parts.map(({ seconds }) => seconds.mean);
      expect(means).toEqual([...means].sort((a, b) => b - a));
      // Parts below 0.05 % of the day are left out.
      const sum = means.reduce((total, mean) => total + mean, 0);
      expect(sum / why!.total.mean).toBeGreaterThan(0.98);
      expect(sum / why!.total.mean).toBeLessThan(1 + 1e-9);
      expect(Object.keys(estimates).some((key) => key.startsWith("bound."))).toBe(false);
    }
    const [base, slower] = variants;
    const share = (row: typeof base) => row!.why!.stages.find(({ stage }) => stage === "skinning")?.share.mean ?? 0;
    expect(share(slower)).toBeGreaterThan(share(base));
  });

  it("is left out when the study does without, and changes no other value", async () => {
    const [without, with_] = await Promise.all([false, true].map((why) => runStudy(threeVariants({ why }), MADE)));
    expect(without!.variants.map(({ why, day }) => [why, day.binding])).toEqual(Array(3).fill([null, null]));
    expect(with_!.variants.map(({ values }) => values)).toEqual(without!.variants.map(({ values }) => values));
  });

  it("is there for a study that asks for one of its responses only", async () => {
    const asked = threeVariants({ responses: ["bound.share.skinning", "bottleneck.sole.skinning"] });
    const { variants } = await runStudy(asked, MADE);
    expect(variants[0]!.why).toBeNull();
    expect(variants[0]!.estimates["bound.share.skinning"]!.mean).toBeGreaterThan(0);
    expect(variants[0]!.estimates["bottleneck.sole.skinning"]!.mean).toBeGreaterThan(0);
  });

  it("is left out where hanging is over before it begins, so that the day has no length to share out", async () => {
    const line = [manual("a", 2, "team"), station("b", 3, { buffer: 3 })];
    const plan = planOf(saturated(3), line, { crews: [crew("team", 1)] });
    const closed = { ...plan, day: { ...plan.day, closing: { rule: "stop hanging" as const, atSeconds: 0 } } };
    const options = { seed: "closed", replications: 2, confidence: 0.95 };
    const { variants } = await runStudy(whyStudy(closed, options), MADE);
    expect(variants[0]!.day).toMatchObject({ status: "finished", finishSeconds: 0 });
    expect(variants[0]!.why).toBeNull();
  });
});
