import { expect, it } from "vitest";
import { per, row } from "../../../../sim/day/observations/row.ts";

it("makes a plain number that is neither better high nor low, unless told otherwise", () => {
  expect(row("key", "Label", "kg", () => 1)).toMatchObject({ format: "number", better: null });
  expect(row("key", "Label", "kg", () => 1, { format: "share", better: "less" })).toMatchObject({
    format: "share",
    better: "less",
  });
});

it("divides where there is something to divide by", () => {
  expect(per(6, 4)).toBe(1.5);
  expect([per(6, 0), per(6, -1), per(6, Number.NaN), per(null, 4), per(6, null)]).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
});
