import { type DecisionTable, decisionLines, decisionTable, wrappedLines } from "../../viz/index.ts";
import type { Decision, EffectShare, ResponseInfo, StudyResults } from "../days/results/index.ts";
import { formatConfidence, formatShare, formatSpan, textTable } from "../text/units/index.ts";
import { type Line, plainLine } from "./terminal.ts";

/** Most plans that the terminal's table has a line for. */
const MAX_ROWS = 20;
/** Effects that have a line, and the least share of the differences that earns one. */
const MAX_EFFECTS = 12;
const MIN_SHARE = 0.005;

/** What every answer begins with on the terminal: the verdict, what it rests on, the table to decide by, what to do next. */
export function answerLines(
  { verdict, words, next }: Pick<Decision, "verdict" | "words" | "next">,
  table: DecisionTable | null,
): Line[] {
  return [
    ...wrappedLines(verdict).map((line): Line => ({ line, style: "bold" })),
    ...words.flatMap((line) => wrappedLines(line, "  ")).map(plainLine),
    ...(table === null || table.rows.length < 2 ? [] : ["", ...tableLines(table)].map(plainLine)),
    ...next.flatMap((line) => wrappedLines(line)).map(plainLine),
    plainLine(""),
  ];
}

/** The same of a decision, with its own table. */
export function decidedLines(decision: Decision, startClockSeconds: number): Line[] {
  return answerLines(decision, decisionTable(decision, startClockSeconds, { rows: MAX_ROWS }));
}

/** As in the report; what is not shown to differ from today's plan stands in brackets. */
export function tableLines(table: DecisionTable): string[] {
  const notes = [
    ...(table.rows.some(({ best }) => best) ? ["* best"] : []),
    "in brackets: no difference to today's plan shown",
  ];
  return [...decisionLines(table), `  ${notes.join("; ")}.`];
}

/**
 * What the factors of a factorial or a Latin hypercube did to one result, the greatest first; nothing for other designs and
 * where nothing varies.
 */
export function effectLines({ effects, factors, study }: StudyResults, info: ResponseInfo): string[] {
  const found = effects?.[info.key];
  if (found == null) return [];
  const shown = found.ranked.filter(({ share }) => share.value >= MIN_SHARE).slice(0, MAX_EFFECTS);
  const told = new Set(shown.flatMap((effect) => effect.factors));
  const silent = factors.flatMap(({ name }, index) => (told.has(index) ? [] : [`"${name}"`]));
  const named = (which: readonly number[], word: (factor: number, at: number) => string) =>
    which.map((factor, at) => word(factor, at)).join(", ");
  const rows = shown.map(({ factors: which, share, total, span, lowest, highest }) => [
    named(which, (factor) => factors[factor]!.name) + (which.length > 1 ? " (together)" : ""),
    shareText(share),
    total === null ? "" : formatShare(rounded(total.value)),
    formatSpan(span, info, "plain"),
    named(which, (factor, at) => factors[factor]!.levels[lowest[at]!]!),
    named(which, (factor, at) => factors[factor]!.levels[highest[at]!]!),
  ]);
  const percent = formatConfidence(study.confidence);
  return [
    ...wrappedLines(`What moves ${info.label} over all ${found.points} points, the most first (${percent} ranges):`),
    ...textTable([["", "of the differences", "with others", "by", "lowest at", "highest at"], ...rows]).map(
      (line) => `  ${line}`,
    ),
    ...wrappedLines(
      `  Together they account for ${formatShare(rounded(found.explained))} of the differences.${silent.length === 0 ? "" : ` Next to nothing: ${silent.join(", ")}.`}`,
      "  ",
    ),
  ];
}

function shareText({ value, low, high }: EffectShare): string {
  const range = low === null || high === null ? "" : ` (${formatShare(rounded(low))} to ${formatShare(rounded(high))})`;
  return `${formatShare(rounded(value))}${range}`;
}

/** Whole per cents: no share is known better. */
function rounded(share: number): number {
  return Math.round(100 * share) / 100;
}
