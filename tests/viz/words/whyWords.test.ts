import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { whyWords } from "../../../viz/words/index.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

let slower: Why;
let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
  slower = results.variants[1]!.why!;
});

test("the stage that binds most comes first, with its share, its cause and what a second less would bring", () => {
  const [first] = whyWords(slower);
  expect(first).toMatch(
    /^Skinning binds 9\d % \([\d.]+ to [\d.]+ %\) of the time to the end of work, mostly by its work/,
  );
  expect(first).toMatch(
    /One second less of its mean cycle time, now 30 s, would end work 2\.\d+ min \([\d. to]+ min\) earlier\.$/,
  );
});

test("what binds little is no place to begin", () => {
  expect(whyWords(slower)).toHaveLength(1);
  expect(whyWords(results.variants[0]!.why!)).toHaveLength(2);
});

test("a caution follows the figure it is about", () => {
  const slopes = slower.slopes.map((slope) => ({ ...slope, caution: "who goes where may change" }));
  expect(whyWords({ ...slower, slopes })[0]).toMatch(
    /earlier\. Take care with that figure: who goes where may change\.$/,
  );
});

test("nobody is told to shorten bleeding or chilling", () => {
  const slopes = slower.slopes.map((slope) => ({ ...slope, parameter: "dwell" }));
  expect(whyWords({ ...slower, slopes }).join(" ")).not.toContain("One second less");
});

test("a load that holds the day up has its place among the stages", () => {
  const [part] = slower.parts;
  const load = { ...part!, cause: "load" as const, stage: "", detail: "load 1" };
  expect(whyWords({ ...slower, parts: [load, ...slower.parts] })[1]).toMatch(
    /^Load 1 binds [\d.]+ % .* by its arrival: /,
  );
});

test("one day has no interval", () => {
  expect(whyWords(whyDay().variants[0]!.why!)[0]).toMatch(/^Skinning binds [\d.]+ % of the time/);
});
