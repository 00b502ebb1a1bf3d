import { type Plan, readPlan, type TextFiles } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../asked/study/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import type { StudyResults } from "../../days/results/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import type { Ranged } from "../options/index.ts";
import type { SizedKind } from "./kinds.ts";

/** Heads of a pressed day over those of the usual one: more than any kind can do, so that the line alone limits it. */
export const PRESSED = 1.6;

export interface LimitKept {
  name: string;
  /** Share of heads outside, mean of the days. */
  outside: number;
  source: string;
}

/** What the simulated days say of one kind of plant; ranges are Student's intervals over the days. */
export interface KindTrial {
  days: number;
  carcasses: Ranged;
  /** Seconds of the clock. */
  finish: Ranged;
  overtimeSeconds: Ranged;
  limits: LimitKept[];
  /** Heads that the shifts can take: what is hung in an hour of a pressed day x the time to hang them in. */
  capacityHeads: Ranged;
  /** Those over the heads of the busiest day, less 1. */
  spare: Ranged;
  /** Money of a day by its parts, in the currency of the demand; null without prices. */
  money: Record<string, number> | null;
}

/** The days that are simulated: of each kind its usual day, then of each a day with more heads than it can take. */
export function trialStudy(kinds: readonly SizedKind[], files: TextFiles, seed: string, replications: number): Study {
  const usual = kinds.map(({ name, plan }) => ({ name, plan }));
  const pressed = kinds.map(({ name, design }) => ({
    name: `${name}, pressed`,
    plan: pressedPlan(design.plan, files),
  }));
  const all = [...usual, ...pressed];
  const keys = [...KEYS, ...MONEY_KEYS];
  const responses = [
    ...new Set(
      all.flatMap(({ plan }) =>
        responsesOf(plan)
          .map(({ key }) => key)
          .filter((key) => keys.includes(key) || key.startsWith("beyond.") || key.startsWith("revenue.")),
      ),
    ),
  ];
  return {
    name: kinds[0]!.demand.name,
    question: "Which kind of plant should be built?",
    reader: "owner",
    seed,
    replications,
    confidence: 0.95,
    responses,
    why: false,
    factors: [],
    variants: all.map(({ name, plan }) => ({ name, levels: [], set: {}, insert: [], remove: [], plan })),
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}

const KEYS = ["carcasses", "finish", "overtime", "unfinished"];

export const MONEY_KEYS = [
  ...["cost.regularPay", "cost.overtimePay", "cost.animals"],
  ...["plantCost.packaging", "plantCost.inspection", "plantCost.waste", "plantCost.overhead"],
];

interface WrittenPlan {
  supply: { loads: { crates: number; repeat?: { every: string; times: number } }[] };
  liveHandling: { lairageCrates: number; fleet: { crates: number } };
}

/** The plan with more heads, and lorries, lairage and crates for them, so that nothing but the line holds it up. */
function pressedPlan(json: Record<string, unknown>, files: TextFiles): Plan {
  const copy = structuredClone(json) as unknown as WrittenPlan;
  const [load] = copy.supply.loads;
  if (load!.repeat === undefined) load!.crates = Math.ceil(load!.crates * PRESSED);
  else {
    const times = Math.ceil(load!.repeat.times * PRESSED);
    const every = (Number.parseFloat(load!.repeat.every) * load!.repeat.times) / times;
    load!.repeat = { every: `${Math.max(1, Math.floor(every))} s`, times };
  }
  copy.liveHandling.lairageCrates = Math.ceil(copy.liveHandling.lairageCrates * PRESSED);
  copy.liveHandling.fleet.crates = Math.ceil(copy.liveHandling.fleet.crates * PRESSED) + load!.crates;
  const { plan, faults } = readPlan(copy, files);
  if (plan === null) throw new Error(`pressedPlan: ${faults[0]!.path} ${faults[0]!.found}`);
  return plan;
}

/** Reads the trial of each kind out of the study's results. */
export function trialsOf(kinds: readonly SizedKind[], results: StudyResults): KindTrial[] {
  return kinds.map((kind, at) => trialOf(kind, results, [at, at + kinds.length]));
}

function trialOf(
  kind: SizedKind,
  { variants, study, plan }: StudyResults,
  [usual, pressed]: [number, number],
): KindTrial {
  const { values, day, estimates } = variants[usual]!;
  const ranged = (list: readonly (number | null)[]): Ranged => rangedOf(list, study.confidence);
  const clock = day.startClockSeconds;
  const capacity = capacityOf(kind, variants[pressed]!.values);
  const asked = kind.design.rate.headsPerDay;
  const money = estimates["cost.regularPay"] === undefined ? null : moneyOf(estimates);
  return {
    days: study.replications,
    carcasses: ranged(values.carcasses!),
    finish: ranged(values.finish!.map((each) => (each === null ? null : clock + each))),
    overtimeSeconds: ranged(values.overtime!),
    limits: kind.plan.limits.map(({ name, source }) => ({
      name,
      outside: estimates[`beyond.${name}`]?.mean ?? 0,
      source: source || (plan.limitSources[name] ?? ""),
    })),
    capacityHeads: ranged(capacity),
    spare: ranged(capacity.map((heads) => heads / asked - 1)),
    money,
  };
}

/**
 * Heads a day at the pace of each pressed day: carcasses over the time in which heads were hung, times the time to hang them in, as live
 * heads. The time is that to the end of work less checks, breaks, the emptying of the kill, the last head's way, and the gap between shifts.
 */
function capacityOf({ design, plan }: SizedKind, values: Record<string, (number | null)[]>): number[] {
  const { rate } = design;
  const { shifts } = plan.day;
  const [first, last] = [shifts[0]!, shifts.at(-1)!];
  const gaps = last.toSeconds - first.fromSeconds - rate.shiftSeconds;
  const other = rate.preStartSeconds + rate.breakSeconds + rate.emptyingSeconds + rate.lastHeadSeconds + gaps;
  const share = rate.carcassesPerDay / rate.headsPerDay;
  return values.finish!.map((finish, day) => {
    const hanging = finish! - first.fromSeconds - other;
    return (values.carcasses![day]! / share / hanging) * rate.hangingSeconds;
  });
}

function moneyOf(estimates: Record<string, { mean: number } | undefined>): Record<string, number> {
  const keys = Object.keys(estimates).filter((key) => MONEY_KEYS.includes(key) || key.startsWith("revenue."));
  return Object.fromEntries(keys.map((key) => [key, estimates[key]!.mean]));
}

function rangedOf(values: readonly (number | null)[], confidence: number): Ranged {
  const found = estimate(values, confidence);
  if (found === null) return { mean: Number.NaN, low: Number.NaN, high: Number.NaN };
  return { mean: found.mean, low: found.low ?? found.mean, high: found.high ?? found.mean };
}
