import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/fault.ts";

describe("formatFault", () => {
  it("says where, what was found, what is allowed and what to do, on one line", () => {
    const fault = {
      path: "line[4].crew",
      found: "'evisceratoin' is not a crew",
      allowed: "'evisceration'",
      remedy: "did you mean 'evisceration'?",
    };
    expect(formatFault(fault)).toBe(
      "line[4].crew: 'evisceratoin' is not a crew; allowed: 'evisceration'; did you mean 'evisceration'?",
    );
  });

  it("leaves out what has nothing to say", () => {
    expect(formatFault({ path: "name", found: "missing", allowed: "", remedy: "" })).toBe("name: missing");
  });

  it("names the whole file where there is no path", () => {
    expect(formatFault({ path: "", found: "null", allowed: "", remedy: "" })).toBe("the file as a whole: null");
  });

  it("stays on one line whatever was found", () => {
    expect(formatFault({ path: "a", found: "x\n\ty", allowed: "", remedy: "" })).toBe("a: x y");
  });
});
