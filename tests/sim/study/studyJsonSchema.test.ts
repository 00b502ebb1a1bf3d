import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { studyJsonSchema } from "../../../sim/study/studyJsonSchema.ts";
import { samplePlan } from "../plan/samplePlan.ts";

const published = JSON.parse(readFileSync(new URL("../../../sim/study/study.schema.json", import.meta.url), "utf8"));
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);

describe("studyJsonSchema", () => {
  it("is what the published file holds; npm run schema study prints it anew", () => {
    expect(published).toEqual(studyJsonSchema());
  });

  it.each([
    ["a list", { list: [{ name: "12 places", set: { "line.skinning.buffer": 12 } }] }],
    [
      "a factorial",
      { factorial: { factors: [{ name: "places", path: "line.skinning.buffer", levels: [4, null, "x"] }] } },
    ],
  ])("accepts %s, with the plan inside or in its file", (_, design) => {
    for (const plan of [samplePlan(), "../plans/x.json"]) {
      validate({ $schema: "s", name: "n", question: "q", reader: "planner", plan, seed: 3, replications: 40, design });
      expect(validate.errors).toBeNull();
    }
  });

  it.each([
    ["an unknown key", { name: "n", plan: "p", replication: 3 }],
    ["no plan", { name: "n" }],
    [
      "both designs",
      { name: "n", plan: "p", design: { list: [{ name: "a", set: { b: 1 } }], factorial: { factors: [] } } },
    ],
    [
      "a single level",
      { name: "n", plan: "p", design: { factorial: { factors: [{ name: "a", path: "b", levels: [1] }] } } },
    ],
  ])("refuses %s", (_, study) => {
    expect(validate(study)).toBe(false);
  });
});
