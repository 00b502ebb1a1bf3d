import { expect, it } from "vitest";
import { formatShare } from "../../../../sim/text/units/formatShare.ts";

it.each([
  [0.025, "2.5 %"],
  [0.002, "0.2 %"],
  [1, "100 %"],
  [0, "0 %"],
  [0.12345, "12.3 %"],
])("formatShare writes %d as %s", (share, text) => {
  expect(formatShare(share)).toBe(text);
});
