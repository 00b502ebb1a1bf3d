import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import {
  type DoubtQuestion,
  doubtInRounds,
  doubtWords,
  type WorldCounts,
} from "../../../../sim/questions/doubt/index.ts";
import { doubtPlan, doubtStudy, readDoubt } from "../../../support/doubtCase.ts";

const FIGURE = {
  ...{ name: "skinning", paths: ["line.skinning.cycle"], kind: "measured" },
  factor: { normal: { mean: 1, sd: 0.1 } },
};
const STUDY = doubtStudy(doubtPlan(FIGURE), [], { responses: ["finish"] });
const INFO = { key: "finish", label: "End of work on the line", unit: "s", format: "clock", better: "less" };

/** Days that are reckoned: so much by the figure, so much luck; each asked round is written down. */
async function rounds(byFigure: number, luck: number, halfWidth: number, counts: WorldCounts) {
  const asked: WorldCounts[] = [];
  const doubt = await doubtInRounds({
    ...{ counts, wanted: { kind: "absolute", value: halfWidth } },
    questionOf: (next) => readDoubt(STUDY, next).question!,
    simulate: async ({ counts: own, figures, variants }: DoubtQuestion) => {
      asked.push(own);
      const chance = uniformStream(own.seed, 0, "test", "luck");
      const days = (world: number) =>
        Array.from(
          { length: own.days },
          () => 27_000 + byFigure * 10 * (figures[0]!.factors[0]![world]! - 1) + luck * normalQuantile(chance.next()),
        );
      const found = Array.from({ length: own.worlds * variants.length }, (_, world) => ({
        values: { finish: days(world) },
      }));
      return { responses: [INFO], variants: found } as never;
    },
  });
  return { doubt, asked };
}

describe("doubtInRounds", () => {
  const counts = { worlds: 20, days: 3, seed: "rounds" };

  it("adds worlds until chance moves the mean by no more than asked, and no more worlds than that takes", async () => {
    const { doubt, asked } = await rounds(300, 300, 60, counts);
    expect(doubt.precision).toMatchObject({ isEnough: true, wanted: { kind: "absolute", value: 60 } });
    expect(doubt.precision!.reached).toBeLessThanOrEqual(60);
    // (300 x 1.98 / 60)^2 = 98 worlds without luck, 107 and more with a day each, fewer days later than in the first round.
    expect(doubt.counts.worlds).toBeGreaterThan(98);
    expect(doubt.counts.worlds).toBeLessThan(320);
    expect(asked.map(({ worlds }) => worlds).reduce((sum, count) => sum + count, 0)).toBe(doubt.counts.worlds);
    expect(doubt.precision!.rounds).toEqual(asked.map(({ worlds, days }) => ({ worlds, days })));
    expect(asked.slice(1).every(({ days }) => days === 1)).toBe(true);
    expect(new Set(asked.map(({ seed }) => seed)).size).toBe(asked.length);
    // All worlds count: what the figure does is seen in all of them.
    expect(doubt.figures[0]!.factors[0]).toHaveLength(doubt.counts.worlds);
    expect(doubt.means[0]).toHaveLength(doubt.counts.worlds);
    const { notKnownSd, luckSd } = doubt.estimates[0]![0]!;
    expect(Math.abs(notKnownSd / 300 - 1)).toBeLessThan(0.25);
    expect(Math.abs(luckSd / 300 - 1)).toBeLessThan(0.45);
    const words = doubtWords(doubt).words.join(" ");
    expect(words).toMatch(/20 worlds with 3 days(, | and )\d+ worlds with 1 day/);
    expect(words).toMatch(
      /Chance moves the mean over all worlds by \d[\d.]* (s|min) at most; asked for was (60\.0 s|1\.00 min|60 s|1 min)\./,
    );
  });

  it("gives each world many days where it is nearly all luck, and stops after the first round where that is enough", async () => {
    const { asked } = await rounds(5, 600, 60, counts);
    expect(asked[1]!.days).toBeGreaterThan(10);
    const { doubt, asked: one } = await rounds(10, 10, 60, counts);
    expect(one).toEqual([counts]);
    expect(doubt.precision!.isEnough).toBe(true);
  });

  it("depends on nothing but its days: asked again it gives the same", async () => {
    const [first, second] = [await rounds(300, 100, 90, counts), await rounds(300, 100, 90, counts)];
    expect(second.doubt).toEqual(first.doubt);
  });
});
