import { CRATE_STEP_NAMES, CRATE_STEPS, type CrateStepKey } from "../parts/crateStepNames.ts";
import { WAYS } from "../plan.ts";
import { type Located, located } from "./located.ts";

export interface LocatedStep extends Located {
  key: CrateStepKey;
  /** What results call it. */
  name: string;
}

/** The crate steps as written, in the order crates pass them. */
export function crateStepsOf(json: unknown): LocatedStep[] {
  const way = WAYS.find((one) => one === located(json, "liveHandling")?.value.way) ?? "hand-slid";
  return CRATE_STEPS.flatMap((key) => {
    const step = located(json, "liveHandling", key);
    return step === null ? [] : [{ ...step, key, name: CRATE_STEP_NAMES[way][key] }];
  });
}
