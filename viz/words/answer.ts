import { formatConfidence } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { bestWords, ranking } from "./bestWords.ts";
import { differenceWords } from "./differenceWords.ts";
import { estimateWords } from "./estimateWords.ts";
import { differenceIn, headline } from "./headline.ts";
import { observationNoun, periodNoun } from "./observations.ts";
import { quoted } from "./quoted.ts";
import type { ResponseFormat } from "./responseFormat.ts";
import { screeningWords } from "./screeningWords.ts";
import { stepWords } from "./stepWords.ts";
import { studyFormat } from "./studyFormat.ts";

/** The answer to the study's question: a few plain sentences, each figure with its interval, the headline response only. */
export function answer(results: StudyResults): string[] {
  const info = headline(results);
  const base = results.variants[0];
  if (!info || !base) return ["The study asks for no result, so there is no answer to give."];
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const estimate = estimateWords(base.estimates[info.key], format, confidence, observationNoun(results));
  const where = results.variants.length > 1 ? `, ${baseWords(base)}` : "";
  return [
    `${isolated(info.label)}${where}: ${estimate.phrase}.`,
    ...procedureWords(results),
    ...(results.screening === null ? comparisons(results, info, format) : screeningWords(results, info, format)),
    ...unfinished(results.variants),
  ];
}

/** Today's plan, which is the base, with its name where that says more. */
function baseWords({ name }: VariantResults): string {
  return /^(base( case)?|today's plan)$/i.test(name) ? "today's plan" : `today's plan (${quoted(name)})`;
}

/** What the rules a study was run by ended with; told before any comparison. */
function procedureWords({ procedure }: StudyResults): string[] {
  const rules = [procedure.selection, procedure.stopping];
  return rules.flatMap((rule) => (rule === null ? [] : [isolated(rule.words)]));
}

const NAMED = 3;

function comparisons(results: StudyResults, info: ResponseInfo, format: ResponseFormat): string[] {
  const variants = results.variants.slice(1);
  if (variants.length === 0) return [];
  const steps = stepWords(results, info, format);
  if (steps !== null) {
    const best = bestWords(results, info);
    return best === null ? steps : [best, ...steps];
  }
  const { confidence } = results.study;
  const tell = (variant: VariantResults) =>
    `${quoted(variant.name)}: ${differenceWords(differenceIn(variant, info.key), format, confidence).brief}.`;
  const { words } = ranking(results, info);
  const caution = words === "" ? [] : [words];
  const note = rangesNote(results, info);
  if (variants.length <= NAMED) return [...caution, ...byWish(variants, info).map(tell), ...note];
  const shown = byWish(
    variants.filter((variant) => differenceIn(variant, info.key)?.shown),
    info,
  );
  return [...caution, countWords(shown.length, variants.length), ...shown.slice(0, 2).map(tell), ...note];
}

function countWords(shown: number, all: number): string {
  if (shown === 0) return `None of the ${all} variants is shown to differ from today's plan.`;
  if (shown === all) return `All ${all} variants differ from today's plan.`;
  return `${shown} of ${all} variants ${shown === 1 ? "differs" : "differ"} from today's plan; for ${all - shown} no difference is shown.`;
}

/** How the differences were found, once for all of them; nothing where none has a range. */
function rangesNote(results: StudyResults, { key }: ResponseInfo): string[] {
  const { study, procedure, variants } = results;
  const known = variants.flatMap((variant) => differenceIn(variant, key) ?? []).filter(({ low }) => low !== null);
  if (known.length === 0) return [];
  const compared = `${known.length} changes ${procedure.errorRate === "family-wise" ? "were compared" : "compared"}`;
  const all = procedure.errorRate === "family-wise" ? `, sure even though ${compared}` : `, allowing for ${compared}`;
  const sure = known.some(({ joint }) => joint) ? all : "";
  return [`Compared on the same ${periodNoun(results)}s; ranges are at ${formatConfidence(study.confidence)}${sure}.`];
}

/** Variants with the wanted direction first; where neither direction is wanted, the largest difference first. */
function byWish(variants: readonly VariantResults[], info: ResponseInfo): VariantResults[] {
  const worth = (variant: VariantResults) => {
    const mean = differenceIn(variant, info.key)?.mean ?? 0;
    return info.better === null ? Math.abs(mean) : info.better === "more" ? mean : -mean;
  };
  return [...variants].sort((a, b) => worth(b) - worth(a));
}

function unfinished(variants: readonly VariantResults[]): string[] {
  const cut = variants.filter((variant) => variant.day.status === "ceiling").map((variant) => quoted(variant.name));
  const stuck = variants.filter((variant) => variant.day.status === "stuck");
  const sentences = stuck.map(
    ({ name, day, dayNotes = [] }) =>
      `Take care: the first day of ${quoted(name)} got stuck, with heads left at ${day.stuckAt.map(isolated).join(", ")}, so its figures describe no whole day.${dayNotes.map((note) => ` ${isolated(note)}`).join("")}`,
  );
  if (cut.length > 0) {
    sentences.push(
      `Take care: the first day of ${cut.join(", ")} was cut off at the plan's longest day before the line was clear.`,
    );
  }
  return sentences;
}
