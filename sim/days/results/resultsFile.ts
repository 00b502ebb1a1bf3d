import type { DayRecord } from "../../day/engine/index.ts";
import { comparisonWords } from "./comparisonsInWords.ts";
import type { DecisionRow } from "./decision.ts";
import type { Difference } from "./figures.ts";
import { asRows, inColumns } from "./inColumns.ts";
import { fromRuns, inRuns } from "./numberRuns.ts";
import { stableJson, stableJsonParts } from "./stableJson.ts";
import type { StudyResults, VariantResults } from "./studyResults.ts";

/** With more of them results.json has columns: an object of each would name the same two thousand keys every time. */
export const MAX_AS_OBJECTS = 20;

/** The text of results.json, in parts. */
export function resultsParts(results: StudyResults): Generator<string> {
  if (results.variants.length > MAX_AS_OBJECTS) return stableJsonParts(packed(results));
  return stableJsonParts(results.plan.week === undefined ? results : withRuns(results));
}

/** A week has a day's traces many times over, and most of the time nothing changes in them. */
function withRuns(results: StudyResults) {
  return {
    ...results,
    format: 3,
    variants: results.variants.map((variant) => ({ ...variant, day: dayInRuns(variant.day) })),
  };
}

function dayInRuns({ week, ...day }: DayRecord): unknown {
  const runs = { ...day, traces: inRuns(day.traces) };
  return week === undefined ? runs : { ...runs, week: { ...week, days: week.days.map(dayInRuns) } };
}

/** The results that a results.json of a plan with a week holds. */
export function withoutRuns(json: object): object {
  const { variants, ...others } = json as { variants: { day: PackedDay }[] };
  return { ...others, format: 1, variants: variants.map((variant) => ({ ...variant, day: dayFromRuns(variant.day) })) };
}

interface PackedDay {
  traces?: unknown;
  week?: { days: PackedDay[] };
}

function dayFromRuns({ week, ...day }: PackedDay): unknown {
  const whole = { ...day, traces: fromRuns(day.traces) };
  return week === undefined ? whole : { ...whole, week: { ...week, days: week.days.map(dayFromRuns) } };
}

type Packed = Omit<StudyResults, "format" | "variants" | "decision"> & {
  format: 2;
  variants: unknown;
  decision?: unknown;
};

/** What stands twice in results stands once in the file, and what a sentence is made from stands without it. */
function packed(results: StudyResults): Packed {
  const { variants, decision, ...others } = results;
  const [base] = variants;
  const lean = variants.map((variant, index) => ({
    ...variant,
    values: {},
    differences: variant.differences === null ? null : withoutWords(results, variant.differences),
    ...(index === 0 || variant.why === null ? {} : { why: leanWhy(variant.why, base!.why) }),
  }));
  return {
    ...others,
    format: 2,
    variants: inColumns(lean),
    ...(decision === undefined ? {} : { decision: decision === null ? null : leanDecision(results, decision) }),
  };
}

/** The results that a results.json in columns holds, but for the values of the single days, which are in values.parquet. */
export function unpacked(json: object): object {
  const { variants: columns, decision, ...others } = json as Packed;
  const rows = asRows(columns) as VariantResults[];
  const whole = { ...others, format: 1 } as unknown as StudyResults;
  const [base] = rows;
  const variants = rows.map((variant, index) => ({
    ...variant,
    differences: variant.differences === null ? null : withWords(whole, variant.differences),
    ...(index === 0 || variant.why === null ? {} : { why: wholeWhy(variant.why, base!.why) }),
  }));
  const results = { ...whole, variants };
  return decision == null
    ? { ...results, ...(decision === null ? { decision } : {}) }
    : { ...results, decision: wholeDecision(results, decision as LeanDecision) };
}

type Told = Pick<StudyResults, "study" | "procedure" | "responses">;
type Differences = Record<string, Difference>;

/** The sentence of a difference follows from its figures; one that does not is kept. */
function withoutWords(
  told: Told,
  differences: Differences,
): Record<string, Omit<Difference, "words"> & { words?: string }> {
  return onEach(differences, (found, key) => {
    const { words, ...figures } = found;
    return words === wordsOf(told, key, found) ? figures : found;
  });
}

function withWords(told: Told, differences: Differences): Differences {
  return onEach(differences, (found, key) => ({ ...found, words: found.words ?? wordsOf(told, key, found) ?? "" }));
}

function wordsOf({ study, procedure, responses }: Told, key: string, found: Difference): string | null {
  const info = responses.find((response) => response.key === key);
  if (info === undefined) return null;
  const noun = procedure.observation === "day" ? "days" : "antithetic pairs of days";
  return comparisonWords(found, { confidence: study.confidence, errorRate: procedure.errorRate, noun }, info);
}

type Why = NonNullable<VariantResults["why"]>;
type LeanWhy = Omit<Why, "withheldSlopes"> & { withheldSlopes: Why["withheldSlopes"] | typeof AS_BASE };

/** In the place of a list that is that of today's plan. */
const AS_BASE = "as today's plan";

function leanWhy(why: Why, base: Why | null): LeanWhy {
  const same = base !== null && isSame(why.withheldSlopes, base.withheldSlopes);
  return same ? { ...why, withheldSlopes: AS_BASE } : why;
}

function wholeWhy(why: LeanWhy, base: Why | null): Why {
  const { withheldSlopes, ...others } = why;
  return { ...others, withheldSlopes: withheldSlopes === AS_BASE ? (base?.withheldSlopes ?? []) : withheldSlopes };
}

type Decision = NonNullable<StudyResults["decision"]>;
/** Keys of what the rows have from their variants; `rows` in columns. */
interface FromVariants {
  estimates: string[];
  differences: string[];
}
type LeanDecision = Omit<Decision, "rows"> & { rows: unknown; fromVariants: FromVariants };

function leanDecision({ variants, ...told }: StudyResults, decision: Decision): LeanDecision {
  const keys = decision.columns.map(({ key }) => key);
  const same = (of: "estimates" | "differences") =>
    keys.filter((key) => decision.rows.every((row, index) => isSame(row[of][key], variants[index]?.[of]?.[key])));
  const fromVariants = { estimates: same("estimates"), differences: same("differences") };
  const rows = decision.rows.map((row) => ({
    ...row,
    estimates: without(row.estimates, fromVariants.estimates),
    differences: withoutWords(told, without(row.differences, fromVariants.differences)),
  }));
  return { ...decision, rows: inColumns(rows), fromVariants };
}

function wholeDecision(results: StudyResults, { fromVariants, ...lean }: LeanDecision): Decision {
  const rows = (asRows(lean.rows) as DecisionRow[]).map((row, index): DecisionRow => {
    const { estimates, differences } = results.variants[index]!;
    return {
      ...row,
      estimates: { ...row.estimates, ...only(estimates, fromVariants.estimates) },
      differences: { ...withWords(results, row.differences), ...only(differences ?? {}, fromVariants.differences) },
    };
  });
  return { ...lean, rows };
}

function isSame(one: unknown, other: unknown): boolean {
  return one === other || stableJson(one) === stableJson(other);
}

function without<Each>(record: Record<string, Each>, keys: readonly string[]): Record<string, Each> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}

function only<Each>(record: Record<string, Each>, keys: readonly string[]): Record<string, Each> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => keys.includes(key)));
}

function onEach<From, To>(record: Record<string, From>, change: (each: From, key: string) => To): Record<string, To> {
  return Object.fromEntries(Object.entries(record).map(([key, each]) => [key, change(each, key)]));
}
