import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { whyWords } from "../../../viz/words/index.ts";
import { slopeStudy, whyDay, whyStudy } from "../../support/whyStudy.ts";

let slower: Why;
let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
  slower = results.variants[1]!.why!;
});

test("the stage that binds most comes first, with its share and its cause", () => {
  const [first] = whyWords(slower);
  expect(first).toMatch(
    /^Skinning binds 9\d % \([\d.]+ to [\d.]+ %\) of the time to the end of work, mostly by its work/,
  );
  expect(first).toMatch(/min\)\.$/);
});

test("what binds little is no place to begin", () => {
  expect(whyWords(slower)).toHaveLength(1);
  expect(whyWords(results.variants[0]!.why!)).toHaveLength(2);
});

test("no slope is drawn out to a second", async () => {
  const { why } = (await slopeStudy()).variants[0]!;
  expect(why!.slopes.length).toBeGreaterThan(0);
  expect(whyWords(why!).join(" ")).not.toContain("econd less");
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
