import { describe, expect, it } from "vitest";
import { improvementTable } from "../../../viz/words/improvementTable.ts";
import { money } from "../../support/handMadeDecision.ts";
import { inventedImprovement } from "../../support/invented.ts";

const plain = (text: string) => text.replace(/[\u202f\u00a0]/g, " ").replaceAll("\u2212", "-");
const FOUND = inventedImprovement();
const with_ = (changes: Partial<NonNullable<typeof FOUND.recommended>>, more: Partial<typeof FOUND> = {}) =>
  improvementTable({ ...FOUND, recommended: { ...FOUND.recommended!, ...changes }, ...more })!;
const values = (row: number, table = with_({})) => table.rows[row]!.cells.map(({ value }) => plain(value));

describe("the table of a search", () => {
  it("has today's arrangement, at the goal that the same days give it, and the recommended one", () => {
    expect(with_({}).columns).toEqual(["Throughput", "people"]);
    // 330 carcasses an hour, 20 more than today.
    expect(values(0)).toEqual(["310 carcasses/h", "5"]);
    expect(values(1)).toEqual(["330 carcasses/h", "4"]);
    expect(with_({}).rows.map(({ best }) => best)).toEqual([false, true]);
  });

  it("adds the gain to today's where less is better", () => {
    const goal = { ...FOUND.goal, better: "less" as const };
    expect(values(0, with_({}, { goal }))[0]).toBe("350 carcasses/h");
  });

  it("greys a gain that may be none, and marks today's arrangement where the gain is too small", () => {
    const open = with_({ gain: { size: "open", mean: 2, low: -1, high: 5 } }, { answer: "undecided" });
    expect(open.rows[1]!.cells[0]!.shown).toBe(false);
    expect(open.rows.map(({ best }) => best)).toEqual([false, false]);
    expect(with_({}, { answer: "too small" }).rows.map(({ best }) => best)).toEqual([true, false]);
  });

  it("has the end of work and money where they are known", () => {
    const table = with_({
      ends: { today: 30_000, pick: 28_800, startClockSeconds: 21_600 },
      money: money("gain", 40) as never,
    });
    expect(table.columns).toEqual(["Throughput", "End of work", "people", "Money a day, to today"]);
    expect(values(0, table)).toEqual(["310 carcasses/h", "14:20", "5", ""]);
    expect(values(1, table)).toEqual(["330 carcasses/h", "14:00", "4", "+40 EUR"]);
    expect(plain(table.rows[1]!.cells[3]!.range)).toBe("+35 to +45");
  });

  it("counts what a budget spends, nothing today", () => {
    const allocated = { ...FOUND.allocated, kind: "budget" as const, unit: "EUR" };
    const table = with_({}, { allocated });
    expect(table.columns[1]).toBe("Spent [EUR]");
    expect(values(0, table)[1]).toBe("0");
  });

  it("is none where nothing else than today's is recommended", () => {
    expect(improvementTable({ ...FOUND, recommended: null })).toBeNull();
    expect(improvementTable({ ...FOUND, recommended: { ...FOUND.recommended!, isBase: true } })).toBeNull();
  });
});
