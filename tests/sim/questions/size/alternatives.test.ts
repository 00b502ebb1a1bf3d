import { expect, it } from "vitest";
import { KINDS_OF_PLANT } from "../../../../sim/cli/options.ts";
import { ALTERNATIVES, alternativeOf, fullLine } from "../../../../sim/questions/size/alternatives.ts";
import { demandOf, designOf } from "../../../support/demands.ts";

it("the command names the same kinds of plant as the demand file", () => {
  expect(KINDS_OF_PLANT).toEqual(ALTERNATIVES);
});

it("a demand is sized to the full line in its own way of live handling, unless it says otherwise", () => {
  expect(demandOf({}).alternative).toBe("full line by hand");
  expect(demandOf({ crates: { way: "automatic" } }).alternative).toBe("full line automatic");
  const { plan, design } = designOf({
    week: { heads: 3000, days: 5 },
    alternative: "compact plant",
    crates: { way: "lift" },
  });
  expect(plan.liveHandling!.way).toBe("lift");
  expect(design.crews.map(({ name }) => name)).toContain("unclean side");
});

it("a full line's name stands for its way, a compact plant's takes the demand's", () => {
  for (const way of ["hand-slid", "lift", "automatic"] as const) {
    expect(alternativeOf(fullLine(way), "lift")).toEqual({ way, staffing: "a crew for each step" });
    expect(alternativeOf("compact plant, fewest people", way)).toEqual({
      way,
      staffing: "pooled posts, fewest people",
    });
  }
});
