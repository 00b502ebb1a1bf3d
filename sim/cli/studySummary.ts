import { ranking, welfareLead } from "../../viz/index.ts";
import type { ElementaryEffects, Estimate, ResponseInfo, StudyResults, VariantResults } from "../days/results/index.ts";
import { formatConfidence, formatEstimate, formatSpan, textTable } from "../text/units/index.ts";

/**
 * A study's findings as lines of text: of the first result every mean with its interval and every difference in words, of
 * the next few the means; of all others where they are.
 */
export function studySummary(results: StudyResults): string[] {
  const { study, responses, variants, procedure } = results;
  const headline = responses[0]!;
  const percent = formatConfidence(study.confidence);
  const lead = welfareLead(results);
  return [
    ...(lead === null ? [] : [lead]),
    `${count(variants.length, "variant")}, ${daysWords(results)}, seed "${study.seed}", ${percent} intervals`,
    ...[procedure.stopping, procedure.selection].flatMap((rule) => (rule === null ? [] : [rule.words])),
    `${headline.label}:`,
    ...(headline.meaning === undefined ? [] : [`  ${headline.meaning}`]),
    ...(results.screening === null ? comparisonLines(results, headline) : screeningTable(results, headline)),
    ...otherResults(results),
    ...variants.flatMap(unfinishedWarning),
  ];
}

function comparisonLines(results: StudyResults, headline: ResponseInfo): string[] {
  return [...variantLines(results.variants, headline), ...bestNote(results, headline), ...chanceNote(results)];
}

/** Results that are told in brief below the first. */
const MOST_BRIEF = 3;

function otherResults({ responses, variants, screening }: StudyResults): string[] {
  const brief = screening === null ? responses.slice(1, 1 + MOST_BRIEF) : [];
  const left = responses.length - 1 - brief.length;
  const more = left === 1 ? "1 more result is" : `${left} more results are`;
  return [
    ...brief.flatMap((info) => [`${info.label}:`, ...meanLines(variants, info)]),
    ...(left === 0 ? [] : [`${more} in report.html and summary.csv; --out FOLDER writes them.`]),
  ];
}

/** How many days each variant was run, which may differ where a selection dropped some. */
function daysWords({ study, variants, procedure }: StudyResults): string {
  const least = Math.min(...variants.map(({ days }) => days));
  const pairs = procedure.observation === "day" ? "" : " in antithetic pairs";
  if (least === study.replications) return `${count(least, "simulated day")} of each${pairs}`;
  return `${least} to ${count(study.replications, "simulated day")}${pairs}`;
}

function variantLines(variants: readonly VariantResults[], headline: ResponseInfo): string[] {
  const table = meanLines(variants, headline);
  return variants.flatMap(({ differences, estimates }, index) => {
    const words = [estimates[headline.key]?.reduction?.words, differences?.[headline.key]?.words];
    return [table[index]!, ...words.flatMap((line) => (line === undefined ? [] : [`      ${line}`]))];
  });
}

/** A line for each variant: its name, mean and interval. */
function meanLines(variants: readonly VariantResults[], info: ResponseInfo): string[] {
  const rows = variants.map(({ name, estimates, day }) => {
    return [name, ...estimateCells(estimates[info.key], info, day.startClockSeconds)];
  });
  return textTable(rows).map((line) => `  ${line}`);
}

/** Mean and interval; says in words which of them is missing, and where a share was never seen. */
function estimateCells(found: Estimate | undefined, info: ResponseInfo, startClockSeconds: number): [string, string] {
  if (found === undefined) return ["no value", ""];
  const [mean, range] = formatEstimate(found, info, startClockSeconds);
  if (info.format === "share" && found.mean === 0 && found.high !== null && found.high > 0) {
    return [
      mean,
      `(none in ${count(found.n, "day")}, at most ${formatEstimate({ ...found, mean: found.high }, info, 0)[0]})`,
    ];
  }
  if (found.n > 1 && found.min === found.max) return [mean, "(the same on every day)"];
  return [mean, range === "" ? "(one value, no interval)" : `(${range})`];
}

