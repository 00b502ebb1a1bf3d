import { describe, expect, it } from "vitest";
import { readGateStart, readPoint } from "../../../../sim/asked/plan/readPoint.ts";

describe("readPoint", () => {
  it.each([
    ["arrival", null, "entry"],
    ["leaving the line", null, "exit"],
    ["entry to skinning", "skinning", "entry"],
    ["start of skinning", "skinning", "start"],
    ["end of end of line", "end of line", "end"],
    ["exit from chilling", "chilling", "exit"],
  ])("reads %s", (written, stage, moment) => {
    expect(readPoint(written)).toEqual({ value: { stage, moment }, fault: null });
  });

  it.each(["", "skinning", "end of ", "End of skinning", "begin of skinning", 5, undefined])(
    "refuses %j",
    (written) => {
      const { value, fault } = readPoint(written);
      expect(value).toBeNull();
      expect(fault?.found).toContain("is not a point on a head's way");
      expect(fault?.remedy).toBe('write for example "end of stunning"');
    },
  );
});

describe("readGateStart", () => {
  it("gives the stage whose start is held back", () => {
    expect(readGateStart("start of stunning")).toEqual({ value: "stunning", fault: null });
  });

  it.each(["end of stunning", "arrival", "leaving the line", "stunning", 5, undefined])("refuses %j", (written) => {
    expect(readGateStart(written)).toMatchObject({
      value: null,
      fault: { allowed: '"start of" and the name of a stage', remedy: 'write for example "start of stunning"' },
    });
  });
});
