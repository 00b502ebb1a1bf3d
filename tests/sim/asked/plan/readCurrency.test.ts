import { expect, it } from "vitest";
import { readCurrency } from "../../../../sim/asked/plan/readCurrency.ts";

it("reads three capital letters", () => {
  expect(readCurrency("EUR")).toEqual({ value: "EUR", fault: null });
});

it.each(["eur", "EURO", "€", 5, undefined])("refuses %j", (written) => {
  expect(readCurrency(written)).toMatchObject({ value: null, fault: { allowed: "three capital letters" } });
});
