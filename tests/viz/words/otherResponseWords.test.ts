import { describe, expect, it } from "vitest";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { otherResponseWords } from "../../../viz/words/otherResponseWords.ts";
import { gain, handMadeDecision } from "../../support/handMadeDecision.ts";

const info = (key: string) => ({ key, label: key, unit: "s", format: "number", better: "less" });
const moved = (mean: number) => ({ mean, low: mean - 1, high: mean + 1, shown: true, joint: false, words: "" });
const estimate = (mean: number) => ({ n: 8, mean, low: mean - 1, high: mean + 1, min: mean, max: mean });

/** Variants by what moves in each, by so much; every other result is shown to move in none. */
function results(keys: readonly string[], variants: readonly Record<string, number>[]): StudyResults {
  const found = variants.map((moves, index) => ({
    ...{ name: index === 0 ? "base" : `v${index}`, day: { startClockSeconds: 0 } },
    estimates: Object.fromEntries(keys.map((key) => [key, estimate(10 * (index + 1))])),
    differences: Object.fromEntries(
      keys.map((key) => [key, moves[key] === undefined ? { ...moved(0), shown: false } : moved(moves[key]!)]),
    ),
  }));
  return { responses: keys.map(info), variants: found, screening: null } as unknown as StudyResults;
}
const decided = (best: number | null, kind: "worth it" | "what if" = "worth it") => ({
  ...handMadeDecision([]),
  ...{ deciding: "a", best, kind },
});

describe("results besides the one that decides", () => {
  it("are told by how far they move, and which do not", () => {
    const [words] = otherResponseWords(results(["a", "b", "c"], [{}, { b: -5, c: 3 }]), decided(null));
    expect(words).toMatch(/^With “v1”: b down by 5\.0 s; c up by 3\.0 s\.$/);
    expect(otherResponseWords(results(["a", "b", "c"], [{}, { b: -5 }]), decided(null))[0]).toMatch(
      /; no difference shown in c\.$/,
    );
  });

  it("of many stay one short sentence, which counts the others", () => {
    const keys = ["a", "b", "c", "d", "e", "f", "g"];
    const all = Object.fromEntries(keys.map((key) => [key, 4]));
    const [words] = otherResponseWords(results(keys, [{}, all]), decided(null));
    expect(words).toMatch(/^With “v1”: b up .*; c up .*; d up .*; and 3 more results \(tables\)\.$/);
    const [still] = otherResponseWords(results(keys, [{}, { b: 4 }]), decided(null));
    expect(still).toMatch(/^With “v1”: b up by 4\.0 s; no difference shown in 5 others\.$/);
    expect(otherResponseWords(results(keys, [{}, {}]), decided(null))).toEqual([
      "With “v1”: no difference shown in any of the 6 other results.",
    ]);
  });

  it("are told of the recommended plan alone, of many plans over all", () => {
    const moves = [{}, { b: 1 }, { b: 2 }, { b: 3 }, { b: 4 }];
    expect(otherResponseWords(results(["a", "b"], moves), decided(3))).toHaveLength(1);
    expect(otherResponseWords(results(["a", "b"], moves), decided(3))[0]).toMatch(/^With “v3”: b up by 3\.0 s/);
    expect(otherResponseWords(results(["a", "b"], moves), decided(null))).toEqual([
      "B: 10 s to 50 s over all 5 plans.",
    ]);
  });

  it("of a plan that does next to nothing are left to the table, where another does something", () => {
    const rows = (["no difference", "gain"] as const).map((size) => ({ name: size, gain: gain(size, 20) }));
    const decision = { ...handMadeDecision(rows), deciding: "a", best: null, kind: "worth it" as const };
    const words = otherResponseWords(results(["a", "b"], [{}, { b: 1 }, { b: 2 }]), decision);
    expect(words).toEqual([expect.stringMatching(/^With “v2”: b up by 2/)]);
  });

  it("say nothing that the answer to what happens if says of each try itself", () => {
    const keys = ["a", "finish", "overtime", "carcasses", "headsPerHour"];
    const all = Object.fromEntries(keys.map((key) => [key, 4]));
    expect(otherResponseWords(results(keys, [{}, all]), decided(null, "what if"))).toEqual([]);
    expect(otherResponseWords(results(keys, [{}, all]), decided(null))).toHaveLength(1);
  });
});
