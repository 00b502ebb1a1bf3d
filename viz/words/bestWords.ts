import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { differenceWords } from "./differenceWords.ts";
import { differenceIn } from "./headline.ts";
import { quoted } from "./quoted.ts";
import { ranking } from "./ranking.ts";
import { studyFormat } from "./studyFormat.ts";

/**
 * The variant that is best by its mean, and which others may be as good (comparisons with the best, all at once);
 * null where no direction is wanted or that was not worked out. Variants that an end of work cannot rank are ranked by
 * another response, and it is said why.
 */
export function bestWords(results: StudyResults, info: ResponseInfo): string | null {
  const { by, words } = ranking(results, info);
  const found = by === null ? null : bestBy(results, by);
  if (words === "") return found && `Best of ${found}.`;
  return found === null ? words : `${words} By ${lowered(isolated(by!.label))}, the best of ${found}.`;
}

function bestBy(results: StudyResults, info: ResponseInfo): string | null {
  const { key, better } = info;
  const known = results.variants.filter((variant) => variant.againstBest?.[key] !== undefined);
  if (better === null || known.length < 2) return null;
  const sign = better === "more" ? 1 : -1;
  const gap = (variant: VariantResults) => sign * variant.againstBest![key]!.gap;
  const best = known.reduce((found, each) => (gap(each) > gap(found) ? each : found), known[0]!);
  const rivals = known.filter((variant) => variant !== best && mayBeBest(results, variant, best, key));
  return `${results.variants.length} is ${subject(results, best, info)}; ${rivalWords(results, rivals)}`;
}

/** Today's plan is no rival of a variant that is shown to differ from it, whatever error rate that goes by. */
function mayBeBest({ variants }: StudyResults, variant: VariantResults, best: VariantResults, key: string): boolean {
  if (variant === variants[0] && differenceIn(best, key)?.shown) return false;
  return variant.againstBest![key]!.mayBeBest;
}

function subject(results: StudyResults, best: VariantResults, info: ResponseInfo): string {
  if (best === results.variants[0]) return `today's plan, ${quoted(best.name)}`;
  const format = studyFormat(results, info);
  const { sentence } = differenceWords(differenceIn(best, info.key), format, results.study.confidence);
  return `${quoted(best.name)}, ${sentence}`;
}

function rivalWords(results: StudyResults, rivals: readonly VariantResults[]): string {
  if (rivals.length === 0) return "all others are worse";
  const closest = closestToToday(results, rivals);
  if (rivals.length === 1) return `only ${quoted(closest.name)} may be as good`;
  const which = results.factors.length > 0 ? `; the one closest to today's plan is ${quoted(closest.name)}` : "";
  return `${rivals.length} others may be as good${which}`;
}

/** "throughput, shift start to the end of work" within a sentence. */
function lowered(label: string): string {
  return label.replace(/\p{Lu}/u, (letter) => letter.toLowerCase());
}

/** The variant whose levels are the fewest steps from those of today's plan, each factor's whole range counted as one. */
function closestToToday({ factors, variants }: StudyResults, among: readonly VariantResults[]): VariantResults {
  const today = variants[0]!.levels;
  const distance = ({ levels }: VariantResults) =>
    levels.reduce((sum, level, factor) => {
      const steps = Math.max(1, factors[factor]!.levels.length - 1);
      return sum + Math.abs(level - (today[factor] ?? 0)) / steps;
    }, 0);
  return among.reduce((closest, each) => (distance(each) < distance(closest) ? each : closest), among[0]!);
}
