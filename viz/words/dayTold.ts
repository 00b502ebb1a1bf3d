import { formatResponse } from "../../sim/text/units/index.ts";
import type { LimitRecord, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { bareUnit, type DecisionTable, responseHeading } from "./decisionTable.ts";
import { overtimeWords } from "./overtimeWords.ts";
import { shareWords } from "./shareWords.ts";
import { whyWords } from "./whyWords.ts";

/** What one day came to: it cannot be compared, and answers for no other day. */
export interface DayTold {
  /** What happened, in one sentence. */
  verdict: string;
  /** Limits, the worst first; what set the pace; notes of the day. */
  words: string[];
  /** One row. */
  table: DecisionTable;
  next: string[];
}

/** Figures of the day's row, as far as the plan has them. */
const COLUMNS = [
  "finish",
  "overtime",
  "carcasses",
  "headsPerHour",
  "carcassesPerPersonHour",
  "fullCostPerKg",
  "costPerKg",
  "costPerHead",
  "fullMargin",
  "margin",
];
/** Of these the first that a plan has; the costs of the plant are those that include all. */
const ALTERNATIVES = [
  ["fullCostPerKg", "costPerKg", "costPerHead"],
  ["fullMargin", "margin"],
];
/** Limits that are named one by one. */
const MAX_NAMED = 3;

export function dayTold(results: StudyResults): DayTold {
  const variant = results.variants[0]!;
  const { day, why, dayNotes = [] } = variant;
  return {
    verdict: `${ended(results, variant)} ${limitsInShort(day.limits)}`,
    words: [
      ...limitWords(day.limits),
      ...(why === null ? [] : whyWords(why).slice(0, 1)),
      ...dayNotes.map(isolated),
      ...(results.capacity === null ? [] : [results.capacity.words]),
    ],
    table: oneRow(results, variant),
    next: [
      "One day has luck in it: run a study of several days before you compare or decide.",
      ...(why === null ? [] : ["`gambrel why` with the plan tries what would help."]),
    ],
  };
}

function ended(results: StudyResults, { day }: VariantResults): string {
  if (day.status === "stuck") return "The line got stuck: the day did not end by itself.";
  if (day.status === "ceiling") return "The day did not end by itself: it was cut off at the longest day allowed.";
  return overtimeWords(results, day);
}

function limitsInShort(limits: readonly LimitRecord[]): string {
  const broken = worstFirst(limits);
  if (limits.length === 0) return "The plan watches no time limit.";
  if (broken.length === 0) return `No head was outside ${limits.length === 1 ? "the" : "any"} time limit.`;
  const [{ name, beyond, tally }] = broken as [LimitRecord];
  const others =
    broken.length === 1
      ? ""
      : `, and ${broken.length - 1} more ${broken.length === 2 ? "limit is" : "limits are"} broken`;
  return `Outside \u2018${isolated(name)}\u2019: ${shareWords(beyond, tally.count, "heads")}${others}.`;
}

/** Broken limits, the one with the largest share of heads outside it first. */
function worstFirst(limits: readonly LimitRecord[]): LimitRecord[] {
  const share = ({ beyond, tally }: LimitRecord) => beyond / Math.max(1, tally.count);
  return limits.filter(({ beyond }) => beyond > 0).sort((a, b) => share(b) - share(a));
}

function limitWords(limits: readonly LimitRecord[]): string[] {
  const broken = worstFirst(limits);
  const kept = limits.filter(({ beyond }) => beyond === 0).map(({ name }) => `\u2018${isolated(name)}\u2019`);
  const told = broken
    .slice(0, MAX_NAMED)
    .map(({ name, beyond, tally }) => `\u2018${isolated(name)}\u2019 ${shareWords(beyond, tally.count, "heads")}`);
  const more = broken.length > MAX_NAMED ? `; and ${broken.length - MAX_NAMED} more` : "";
  return [
    ...(broken.length < 2 ? [] : [`Limits broken, the worst first: ${told.join("; ")}${more}.`]),
    ...(kept.length === 0 ? [] : [`Limits kept by every head: ${kept.join(", ")}.`]),
  ];
}

function oneRow(results: StudyResults, { values, day }: VariantResults): DecisionTable {
  const known = new Map(results.responses.map((info) => [info.key, info]));
  const given = (key: string) => known.has(key) && values[key]?.[0] != null;
  const spare = new Set(ALTERNATIVES.flatMap((keys) => keys.filter(given).slice(1)));
  const limits = worstFirst(day.limits).map(({ name }) => `beyond.${name}`);
  const columns = [...COLUMNS.slice(0, 2), ...limits, ...COLUMNS.slice(2)]
    .filter((key) => given(key) && !spare.has(key))
    .map((key) => known.get(key)!);
  const cell = (info: ResponseInfo) => {
    const value = formatResponse(values[info.key]![0]!, { ...info, unit: bareUnit(info) }, day.startClockSeconds);
    return { value, range: "", shown: null };
  };
  return {
    columns: columns.map(responseHeading),
    rows: [{ name: isolated(results.plan.name), cells: columns.map(cell), best: false, harm: null }],
    more: 0,
  };
}
