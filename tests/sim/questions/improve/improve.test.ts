import { describe, expect, it } from "vitest";
import { type Improvement, improve } from "../../../../sim/questions/improve/index.ts";
import { caseQuestion, simulateHere } from "../../../support/improving.ts";

const PATIENCE = { timeout: 60_000 };
const SEARCH = { days: 2, designs: 8, finalists: 3, curve: 4 };

async function improved(changes: Record<string, unknown>, index = 0): Promise<Improvement> {
  const question = caseQuestion({ search: SEARCH, ...changes }, index);
  return (await improve(question, { simulate: simulateHere })).improvement;
}

describe("improve", PATIENCE, () => {
  it("gives the same every time, and other days for another seed", async () => {
    const found = await improved({});
    expect(await improved({})).toEqual(found);
    expect((await improved({ seed: "2" })).finalists[0]!.goal).not.toEqual(found.finalists[0]!.goal);
  });

  it("gives a design that falls behind on each of the first days no more of them, and never picks it", async () => {
    const { tried, finalists } = await improved({ search: { ...SEARCH, days: 4, designs: 12 } });
    const days = tried.map(({ goal }) => goal!.n);
    expect(new Set(days)).toEqual(new Set([4, 2]));
    expect(days).toEqual(days.toSorted((a, b) => b - a));
    const behind = tried.filter(({ goal }) => goal!.n === 2).map(({ name }) => name);
    expect(finalists.filter(({ name }) => behind.includes(name))).toEqual([]);
  });

  it("compares the pick with the plan as it is on the same days, and says what was simulated", async () => {
    const { recommended, finalists, effort, curve, words } = await improved({});
    expect(recommended!.againstBase!.low).toBeGreaterThan(0);
    expect(recommended!.set).toMatchObject({ "line.stunning.buffer": recommended!.counts![0] });
    expect(finalists.filter(({ droppedAfter }) => droppedAfter === null)).toHaveLength(1);
    expect(effort.designsTried).toBe(8);
    // Eight designs of two days each, and as many days once more of each design whose slopes were read.
    expect(effort.searchDays).toBeGreaterThan(16);
    expect((effort.searchDays - 16) % 2).toBe(0);
    expect(effort.fullEnumerationDays).toBe(136 * 6);
    expect(curve[0]!.uses).toBe(0);
    expect(curve.map(({ uses }) => uses!)).toEqual(curve.map(({ uses }) => uses!).toSorted((a, b) => a - b));
    expect(curve.at(-1)!.undominated).toBe(true);
    expect(words.join(" ")).toMatch(
      /with a probability of 95 % or more; finalists within .* of the best count as equal\./,
    );
    expect(words.join(" ")).toMatch(/Trying all 136 allowed arrangements would take 816 days or more/);
  });

  it("keeps the plan as it is where nothing is better, and says so", async () => {
    const { recommended, words } = await improved({ interest: "100 %", daysPerYear: 40 }, 9);
    expect(recommended!.isBase).toBe(true);
    expect(recommended!.againstBase).toBeNull();
    expect(words[0]).toBe("Recommended: leave today's plan as it is.");
  });

  it("recommends nothing that is not shown to keep the limits", async () => {
    const { recommended, choice, finalists, words } = await improved(
      { limits: [{ limit: "stun to skinning", beyond: "0.001 %" }] },
      4,
    );
    expect(recommended).toBeNull();
    expect(choice.kind).toBe("limits not kept");
    expect(finalists.every(({ limits }) => limits !== "kept")).toBe(true);
    expect(words[0]).toMatch(/None of the 3 finalists is shown to keep the limits/);
  });

  it("never picks what breaks a limit more often than the plan as it is, where the question says nothing of that limit", async () => {
    const { tried, finalists, recommended, words } = await improved(
      { limits: [], search: { ...SEARCH, days: 4, designs: 12 } },
      4,
    );
    const harmful = tried.filter(({ allowed, harm }) => allowed && harm !== null);
    expect(harmful.length).toBeGreaterThan(0);
    expect(harmful.map(({ name }) => name)).not.toContain(recommended?.name);
    for (const { harm } of harmful) expect(harm).toMatch(/outside the limit 'stun to skinning'$/u);
    for (const { name, harm } of finalists.filter((one) => one.harm !== null)) {
      expect(recommended?.name).not.toBe(name);
      expect(words).toContain(`Not recommended, whatever it brings: ${name}. Compared with today's plan, ${harm}.`);
    }
    expect(recommended).toBeNull();
    const left = harmful.filter(({ finalist }) => !finalist).length;
    if (left > 0) expect(words.join(" ")).toContain(`${left} of the arrangements tried were left out`);
  });

  it("tells the share beyond the limit of what it recommends", async () => {
    const { recommended, words } = await improved({ search: { ...SEARCH, designs: 12 } }, 4);
    expect(recommended!.limits[0]!.found!.mean).toBeLessThan(0.15);
    expect(words.join(" ")).toMatch(
      /stun to skinning: (no head was outside it on \d+ days|.* % of heads are outside it \(.* to .* % at 95 %\)); at most 15 % may be\./,
    );
  });

  it("tries every design where there are few", async () => {
    const among = ["stunning", "sticking"].map((station) => ({ station, to: 3 }));
    const found = await improved({ allocate: { places: { total: 2, least: 2, among } } });
    expect(found.effort.designsAllowed).toBe(3);
    expect(found.finalists).toHaveLength(3);
  });
});
