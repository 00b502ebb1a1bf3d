import { expect, it } from "vitest";
import { shownLines } from "../../../sim/cli/shownLines.ts";

it("shows the first two hundred lines and how many there are besides", () => {
  const lines = Array.from({ length: 203 }, (_, index) => `fault ${index}`);
  expect(shownLines(lines.slice(0, 200))).toEqual(lines.slice(0, 200));
  expect(shownLines(lines).at(-1)).toBe("... and 3 more; mend these first.");
});

it("cuts a line that quotes too much", () => {
  expect(shownLines(["x".repeat(5000)])[0]).toBe(`${"x".repeat(1000)}...`);
});
