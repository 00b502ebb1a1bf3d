import { expect, it } from "vitest";
import { textTable } from "../../../../sim/text/units/textTable.ts";

it("lines up the first column to the left and the others to the right", () => {
  expect(
    textTable([
      ["a", "1", "xx"],
      ["long", "22", ""],
    ]),
  ).toEqual(["a      1  xx", "long  22    "]);
});

it("is no line for no row", () => {
  expect(textTable([])).toEqual([]);
});
