import { describe, expect, it } from "vitest";
import { energy, mass, type UnitFamily, volume } from "../../../../sim/text/units/index.ts";
import { moneyPerExample, moneyPerPattern, readMoneyPer, type Sign } from "../../../../sim/text/units/readMoneyPer.ts";

const READ: [UnitFamily, Sign, string, number, string][] = [
  [volume, "of 0 or more", "2 EUR/m3", 2, "EUR"],
  [volume, "of 0 or more", "0.002 EUR/L", 2, "EUR"],
  [energy, "of 0 or more", "0.36 CHF / kWh", 0.36 / 3_600_000, "CHF"],
  [mass, "of either sign", "-0.05 EUR/kg", -0.05, "EUR"],
  [mass, "of either sign", "6500 EUR/t", 6.5, "EUR"],
  [mass, "of either sign", "-0 EUR/kg", 0, "EUR"],
];

const REFUSED: [UnitFamily, Sign, unknown][] = [
  [volume, "of 0 or more", "-1 EUR/L"],
  [volume, "of 0 or more", "1 EUR/kg"],
  [volume, "of 0 or more", "1 EUR"],
  [volume, "of 0 or more", "1 eur/L"],
  [mass, "of either sign", "1 EUR/constructor"],
  [mass, "of either sign", 6.5],
  [mass, "of either sign", undefined],
];

describe("readMoneyPer", () => {
  it.each(READ)("%o %s: reads %s", (family, sign, written, amount, currency) => {
    const { value, fault } = readMoneyPer(family, sign, written);
    expect(fault).toBeNull();
    expect(value?.currency).toBe(currency);
    expect(value?.amount).toBeCloseTo(amount, 12);
    expect(Object.is(value?.amount, -0)).toBe(false);
    expect(written).toMatch(new RegExp(moneyPerPattern(family, sign), "u"));
  });

  it.each(REFUSED)("%o %s: refuses %j", (family, sign, written) => {
    expect(readMoneyPer(family, sign, written).fault?.remedy).toBe(`write for example "${moneyPerExample(family)}"`);
    if (typeof written === "string") expect(written).not.toMatch(new RegExp(moneyPerPattern(family, sign), "u"));
  });

  it("says what it wants", () => {
    expect(readMoneyPer(energy, "of 0 or more", "0.25 EUR/L").fault).toEqual({
      found: '"0.25 EUR/L" is no price of an energy',
      allowed: "a number of 0 or more, a three-letter currency code in capitals, then one of /J, /kJ, /Wh, /MJ, /kWh",
      remedy: 'write for example "0.5 EUR/kWh"',
    });
  });

  it("shows an example that it reads", () => {
    for (const family of [volume, energy, mass]) {
      expect(readMoneyPer(family, "of 0 or more", moneyPerExample(family)).fault).toBeNull();
    }
  });
});
