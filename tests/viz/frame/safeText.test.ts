import { expect, test } from "vitest";
import { isolated, safeText } from "../../../viz/frame/index.ts";

// Char production of XML 1.0 (fifth edition), 2.2.
test("characters that XML forbids become the replacement character", () => {
  expect(safeText("a\u0000b\u001Bc\uD800d\uFFFE")).toBe("a\uFFFDb\uFFFDc\uFFFDd\uFFFD");
  expect(safeText("tab\tand 🐇 stay")).toBe("tab\tand 🐇 stay");
});

// Explicit formatting characters of Unicode Standard Annex #9.
test("direction overrides, embeddings and isolates are shown by number instead of taking effect", () => {
  expect(safeText("a\u202Eb\u2066c")).toBe("a<U+202E>b<U+2066>c");
});

test("only a right-to-left name is isolated, so that it cannot reorder figures beside it", () => {
  expect(isolated("Skinning")).toBe("Skinning");
  expect(isolated("שחיטה")).toBe("\u2068שחיטה\u2069");
  expect(isolated("mark \u200F only")).toBe("\u2068mark \u200F only\u2069");
});
