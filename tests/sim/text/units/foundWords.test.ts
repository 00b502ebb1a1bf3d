import { expect, it } from "vitest";
import { foundWords } from "../../../../sim/text/units/foundWords.ts";

it.each([
  [undefined, "nothing"],
  [null, "null"],
  [5, "5"],
  [true, "true"],
  ["", "an empty text"],
  ["two\nlines", '"two\\nlines"'],
  ["x".repeat(70), `"${"x".repeat(60)}…"`],
  [[], "an empty list"],
  [[1], "a list"],
  [{}, "an empty object"],
  [{ a: 1, b: 2 }, 'an object with "a", "b"'],
])("foundWords quotes %j on one short line", (value, words) => {
  expect(foundWords(value)).toBe(words);
});
