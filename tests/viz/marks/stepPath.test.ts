import { expect, test } from "vitest";
import { stepPath } from "../../../viz/marks/index.ts";

test("a value holds until the next change and the last one to the end", () => {
  expect(stepPath([0, 10, 20], [5, 5, 1], 30)).toBe("M0,5H10H20V1H30");
});

test("no points draw nothing", () => {
  expect(stepPath([], [], 30)).toBe("");
});
