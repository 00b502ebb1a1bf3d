import { join } from "node:path";
import { expect, it } from "vitest";
import { BadInput } from "../../../sim/cli/badInput.ts";
import { readInputFile } from "../../../sim/cli/inputFile.ts";
import { loadPlan } from "../../../sim/cli/loadPlan.ts";
import { cliFolder } from "../../support/cliFolder.ts";
import { SMALL_PLAN } from "../../support/smallPlan.ts";

it("gives the plan of a sound file", () => {
  expect(loadPlan(readInputFile(join(cliFolder(), "plan.json"))).name).toBe("Small plant");
});

it("gives every fault a line that begins with the file's name", () => {
  const folder = cliFolder({ "plan.json": { ...SMALL_PLAN, colour: 1, shape: 2 } });
  const path = join(folder, "plan.json");
  try {
    loadPlan(readInputFile(path));
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(BadInput);
    const { lines } = error as BadInput;
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line.startsWith(`${path}: `)).toBe(true);
  }
});
