import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { planJsonSchema } from "../../../../sim/asked/plan/planJsonSchema.ts";
import { exampleFile } from "../../../support/readExample.ts";
import { wholePlan } from "../../../support/wholePlan.ts";
import { samplePlan } from "./samplePlan.ts";
import { type Loose, stageOf } from "./wholeMessages.ts";

const published = JSON.parse(
  readFileSync(new URL("../../../../sim/asked/plan/plan.schema.json", import.meta.url), "utf8"),
);

/** An independent validator, as an editor would use one; `examples` and the like carry no check. */
const validate = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(published);

interface JsonSchema {
  description?: string;
  $ref?: string;
  properties?: Record<string, JsonSchema>;
  items?: JsonSchema;
  anyOf?: JsonSchema[];
  oneOf?: JsonSchema[];
  $defs?: Record<string, JsonSchema>;
}

/** Tested one by one with the reading of distributions, and the other two kinds of supply with theirs. */
const TESTED_ELSEWHERE = [
  ...["exponential", "lognormal", "gamma", "weibull", "erlang", "normal", "uniform", "triangular", "pert", "empirical"],
  ...["stream", "interarrival", "saturated", "heads"],
  ...["stunned", "hold", "after", "help"],
];

function keysOf(schema: JsonSchema): Set<string> {
  const inner = [
    ...Object.values(schema.properties ?? {}),
    ...[schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...Object.values(schema.$defs ?? {})],
  ];
  const keys = inner.flatMap((one) => (one === undefined ? [] : [...keysOf(one)]));
  return new Set([...Object.keys(schema.properties ?? {}), ...keys]);
}

function keysIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  const keys = Array.isArray(value) ? [] : Object.keys(value);
  return [...keys, ...Object.values(value).flatMap(keysIn)];
}

function undescribed(schema: JsonSchema, path: string): string[] {
  const properties = Object.entries(schema.properties ?? {});
  const inner = [schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...Object.values(schema.$defs ?? {})];
  return [
    ...properties.filter(([, property]) => property.description === undefined).map(([key]) => `${path}.${key}`),
    ...properties.flatMap(([key, property]) => undescribed(property, `${path}.${key}`)),
    ...inner.flatMap((one) => (one === undefined ? [] : undescribed(one, path))),
  ];
}

describe("planJsonSchema", () => {
  it("is what the published file holds; npm run schema plan prints it anew", () => {
    expect(published).toEqual(planJsonSchema());
  });

  it("names draft 2020-12", () => {
    expect(planJsonSchema().$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  });

  it.each([samplePlan(), wholePlan()])("accepts a sound plan", (plan) => {
    validate(plan);
    expect(validate.errors).toBeNull();
  });

  it("has no key that the plans here leave unused", () => {
    const parts = ["presentation", "chiller", "utilities", "money", "week", "uncertain", "site"].flatMap((name) => [
      ...keysIn(exampleFile(`parts/${name}`)),
    ]);
    const every = [...keysIn(exampleFile("every-part"))];
    const used = new Set([
      ...keysIn(samplePlan()),
      ...keysIn(wholePlan()),
      ...parts,
      ...every,
      ...TESTED_ELSEWHERE,
      "cop",
    ]);
    expect([...keysOf(planJsonSchema() as JsonSchema)].filter((key) => !used.has(key))).toEqual([]);
  });

  it("refuses unknown keys, bare numbers where a unit is due, and wrong words, as the program does", () => {
    const slips: ((plan: ReturnType<typeof samplePlan>) => void)[] = [
      (plan) => Object.assign(plan, { bufer: 1 }),
      (plan) => Object.assign(plan.line[0]!, { cycle: 5 }),
      (plan) => Object.assign(plan.line[0]!, { cycle: "5 sec" }),
      (plan) => Object.assign(plan.line[0]!, { work: "robot" }),
      (plan) => Object.assign(plan.line[0]!, { positions: 65 }),
      (plan) =>
        Object.assign(plan.line[0]!, { cycle: { lognormal: { mean: "5 s", cv: 0.3 }, gamma: { mean: "5 s", cv: 1 } } }),
      (plan) => Object.assign(plan.day.shifts[0]!, { from: "6 am" }),
      (plan) => Object.assign(plan.limits[0]!, { to: "stunning" }),
      (plan) => Object.assign(plan, { line: [] }),
    ];
    const ofWhole: ((plan: Loose) => void)[] = [
      (plan) => (plan.crews[1].pay = "18 EUR"),
      (plan) => (stageOf(plan, "hanging").crew = 3),
      (plan) => (plan.money.energy = "0.25 EUR/L"),
      (plan) => (plan.money.water = "-1 EUR/L"),
      (plan) => (plan.gates[0].from = "end of stunning"),
      (plan) => (stageOf(plan, "chilling").headsPerHook = 3),
      (plan) => (stageOf(plan, "evisceration").water.perHour = "200 L"),
      (plan) => (stageOf(plan, "kill chain").stations[0].buffer = 1),
    ];
    for (const slip of ofWhole) {
      const plan = wholePlan();
      slip(plan);
      expect(validate(plan), String(slip)).toBe(false);
    }
    for (const slip of slips) {
      const plan = samplePlan();
      slip(plan);
      expect(validate(plan), String(slip)).toBe(false);
    }
  });

  it("explains every key", () => {
    expect(undescribed(planJsonSchema() as JsonSchema, "plan")).toEqual([]);
  });
});
