import { type Fault, flowWarnings, formatFault, type Plan, readPlan } from "../asked/plan/index.ts";
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
  return read(file).plan;
}

/** As `loadPlan`, with the warnings; those about the flow of heads take some time to find. */
export function loadPlanWithWarnings(file: InputFile): LoadedPlan {
  const { plan, warnings } = read(file);
  const all = [...warnings, ...flowWarnings(plan, file.json)];
  return { plan, warnings: all.map((warning) => `${file.path}: warning: ${formatFault(warning)}`) };
}

function read(file: InputFile): { plan: Plan; warnings: Fault[] } {
  refuseOtherKind(file, "plan");
  const reading = readPlan(file.json, file.files);
  if (reading.plan !== null) return reading;
  const faults = reading.faults.map((fault) => `${file.path}: ${formatFault(fault)}`);
  throw new BadInput(faults, [PLAN_GUIDE]);
}
