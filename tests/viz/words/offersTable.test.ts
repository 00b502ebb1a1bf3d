import { describe, expect, it } from "vitest";
import { offersTable } from "../../../viz/words/offersTable.ts";
import { FINISH, handMadeDecision, money } from "../../support/handMadeDecision.ts";
import { inventedOptionsResult } from "../../support/invented.ts";

const plain = (text: string) => text.replace(/[\u202f\u00a0]/g, " ");
const cells = ({ rows }: ReturnType<typeof offersTable>, row: number) =>
  rows[row]!.cells.map(({ value, range }) => plain(range === "" ? value : `${value} (${range})`));

describe("the table of offers", () => {
  it("has today's plan first, without price, payback or benefit", () => {
    const table = offersTable(inventedOptionsResult(), null, 0);
    expect(table.columns).toEqual(["Price", "Payback", "Benefit a year"]);
    expect(table.rows.map(({ name }) => name)).toEqual(["today's plan", "a machine", "more places"]);
    expect(cells(table, 0)).toEqual(["", "", ""]);
  });

  it("has of each offer its price, payback and yearly benefit, as finely as each is known", () => {
    const table = offersTable(inventedOptionsResult(), null, 0);
    expect(cells(table, 1)).toEqual(["12 000 EUR", "2.0 years (1.0 to never)", "5 000 EUR (4 000 to 6 000)"]);
  });

  it("greys a benefit that may be none, and marks the offer to buy alone", () => {
    const found = inventedOptionsResult();
    const table = offersTable(found, null, 0);
    expect(table.rows.map(({ cells }) => cells[2]!.shown)).toEqual([null, true, false]);
    expect(table.rows.map(({ best }) => best)).toEqual([false, true, false]);
    expect(offersTable({ ...found, buy: null }, null, 0).rows.some(({ best }) => best)).toBe(false);
  });

  it("names what must not be bought, with the reason", () => {
    const found = inventedOptionsResult();
    const options = found.options.map((offer, index) =>
      index === 0 ? { ...offer, harm: "animals wait too long" } : offer,
    );
    expect(offersTable({ ...found, options }, null, 0).rows.map(({ harm }) => harm)).toEqual([
      null,
      "animals wait too long",
      null,
    ]);
  });

  it("adds what the days say of each, and leaves out a study's money, which knows no interest", () => {
    const rows = ["a machine", "more places"].map((name) => ({ name, money: money("gain", 20) }));
    const decision = handMadeDecision(rows);
    const cost = { ...FINISH, key: "costPerHead", label: "Cost", unit: "EUR/head", format: "number" as const };
    const table = offersTable(inventedOptionsResult(), { ...decision, columns: [FINISH, cost] }, 21_600);
    expect(table.columns).toEqual(["Price", "Payback", "Benefit a year", "End of work", "People"]);
    expect(table.rows[0]!.name).toBe("base (today's plan)");
    expect(cells(table, 2).slice(3)).toEqual(["14:20 (14:20 to 14:20)", "3"]);
  });
});
