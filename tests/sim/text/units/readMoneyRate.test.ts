import { describe, expect, it } from "vitest";
import { MONEY_RATE_EXAMPLE, MONEY_RATE_PATTERN, readMoneyRate } from "../../../../sim/text/units/readMoneyRate.ts";

describe("readMoneyRate", () => {
  it.each([
    ["18 EUR/h", 18 / 3600, "EUR"],
    ["0.3 USD / min", 0.3 / 60, "USD"],
    ["864 CHF/d", 0.01, "CHF"],
    ["2 EUR/s", 2, "EUR"],
    [MONEY_RATE_EXAMPLE, 0.005, "EUR"],
  ])("reads %s as %d per second in %s", (written, amountPerSecond, currency) => {
    expect(readMoneyRate(written)).toEqual({ value: { amountPerSecond, currency }, fault: null });
    expect(written).toMatch(new RegExp(MONEY_RATE_PATTERN, "u"));
  });

  it.each(["18 EUR", "18 /h", "18 EUR/week", "18 eur/h", 18, undefined])("refuses %j with an example", (written) => {
    const { value, fault } = readMoneyRate(written);
    expect(value).toBeNull();
    expect(fault?.found).toContain("is not money per time");
    expect(fault?.remedy).toBe('write for example "18 EUR/h"');
  });
});
