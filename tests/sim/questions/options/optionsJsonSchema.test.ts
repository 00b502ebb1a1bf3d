import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { optionsJsonSchema } from "../../../../sim/questions/options/index.ts";
import { offersFile } from "../../../support/offers.ts";

const published = JSON.parse(
  readFileSync(new URL("../../../../sim/questions/options/options.schema.json", import.meta.url), "utf8"),
);
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);

describe("optionsJsonSchema", () => {
  it("is what the published file holds; npm run gambrel schema options prints it anew", () => {
    expect(published).toEqual(optionsJsonSchema());
  });

  it("accepts an options file, and refuses one without interest", () => {
    validate(offersFile());
    expect(validate.errors).toBeNull();
    expect(validate(offersFile({ interest: undefined }))).toBe(false);
  });
});
