import type { StudyResults, VariantResults } from "../contract.ts";

/** What a mean of the study is taken over: "replications", or "antithetic pairs". */
export function observationNoun({ procedure }: StudyResults): string {
  return procedure.observation === "day" ? "replications" : "antithetic pairs";
}

/** How many observations a variant has when every one gives a value. */
export function observationsOf({ procedure }: StudyResults, { days }: Pick<VariantResults, "days">): number {
  return procedure.observation === "day" ? days : days / 2;
}
