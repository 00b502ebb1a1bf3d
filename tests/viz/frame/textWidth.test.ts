import { expect, test } from "vitest";
import { textWidth } from "../../../viz/frame/index.ts";

test("width grows with size and with every character, bold is wider", () => {
  expect(textWidth("heads", 22)).toBeCloseTo(2 * textWidth("heads", 11), 9);
  expect(textWidth("heads!", 11)).toBeGreaterThan(textWidth("heads", 11));
  expect(textWidth("heads", 11, true)).toBeGreaterThan(textWidth("heads", 11));
});

// Advance widths in units of 1/2048 em from the hmtx table of DejaVu Sans 2.37.
test("no character is taken for narrower than DejaVu Sans draws it", () => {
  const units: Record<string, number> = {
    a: 1255,
    i: 569,
    m: 1995,
    w: 1675,
    r: 842,
    W: 2025,
    O: 1612,
    "0": 1303,
    " ": 651,
    "%": 1946,
    "-": 739,
  };
  for (const [character, advance] of Object.entries(units)) {
    expect(textWidth(character, 1), character).toBeGreaterThanOrEqual(advance / 2048);
  }
});

test("combining marks and isolates take no room, ideographs a whole em", () => {
  expect(textWidth("e\u0301", 10)).toBe(textWidth("e", 10));
  expect(textWidth("\u2068\u2069", 10)).toBe(0);
  expect(textWidth("兎", 10)).toBeGreaterThanOrEqual(10);
});
