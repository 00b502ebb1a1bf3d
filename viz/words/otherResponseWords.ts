import { formatDifference, formatEstimate, formatSpan } from "../../sim/text/units/index.ts";
import type { Decision, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { responseHeading } from "./decisionTable.ts";
import { differenceEnds } from "./differenceWords.ts";
import { differenceIn } from "./headline.ts";
import { quoted } from "./quoted.ts";
import { rankedEffects } from "./screeningWords.ts";
import { studyFormat } from "./studyFormat.ts";

/** Plans that are told of one by one where none is recommended. */
const MAX_TOLD = 3;

/**
 * What became of the responses that a study asks for besides the one that decides, and of the time limits: a sentence for the
 * recommended plan, for each of a few, or over all. "With “X”: overtime falls by 14 min; cost a head falls by 0.4 EUR." The
 * ranges stand in the table.
 */
export function otherResponseWords(results: StudyResults, { deciding, best }: Decision): string[] {
  const { variants } = results;
  const asked = results.responses.filter(({ key }) => key !== deciding);
  const told = best !== null && best > 0 ? [variants[best]!] : variants.slice(1);
  if (results.screening !== null) return asked.flatMap((info) => effectWords(results, info));
  if (asked.length === 0) return [];
  if (variants.length === 1) return [`${sentence(asked.map((info) => valueWords(variants[0]!, info)))}`];
  if (told.length > MAX_TOLD) return [sentence(asked.map((info) => spreadWords(variants, info)))];
  return told.map((variant) => {
    const moved = asked.flatMap((info) => movedWords(variant, info));
    const still = asked.filter((info) => movedWords(variant, info).length === 0).map(lowered);
    const rest = still.length === 0 ? [] : [`no difference shown in ${still.join(" or ")}`];
    return `With ${quoted(variant.name)}: ${[...moved, ...rest].join("; ")}.`;
  });
}

function sentence(parts: readonly string[]): string {
  const text = parts.join("; ");
  return `${text.replace(/\p{L}/u, (letter) => letter.toUpperCase())}.`;
}

function lowered(info: ResponseInfo): string {
  const text = info.key.startsWith("beyond.") ? `heads o${responseHeading(info).slice(1)}` : responseHeading(info);
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.replace(/\p{Lu}/u, (letter) => letter.toLowerCase()) : text;
}

/** "overtime falls by 14 min"; nothing where no difference is shown. */
function movedWords(variant: VariantResults, info: ResponseInfo): string[] {
  const found = differenceIn(variant, info.key);
  if (found === undefined || !found.shown) return [];
  const { low, high } = differenceEnds(found);
  const falls = found.mean < 0;
  const turned = (value: number | null) => (value === null ? null : falls ? -value : value);
  const ends = { mean: Math.abs(found.mean), low: turned(falls ? high : low), high: turned(falls ? low : high) };
  const figure = { format: info.format, unit: info.unit.replace(/\/(head|kg)$/, "") };
  const isExact = ends.low === null || ends.low === ends.high;
  const by = isExact ? formatSpan(ends.mean, figure, "plain") : formatDifference(ends, figure, "plain")[0];
  if (info.format === "clock") return [`${lowered(info)} comes ${by} ${falls ? "earlier" : "later"}`];
  return [`${lowered(info)} ${falls ? "falls" : "rises"} by ${by}`];
}

function valueWords({ estimates, day }: VariantResults, info: ResponseInfo): string {
  const found = estimates[info.key];
  if (found === undefined) return `${lowered(info)}: no value`;
  const [mean, range] = formatEstimate(found, info, day.startClockSeconds);
  return `${lowered(info)}: ${mean}${range === "" ? "" : ` (${range})`}`;
}

/** Of many plans: from the least mean to the largest. */
function spreadWords(variants: readonly VariantResults[], info: ResponseInfo): string {
  const means = variants.flatMap(({ estimates }) => estimates[info.key]?.mean ?? []);
  if (means.length === 0) return `${lowered(info)}: no value`;
  const text = (mean: number) => formatEstimate({ mean, low: null, high: null }, info, clockOf(variants))[0];
  return `${lowered(info)}: ${text(Math.min(...means))} to ${text(Math.max(...means))} over all ${variants.length} plans`;
}

function clockOf([first]: readonly VariantResults[]): number {
  return first!.day.startClockSeconds;
}

function effectWords(results: StudyResults, info: ResponseInfo): string[] {
  const [first] = rankedEffects(results, info);
  if (first === undefined) return [];
  const { muStar, muStarHalfWidth } = first.effects;
  const size = studyFormat(results, info).size(muStar, muStarHalfWidth);
  return [`${isolated(info.label)}: \u201C${first.name}\u201D matters most, by ${size} over its range.`];
}
