import type { Plan } from "../../asked/plan/index.ts";
import type { QuestionKind, Study } from "../../asked/study/index.ts";
import {
  countedDays,
  dayAndMoneyKeys,
  type ResponseInfo,
  responsesOf,
  supportOf,
} from "../../day/observations/index.ts";
import { type AgainstBest, compareWithBest, estimateWithin, pairMeans } from "../../maths/statistics/index.ts";
import { comparisonsInWords, type Decision, type DecisionRow, harmOf, harmResponses } from "../results/index.ts";
import { gainOf } from "./gain.ts";
import { usualMatters } from "./matters.ts";
import { MONEY_KEYS, netMoney } from "./money.ts";
import { said } from "./said.ts";
import type { Findings, VariantValues, Weighed } from "./weighed.ts";

/** More variants than this are not compared with one another for the best: that grows with the square. */
const MAX_FOR_BEST = 200;
/** A list of more variants asks which is best. */
const MAX_FOR_WORTH = 3;

/** Results that a study asks for beyond those; a table has no room for more. */
const MAX_ASKED = 6;

/** Of the day, in the order of the table, as far as a plan has them; time limits come after the overtime. */
const DAY_COLUMNS = ["headsPerHour", "carcasses", "finish", "overtime"];
const MONEY_COLUMNS = ["cost.overtimePay"];
/** The first of each that a plan has. */
const COST_COLUMNS = ["fullCostPerKg", "costPerKg", "costPerHead"];
const MARGIN_COLUMNS = ["fullMargin", "margin"];

/** Keys that have to be known of every day of a plan for its decision, besides those that a study asks for. */
export function decisionKeys(plan: Plan): string[] {
  const known = new Set([...dayAndMoneyKeys(plan), ...(plan.week === undefined ? [] : ["week.made"])]);
  const wanted = [...DAY_COLUMNS, ...MONEY_COLUMNS, ...COST_COLUMNS, ...MARGIN_COLUMNS, ...MONEY_KEYS];
  return [...wanted, ...harmResponses(plan)].filter((key) => known.has(key));
}

/**
 * Answers a study's question from the days of its variants: each against today's plan on the same days, with luck, harm,
 * money and the least difference that matters all taken into account. `values[variant]` holds a number for each day of
 * every key that the study asks for and of `decisionKeys`. Null where there is nothing to decide by: no response, or
 * fewer than two days.
 */
export function decide(
  study: Study,
  responses: readonly ResponseInfo[],
  values: readonly VariantValues[],
  findings: Findings,
): Decision | null {
  const info = responses[0];
  const days = info === undefined ? [] : (values[0]![info.key] ?? []);
  if (info === undefined || days.filter((value) => value !== null).length < 2) return null;
  return said(weigh(study, info, responses, values, findings));
}

function weigh(
  study: Study,
  info: ResponseInfo,
  responses: readonly ResponseInfo[],
  values: readonly VariantValues[],
  findings: Findings,
): Weighed {
  const observed = study.procedure.antithetic ? values.map(paired) : values;
  const columns = columnsOf(study.variants[0]!.plan, info, responses, observed);
  const matters = mattersOf(study, info, observed[0]!);
  const asked = kindOf(study, info);
  const rows = rowsOf(study, info, columns, { values: observed, matters: matters.size, kind: asked.kind });
  return {
    ...asked,
    deciding: info.key,
    ...{ matters, columns, rows, info, findings, study },
    overtimeDays: values.map(overtimeDays),
    againstBest: againstBest(study, info, observed, ranked(rows, asked.kind)),
  };
}

/** Indexes of those that are ranked: all that do no harm. Where something happens to a plant, today's plan is none of the answers to it. */
function ranked(rows: readonly DecisionRow[], kind: QuestionKind): number[] {
  const first = kind === "what if" ? 1 : 0;
  return rows.flatMap(({ harm }, variant) => (harm === null && variant >= first ? [variant] : []));
}

function overtimeDays({ overtime = [] }: VariantValues): Weighed["overtimeDays"][number] {
  const known = overtime.filter((value) => value !== null);
  return known.length === 0 ? null : { days: known.filter((seconds) => seconds > 0).length, of: known.length };
}

/** The mean of each antithetic pair is one observation. */
function paired(values: VariantValues): VariantValues {
  return Object.fromEntries(Object.entries(values).map(([key, list]) => [key, pairMeans(list)]));
}

function mattersOf({ matters, confidence }: Study, info: ResponseInfo, today: VariantValues): Decision["matters"] {
  const asked = matters?.[info.key];
  if (asked !== undefined) return { size: asked, asked: true };
  const mean = estimateWithin(supportOf(info), today[info.key]!, confidence);
  return { size: usualMatters(info, mean ?? undefined), asked: false };
}

/** What the study is asked, by its own word or by what it varies and asks for. */
export function kindOf(
  { kind, variants, factors, design, procedure }: Study,
  info: ResponseInfo,
): { kind: QuestionKind; inferred: boolean } {
  if (kind !== undefined) return { kind, inferred: false };
  const inferred = (found: QuestionKind) => ({ kind: found, inferred: true });
  if (design.kind === "screening") return inferred("what matters");
  if (/^(bound|bottleneck)\./.test(info.key)) return inferred("bottleneck");
  if (variants.length === 1) return inferred(/^beyond\./.test(info.key) ? "limit" : "what will it be");
  if (procedure.selection !== null) return inferred("best");
  const levels = factors.length === 1 ? factors[0]!.levels : [];
  if (levels.length > 2 && levels.every(isAmount)) return inferred("how much");
  return inferred(factors.length === 0 && variants.length <= MAX_FOR_WORTH + 1 ? "worth it" : "best");
}

