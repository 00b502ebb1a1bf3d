import type { Estimate, ResponseInfo } from "../../days/results/index.ts";
import { formatEstimate, formatNumber, formatShare, formatSpan, groupDigits } from "../../text/units/index.ts";
import type { Improvement, Recommendation } from "./improvement.ts";

/** What was found, in sentences: the pick, what it is worth, how sure that is, the limits, and what was tried. */
export function improveWords(found: Omit<Improvement, "words">): string[] {
  const { recommended } = found;
  return [
    ...(recommended === null ? [noneWords(found)] : pickWords(recommended, found)),
    ...harmWords(found),
    ...(recommended?.limits ?? []).map((limit) => limitWords(limit, found.confidence)),
    effortWords(found),
  ];
}

/** What was never picked, and why. */
function harmWords({ finalists, tried }: Omit<Improvement, "words">): string[] {
  const left = tried.filter(({ allowed, finalist, harm }) => allowed && !finalist && harm !== null).length;
  const leftOut = `${left} of the designs tried were left out: on the days of the search they broke a limit more than the plan as it is, or handled fewer heads.`;
  return [...finalists.flatMap(pickedNever), ...(left === 0 ? [] : [leftOut])];
}

function pickedNever({ name, harm }: Improvement["finalists"][number]): string[] {
  return harm === null ? [] : [`Not picked, whatever it brings: ${name}. Compared with the plan as it is, ${harm}.`];
}

function noneWords({ choice, finalists }: Omit<Improvement, "words">): string {
  if (choice.kind === "no value") return "No choice is possible: on some day the goal has no value.";
  const harmful = finalists.filter(({ limits, harm }) => limits === "kept" && harm !== null).length;
  if (harmful > 0)
    return `None of the ${finalists.length} finalists keeps the limits asked for and does no harm, so none is recommended.`;
  const open = finalists.filter(({ limits }) => limits === "not shown").length;
  const rest = open === 0 ? "All are shown to break one." : `${open} of them may keep them; more days would tell.`;
  return `None of the ${finalists.length} finalists is shown to keep the limits, so none is recommended. ${rest}`;
}

function pickWords(
  recommended: Recommendation,
  { choice, finalists, goal, confidence }: Omit<Improvement, "words">,
): string[] {
  const zone = groupDigits(formatSpan(choice.difference, goal, "plain"));
  const rivals = finalists.filter(({ limits, harm }) => limits === "kept" && harm === null).length;
  const percent = formatShare(choice.probability);
  const promise = {
    selected: `It is picked as the best of ${rivals} finalists: right with a probability of ${percent} or more if it is better than the others by ${zone}; of finalists nearer to the best than that, any may be picked. The designs that are no finalists were left by the search, which promises nothing.`,
    ceiling: `The finalists were not told apart at the most days allowed: it has the best mean, without a promise. Allow more days or a larger difference than ${zone}.`,
    "only one": "It is the only finalist, so there was nothing to choose.",
    "no value": "",
    "limits not kept": "",
  }[choice.kind];
  const against = recommended.againstBase;
  const said = recommended.isBase ? "Recommended: leave the plan as it is." : `Recommended: ${recommended.name}.`;
  const meets = recommended.goal === null ? [] : [goalWords(recommended.goal, goal, confidence)];
  const worth =
    against === null
      ? []
      : [
          `Against the plan as it is, over ${against.n} days that neither search nor choice saw, on the same random numbers: ${groupDigits(against.words)}`,
        ];
  return [said, ...meets, ...worth, promise];
}

function goalWords(found: Estimate, info: ResponseInfo, confidence: number): string {
  const [mean, range] = formatEstimate(found, info, 0);
  const ends = range === "" ? "" : `${groupDigits(range)} at ${formatShare(confidence)}, `;
  return `${info.label}: ${groupDigits(mean)} (${ends}${found.n} days).`;
}

const SHARE: ResponseInfo = { key: "", label: "", unit: "", format: "share", better: "less" };

function limitWords({ name, share, found }: Recommendation["limits"][number], confidence: number): string {
  if (found === null) return `${name}: no head passed it.`;
  const { n, mean, high } = found;
  const allowed = `at most ${formatShare(share)} may be`;
  if (mean === 0) return `${name}: no head was outside it on ${n} days; ${allowed}.`;
  const [text, range] = formatEstimate(found, SHARE, 0);
  const ends = range === "" ? "" : ` (${range} at ${formatShare(confidence)})`;
  const doubt =
    high !== null && high < share
      ? ""
      : " The days of the choice showed that it is less; these new days alone do not show it.";
  return `${name}: ${text} of heads are outside it${ends}; ${allowed}.${doubt}`;
}

function effortWords({ effort }: Omit<Improvement, "words">): string {
  const { designsTried, designsAllowed, searchDays, choiceDays, curveDays, comparisonDays, fullEnumerationDays } =
    effort;
  const total = searchDays + choiceDays + curveDays + comparisonDays;
  const share = formatShare(total / fullEnumerationDays);
  return `${count(total)} days simulated (${count(searchDays)} in the search of ${count(designsTried)} designs, ${count(choiceDays)} in the choice, ${count(curveDays)} for the curve, ${count(comparisonDays)} for the comparison). All ${count(designsAllowed)} designs that are allowed would take ${count(fullEnumerationDays)} in the first stage of the choice alone, so this is ${share} of it.`;
}

function count(value: number): string {
  return groupDigits(formatNumber(value));
}
