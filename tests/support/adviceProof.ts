import fc from "fast-check";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../sim/asked/study/index.ts";
import type { Advice, TriedChange } from "../../sim/days/results/index.ts";
import { runSingleDay, runStudy } from "../../sim/days/run/index.ts";
import { estimate, studentQuantile } from "../../sim/maths/statistics/index.ts";
import { changesToTry, type PlanChange } from "../../sim/questions/why/index.ts";
import { advised } from "./advised.ts";
import { randomPlan } from "./randomPlans.ts";

const MADE = { gambrel: "test", command: "test" };
const LIMIT = "way through";

export interface ProofOptions {
  /** Days of their own of each change that is told. */
  days: number;
  /** Days with other seeds on which everything that was tried is simulated afresh. */
  freshDays: number;
}

/** What was found about the advice on one plan. */
export interface PlanVerdict {
  plan: string;
  /** Changes told with an interval, and of how many the fresh value lies outside. */
  told: number;
  outside: number;
  /** Whether the advice begins with one of the truly best, within its interval; null where nothing was tried. */
  topIsBest: boolean | null;
  /** Gain of the best by fresh days, of the top of the advice, and the half-width that was printed of it. */
  best: { label: string; gain: number } | null;
  top: { label: string; gain: number; halfWidth: number } | null;
  /** Changes told of which fresh days show that they break a limit more (99.9 %, one-sided). */
  harmful: string[];
  /** Changes that the words call no different, and of how many fresh days show a larger difference. */
  same: number;
  notSame: number;
}

/**
 * Random plans with every feature, all of whose days end by themselves, each with a time limit on its way through that
 * about a tenth of the heads break: `count` of them from place `from` of the row that `seed` gives.
 */
export function proofPlans(count: number, from: number, seed: number): Plan[] {
  const wanted = from + count;
  const plans: Plan[] = [];
  for (let taken = 1; plans.length < wanted && taken <= 40; taken++) {
    plans.length = 0;
    for (const plan of fc.sample(randomPlan, { numRuns: wanted * taken * 2, seed })) {
      const found = plans.length < wanted ? limited(plan) : null;
      if (found !== null) plans.push(found);
    }
  }
  return plans
    .slice(from, wanted)
    .map((plan, index) => ({ ...plan, name: `random plan ${from + index} of seed ${seed}` }));
}

/** Null where a first day does not end by itself, or too few heads come through. */
function limited(plan: Plan): Plan | null {
  const limit = (maxSeconds: number): Plan => ({
    ...plan,
    limits: [
      {
        ...{ name: LIMIT, minSeconds: null, maxSeconds, source: "invented" },
        from: { stage: plan.line[0]!.name, moment: "end" },
        to: { stage: "last", moment: "start" },
      },
    ],
  });
  const { day } = runSingleDay(limit(1e9), "limit", "none", MADE).variants[0]!;
  const { count, quantiles } = day.limits[0]!.tally;
  return day.status !== "finished" || count < 10 ? null : limit(Math.max(1, quantiles.p90 ?? quantiles.p95));
}

/** Takes advice on a plan and simulates everything that was tried afresh. Null where its days do not end by themselves. */
export async function judge(plan: Plan, seed: string, { days, freshDays }: ProofOptions): Promise<PlanVerdict | null> {
  const { advice } = await advised(plan, { seed, replications: days });
  if (advice === null) return null;
  const { response } = advice;
  const { singles, pairs } = changesToTry(plan);
  const names = new Set([...advice.changes, ...advice.others].map(({ label }) => label));
  const tried = [...singles, ...pairs].filter(({ label }) => names.has(label));
  const fresh = await simulated(plan, tried, `${seed}, afresh`, freshDays, [response.key, `beyond.${LIMIT}`]);
  const sign = response.better === "less" ? -1 : 1;
  const gainOf = (label: string) =>
    estimate(
      differences(fresh, label, response.key).map((value) => sign * value),
      0.95,
    )!;
  const ranked = [...names].map((label) => ({ label, gain: gainOf(label).mean })).sort((a, b) => b.gain - a.gain);
  const told = advice.changes.filter(({ gains }) => gains);
  const [first] = told;
  const top =
    first === undefined ? null : { label: first.label, gain: gainOf(first.label).mean, halfWidth: halfWidth(first) };
  const best = ranked[0] ?? null;
  const little = littleOf(advice);
  const same = sameLabels(advice);
  return {
    plan: plan.name,
    told: told.length,
    outside: told.filter((change) => isOutside(change, sign * gainOf(change.label).mean, advice.days / freshDays))
      .length,
    topIsBest: best === null ? null : isBest(best.gain, top, { advice, sign, little }),
    ...{ best, top },
    harmful: advice.changes
      .filter(({ gains }) => gains)
      .filter(({ label }) => isHarmful(differences(fresh, label, `beyond.${LIMIT}`)))
      .map(({ label }) => label),
    same: same.length,
    notSame: same.filter((label) => isLarger(gainOf(label), little)).length,
  };
}

