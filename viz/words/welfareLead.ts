import { capital, formatConfidence, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { isSingleDay } from "./headline.ts";
import { periodNoun } from "./observations.ts";
import { quoted } from "./quoted.ts";
import { responseFormat } from "./responseFormat.ts";
import { shareWords } from "./shareWords.ts";

type KillLine = NonNullable<VariantResults["killLine"]>;
type Limit = KillLine["limits"][number];

/**
 * One sober paragraph that goes before everything else, when a stunned head was outside a limit from stunning to sticking, or when
 * nothing in the plan keeps stunned heads from waiting. Null when all is well, or where the plan says nothing of stunning.
 */
export function welfareLead(results: StudyResults): string | null {
  const beyond = results.variants.flatMap((variant) => (worstLimit(variant) === null ? [] : [variant]));
  const open = openWords(results.variants);
  if (beyond.length === 0 && open === "") return null;
  const found = beyond.length === 0 ? "" : isSingleDay(results) ? dayWords(results) : studyWords(results, beyond);
  const sentences = [
    "Animal welfare first.",
    found,
    open,
    "A stunned head that waits may wake: settle this with the official veterinarian before you read on.",
  ];
  return sentences.filter((sentence) => sentence !== "").join(" ");
}

/** The limit that most heads were outside of; null when none was. */
function worstLimit({ killLine }: VariantResults): Limit | null {
  const found = (killLine?.limits ?? []).filter(({ daysBeyond }) => daysBeyond > 0);
  return found.reduce<Limit | null>(
    (most, limit) => (most === null || shareOf(limit) > shareOf(most) ? limit : most),
    null,
  );
}

function shareOf({ share }: Limit): number {
  return share?.mean ?? 0;
}

function dayWords({ variants }: StudyResults): string {
  const [{ day, killLine }] = variants as [VariantResults];
  const told = killLine!.limits
    .filter(({ daysBeyond }) => daysBeyond > 0)
    .map(({ name, maxSeconds, worstSeconds }) => {
      const { beyond, tally } = day.limits.find((limit) => limit.name === name)!;
      return `${shareWords(beyond, tally.count, "stunned heads")} waited longer for sticking than the ${formatDuration(maxSeconds)} of ${quoted(name)}, the longest ${formatDuration(worstSeconds!)}.`;
    });
  return capital(told.join(" "));
}

/** The base first where it is one of them; else the variant with the largest share. */
function studyWords(results: StudyResults, beyond: readonly VariantResults[]): string {
  const { variants, study } = results;
  const told =
    beyond[0] === variants[0]
      ? beyond[0]!
      : beyond.reduce((most, each) => (shareOf(worstLimit(each)!) > shareOf(worstLimit(most)!) ? each : most));
  const limit = worstLimit(told)!;
  const where = variants.length === 1 ? "" : told === variants[0] ? "In today's plan " : `With ${quoted(told.name)} `;
  const { name, maxSeconds, daysBeyond, days, worstSeconds } = limit;
  const share = shareInterval(limit, study.confidence);
  const first = `${where}${share} of stunned heads waited longer for sticking than the ${formatDuration(maxSeconds)} of ${quoted(name)}, on ${daysBeyond} of ${days} simulated ${periodNoun(results)}s, the longest ${formatDuration(worstSeconds!)}.`;
  if (variants.length === 1) return capital(first);
  return `${capital(first)} ${countWords(beyond, variants)}`;
}

const MAX_NAMED = 3;

function countWords(beyond: readonly VariantResults[], variants: readonly VariantResults[]): string {
  if (beyond.length === 1) return "It happened in no other variant.";
  if (beyond.length === variants.length) return `It happened in all ${variants.length} variants.`;
  const names = beyond.length <= MAX_NAMED ? `: ${beyond.map(({ name }) => quoted(name)).join(", ")}` : "";
  return `It happened in ${beyond.length} of ${variants.length} variants${names}.`;
}

function shareInterval({ share }: Limit, confidence: number): string {
  const { value, range } = responseFormat({ key: "", label: "", unit: "", format: "share", better: "less" }, 0);
  const { mean, low, high, halfWidth } = share!;
  if (low === null || high === null) return value(mean, null);
  return `${value(mean, halfWidth)} (${range(low, high, halfWidth)} at ${formatConfidence(confidence)})`;
}

/** What the plans leave open; of several variants, in how many. */
function openWords(variants: readonly VariantResults[]): string {
  const lines = variants.flatMap(({ killLine }) => killLine ?? []);
  const [first] = lines;
  if (first === undefined) return "";
  const sticking = first.sticking.map(isolated).join(" or ");
  return [
    partWords(
      lines,
      variants.length,
      ({ hasGate }) => !hasGate,
      `nothing in the plan keeps a head from being stunned while ${sticking} has no room`,
    ),
    partWords(
      lines,
      variants.length,
      ({ breaksAreSafe }) => !breaksAreSafe,
      "a break may begin while a stunned head waits: nothing in the plan empties the line first",
    ),
  ]
    .filter((words) => words !== "")
    .join(" ");
}

function partWords(lines: readonly KillLine[], of: number, isOpen: (line: KillLine) => boolean, words: string): string {
  const count = lines.filter(isOpen).length;
  if (count === 0) return "";
  const where = count === of ? "" : `in ${formatDecimals(count, 0)} of ${formatDecimals(of, 0)} variants `;
  return `${capital(`${where}${words}`)}.`;
}
