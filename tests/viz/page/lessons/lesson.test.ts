import { expect, it } from "vitest";
import { readLesson } from "../../../../viz/page/lessons/lesson.ts";

const LESSON = {
  title: "t",
  plan: "plans/a.json",
  about: "a",
  question: "q",
  options: ["one", "two"],
  right: 1,
  controls: ["line.a.buffer"],
  steps: [{ say: "s", moves: {} }],
  askedStep: 0,
  watch: ["w"],
  evidence: ["headsPerHour"],
  answer: "a",
  startAt: "06:00",
  speed: 10,
};

it("reads a lesson, and refuses one whose right answer is not among the options or that leads out of its folder", () => {
  expect(readLesson("x", JSON.stringify(LESSON))).toEqual({ ...LESSON, id: "x" });
  expect(() => readLesson("x", JSON.stringify({ ...LESSON, right: 2 }))).toThrow("beyond the options");
  expect(() => readLesson("x", JSON.stringify({ ...LESSON, askedStep: 1 }))).toThrow("beyond the steps");
  expect(() => readLesson("x", JSON.stringify({ ...LESSON, plan: "../secret.json" }))).toThrow();
  expect(() => readLesson("x", JSON.stringify({ ...LESSON, more: 1 }))).toThrow();
});
