import { expect, test } from "vitest";
import { shareWords } from "../../../viz/words/index.ts";

test("a share is said with its count, and none is said as none", () => {
  expect(shareWords(113, 4730, "heads")).toBe("2.4 % (113 of 4\u202F730 heads)");
  expect(shareWords(0, 4730, "heads")).toBe("none of 4\u202F730 heads");
  expect(shareWords(0, 0, "heads")).toBe("no heads");
});

test("a share is never rounded to nothing or, short of all, to 100 %", () => {
  expect(shareWords(1, 4730, "heads")).toBe("0.02 % (1 of 4\u202F730 heads)");
  expect(shareWords(4729, 4730, "heads")).toBe("99.98 % (4\u202F729 of 4\u202F730 heads)");
  expect(shareWords(1, 1_000_000, "heads")).toBe("under 0.01 % (1 of 1\u202F000\u202F000 heads)");
});