/** "12", "2.5 min", "06:30", "no limit". */
function isAmount(level: string): boolean {
  return /^-?[\d.]/.test(level) || level === "no limit" || level === "null";
}

/**
 * The deciding response first, then what an owner asks of any day, then what else the study asks for; limits only where
 * some head of some variant is outside them, and carcasses only where their number differs.
 */
function columnsOf(
  plan: Plan,
  info: ResponseInfo,
  responses: readonly ResponseInfo[],
  values: readonly VariantValues[],
): ResponseInfo[] {
  const known = new Map([...responsesOf(plan), ...responses].map((each) => [each.key, each]));
  const moves = (key: string) => new Set(values.map((each) => mean(each[key]))).size > 1;
  const broken = plan.limits
    .map(({ name }) => `beyond.${name}`)
    .filter((key) => values.some((each) => each[key]?.some((value) => (value ?? 0) > 0)));
  const given = (key: string) => known.has(key) && values.some((each) => each[key]?.some((value) => value !== null));
  const asked = new Set(responses.map(({ key }) => key));
  const first = (keys: readonly string[]) => {
    const found = keys.filter(given);
    const wanted = found.filter((key) => asked.has(key));
    return wanted.length > 0 ? wanted.slice(0, 1) : found.slice(0, 1);
  };
  const saturated = plan.supply.kind === "saturated";
  const day = saturated ? ["headsPerHour"] : [...(moves("carcasses") ? ["carcasses"] : []), "finish", "overtime"];
  // Of what is asked of a single day means over the days of the week tell nothing.
  const ofWhole = dayOf(plan, info) === "" ? [...day, ...MONEY_COLUMNS] : [];
  const keys = [...ofWhole, ...broken, ...first(COST_COLUMNS), ...first(MARGIN_COLUMNS)];
  const counted = new Set([info.key, ...keys, "carcasses"]);
  const others = responses.map(({ key }) => key).filter((key) => !counted.has(key));
  return [...new Set([info.key, ...keys, ...others.slice(0, MAX_ASKED)])].filter(given).map((key) => known.get(key)!);
}

/** "Thursday." where the response is of that day of a week, else "". */
function dayOf(plan: Plan, { key }: ResponseInfo): string {
  const days = plan.week === undefined ? [] : countedDays(plan).map(({ name }) => `${name}.`);
  return days.find((day) => key.startsWith(day)) ?? "";
}

function mean(list: readonly (number | null)[] | undefined): number {
  const known = (list ?? []).filter((value) => value !== null);
  return known.reduce((sum, value) => sum + value, 0) / known.length;
}

function rowsOf(
  study: Study,
  info: ResponseInfo,
  columns: readonly ResponseInfo[],
  { values, matters, kind }: { values: readonly VariantValues[]; matters: number; kind: QuestionKind },
): DecisionRow[] {
  const { variants, confidence, procedure } = study;
  const lists = (key: string) => values.map((each) => each[key] ?? each[info.key]!.map(() => null));
  const options = { confidence, errorRate: procedure.errorRate };
  const compared = columns.map((column) => comparisonsInWords(lists(column.key), 0, options, column));
  return variants.map(({ name, plan }, variant) => {
    const differences = columns.flatMap(({ key }, column) => {
      const found = compared[column]![variant]!;
      const joint = procedure.errorRate !== "per comparison" && (found?.comparisons ?? 0) > 1;
      return found === null ? [] : [[key, { ...found, joint: joint && found.familyLow !== null }] as const];
    });
    const estimates = columns.flatMap((column) => {
      const found = estimateWithin(supportOf(column), values[variant]![column.key] ?? [], confidence);
      return found === null ? [] : [[column.key, found] as const];
    });
    const change = Object.fromEntries(differences)[info.key];
    const [today, own] = [0, variant].map((each) => ({ plan: variants[each]!.plan, values: values[each]! }));
    return {
      ...{ name, people: mostPeople(plan) },
      estimates: Object.fromEntries(estimates),
      differences: Object.fromEntries(differences),
      harm: variant === 0 ? null : harm(today!, own!, kind),
      gain: change === undefined || info.better === null ? null : gainOf(change, info.better, matters),
      money: variant === 0 ? null : netMoney(today!, own!, { confidence, matters: study.matters?.money ?? null }),
    };
  });
}

interface Compared {
  plan: Plan;
  values: VariantValues;
}

/** Where it is asked what fewer heads would do, fewer heads are no harm. */
function harm(today: Compared, own: Compared, kind: QuestionKind): string | null {
  const fewerAsked = kind === "what if" && headsPlanned(own.plan) < headsPlanned(today.plan);
  const { carcasses: _, "week.made": __, ...others } = own.values;
  return harmOf(today.plan, today.values, fewerAsked ? others : own.values);
}

function headsPlanned({ supply }: Plan): number {
  if (supply.kind !== "loads") return supply.heads;
  return supply.loads.reduce((sum, { crates, headsPerCrate }) => sum + crates * headsPerCrate, 0);
}

/** Of all crews, in the shift that has most. */
function mostPeople({ crews, day }: Plan): number | null {
  if (crews.length === 0) return null;
  return Math.max(...day.shifts.map((_, shift) => crews.reduce((sum, { people }) => sum + (people[shift] ?? 0), 0)));
}

function againstBest(
  { confidence, variants }: Study,
  { key, better }: ResponseInfo,
  values: readonly VariantValues[],
  harmless: readonly number[],
): (AgainstBest | undefined)[] | null {
  if (better === null || variants.length < 2 || variants.length > MAX_FOR_BEST) return null;
  const found = compareWithBest(
    harmless.map((variant) => values[variant]![key] ?? []),
    better,
    confidence,
  );
  return found === null ? null : variants.map((_, variant) => found[harmless.indexOf(variant)]);
}
