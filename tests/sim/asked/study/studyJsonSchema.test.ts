import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { studyJsonSchema } from "../../../../sim/asked/study/studyJsonSchema.ts";
import { samplePlan } from "../plan/samplePlan.ts";

const published = JSON.parse(
  readFileSync(new URL("../../../../sim/asked/study/study.schema.json", import.meta.url), "utf8"),
);
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);

interface JsonSchema {
  description?: string;
  properties?: Record<string, JsonSchema>;
  items?: JsonSchema;
  anyOf?: JsonSchema[];
}

function undescribed(schema: JsonSchema, path: string): string[] {
  const properties = Object.entries(schema.properties ?? {});
  const inner = [schema.items, ...(schema.anyOf ?? [])].filter((one) => one !== undefined);
  return [
    ...properties.filter(([, property]) => property.description === undefined).map(([key]) => `${path}.${key}`),
    ...properties.flatMap(([key, property]) => undescribed(property, `${path}.${key}`)),
    ...inner.flatMap((one) => undescribed(one, path)),
  ];
}

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
    [
      "one at a time with linked paths and whole alternatives",
      {
        oneAtATime: {
          factors: [
            { name: "linked", sets: ["a", "b"].map((path) => ({ path, from: "2 s", to: "3 s" })) },
            {
              name: "way",
              options: [{ name: "as it is" }, { name: "b", insert: [{ after: "line.a", element: {} }], remove: ["x"] }],
            },
          ],
        },
      },
    ],
    [
      "a Latin hypercube",
      { latinHypercube: { factors: [{ name: "f", path: "a", from: 1, to: 9 }], points: 20, seed: 3 } },
    ],
    ["a screening", { screening: { factors: [{ name: "f", path: "a", from: 1, to: 9 }], trajectories: 4, levels: 6 } }],
  ])("accepts %s, with the plan inside or in its file", (_, design) => {
    for (const plan of [samplePlan(), "../plans/x.json"]) {
      validate({ $schema: "s", name: "n", question: "q", reader: "planner", plan, seed: 3, replications: 40, design });
      expect(validate.errors).toBeNull();
    }
  });

  it.each([
    [
      "a stopping rule",
      { replications: { until: { response: "x", halfWidth: "1 %", of: "difference", atLeast: 4, atMost: 90 } } },
    ],
    ["a stopping rule in units", { replications: { until: { response: "x", halfWidth: "2 min" } } }],
    ["pairs and controls", { antithetic: true, controls: [{ response: "x", mean: 3 }], errorRate: "per comparison" }],
    [
      "a selection",
      { selection: { response: "x", difference: 5, better: "less", probability: 0.9, firstStage: 8, atMost: 50 } },
    ],
  ])("accepts %s", (_, more) => {
    validate({ name: "n", plan: "p", ...more });
    expect(validate.errors).toBeNull();
  });

  it("explains every key", () => {
    expect(undescribed(studyJsonSchema() as JsonSchema, "study")).toEqual([]);
  });

  it.each([
    ["an unknown key", { name: "n", plan: "p", replication: 3 }],
    ["no plan", { name: "n" }],
    [
      "both designs",
      { name: "n", plan: "p", design: { list: [{ name: "a", set: { b: 1 } }], factorial: { factors: [] } } },
    ],
    [
      "a half-width without its unit",
      { name: "n", plan: "p", replications: { until: { response: "x", halfWidth: "2 m" } } },
    ],
    [
      "an insertion of nothing",
      { name: "n", plan: "p", design: { list: [{ name: "a", insert: [{ after: "line.a" }] }] } },
    ],
    [
      "a single level",
      { name: "n", plan: "p", design: { factorial: { factors: [{ name: "a", path: "b", levels: [1] }] } } },
    ],
  ])("refuses %s", (_, study) => {
    expect(validate(study)).toBe(false);
  });
});
