import { expect, it } from "vitest";
import { stageOf, wholeWarnings } from "../wholeMessages.ts";

it("finds nothing to warn of in the whole plan", () => {
  expect(wholeWarnings(() => {})).toEqual([]);
});

it("tells all warnings at once", () => {
  const warnings = wholeWarnings((plan) => {
    stageOf(plan, "bleeding").places = 1;
    stageOf(plan, "trim").buffer = 0;
    plan.vessels.push({ name: "fat bin", capacity: "1 t", emptying: "5 min" });
  });
  expect(warnings.map((warning) => warning.split(":")[0])).toEqual(["line[3].places", "line[8].buffer", "vessels[3]"]);
});

it("warns of a vessel that nothing runs into", () => {
  expect(wholeWarnings((plan) => plan.vessels.push({ name: "fat bin", capacity: "1 t", emptying: "5 min" }))).toEqual([
    "vessels[3]: nothing runs into 'fat bin'; name it as the \"vessel\" of what a stage takes off",
  ]);
});
