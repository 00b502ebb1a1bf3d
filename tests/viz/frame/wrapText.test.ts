import fc from "fast-check";
import { expect, test } from "vitest";
import { textWidth, wrapText } from "../../../viz/frame/index.ts";

test("text breaks at spaces, hyphens and slashes, and nothing is lost when it fits", () => {
  expect(wrapText("Post-mortem inspection", 90, 11, 2)).toEqual(["Post-mortem", "inspection"]);
  expect(wrapText("short", 200, 11, 2)).toEqual(["short"]);
  expect(wrapText("", 200, 11, 2)).toEqual([""]);
});

test("what does not fit ends in an ellipsis", () => {
  const lines = wrapText("one two three four five six seven", 60, 11, 2);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatch(/…$/);
});

test("no line is ever wider than the room, whatever the text", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 80 }), fc.integer({ min: 40, max: 300 }), (text, room) => {
      for (const line of wrapText(text, room, 11, 3)) expect(textWidth(line, 11)).toBeLessThanOrEqual(room);
    }),
    { seed: 20250102 },
  );
});
