import { expect, test } from "vitest";
import { quoted } from "../../../viz/words/index.ts";

test("a quoted name cannot reorder the sentence it stands in", () => {
  expect(quoted("a\u202Eb")).toBe("“a<U+202E>b”");
});
