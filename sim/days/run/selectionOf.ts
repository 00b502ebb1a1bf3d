import type { Study } from "../../asked/study/index.ts";
import { observe, pairMeans, type SelectionState, startSelection } from "../../maths/statistics/index.ts";
import { knownResponse } from "./daySource.ts";

/** Values of the response a rule looks at: `[variant][day]`, as many days of each variant as were run. */
export type RuleValues = readonly (readonly (number | null)[])[];

/**
 * Where a study's selection stands after the days so far, taken in one by one from the first: the same days give the
 * same state, however they were cut into rounds. Null without a selection, and where the base is all there is to pick.
 */
export function selectionOf(study: Study, values: RuleValues): SelectionState | null {
  const { selection, antithetic } = study.procedure;
  const k = study.variants.length;
  if (selection === null || k < 2) return null;
  const { response, difference: delta, probability, firstStage, atMost } = selection;
  const better = selection.better ?? knownResponse(study, response).better;
  if (better === null) throw new Error(`selectionOf: "${response}" has no wanted direction`);
  const perObservation = antithetic ? 2 : 1;
  const n0 = firstStage / perObservation;
  const question = { k, n0, delta, alpha: 1 - probability, better, atMost: atMost / perObservation };
  const observed = antithetic ? values.map(pairMeans) : values;
  const most = Math.max(...observed.map(({ length }) => length));
  const rows = Array.from({ length: most }, (_, observation) => observed.map((list) => list[observation]));
  return observe(startSelection(question), rows);
}
