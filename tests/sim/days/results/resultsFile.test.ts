import { describe, expect, it } from "vitest";
import { readResults, type StudyResults, stableJson, stableJsonParts } from "../../../../sim/days/results/index.ts";
import { MAX_AS_OBJECTS, resultsParts } from "../../../../sim/days/results/resultsFile.ts";
import { runStudy } from "../../../../sim/days/run/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const textOf = (results: StudyResults): string => [...resultsParts(results)].join("");

/** A real study of three variants, the others of which stand for many more. */
async function manyVariants(): Promise<StudyResults> {
  const study = threeVariants({ replications: 3, responses: ["finish", "carcasses"], why: true });
  const [base, slower, again] = study.variants;
  const more = Array.from({ length: MAX_AS_OBJECTS }, (_, copy) => ({
    ...(copy % 2 === 0 ? slower! : again!),
    name: `copy ${copy}`,
  }));
  return runStudy({ ...study, variants: [base!, ...more] }, { gambrel: "1", command: "", traces: "none" });
}

it("has an object for each of a few variants, as older versions wrote it", () => {
  expect(textOf(handMadeResults())).toBe(stableJson(handMadeResults()));
});

describe("results of many variants", async () => {
  const results = await manyVariants();
  const text = textOf(results);

  it("stand in columns, and are read back whole but for the values of single days", () => {
    const { results: back, problem } = readResults(text);
    expect(problem).toBeNull();
    const expected = { ...results, variants: results.variants.map((variant) => ({ ...variant, values: {} })) };
    expect(stableJson(back)).toBe(stableJson(expected));
    expect(back!.decision!.rows[1]!.differences.finish!.words).toBe(results.variants[1]!.differences!.finish!.words);
  });

  it("give a figure of all variants as one list", () => {
    const { format, variants } = JSON.parse(text);
    expect(format).toBe(2);
    expect(variants.estimates.finish.mean).toEqual(results.variants.map(({ estimates }) => estimates.finish!.mean));
    expect(text.length).toBeLessThan(0.6 * stableJson(results).length);
  });

  it("keep a sentence that does not follow from its figures", () => {
    const [first, ...others] = results.variants;
    const told = others.map((variant, index) => {
      const finish = { ...variant.differences!.finish!, words: "In other words." };
      return index > 0 ? variant : { ...variant, differences: { ...variant.differences, finish } };
    });
    const back = readResults(textOf({ ...results, variants: [first!, ...told] })).results!;
    expect(back.variants[1]!.differences!.finish!.words).toBe("In other words.");
    expect(back.variants[2]!.differences!.finish!.words).toBe(results.variants[2]!.differences!.finish!.words);
  });

  it("are refused in words where their columns were changed", () => {
    const changed = JSON.parse(text);
    changed.variants.name.pop();
    expect(readResults(JSON.stringify(changed)).problem).toMatch(/columns do not fit together.*run it again/);
    for (const variants of [null, 5, [], {}, { "": { rows: 2 } }])
      expect(readResults(JSON.stringify({ ...changed, variants })).problem).toMatch(/run it again|name the folder/);
  });

  it("come in parts much shorter than the whole", () => {
    const parts = [...resultsParts(results)];
    expect(Math.max(...parts.map(({ length }) => length))).toBeLessThan(text.length / 4);
    expect([...stableJsonParts(results)].join("")).toBe(stableJson(results));
  });
});
