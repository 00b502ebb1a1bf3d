import type { Study } from "../../asked/study/index.ts";
import { verdict } from "../../maths/statistics/index.ts";
import type { ProcedureResults, SelectionResults, StoppingResults } from "../results/index.ts";
import { knownResponse } from "./daySource.ts";
import { type RuleValues, selectionOf } from "./selectionOf.ts";
import { selectionWords } from "./selectionWords.ts";
import { stoppingWords } from "./stoppingWords.ts";
import { studyProgress } from "./studyProgress.ts";

/** What came of the rules a study is run by. `valuesOf` gives the days of a response, `[variant][day]`, as run. */
export function procedureResults(study: Study, valuesOf: (key: string) => RuleValues): ProcedureResults {
  const { antithetic, errorRate, controls } = study.procedure;
  return {
    observation: antithetic ? "antithetic pair" : "day",
    errorRate,
    stopping: stoppingResults(study, valuesOf),
    selection: selectionResults(study, valuesOf),
    controls,
  };
}

function stoppingResults(study: Study, valuesOf: (key: string) => RuleValues): StoppingResults | null {
  const { stopping } = study.procedure;
  if (stopping === null) return null;
  const info = knownResponse(study, stopping.response);
  const values = valuesOf(stopping.response);
  const { kind, variants } = studyProgress(values, study, info);
  const reached = kind === "enough" ? "enough" : "ceiling";
  const words = stoppingWords(study, stopping, variants, values[0]!.length, info);
  return { response: stopping.response, kind: reached, variants, words };
}

function selectionResults(study: Study, valuesOf: (key: string) => RuleValues): SelectionResults | null {
  const { selection, antithetic } = study.procedure;
  if (selection === null) return null;
  const { response, difference, probability } = selection;
  const state = selectionOf(study, valuesOf(response));
  if (state === null) return null;
  const names = study.variants.map(({ name }) => name);
  const words = selectionWords(state, names, knownResponse(study, response), antithetic ? "antithetic pair" : "day");
  const { better } = state.question;
  const dropped = state.dropped.map(({ variant, after }) => ({ variant, after }));
  return { response, better, difference, probability, verdict: verdict(state), dropped, words };
}
