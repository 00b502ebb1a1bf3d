import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { differenceIn, differenceWords, estimateWords, observationNoun, quoted, studyFormat } from "../words/index.ts";

/** Up to so many variants are told one by one; beyond it base, highest and lowest stand for all. */
const MOST_TOLD = 6;

/** One response of the variants in words, for those who cannot see the picture. */
export function describeVariants(results: StudyResults, info: ResponseInfo): string {
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const noun = observationNoun(results);
  const tell = (variant: VariantResults) =>
    `${quoted(variant.name)}: ${estimateWords(variant.estimates[info.key], format, confidence, noun).phrase}.`;
  const { variants } = results;
  if (variants.length <= MOST_TOLD) return variants.map(tell).join(" ");
  const known = variants.filter((variant) => (variant.estimates[info.key]?.n ?? 0) > 0);
  const sorted = [...known].sort((a, b) => a.estimates[info.key]!.mean - b.estimates[info.key]!.mean);
  if (sorted.length === 0) return "No variant has a value.";
  return `Today's plan, ${tell(variants[0]!)} Lowest of ${known.length} variants ${tell(sorted[0]!)} Highest ${tell(sorted.at(-1)!)}`;
}

/** Differences to the base case in words, all or the two ends. */
export function describeDifferences(results: StudyResults, info: ResponseInfo): string {
  const format = studyFormat(results, info);
  const tell = (variant: VariantResults) =>
    `${quoted(variant.name)}: ${differenceWords(differenceIn(variant, info.key), format, results.study.confidence).sentence}.`;
  const variants = results.variants.slice(1);
  if (variants.length <= MOST_TOLD) return variants.map(tell).join(" ");
  const mean = (variant: VariantResults) => differenceIn(variant, info.key)?.mean ?? 0;
  const sorted = [...variants].sort((a, b) => mean(a) - mean(b));
  const shown = variants.filter((variant) => differenceIn(variant, info.key)?.shown).length;
  return `${shown} of ${variants.length} differences are shown. Lowest ${tell(sorted[0]!)} Highest ${tell(sorted.at(-1)!)}`;
}
