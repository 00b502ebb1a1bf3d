import { formatConfidence } from "../../sim/text/units/index.ts";
import type { LevelStep, ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { differenceResolution } from "./differenceWords.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** More steps than this are not told one by one. */
const MAX_STEPS = 4;

/**
 * What each factor did to a response, level by level, a sentence for each, the factor that moves it most first; null where
 * the study has no such steps.
 */
export function stepWords(results: StudyResults, info: ResponseInfo, format: ResponseFormat): string[] | null {
  const found = results.levelSteps?.[info.key] ?? [];
  const factors = results.factors.flatMap(({ name, levels }, index) => {
    const steps = found[index];
    return steps ? [{ name, levels, steps, size: Math.abs(steps.reduce((sum, { mean }) => sum + mean, 0)) }] : [];
  });
  if (factors.length === 0) return null;
  const parts = [...factors]
    .sort((a, b) => b.size - a.size)
    .map(({ name, levels, steps }) => `${upper(isolated(name))}: ${factorWords(levels, steps, format)}.`);
  const note = noteWords(results, factors[0]!.steps[0]!);
  return note === "" ? parts : [...parts, note];
}

/** What the ranges hold for, once for all steps. */
function noteWords({ factors, study }: StudyResults, { comparisons, low }: LevelStep): string {
  const averaged = factors.length > 1 ? "Each figure is an average over the other factors" : "";
  const among = comparisons > 1 ? `, sure even though ${comparisons} steps were compared` : "";
  const ranges = low === null ? "" : `anges are at ${formatConfidence(study.confidence)}${among}`;
  if (averaged === "") return ranges === "" ? "" : `R${ranges}.`;
  return ranges === "" ? `${averaged}.` : `${averaged}; r${ranges}.`;
}

function factorWords(levels: readonly string[], steps: readonly LevelStep[], format: ResponseFormat): string {
  if (steps.length <= MAX_STEPS) return steps.map((step) => oneStep(levels, step, format)).join(", ");
  const last = steps.findLast(({ shown }) => shown);
  if (last === undefined) return `none of its ${steps.length} steps makes a difference that shows`;
  const rest = last.to === levels.length - 1 ? "" : `; beyond that no step shows a difference`;
  return `the last step that shows a difference is ${oneStep(levels, last, format)}${rest}`;
}

function oneStep(
  levels: readonly string[],
  { from, to, mean, low, high, shown }: LevelStep,
  format: ResponseFormat,
): string {
  const where = `with ${isolated(levels[to]!)} instead of ${isolated(levels[from]!)}`;
  if (low === null || high === null) return `${format.comparison(mean, null)} ${where}`;
  const half = differenceResolution(low, high);
  const range = format.differenceRange(low, high, half);
  return `${shown ? format.comparison(mean, half) : "no difference shown"} ${where} (${range})`;
}

/** A name may begin with a mark of direction, which has no upper case. */
function upper(name: string): string {
  return name.replace(/[\p{L}]/u, (letter) => letter.toUpperCase());
}
