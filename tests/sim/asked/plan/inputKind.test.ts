import { expect, it } from "vitest";
import { inputKind } from "../../../../sim/asked/plan/inputKind.ts";
import { SMALL_STUDY } from "../../../support/cliFolder.ts";
import { demandFile, weeklyDemand } from "../../../support/demands.ts";
import { IMPROVE_CASES } from "../../../support/improveCases.ts";
import { offersFile } from "../../../support/offers.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

it("knows a plan, a study, and a study that holds its plan", () => {
  expect(inputKind(SMALL_PLAN)).toBe("plan");
  expect(inputKind(SMALL_STUDY)).toBe("study");
  expect(inputKind({ ...SMALL_STUDY, plan: SMALL_PLAN })).toBe("study");
});

it("knows demands, options, improvements and seasons", () => {
  expect(inputKind({ name: "a year", plan: "plant-week.json", weeks: [] })).toBe("season");
  expect(inputKind(demandFile())).toBe("demand");
  expect(inputKind(weeklyDemand())).toBe("demand");
  expect(inputKind(offersFile())).toBe("options");
  for (const { json } of IMPROVE_CASES) expect(inputKind(json)).toBe("improve");
});

it("goes by what is there when something is missing or misspelt", () => {
  expect(inputKind({ name: "x", line: [] })).toBe("plan");
  expect(inputKind({ name: "x", replications: 3 })).toBe("study");
});

it.each([null, 3, "line", [], {}, { name: "x" }])("knows nothing of %j", (json) => {
  expect(inputKind(json)).toBeNull();
});
