import { formatRange, formatResponse } from "../observations/index.ts";
import type { Estimate, ResponseInfo, StudyResults, VariantResults } from "../results/index.ts";
import { textTable } from "./textTable.ts";

/**
 * A study's findings on the headline response, as lines of text: every mean with its interval, every difference in
 * words.
 */
export function studySummary(results: StudyResults): string[] {
  const { study, responses, variants } = results;
  const headline = responses[0]!;
  const percent = `${Number((study.confidence * 100).toFixed(2))} %`;
  return [
    `${count(variants.length, "variant")}, ${count(study.replications, "replication")} each, seed "${study.seed}", ${percent} intervals`,
    `${headline.label}:`,
    ...variantLines(variants, headline),
    ...chanceNote(variants.length - 1, study.confidence),
    ...variants.flatMap(unfinishedWarning),
  ];
}

function variantLines(variants: readonly VariantResults[], headline: ResponseInfo): string[] {
  const table = textTable(
    variants.map(({ name, estimates, day }) => {
      return [name, ...estimateCells(estimates[headline.key], headline, day.startClockSeconds)];
    }),
  );
  return variants.flatMap(({ differences }, index) => {
    const words = differences?.[headline.key]?.words;
    const row = `  ${table[index]!}`;
    return words === undefined ? [row] : [row, `      ${words}`];
  });
}

/** Mean and interval; says in words which of them is missing. */
function estimateCells(found: Estimate | undefined, info: ResponseInfo, startClockSeconds: number): [string, string] {
  if (found === undefined) return ["no value", ""];
  const show = (value: number): string => formatResponse(value, info, startClockSeconds);
  if (found.low === null || found.high === null) return [show(found.mean), "(one value, no interval)"];
  return [show(found.mean), `(${formatRange(show(found.low), show(found.high))})`];
}

/** Every interval holds by itself; a reader of many of them must know what chance alone would show. */
function chanceNote(comparisons: number, confidence: number): string[] {
  if (comparisons < 2) return [];
  const expected = Number((comparisons * (1 - confidence)).toFixed(2));
  return [
    `Each interval stands by itself: of ${comparisons} comparisons, chance alone shows about ${expected} on average.`,
  ];
}

function unfinishedWarning({ name, values }: VariantResults): string[] {
  const days = values.unfinished ?? [];
  const cut = days.filter((value) => value === 1).length;
  if (cut === 0) return [];
  return [
    `Note on "${name}": ${cut} of ${count(days.length, "day")} did not end by itself (cut off at the plan's longest day, or stuck); its end is a lower bound.`,
  ];
}

function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? "" : "s"}`;
}
