import type { LevelStep, ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { confidenceWords } from "./confidenceWords.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** More steps than this are not told one by one. */
const MOST_STEPS = 4;

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
    .map(({ name, levels, steps }) => `${isolated(name)}, ${factorWords(levels, steps, format)}`);
  const { comparisons, low } = factors[0]!.steps[0]!;
  const at =
    low === null
      ? ""
      : ` (${confidenceWords(results.study.confidence)}${comparisons > 1 ? ", all steps at once" : ""})`;
  const others = results.factors.length > 1 ? ", averaged over the other factors" : "";
  return parts.map((part, index) =>
    index === 0 ? `Step by step${others}${at}: ${part}.` : `In the same way, ${part}.`,
  );
}

function factorWords(levels: readonly string[], steps: readonly LevelStep[], format: ResponseFormat): string {
  if (steps.length <= MOST_STEPS) return steps.map((step) => oneStep(levels, step, format)).join(", ");
  const last = steps.findLast(({ shown }) => shown);
  if (last === undefined) return `none of its ${steps.length} steps shows a difference`;
  const rest = last.to === levels.length - 1 ? "" : `, and no later step shows a difference`;
  return `its last step that shows a difference is ${oneStep(levels, last, format)}${rest}`;
}

function oneStep(
  levels: readonly string[],
  { from, to, mean, low, high, shown }: LevelStep,
  format: ResponseFormat,
): string {
  const where = `from ${isolated(levels[from]!)} to ${isolated(levels[to]!)}`;
  if (low === null || high === null) return `${where}: ${format.comparison(mean, null)}`;
  const half = (high - low) / 2;
  const range = format.differenceRange(low, high, half);
  return shown ? `${where}: ${format.comparison(mean, half)} (${range})` : `${where}: no difference shown (${range})`;
}
