import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { differenceWords } from "./differenceWords.ts";
import { differenceIn } from "./headline.ts";
import { quoted } from "./quoted.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/**
 * The variant that is best by its mean, and which others may be the best too (comparisons with the best, all at once);
 * null where no direction is wanted or that was not worked out.
 */
export function bestWords(results: StudyResults, info: ResponseInfo, format: ResponseFormat): string | null {
  const { key, better } = info;
  const known = results.variants.filter((variant) => variant.againstBest?.[key] !== undefined);
  if (better === null || known.length < 2) return null;
  const sign = better === "more" ? 1 : -1;
  const gap = (variant: VariantResults) => sign * variant.againstBest![key]!.gap;
  const best = known.reduce((found, each) => (gap(each) > gap(found) ? each : found), known[0]!);
  const rivals = known.filter((variant) => variant !== best && variant.againstBest![key]!.mayBeBest);
  return `Best of all ${results.variants.length} is ${subject(results, best, info, format)}; ${rivalWords(results, rivals)}.`;
}

function subject(results: StudyResults, best: VariantResults, info: ResponseInfo, format: ResponseFormat): string {
  if (best === results.variants[0]) return `the base case, ${quoted(best.name)}`;
  const { sentence } = differenceWords(differenceIn(best, info.key), format, results.study.confidence);
  return `${quoted(best.name)}, ${sentence}`;
}

function rivalWords(results: StudyResults, rivals: readonly VariantResults[]): string {
  if (rivals.length === 0) return "all others are shown to be worse than it";
  const least = lowestLevels(results, rivals);
  if (rivals.length === 1) return `only ${quoted(least.name)} cannot be told from it`;
  const which = results.factors.length > 0 ? `, of which ${quoted(least.name)} has the lowest levels` : "";
  return `${rivals.length} others cannot be told from it${which}`;
}

/** The variant with the lowest levels: what asks for least, where levels go up. */
function lowestLevels(results: StudyResults, variants: readonly VariantResults[]): VariantResults {
  const height = ({ levels }: VariantResults) =>
    levels.reduce((sum, level, factor) => sum + level / Math.max(1, results.factors[factor]!.levels.length - 1), 0);
  return variants.reduce((lowest, each) => (height(each) < height(lowest) ? each : lowest), variants[0]!);
}
