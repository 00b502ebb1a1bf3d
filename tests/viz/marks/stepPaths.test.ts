import { expect, test } from "vitest";
import { stepBandPath, stepPath } from "../../../viz/marks/index.ts";

test("a band runs along its upper steps and back along its lower ones", () => {
  expect(stepBandPath([0, 10, 20], [4, 2], [8, 9])).toBe("M0,4H10V2H20V9H10V8H0Z");
});

test("cells without height part the band into pieces", () => {
  expect(stepBandPath([0, 1, 2, 3], [0, 5, 0], [5, 5, 5])).toBe("M0,0H1V5H0ZM2,0H3V5H2Z");
  expect(stepBandPath([0, 1], [5], [5])).toBe("");
});

test("a value holds until the next change and the last one to the end", () => {
  expect(stepPath([0, 10, 20], [5, 5, 1], 30)).toBe("M0,5H10H20V1H30");
});

test("no points draw nothing", () => {
  expect(stepPath([], [], 30)).toBe("");
});
