import type { Estimate, ResponseInfo } from "../../days/results/index.ts";
import { formatEstimate, formatNumber, formatShare, formatSpan, groupDigits } from "../../text/units/index.ts";
import { type Improvement, periodOf, type Recommendation, type SearchFindings } from "./improvement.ts";

/** What was found, in sentences: the recommendation, what it is worth, how sure that is, the limits, and what was tried. */
export function improveWords(found: SearchFindings): string[] {
  const { recommended } = found;
  return [
    ...(recommended === null ? [noneWords(found)] : pickWords(recommended, found)),
    ...harmWords(found),
    ...(recommended?.limits ?? []).map((limit) => limitWords(limit, found)),
    effortWords(found),
  ];
}

/** What is never recommended, and why. */
function harmWords(found: SearchFindings): string[] {
  const { finalists, tried } = found;
  const left = tried.filter(({ allowed, finalist, harm }) => allowed && !finalist && harm !== null).length;
  const [were, they] = left === 1 ? ["was", "it"] : ["were", "they"];
  const leftOut = `${left} of the arrangements tried ${were} left out: in the search ${they} broke a limit more than today's plan does, handled fewer heads${found.period === undefined ? "" : ", or were late with more orders"}.`;
  return [...finalists.flatMap(pickedNever), ...(left === 0 ? [] : [leftOut])];
}

function pickedNever({ name, harm }: Improvement["finalists"][number]): string[] {
  return harm === null ? [] : [`Not recommended, whatever it brings: ${name}. Compared with today's plan, ${harm}.`];
}

function noneWords(found: SearchFindings): string {
  const { choice, finalists } = found;
  const days = `${periodOf(found)}s`;
  if (choice.kind === "no value") return `No choice is possible: on some ${days} the goal has no value.`;
  const harmful = finalists.filter(({ limits, harm }) => limits === "kept" && harm !== null).length;
  if (harmful > 0)
    return `Every finalist breaks a limit or does harm, so none of the ${finalists.length} is recommended.`;
  const open = finalists.filter(({ limits }) => limits === "not shown").length;
  const rest = open === 0 ? "All break one." : `${open} of them may keep them; more ${days} would tell.`;
  return `None of the ${finalists.length} finalists is shown to keep the limits, so none is recommended. ${rest}`;
}

function pickWords(recommended: Recommendation, found: SearchFindings): string[] {
  const { choice, finalists, goal, confidence } = found;
  const days = `${periodOf(found)}s`;
  const zone = groupDigits(formatSpan(choice.difference, goal, "plain"));
  const rivals = finalists.filter(({ limits, harm }) => limits === "kept" && harm === null).length;
  const percent = formatShare(choice.probability);
  const promise = {
    selected: `It is the best of ${rivals} finalists with a probability of ${percent} or more; finalists within ${zone} of the best count as equal. Arrangements dropped earlier were not tested as thoroughly.`,
    ceiling: `The most ${days} allowed did not tell the finalists apart: this one has the best average, and nothing is promised. Allow more ${days}, or let more than ${zone} count as equal.`,
    "only one": "It was the only finalist, so there was nothing to choose.",
    "no value": "",
    "limits not kept": "",
  }[choice.kind];
  const against = recommended.againstBase;
  const said = recommended.isBase ? "Recommended: leave today's plan as it is." : `Recommended: ${recommended.name}.`;
  const meets = recommended.goal === null ? [] : [goalWords(recommended.goal, goal, confidence, days)];
  const worth =
    against === null
      ? []
      : [`Simulated again on new ${days}, because a winner is often partly lucky: ${groupDigits(against.words)}`];
  return [said, ...meets, ...worth, promise];
}

function goalWords(found: Estimate, info: ResponseInfo, confidence: number, days: string): string {
  const [mean, range] = formatEstimate(found, info, 0);
  const ends = range === "" ? "" : `${groupDigits(range)} at ${formatShare(confidence)}, `;
  return `${info.label}: ${groupDigits(mean)} (${ends}${found.n} ${days}).`;
}

const SHARE: ResponseInfo = { key: "", label: "", unit: "", format: "share", better: "less" };

function limitWords(
  { name, share, of, found }: Recommendation["limits"][number],
  { confidence, period }: Pick<SearchFindings, "confidence" | "period">,
): string {
  if (found === null) return `${name}: no head was timed.`;
  const days = `${periodOf({ period })}s`;
  const { n, mean, high } = found;
  const allowed = `at most ${formatShare(share)} may be`;
  if (mean === 0 && of === "orders") return `Orders: none was late in ${n} ${days}; ${allowed}.`;
  if (mean === 0) return `${name}: no head was outside it on ${n} ${days}; ${allowed}.`;
  const [text, range] = formatEstimate(found, SHARE, 0);
  const ends = range === "" ? "" : ` (${range} at ${formatShare(confidence)})`;
  const doubt =
    high !== null && high < share
      ? ""
      : ` The ${days} of the choice showed less than that; these new ${days} alone do not.`;
  if (of === "orders") return `Orders: ${text} of them are late${ends}; ${allowed}.${doubt}`;
  return `${name}: ${text} of heads are outside it${ends}; ${allowed}.${doubt}`;
}

function effortWords(found: SearchFindings): string {
  const { effort } = found;
  const days = `${periodOf(found)}s`;
  const { designsTried, designsAllowed, searchDays, choiceDays, curveDays, comparisonDays, fullEnumerationDays } =
    effort;
  const total = searchDays + choiceDays + curveDays + comparisonDays;
  const share = formatShare(total / fullEnumerationDays);
  const curve = curveDays === 0 ? "" : `${count(curveDays)} for the curve, `;
  return `${count(total)} ${days} were simulated: ${count(searchDays)} to search among ${count(designsTried)} arrangements, ${count(choiceDays)} for the choice, ${curve}${count(comparisonDays)} for the comparison with today's plan. Trying all ${count(designsAllowed)} allowed arrangements would take ${count(fullEnumerationDays)} ${days} or more; this was ${share} of that.`;
}

function count(value: number): string {
  return groupDigits(formatNumber(value));
}
