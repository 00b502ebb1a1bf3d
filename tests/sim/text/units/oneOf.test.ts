import { expect, it } from "vitest";
import { formatEstimate, formatResponse, formatSpan, oneOf } from "../../../../sim/text/units/index.ts";

const HEADS = { format: "number", unit: "heads" } as const;

it("says one of a thing in the singular, and leaves every other figure alone", () => {
  expect(["1 stops", "1 heads", "1 crates", "1 lorries", "+1 carcasses", "\u22121 heads"].map(oneOf)).toEqual([
    "1 stop",
    "1 head",
    "1 crate",
    "1 lorry",
    "+1 carcass",
    "\u22121 head",
  ]);
  const alone = ["0 stops", "11 heads", "1.0 heads", "0.1 heads", "1 s", "1 carcasses/h", "1 to 2 stops", "1"];
  expect(alone.map(oneOf)).toEqual(alone);
});

it("holds for responses, differences and means", () => {
  expect(formatResponse(1, HEADS, 0)).toBe("1 head");
  expect(formatSpan(1, HEADS)).toBe("+1 head");
  expect(formatEstimate({ mean: 1, low: 1, high: 1 }, HEADS, 0)[0]).toBe("1 head");
  expect(formatEstimate({ mean: 1, low: null, high: null }, HEADS, 0)[0]).toBe("1 head");
});
