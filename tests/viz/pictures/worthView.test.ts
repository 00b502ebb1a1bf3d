import { expect, it } from "vitest";
import { worthView } from "../../../viz/pictures/index.ts";
import { inventedOptionsResult } from "../../support/invented.ts";

it("shows each option's yearly amount with the interval that holds for all, filled where it is decided", () => {
  const { rows, quantity } = worthView(inventedOptionsResult());
  expect(rows.map(({ name, low, high, shown }) => [name, low, high, shown])).toEqual([
    ["a machine", 4000, 6000, true],
    ["more places", -700, 1100, false],
  ]);
  expect(rows[1]!.text).toBe("200 EUR, not decided\n\u2212700 to 1\u202f100");
  expect(quantity).toEqual({ kind: "number", label: "a year", unit: "EUR" });
});
