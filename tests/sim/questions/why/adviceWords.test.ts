import { expect, test } from "vitest";
import { sizeWords, spreadWords } from "../../../../sim/questions/why/adviceWords.ts";

const END = { key: "finish", label: "", unit: "s", format: "clock" as const, better: "less" as const };
const RATE = {
  key: "headsPerHour",
  label: "",
  unit: "carcasses/h",
  format: "number" as const,
  better: "more" as const,
};

test.each([
  [4680, 4200, 5160, "78 min (70 to 86 min)"],
  [258, 228, 288, "4.3 min (3.8 to 4.8 min)"],
  [62, 35, 84, "62 s (35 to 84 s)"],
  [20, 10, 30, "20 s (10 to 30 s)"],
  [12, 11.9, 12.1, "12.00 s (11.90 to 12.10 s)"],
  [30, 30, 30, "30 s"],
  [4 * 3600, 3.5 * 3600, 4.5 * 3600, "4 h 00 (3 h 30 to 4 h 30)"],
])("%d s, between %d and %d, reads %s", (mean, low, high, words) => {
  expect(spreadWords(mean, low, high, END)).toBe(words);
});

test("a count has its unit, and no more digits than its interval", () => {
  expect(spreadWords(26.4, 21.2, 31.7, RATE)).toBe("26 carcasses/h (21 to 32 carcasses/h)");
});

test("a bound is a round number", () => {
  expect(sizeWords(60, END)).toBe("1 min");
  expect(sizeWords(20, END)).toBe("20 s");
  expect(sizeWords(2, RATE)).toBe("2 carcasses/h");
});
