import type { StudyResults, VariantResults } from "../contract.ts";

/** What is simulated again and again, and compared: a day, or where the plan has one a week. */
export function periodNoun({ plan }: Pick<StudyResults, "plan">): "day" | "week" {
  return plan.week === undefined ? "day" : "week";
}

/** What a mean of the study is taken over: "simulated days", or "pairs of simulated days". */
export function observationNoun(results: StudyResults): string {
  const what = `simulated ${periodNoun(results)}s`;
  return results.procedure.observation === "day" ? what : `pairs of ${what}`;
}

/** How many observations a variant has when every one gives a value. */
export function observationsOf({ procedure }: StudyResults, { days }: Pick<VariantResults, "days">): number {
  return procedure.observation === "day" ? days : days / 2;
}

/** "20 simulated days"; "up to 42 simulated days" where variants were given up on the way. */
export function observationsWords(results: StudyResults): string {
  const { replications } = results.study;
  const fewer = results.variants.some(({ days }) => days < replications);
  return `${fewer ? "up to " : ""}${observationsOf(results, { days: replications })} ${observationNoun(results)}`;
}
