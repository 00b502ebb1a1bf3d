import { formatFault, type Plan, readPlan } from "../plan/index.ts";
import { BadInput, PLAN_GUIDE } from "./badInput.ts";
import type { InputFile } from "./inputFile.ts";
import { refuseOtherKind } from "./otherKind.ts";

export interface LoadedPlan {
  plan: Plan;
  /** What it probably does not mean, one line each. */
  warnings: string[];
}

/** The plan in a file; `BadInput` with every fault when it is not sound. */
export function loadPlan(file: InputFile): Plan {
  return loadPlanWithWarnings(file).plan;
}

/** As `loadPlan`, with the warnings. */
export function loadPlanWithWarnings(file: InputFile): LoadedPlan {
  refuseOtherKind(file, "plan");
  const reading = readPlan(file.json, file.files);
  if (reading.plan === null) {
    const faults = reading.faults.map((fault) => `${file.path}: ${formatFault(fault)}`);
    throw new BadInput(faults, [PLAN_GUIDE]);
  }
  const warnings = reading.warnings.map((warning) => `${file.path}: warning: ${formatFault(warning)}`);
  return { plan: reading.plan, warnings };
}
