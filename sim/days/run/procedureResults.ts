import type { StoppingRule, Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import { type SequentialState, verdict } from "../../maths/statistics/index.ts";
import { formatConfidence, formatSpan } from "../../text/units/index.ts";
import { type ProcedureResults, periodOf, type SelectionResults, type StoppingResults } from "../results/index.ts";
import { knownResponse } from "./daySource.ts";
import { type RuleValues, selectionOf } from "./selectionOf.ts";
import { selectionWords } from "./selectionWords.ts";
import { studyProgress } from "./studyProgress.ts";

const NAMED = 3;

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
  const words = selectionWords(
    state,
    names,
    knownResponse(study, response),
    antithetic ? "antithetic pair" : periodOf(study),
  );
  const { better } = state.question;
  const dropped = state.dropped.map(({ variant, after }) => ({ variant, after }));
  return { response, better, difference, probability, verdict: verdict(state), dropped, words };
}

/** The sentence that says whether a study became as precise as asked, after how many days, and what is not if not. */
export function stoppingWords(
  study: Pick<Study, "variants" | "confidence">,
  { halfWidth, of }: StoppingRule,
  states: readonly (SequentialState | null)[],
  days: number,
  info: ResponseInfo,
): string {
  const { variants, confidence } = study;
  const noun = `${periodOf(study)}s`;
  const span = (value: number): string => formatSpan(value, info, "plain");
  const about =
    halfWidth.kind === "absolute" ? span(halfWidth.value) : `${Number((halfWidth.value * 100).toPrecision(4))} %`;
  const whose = of === "mean" ? "mean" : "difference to today's plan";
  const share = halfWidth.kind === "absolute" ? "" : of === "mean" ? " of it" : " of its mean";
  const percent = formatConfidence(confidence);
  const goal = `a half-width of ${about}${share} for every ${whose} (${info.label}, ${percent} intervals)`;
  const wide = states.flatMap((state, variant) => {
    if (state === null || state.kind === "enough") return [];
    return [`"${variants[variant]!.name}" (${state.halfWidth === null ? "no interval" : span(state.halfWidth)})`];
  });
  if (wide.length === 0) return `Precise enough after ${days} ${noun} of every variant: ${goal}.`;
  const named = wide.slice(0, NAMED).join(", ");
  const more = wide.length > NAMED ? ` and ${wide.length - NAMED} more` : "";
  return `Stopped at the most ${noun} allowed, ${days} of every variant, before ${goal}. Not reached by ${named}${more}.`;
}
