import { describe, expect, it } from "vitest";
import { readPoint } from "../../../sim/plan/readPoint.ts";

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
      expect(fault?.found).toContain("is no point of a head's way");
      expect(fault?.remedy).toBe('write for example "end of stunning"');
    },
  );
});
