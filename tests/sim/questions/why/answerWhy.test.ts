import { describe, expect, it } from "vitest";
import { whyResponse } from "../../../../sim/questions/why/index.ts";
import { BREAKS, JAMMING, SELDOM, STUNNING, TWO_ALIKE, WAITING } from "../../../support/advicePlants.ts";
import { advised } from "../../../support/advised.ts";
import { saturated } from "../../../support/plans.ts";

/** Whole advice on invented plants of which it is known what should come first; see there. Seeds are fixed. */

describe("a machine that is quick by its maker's figure and slow with its jams", async () => {
  const { advice, results } = await advised(JAMMING);

  it("comes first, though evisceration works for longer", () => {
    expect(advice.words[0]).toMatch(
      /^Start with skinning: no breakdowns at all end work \d+ min \(\d+ to \d+ min\) earlier\. Also there: a second machine, \d+ min/,
    );
    expect(results.variants[0]!.why!.stages[0]!.stage).not.toBe("trim");
    // 0.46 s a head at 3.96 s in place of 3.5 s, for 2,400 heads: 18.4 min, and what jams of uneven length cost besides.
    const [first] = advice.changes;
    expect(first!.of).toBe("skinning");
    expect(first!.difference.familyLow).toBeLessThan(-18.4 * 60);
    expect(first!.difference.familyHigh).toBeLessThan(-10 * 60);
  });

  it("is followed by evisceration with what it is worth, which is little", () => {
    expect(advice.words[1]).toMatch(/^Next, evisceration: one more position with its person ends work [\d.]+ min \(/);
    const best = advice.changes.find(({ of }) => of === "evisceration")!;
    expect(best.difference.mean).toBeGreaterThan(-8 * 60);
  });

  it("has its jams made rarer, shorter and none, and a second machine beside it", () => {
    const tried = [...advice.changes, ...advice.others].filter(({ of }) => of === "skinning").map(({ kind }) => kind);
    for (const kind of ["no breakdowns", "rarer breakdowns", "quicker repairs", "position"])
      expect(tried).toContain(kind);
  });

  it("is told in the order of what the days of the change say", () => {
    const means = advice.changes.map(({ difference }) => difference.mean);
    expect(means).toEqual([...means].sort((a, b) => a - b));
    expect(results.variants.slice(1).map(({ name }) => name)).toEqual(advice.changes.map(({ variant }) => variant));
  });

  it("has days of its own, of which none chose it, and says how many were simulated", () => {
    expect(advice.days).toBe(12);
    expect(results.variants.every(({ days }) => days === 12)).toBe(true);
    const { searchDays, ownDays, singles } = advice.effort;
    expect(advice.words.at(-1)).toMatch(
      new RegExp(
        `once one is made, the others may be worth less. ${searchDays + ownDays} days were simulated to try ${singles} changes\\.`,
      ),
    );
  });
});

describe("a machine that stands seldom and long", async () => {
  const { advice } = await advised(SELDOM);

  it("is tried and comes first, though four stages work for longer than it stands", () => {
    expect(advice.words[0]).toMatch(/^Start with skinning: (no breakdowns at all|a second machine)/);
  });
});

describe("two stages with the same load", async () => {
  const { advice, results } = await advised(TWO_ALIKE);

  it("are changed together where neither alone brings anything: 1,000 heads at 2.2 s in place of 4 s", () => {
    expect(advice.words[0]).toBe(
      "Start with evisceration and cutters: one more position at evisceration with its person and one more person in cutters end work 30.0 min earlier.",
    );
    expect(advice.changes[0]!.difference.mean).toBeCloseTo(-1800, -2);
    expect(results.variants[1]!.set).toEqual({
      "line.evisceration.positions": 2,
      "crews.eviscerators.people": [2],
      "crews.cutters.people": [2],
    });
    expect(advice.words[1]).toMatch(
      /^No difference larger than 5 s: one more position at evisceration with its person; one more person in cutters;/,
    );
  });

  it("says where one more person has nowhere to work", () => {
    expect(advice.words.join("\n")).toMatch(
      /In 'eviscerators' every position has its people, so one more person alone would have nowhere to work/,
    );
  });
});

describe("a change that breaks a time limit more", async () => {
  const { advice } = await advised(WAITING);

  it("is left out with its reason, however much it would bring", () => {
    const offered = advice.changes.filter(({ gains }) => gains).map(({ label }) => label);
    expect(offered).not.toContain("2 instead of 1 places before skinning");
    expect(advice.words.join("\n")).toMatch(
      /Not offered: 2 instead of 1 places before skinning, because \d+ % instead of \d+ % of heads would be outside the limit 'open to skinning'\./,
    );
    expect(advice.leftOut.map(({ label }) => label)).toContain("2 instead of 1 places before skinning");
  });

  it("leaves what keeps the limit better", () => {
    expect(advice.words[0]).toMatch(/^Start with skinning: a second machine ends work/);
  });
});

describe("a line that is held up by stunning", async () => {
  const { advice } = await advised(STUNNING);
  const labels = [...advice.changes, ...advice.others].map(({ label }) => label);

  it("gets no advice to stun or stick quicker, nor to let stunned heads wait; it says so", () => {
    expect(labels).not.toContain("a 5 % quicker machine at stunning");
    expect(labels).not.toContain("1 instead of 0 places before sticking");
    expect(advice.words.join("\n")).toContain(
      "Not tried: quicker work at 'stunning', 'sticking'. The animals or hygiene need that time.",
    );
    expect(advice.words.join("\n")).toContain("The plan has no time limit");
  });

  it("is told of a second machine, which shortens no head's time", () => {
    expect(advice.words[0]).toMatch(/^Most is gained at stunning: a second machine ends work/);
  });
});

describe("breaks that the trough cannot bridge", async () => {
  const { advice, results } = await advised(BREAKS);

  it("are staggered better: two stops of 25 min become two of 15, and nobody's break is shorter", () => {
    expect(advice.words[0]).toMatch(
      /^Start with the breaks: breaks for all at the same time ends? work (19|20)(\.\d)? min/,
    );
    const { set } = results.variants[1]!;
    expect(Object.keys(set).every((path) => path.endsWith(".later"))).toBe(true);
  });

  it("get a longer trough tried", () => {
    const labels = [...advice.changes, ...advice.others].map(({ label }) => label);
    expect(labels).toContain("24 instead of 12 places in bleeding");
  });
});

describe("advice", () => {
  it("is the same whenever it is taken, and leaves the plan as it was", async () => {
    const before = structuredClone(TWO_ALIKE);
    const [one, other] = [await advised(TWO_ALIKE), await advised(TWO_ALIKE)];
    expect(one.advice).toEqual(other.advice);
    expect(TWO_ALIKE).toEqual(before);
  });

  it("is told in the end of work, in throughput without an end, in carcasses where not all that come are worked", () => {
    expect(whyResponse(JAMMING)).toBe("finish");
    expect(whyResponse({ ...JAMMING, supply: saturated(10) })).toBe("headsPerHour");
    const closing = { rule: "stop hanging" as const, atSeconds: 100 };
    expect(whyResponse({ ...JAMMING, day: { ...JAMMING.day, closing } })).toBe("carcasses");
    const supply = { ...JAMMING.supply, whenFull: "turn away" } as typeof JAMMING.supply;
    expect(whyResponse({ ...JAMMING, supply })).toBe("carcasses");
  });

  it("of a line that is never short of heads is told in heads an hour", async () => {
    const { advice } = await advised({ ...TWO_ALIKE, supply: saturated(600) }, { replications: 6 });
    expect(advice.words[0]).toMatch(/^Start with evisceration and cutters: .* bring [\d.]+ carcasses\/h.* more\.$/);
  });
});
