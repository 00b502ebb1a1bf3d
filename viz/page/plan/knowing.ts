import type { StudyResults, VariantResults } from "../../../sim/days/results/index.ts";
import { studyFormat } from "../../words/index.ts";

/** How many figures a plan calls uncertain, and how many of these nobody measured. */
export interface Unsure {
  figures: number;
  guesses: number;
}

export const AS_IF_KNOWN = "as if we knew every figure";
export const AS_WELL_AS_KNOWN = "as well as we know them";

/** Of a sound plan as its file has it. */
export function unsureOf(plan: unknown): Unsure {
  const uncertain = (plan as { uncertain?: unknown } | null)?.uncertain;
  const all = Array.isArray(uncertain) ? (uncertain as { kind?: unknown; guess?: unknown }[]) : [];
  return {
    figures: all.length,
    guesses: all.filter(({ kind, guess }) => kind === "guess" || (guess !== undefined && kind === undefined)).length,
  };
}

/** "5 figures of this plan are uncertain, 2 of them are guesses". */
export function unsureWords({ figures, guesses }: Unsure): string {
  const all = figures === 1 ? "One figure of this plan is uncertain" : `${figures} figures of this plan are uncertain`;
  if (guesses === 0) return all;
  if (figures === 1) return `${all}, by guess`;
  if (guesses === figures) return `${all}, all of them guesses`;
  return `${all}, ${guesses} of them ${guesses === 1 ? "a guess" : "guesses"}`;
}

/** Between which ends all of these days lie, as if every figure were known and with figures drawn anew for each day. */
export function spansTold(known: StudyResults, drawn: StudyResults): string {
  const info = known.responses.find(({ key }) => key === "finish") ?? known.responses[0];
  if (info === undefined) return "";
  const what = info.key === "finish" ? "work ends" : `${info.label}:`;
  const lines = known.variants.flatMap((variant, index) => {
    const spans = [spanOf(known, variant, info), spanOf(drawn, drawn.variants[index]!, info)];
    if (spans.includes(null)) return [];
    const of = index === 0 ? `On these ${known.study.replications} days` : "In the variant";
    return [`${of} ${what} ${spans[0]} ${AS_IF_KNOWN}, ${spans[1]} ${AS_WELL_AS_KNOWN}.`];
  });
  return lines.join(" ");
}

function spanOf(
  results: StudyResults,
  variant: VariantResults,
  info: StudyResults["responses"][number],
): string | null {
  const values = (variant.values[info.key] ?? []).filter((value) => value !== null);
  if (values.length === 0) return null;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const format = studyFormat(results, info);
  const fine = (high - low) / 2;
  return `between ${format.value(low, fine)} and ${format.value(high, fine)}`;
}
