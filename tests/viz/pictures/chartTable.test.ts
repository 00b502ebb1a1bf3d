import { expect, test } from "vitest";
import { quantityCell, quantityUnit } from "../../../viz/pictures/index.ts";

test("cells are in the unit of their column: shares in per cent, durations in seconds, clock times as text", () => {
  const share = { kind: "share", label: "x" } as const;
  const clock = { kind: "clock", label: "x", startClockSeconds: 6 * 3600 } as const;
  expect([quantityUnit(share), quantityCell(share, 0.25)]).toEqual(["%", 25]);
  expect([quantityUnit(clock), quantityCell(clock, 90)]).toEqual(["clock time", "06:01:30"]);
  expect([quantityUnit({ kind: "duration", label: "x" }), quantityCell({ kind: "duration", label: "x" }, 90)]).toEqual([
    "s",
    90,
  ]);
  expect(quantityUnit({ kind: "number", label: "x", unit: "kg" })).toBe("kg");
});

test("what is not there, or no number, is an empty cell", () => {
  for (const value of [null, Number.NaN, Number.POSITIVE_INFINITY])
    expect(quantityCell({ kind: "duration", label: "x" }, value)).toBeNull();
});
