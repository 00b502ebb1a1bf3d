import { formatFault, type Plan, readPlan } from "../plan/index.ts";
import { BadInput } from "./badInput.ts";
import type { InputFile } from "./inputFile.ts";
import { inputKind } from "./inputKind.ts";

/** The plan in a file; `BadInput` with every fault when it is not sound. */
export function loadPlan(file: InputFile): Plan {
  if (inputKind(file.json) === "study") {
    throw new BadInput([`${file.path}: this is a study; run it with "gambrel study", or name a plan.`]);
  }
  const { plan, faults } = readPlan(file.json, file.files);
  if (plan === null) throw new BadInput(faults.map((fault) => `${file.path}: ${formatFault(fault)}`));
  return plan;
}