/** Which variants the best one may be; with two variants the difference says it. */
function bestNote(results: StudyResults, headline: ResponseInfo): string[] {
  const { by, words } = ranking(results, headline);
  const found = by === null ? [] : bestBy(results, by);
  if (words === "") return found;
  return found.length === 0 ? [words] : [words, `By "${by!.label}":`, ...found];
}

function bestBy({ variants, study }: StudyResults, { key }: ResponseInfo): string[] {
  if (variants.length < 3) return [];
  const compared = variants.filter(({ againstBest }) => againstBest?.[key] !== undefined);
  if (compared.length < variants.length) return [];
  const names = compared.filter(({ againstBest }) => againstBest![key]!.mayBeBest).map(({ name }) => `"${name}"`);
  const percent = formatConfidence(study.confidence);
  if (names.length === 1)
    return [`The best of all is ${names[0]} (${percent}, sure even though all variants were compared).`];
  const others = variants.length - names.length;
  const named = names.length <= MOST_NAMED ? `: ${names.join(", ")}` : "";
  const worse =
    others === 0 ? "No variant is clearly better than another" : `${others} ${others === 1 ? "is" : "are"} worse`;
  return [
    `${names.length} variants may be the best${named}. ${worse} (${percent}, sure even though all variants were compared).`,
  ];
}

const MOST_NAMED = 5;

const FALSE_DISCOVERY =
  "Of the differences shown, at most the share that the confidence leaves open is false on average (false discovery rate).";

/** Where every interval holds by itself, a reader of many of them must know what chance alone would show. */
function chanceNote({ variants, study: { confidence }, procedure }: StudyResults): string[] {
  const comparisons = variants.length - 1;
  if (comparisons < 2 || procedure.errorRate === "family-wise") return [];
  if (procedure.errorRate === "false discovery") return [FALSE_DISCOVERY];
  const expected = Number((comparisons * (1 - confidence)).toFixed(2));
  return [
    `Each range stands by itself: of ${comparisons} comparisons, chance alone shows about ${expected} on average.`,
  ];
}

function unfinishedWarning({ name, values, dayNotes = [], day }: VariantResults): string[] {
  const days = values.unfinished ?? [];
  const cut = days.filter((value) => value === 1).length;
  if (cut === 0) return [];
  const held = day.status === "finished" ? "" : ` On the first day: ${dayNotes.join(" ")}`;
  return [
    `Note on "${name}": ${cut} of ${count(days.length, "day")} did not end by itself (cut off at the plan's longest day, or stuck); its end is a lower bound.${held}`,
  ];
}

function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? "" : "s"}`;
}

/** What a screening found on one response, as lines of text: the factor that matters most first. */
export function screeningTable({ screening, factors, study }: StudyResults, info: ResponseInfo): string[] {
  const effects = screening?.[info.key] ?? [];
  const rows = factors
    .map(({ name }, index) => ({ name, found: effects[index] ?? null }))
    .sort((a, b) => (b.found?.muStar ?? -1) - (a.found?.muStar ?? -1));
  const percent = formatConfidence(study.confidence);
  const header = ["factor", "mean size of its effect", `${percent} half-width`, "mean effect", "spread (sigma)"];
  return [
    "Effect of each factor over its whole range (elementary effects, Morris 1991):",
    ...textTable([header, ...rows.map(({ name, found }) => [name, ...cells(found, info)])]).map((line) => `  ${line}`),
    "A spread as large as the effect means that the effect depends on the other factors or is not straight.",
  ];
}

function cells(found: ElementaryEffects | null, info: ResponseInfo): string[] {
  if (found === null) return ["no value", "", "", ""];
  const plain = (value: number | null): string => (value === null ? "" : formatSpan(value, info, "plain"));
  return [plain(found.muStar), plain(found.muStarHalfWidth), formatSpan(found.mu, info), plain(found.sigma)];
}
