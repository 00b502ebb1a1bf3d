import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { improveJsonSchema } from "../../../../sim/questions/improve/index.ts";
import { IMPROVE_CASES, improveFileOf } from "../../../support/improveCases.ts";

const file = new URL("../../../../sim/questions/improve/improve.schema.json", import.meta.url);
const published = JSON.parse(readFileSync(file, "utf8"));
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);

describe("improveJsonSchema", () => {
  it("is what the published file holds; npm run gambrel schema improve prints it anew", () => {
    expect(published).toEqual(improveJsonSchema());
  });

  it("accepts the ten cases, and refuses one without a goal", () => {
    for (const { json } of IMPROVE_CASES) {
      validate(json);
      expect(validate.errors).toBeNull();
    }
    expect(validate(improveFileOf({ goal: undefined }))).toBe(false);
  });
});