/** Half of the interval that is printed. */
function halfWidth({ difference }: TriedChange): number {
  const { familyLow, familyHigh, low, high, joint } = difference;
  const [from, to] = joint ? [familyLow, familyHigh] : [low, high];
  return ((to ?? 0) - (from ?? 0)) / 2;
}

/** The fresh mean has an error of its own, of a variance smaller by the ratio of the days. */
function isOutside(change: TriedChange, freshMean: number, ratio: number): boolean {
  return Math.abs(change.difference.mean - freshMean) > halfWidth(change) * Math.sqrt(1 + ratio) + 1e-9;
}

/** With a top: nothing else gains more than it by more than its half-width. Without: nothing gains more than was left open. */
function isBest(
  best: number,
  top: PlanVerdict["top"],
  { advice, sign, little }: { advice: Advice; sign: number; little: number },
): boolean {
  if (top !== null) return best - top.gain <= Math.max(top.halfWidth, 1e-9);
  const open = advice.changes.map((change) => sign * change.difference.mean + halfWidth(change));
  const others = advice.others.map(({ difference: { mean, low, high } }) =>
    Math.max(...[low, high, mean].map((end) => sign * (end ?? mean))),
  );
  return best <= Math.max(little, ...open, ...others);
}

/** By the sentence "No difference larger than 5 s: ...". */
function sameLabels({ words }: Advice): string[] {
  const sentence = words.find((line) => line.startsWith("No difference larger than "));
  return sentence === undefined ? [] : sentence.slice(sentence.indexOf(": ") + 2, -1).split("; ");
}

function littleOf({ words }: Advice): number {
  const found = /^No difference larger than ([\d.]+) (\S+):?/.exec(
    words.find((line) => line.startsWith("No difference larger")) ?? "",
  );
  if (found === null) return 0;
  return Number(found[1]) * (found[2]!.startsWith("min") ? 60 : 1);
}

function isLarger({ mean, sd, n }: { mean: number; sd: number; n: number }, little: number): boolean {
  return Math.abs(mean) - (2.6 * sd) / Math.sqrt(n) > little;
}

function isHarmful(more: readonly number[]): boolean {
  const found = estimate(more, 0.95);
  if (found === null || found.mean <= 1e-9) return false;
  return found.mean > (studentQuantile(0.999, found.n - 1) * found.sd) / Math.sqrt(found.n);
}

type Fresh = Map<string, Record<string, (number | null)[]>>;

function differences(fresh: Fresh, label: string, key: string): number[] {
  const [base, changed] = [fresh.get("base")![key]!, fresh.get(label)![key]!];
  return base.flatMap((from, day) => {
    const to = changed[day] ?? null;
    return from === null || to === null ? [] : [to - from];
  });
}

async function simulated(
  plan: Plan,
  changes: readonly PlanChange[],
  seed: string,
  replications: number,
  responses: string[],
): Promise<Fresh> {
  const about = { levels: [], set: {}, insert: [], remove: [] };
  const study: Study = {
    ...{ name: "afresh", question: "", reader: "", seed, replications, confidence: 0.95, responses, why: false },
    ...{ factors: [], design: { kind: "list" }, procedure: PLAIN_PROCEDURE },
    variants: [
      { name: "base", ...about, plan },
      ...changes.map((change) => ({ name: change.label, ...about, plan: change.on(plan).plan })),
    ],
  };
  // Every two variants are compared for the best one by a study, which nobody reads here: one at a time.
  const fresh: Fresh = new Map();
  for (const variant of study.variants) {
    const { variants } = await runStudy({ ...study, variants: [variant] }, { ...MADE, traces: "none" });
    fresh.set(variant.name, variants[0]!.values);
  }
  return fresh;
}
