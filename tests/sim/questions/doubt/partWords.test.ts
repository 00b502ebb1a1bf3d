import { expect, it } from "vitest";
import { partWords } from "../../../../sim/questions/doubt/partWords.ts";

it("partWords says a share as people do, within 0.05 of it", () => {
  expect([0, 0.04, 0.31, 0.5, 0.64, 0.68, 0.97].map(partWords)).toEqual([
    ...["hardly any", "hardly any", "a third", "half", "two thirds", "two thirds", "nearly all"],
  ]);
  const size: Record<string, number> = {
    "hardly any": 0,
    "a tenth": 0.1,
    "a fifth": 0.2,
    "a quarter": 0.25,
    "a third": 1 / 3,
  };
  Object.assign(size, {
    "two fifths": 0.4,
    half: 0.5,
    "three fifths": 0.6,
    "two thirds": 2 / 3,
    "three quarters": 0.75,
  });
  Object.assign(size, { "four fifths": 0.8, "nine tenths": 0.9, "nearly all": 1 });
  for (let share = 0; share <= 1; share += 0.01)
    expect(Math.abs(size[partWords(share)]! - share)).toBeLessThanOrEqual(0.0501);
});
