import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { WHY_NOTE, whyWords } from "../../../viz/words/index.ts";
import { slopeStudy, whyDay, whyStudy } from "../../support/whyStudy.ts";

let slower: Why;
let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
  slower = results.variants[1]!.why!;
});

test("where most of the time went comes first, with its span and its cause, and no change is promised anything", () => {
  const [first] = whyWords(slower);
  expect(first).toMatch(
    /^For \d.* \(\d.* to \d.*\) of the \d.* to the end of work the line ran at the pace of skinning, mostly because work there takes this long\.$/,
  );
  expect(whyWords(slower).join(" ")).not.toMatch(/earlier|later|second less|would/);
});

test("what took little of the time is left out", () => {
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
    /^For \d.* to the end of work the line waited for load 1, because it had not arrived\.$/,
  );
});

test("one day has no interval", () => {
  expect(whyWords(whyDay().variants[0]!.why!)[0]).toMatch(
    /^For [\d.]+ \w+ of the [\d.]+ \w+ to the end of work the line (ran at the pace of|waited for) skinning, mostly because [a-z ()]+\.$/,
  );
});

test("the note sends to what simulates changes, and makes no reserve of breaks, bleeding and chilling", () => {
  expect(WHY_NOTE).toContain("gambrel why");
  expect(WHY_NOTE).toContain("Do not shorten breaks, bleeding or chilling");
});
