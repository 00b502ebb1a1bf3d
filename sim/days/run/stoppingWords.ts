import type { StoppingRule, Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { SequentialState } from "../../maths/statistics/index.ts";
import { formatConfidence, formatSpan } from "../../text/units/index.ts";

const NAMED = 3;

/** The sentence that says whether a study became as precise as asked, after how many days, and what is not if not. */
export function stoppingWords(
  { variants, confidence }: Pick<Study, "variants" | "confidence">,
  { halfWidth, of }: StoppingRule,
  states: readonly (SequentialState | null)[],
  days: number,
  info: ResponseInfo,
): string {
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
  if (wide.length === 0) return `Precise enough after ${days} days of every variant: ${goal}.`;
  const named = wide.slice(0, NAMED).join(", ");
  const more = wide.length > NAMED ? ` and ${wide.length - NAMED} more` : "";
  return `Stopped at the most days allowed, ${days} of every variant, before ${goal}. Not reached by ${named}${more}.`;
}
