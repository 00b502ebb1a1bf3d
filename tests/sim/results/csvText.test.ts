import { expect, it } from "vitest";
import { csvText } from "../../../sim/results/csvText.ts";

it.each(["=1+1", "+1 person", "-2", "@sum", "\tx", "\rx"])(
  "puts an apostrophe before %j, which a spreadsheet would run",
  (text) => {
    expect(csvText(["name"], [[text]])).toContain(`'${text}`);
  },
);

it("leaves numbers alone, a minus sign included", () => {
  expect(csvText(["x"], [[-1.5], [0]])).toBe("x\n-1.5\n0\n");
});

it("writes no value as an empty cell, never as 0", () => {
  expect(csvText(["a", "b"], [[null, Number.POSITIVE_INFINITY]])).toBe("a,b\n,\n");
});

it("quotes commas, quotes and line breaks after RFC 4180", () => {
  expect(csvText(["a"], [['one, "two"\nthree']])).toBe('a\n"one, ""two""\nthree"\n');
});
