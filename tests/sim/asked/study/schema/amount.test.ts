import { describe, expect, it } from "vitest";
import { amount, amountAboveZero } from "../../../../../sim/asked/study/schema/amount.ts";

describe("amount", () => {
  it.each([
    [5, { form: "number", value: 5, written: "5" }],
    [-0.5, { form: "number", value: -0.5, written: "-0.5" }],
    ["1.5 %", { form: "percent", value: 0.015, written: '"1.5 %"' }],
    ["2 min", { form: "time", value: 120, written: '"2 min"' }],
  ])("reads %j, its form told", (written, read) => {
    expect(amount("5").parse(written)).toEqual(read);
  });

  it.each(["2", "2 kg", "1,5 %", "", null, true, [], Number.NaN])("refuses %j", (written) => {
    expect(amount("5").safeParse(written).success).toBe(false);
  });

  it("must be above 0 where a width or a distance is meant", () => {
    for (const written of [0, -1, "0 %", "-1 %", "0 s"])
      expect(amountAboveZero("5").safeParse(written).success).toBe(false);
    expect(amountAboveZero("5").safeParse("0.1 s").success).toBe(true);
  });
});
