import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { demandJsonSchema } from "../../../../sim/questions/size/index.ts";
import { demandFile, weeklyDemand } from "../../../support/demands.ts";

const published = JSON.parse(
  readFileSync(new URL("../../../../sim/questions/size/demand.schema.json", import.meta.url), "utf8"),
);
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);

describe("demandJsonSchema", () => {
  it("is what the published file holds; npm run gambrel schema demand prints it anew", () => {
    expect(published).toEqual(demandJsonSchema());
  });

  it("accepts the least demand and the example, and refuses a key of no meaning", () => {
    for (const json of [demandFile(), weeklyDemand()]) {
      validate(json);
      expect(validate.errors).toBeNull();
    }
    expect(validate(demandFile({ stpes: {} }))).toBe(false);
    expect(validate(demandFile({ week: { days: 5, heads: 2.5 } }))).toBe(false);
  });
});
