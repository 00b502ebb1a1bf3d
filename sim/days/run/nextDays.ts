import type { Study } from "../../asked/study/index.ts";
import { nextBatch } from "../../maths/statistics/index.ts";
import { knownResponse } from "./daySource.ts";
import { type RuleValues, selectionOf } from "./selectionOf.ts";
import { studyProgress } from "./studyProgress.ts";

/** Observations of each variant in one round of a selection, at least. */
const LEAST_PER_ROUND = 10;
/** Observations of all variants in one round, about: work for many threads. Never their number, which must not show. */
const ROUND = 64;

/** Key of the response that decides how many days are run; null when their number is fixed. */
export function ruleResponse({ procedure }: Pick<Study, "procedure">): string | null {
  return procedure.stopping?.response ?? procedure.selection?.response ?? null;
}

/** Days of each variant before the first look: all of them where the study has no rule. */
export function firstDays({ variants, replications, procedure }: Study): number[] {
  const days = procedure.stopping?.atLeast ?? procedure.selection?.firstStage ?? replications;
  return variants.map(() => days);
}

/**
 * Days of each variant at the end of the next round; null when the study's rule is satisfied or its ceiling reached. A
 * function of the days themselves, so that neither threads nor stops can show in how many are run.
 */
export function nextDays(study: Study, days: readonly number[], values: RuleValues): number[] | null {
  const { stopping, selection, antithetic } = study.procedure;
  if (stopping !== null) {
    const { kind, nextDays } = studyProgress(values, study, knownResponse(study, stopping.response));
    return kind === "more" ? days.map(() => nextDays) : null;
  }
  if (selection === null) return null;
  const state = selectionOf(study, values);
  if (state === null) return null;
  const batch = nextBatch(state, Math.max(LEAST_PER_ROUND, Math.ceil(ROUND / state.survivors.length)));
  if (batch === null) return null;
  const until = (batch.from + batch.count) * (antithetic ? 2 : 1);
  return days.map((before, variant) => (batch.variants.includes(variant) ? until : before));
}
