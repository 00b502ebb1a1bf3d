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
/** Results that are told of in one sentence. */
const MAX_SAID = 3;

/** Results that the answer to "what if" tells of every try itself. */
const TOLD_ALREADY = new Set(["finish", "overtime", "carcasses", "headsPerHour", "cost.overtimePay"]);

/** In front of the result of a single day of a week, or of the whole week. */
const DAY = /^[^.]+\./;

/** What does next to nothing to the result that decides is told by the table alone, where there are others. */
const STILL = new Set<string>(["no difference", "too small"]);

/**
 * What became of the responses that a study asks for besides the one that decides, and of the time limits: a sentence for the
 * recommended plan, for each of a few, or over all. "With “X”: overtime down by 14 min; end of work 27 min earlier." Of many
 * results the first three that move are told, and how many more do; figures and ranges stand in the tables.
 */
export function otherResponseWords(results: StudyResults, decision: Decision): string[] {
  const { deciding, best, kind, rows } = decision;
  const { variants } = results;
  const isTold = ({ key }: ResponseInfo) =>
    key === deciding ||
    (kind === "what if" && variants.length > 1 && [key, key.replace(DAY, "")].some((each) => TOLD_ALREADY.has(each)));
  const asked = results.responses.filter((info) => !isTold(info));
  const others = variants.slice(1);
  const moving = others.filter((_, index) => !STILL.has(rows[index + 1]?.gain?.size ?? ""));
  const told = best !== null && best > 0 ? [variants[best]!] : others.length === 1 ? others : moving;
  if (results.screening !== null) return asked.flatMap((info) => effectWords(results, info)).slice(0, MAX_SAID);
  if (asked.length === 0) return [];
  if (variants.length === 1) return [sentence(someOf(asked.map((info) => valueWords(variants[0]!, info))))];
  if (told.length > MAX_TOLD) return [sentence(someOf(asked.map((info) => spreadWords(variants, info))))];
  return told.map((variant) => {
    const moved = asked.flatMap((info) => movedWords(variant, info));
    return `With ${quoted(variant.name)}: ${[...someOf(moved), ...stillWords(variant, asked)].join("; ")}.`;
  });
}

/** The first of a list, and how many more there are. */
function someOf(parts: readonly string[]): string[] {
  if (parts.length <= MAX_SAID) return [...parts];
  const more = parts.length - MAX_SAID;
  return [...parts.slice(0, MAX_SAID), `and ${more} more ${more === 1 ? "result" : "results"} (tables)`];
}

function stillWords(variant: VariantResults, asked: readonly ResponseInfo[]): string[] {
  const still = asked.filter((info) => movedWords(variant, info).length === 0);
  if (still.length === 0) return [];
  if (still.length === asked.length && asked.length > 1)
    return [`no difference shown in any of the ${asked.length} other results`];
  return [
    `no difference shown in ${still.length <= MAX_SAID ? still.map(lowered).join(" or ") : `${still.length} others`}`,
  ];
}

function sentence(parts: readonly string[]): string {
  const text = parts.join("; ");
  return `${text.replace(/\p{L}/u, (letter) => letter.toUpperCase())}.`;
}

function lowered(info: ResponseInfo): string {
  const text = info.key.startsWith("beyond.") ? `heads o${responseHeading(info).slice(1)}` : responseHeading(info);
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.replace(/\p{Lu}/u, (letter) => letter.toLowerCase()) : text;
}

/** "overtime down by 14 min"; nothing where no difference is shown. */
function movedWords(variant: VariantResults, info: ResponseInfo): string[] {
  const found = differenceIn(variant, info.key);
  if (found === undefined || !found.shown) return [];
  const { low, high } = differenceEnds(found);
  const falls = found.mean < 0;
  const turned = (value: number | null) => (value === null ? null : falls ? -value : value);
  const ends = { mean: Math.abs(found.mean), low: turned(falls ? high : low), high: turned(falls ? low : high) };
  const figure = { format: info.format, unit: info.unit.replace(/\/(head|kg)$|^carcasses$/, "") };
  const isExact = ends.low === null || ends.low === ends.high;
  const by = isExact ? formatSpan(ends.mean, figure, "plain") : formatDifference(ends, figure, "plain")[0];
  if (info.format === "clock") return [`${lowered(info)} ${by} ${falls ? "earlier" : "later"}`];
  return [`${lowered(info)} ${falls ? "down" : "up"} by ${by}`];
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
