import { expect, test } from "vitest";
import { CAUSES } from "../../../sim/day/engine/index.ts";
import { CAUSE_KINDS, causeWords } from "../../../viz/words/index.ts";

test("every cause of the simulator has words and a kind", () => {
  for (const cause of CAUSES) {
    const { what, kind } = causeWords({ cause, stage: "skinning", detail: "" });
    expect(what).not.toBe("");
    expect(CAUSE_KINDS[kind]).toBeDefined();
  }
});

test("the place is the stage, else the load or vessel, else the supply", () => {
  expect(causeWords({ cause: "repair", stage: "skinning", detail: "jam" })).toMatchObject({
    where: "skinning",
    what: "repairs (jam)",
  });
  expect(causeWords({ cause: "load", stage: "", detail: "load 1" })).toMatchObject({
    where: "load 1",
    what: "its arrival",
  });
  expect(causeWords({ cause: "arrivals", stage: "", detail: "" }).where).toBe("supply");
});
