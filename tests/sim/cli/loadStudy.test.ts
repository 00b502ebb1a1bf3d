import { join } from "node:path";
import { expect, it } from "vitest";
import { readInputFile } from "../../../sim/cli/inputFile.ts";
import { loadStudy } from "../../../sim/cli/loadStudy.ts";
import { cliFolder, SMALL_STUDY } from "../../support/cliFolder.ts";
import { SMALL_PLAN } from "../../support/smallPlan.ts";

it("gives the study and its base plan as the file wrote it", () => {
  const { study, basePlan } = loadStudy(readInputFile(join(cliFolder(), "study.json")));
  expect(study.variants.map(({ name }) => name)).toEqual(["base", "+1 person", "same again"]);
  expect(basePlan).toEqual(SMALL_PLAN);
});

it("knows which responses the plan has", () => {
  const folder = cliFolder({ "study.json": { ...SMALL_STUDY, responses: ["headsPerHuor"] } });
  expect(() => loadStudy(readInputFile(join(folder, "study.json")))).toThrow(/headsPerHuor.*headsPerHour/);
});

it("points out that a plan is no study", () => {
  expect(() => loadStudy(readInputFile(join(cliFolder(), "plan.json")))).toThrow(/run it with "gambrel day"/);
});
