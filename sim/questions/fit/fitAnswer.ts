import type { VerdictKind } from "../../days/results/index.ts";
import { formatNumber, formatShare } from "../../text/units/index.ts";
import { type Check, MIN_TO_FIT } from "./checks/index.ts";
import type { ColumnFit } from "./columnFit.ts";

/** What to put into the plan, and whether the times are good enough for it. */
export interface ColumnAnswer {
  heading: string;
  /** `yes`: use it. `undecided`: use it for now and time more. `no`: find out first. `told`: no family, the times themselves. */
  answer: VerdictKind;
  /** One sentence without the heading. */
  verdict: string;
  /** "lognormal with mean 5.5 s, cv 0.3"; "" for nothing. */
  use: string;
  /** Times to take yet; 0 for none. */
  more: number;
}

export interface FitAnswer {
  answer: VerdictKind;
  verdict: string;
  /** What to do next. */
  next: string[];
  columns: ColumnAnswer[];
}

/** The mean is to be known this closely: the least difference that matters to a plan's pace. */
const CLOSE = 0.05;

type Fitted = Pick<ColumnFit, "heading" | "ended" | "open" | "summary" | "advice" | "unit"> & {
  checks: readonly Check[];
};

/** What to use of a table of times, column by column and for all of them in one sentence. */
export function fitAnswer(fits: readonly Fitted[]): FitAnswer {
  const columns = fits.map(columnAnswer);
  const of = (answer: VerdictKind) => columns.filter((column) => column.answer === answer);
  const answer = (["no", "undecided", "told"] as const).find((each) => of(each).length > 0) ?? "yes";
  const [only] = columns;
  return {
    answer,
    verdict: columns.length === 1 ? `${only!.heading}: ${only!.verdict}` : severalWords(columns),
    next: [
      ...of("no").map(
        ({ heading }) =>
          `${heading}: find out what happened, then take the times again or leave out what does not belong.`,
      ),
      ...of("undecided")
        .filter(({ more }) => more > 0)
        .map(({ heading, more }) => `${heading}: time ${more} more.`),
      "Merge the fragment into the plan, then compare the plan with observed days: gambrel calibrate.",
    ],
    columns,
  };
}

function severalWords(columns: readonly ColumnAnswer[]): string {
  const ready = columns.filter(({ answer }) => answer === "yes" || answer === "told");
  const more = columns.filter(({ answer }) => answer === "undecided");
  const not = columns.filter(({ answer }) => answer === "no");
  const names = (list: readonly ColumnAnswer[]) => list.map(({ heading }) => heading).join(", ");
  return `${[
    ready.length === columns.length
      ? `Use what is fitted for all ${columns.length} columns`
      : ready.length === 0
        ? `None of the ${columns.length} columns is ready for a plan`
        : `Use what is fitted for ${names(ready)}`,
    ...(more.length === 0
      ? []
      : [
          `time more for ${more.map(({ heading, more }) => (more === 0 ? heading : `${heading} (${more})`)).join(", ")}`,
        ]),
    ...(not.length === 0 ? [] : [`find out first what is wrong with ${names(not)}`]),
  ].join("; ")}.`;
}

function columnAnswer(fit: Fitted): ColumnAnswer {
  const { heading, ended, open, summary, advice, checks, unit } = fit;
  const use = advice.kind === "nothing" ? "" : distributionWords(advice.inPlan, unit);
  const missing = Math.max(0, MIN_TO_FIT - ended.length, (summary?.needed ?? 0) - ended.length);
  const about = { heading, use, more: missing };
  const strong = checks.find(({ verdict, name }) => verdict === "strong" && name !== "number of times");
  if (advice.kind === "nothing") return { ...about, answer: "undecided", verdict: advice.words };
  if (strong !== undefined)
    return { ...about, answer: "no", verdict: `Do not use these times yet (${strong.name}): ${strong.words}` };
  if (ended.length < MIN_TO_FIT)
    return {
      ...about,
      answer: "undecided",
      verdict: `Time ${missing} more: ${ended.length} ${ended.length === 1 ? "is" : "are"} too few to fit anything; until then use ${use}.`,
    };
  if (advice.kind === "empirical")
    return {
      ...about,
      answer: "told",
      verdict: `Use the ${ended.length} observed times themselves: a test rejects every family.`,
    };
  if (missing > 0)
    return {
      ...about,
      answer: "undecided",
      verdict: `Use ${use} for now and time ${missing} more: ${closeness(fit)}.`,
    };
  const known = summary === null || open.length > 0 ? "" : `: its mean is known within ${formatShare(CLOSE)}`;
  return { ...about, answer: "yes", verdict: `Use ${use}${known}.` };
}

function closeness({ summary }: Fitted): string {
  const { mean, meanLow, meanHigh } = summary!;
  const half = (meanHigh! - meanLow!) / 2 / mean;
  return `its mean is known within ${formatNumber(100 * half, 2)} % only, and ${formatShare(CLOSE)} matter`;
}

/** "a lognormal with mean 5.5 s, cv 0.3" from what the plan will hold; "always 5 s" for a constant. */
function distributionWords(inPlan: unknown, unit: string): string {
  if (typeof inPlan !== "object" || inPlan === null) return `always ${shortened(String(inPlan), unit)}`;
  const [[family, parameters]] = Object.entries(inPlan) as [[string, unknown]];
  if (family === "empirical" || typeof parameters !== "object" || Array.isArray(parameters))
    return "the observed times themselves";
  const words = Object.entries(parameters as Record<string, string | number>).map(
    ([name, value]) => `${name} ${shortened(value, unit)}`,
  );
  return `${/^[aeiou]/.test(family) ? "an" : "a"} ${family} with ${words.join(", ")}`;
}

function shortened(value: string | number, unit: string): string {
  if (typeof value === "number") return formatNumber(value);
  const number = Number(value.slice(0, -unit.length));
  return Number.isFinite(number) ? `${formatNumber(number, 4)} ${unit}` : value;
}
