import { describe, expect, it } from "vitest";
import { MONEY_EXAMPLE, MONEY_PATTERN, readMoney } from "../../../../sim/text/units/readMoney.ts";

describe("readMoney", () => {
  it.each([
    ["1200 EUR", { amount: 1200, currency: "EUR" }],
    ["0.5 USD", { amount: 0.5, currency: "USD" }],
    ["0GBP", { amount: 0, currency: "GBP" }],
    [MONEY_EXAMPLE, { amount: 1200, currency: "EUR" }],
  ])("reads %s into amount and currency", (written, money) => {
    expect(readMoney(written)).toEqual({ value: money, fault: null });
    expect(written).toMatch(new RegExp(MONEY_PATTERN, "u"));
  });

  it.each(["1200", "1200 eur", "1,200 EUR", "EUR 1200", "-3 EUR", "1200 EURO", 1200, null])(
    "refuses %j with an example",
    (written) => {
      const { value, fault } = readMoney(written);
      expect(value).toBeNull();
      expect(fault?.found).toContain("is not an amount of money");
      expect(fault?.remedy).toBe('write for example "1200 EUR"');
    },
  );
});
