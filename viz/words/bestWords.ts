import { formatDecimals } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { differenceWords } from "./differenceWords.ts";
import { differenceIn } from "./headline.ts";
import { quoted } from "./quoted.ts";
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

/** When a day ends says nothing by itself where one variant works more heads than another. */
export const ENDS = new Set(["finish", "lastOut", "cleaningEnd", "overtime"]);
/** Told instead, the first that the study reports: what does not grow with the number of heads. */
const INSTEAD = ["headsPerHour", "costPerHead", "marginPerHead", "costPerKg"];
/** Heads that are hung may differ by so much through the luck of the day: losses in transport and lairage. */
const LUCK = 0.01;

/** By which response a study's variants may be ranked. */
export interface Ranking {
  /** Null where none of those reported can rank them. */
  by: ResponseInfo | null;
  /** Why not by the one asked for; "" where it is that one. */
  words: string;
}

/**
 * The response by which variants may be ranked when a reader asks for `info`: itself, unless it is an end of work and the
 * variants handle different numbers of heads (by more than 1 % of those hung on the first day).
 */
export function ranking(results: StudyResults, info: ResponseInfo): Ranking {
  const hung = results.variants.map(({ day }) => day.heads.hung);
  const [least, most] = [Math.min(...hung), Math.max(...hung)];
  if (!ENDS.has(info.key) || most - least <= LUCK * most) return { by: info, words: "" };
  const by = INSTEAD.flatMap((key) => results.responses.filter((response) => response.key === key))[0] ?? null;
  const heads = `${formatDecimals(least, 0)} to ${formatDecimals(most, 0)} on the first day`;
  const said = `The variants handle different numbers of heads (${heads}), so the end of work alone cannot rank them.`;
  return { by, words: by === null ? `${said} Ask the study for 'headsPerHour' to rank them by throughput.` : said };
}
