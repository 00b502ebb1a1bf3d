import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactJson, parseExactJson } from "../../../../../sim/days/run/wire/index.ts";

describe("exactJson", () => {
  it.each([Infinity, -Infinity, Number.NaN, -0, 0, 5e-324, 0.1 + 0.2, 1.7976931348623157e308])(
    "brings %s back, alone and inside",
    (value) => {
      expect(parseExactJson(exactJson(value))).toBe(value);
      expect(parseExactJson(exactJson({ list: [value, 1], plain: "x" }))).toEqual({ list: [value, 1], plain: "x" });
    },
  );

  it("brings any double back with every bit", () => {
    const survives = (value: number): boolean => Object.is((parseExactJson(exactJson([value])) as number[])[0], value);
    fc.assert(fc.property(fc.double(), survives), { seed: 1 });
  });

  it("leaves a record with the mark as its key, but a number for its value, alone", () => {
    const record = { out: { "#number": 3 }, more: { "#number": "Infinity", and: 1 } };
    expect(parseExactJson(exactJson(record))).toEqual(record);
  });

  it("refuses text that is no JSON", () => {
    expect(() => parseExactJson('{"a":')).toThrow(SyntaxError);
  });
});
