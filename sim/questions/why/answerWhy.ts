import type { Plan } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import {
  type Advice,
  type ChangeKind,
  harmOf,
  harmResponses,
  type OtherChange,
  type StudyResults,
  type TriedChange,
} from "../../days/results/index.ts";
import type { DayJournal, Simulate } from "../../days/run/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import { adviceWords } from "./adviceWords.ts";
import type { PlanChange } from "./change.ts";
import { changesToTry } from "./changesToTry.ts";
import { ChangeTrials, type Values } from "./changeTrials.ts";
import { gainEnds, isShownToGain } from "./gains.ts";
import { type SearchResult, searchAdvice, searchDays, type Tried } from "./searchAdvice.ts";
import { studyName, type WhyOptions, whyResponses, whyStudy } from "./whyStudy.ts";
import { whyVerdict } from "./whyVerdict.ts";

const SHARE = 0.002;

/** Spans of time that people name. */
const SPANS = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600];

export interface WhyTools {
  simulate: Simulate;
  /** Told what is being done. */
  say?: (words: string) => void;
}

const NO_JOURNAL: DayJournal = { known: [], note: () => {} };

/** How many times as many days as asked for are simulated at most. */
const MAX_TIMES = 4;

/** Of intervals of changes that were not followed up: many are read at once. */
const OTHERS_CONFIDENCE = 0.99;

/**
 * What to change first: simulates the plan, searches among the changes that may be worth trying, and simulates those that
 * are left, with the plan, on new days: a winner is often partly lucky, and what is told of it must not be. The results are those of the plan and of every change that is told, with the advice; the plan
 * alone without advice where its days do not end by themselves. A function of plan and options alone.
 */
export async function answerWhy(plan: Plan, options: WhyOptions, tools: WhyTools): Promise<StudyResults> {
  const { simulate, say = () => {} } = tools;
  const alone = await simulate(whyStudy(plan, options) satisfies Study, NO_JOURNAL, "binned");
  const { why, estimates } = alone.variants[0]!;
  const response = alone.responses[0]!;
  if (why === null || estimates[response.key] === undefined) return alone;
  const asked = changesToTry(plan);
  say(`Trying ${asked.singles.length} changes on the same days.`);
  const today = estimates[response.key]!;
  const little = littleWorth(plan, response, today.mean);
  const days = searchDays({ ...today, mean: today.mean - startOf(plan, response) });
  const responses = [...new Set([...whyResponses(plan), ...harmResponses(plan)])];
  const about = { plan, name: studyName(plan), confidence: options.confidence, responses };
  const searching = new ChangeTrials({ ...about, seed: `${options.seed}, search`, traces: "none" }, simulate);
  const found = await searchAdvice(plan, asked, { trials: searching, response, little, days });
  say(`Trying the best ${found.finalists.length} on ${options.replications} new days.`);
  const own = new ChangeTrials({ ...about, seed: options.seed, traces: "binned" }, simulate);
  const ownDays = await runUntilTold(own, found.finalists, { response, little, days: options.replications });
  const harms = found.finalists.map((change) => ({ change, harm: finalHarm(plan, [searching, own], change) }));
  const sound = harms.filter(({ harm }) => harm === null).map(({ change }) => change);
  const results = await own.run(bestFirst(sound, own, response.key, response.better === "less" ? -1 : 1), ownDays);
  const advice = {
    ...{ response, days: ownDays, changes: triedOf(results, sound) },
    others: found.others
      .filter(({ harm }) => harm === null)
      .map((tried) => otherOf(tried, response.better === "less" ? -1 : 1)),
    leftOut: leftOutOf(found, harms, little),
    effort: {
      singles: asked.singles.length,
      pairs: found.pairsTried,
      searchDays: searching.simulated,
      ownDays: own.simulated,
      firstDays: days.first,
      secondDays: days.second,
    },
  };
  const variants = results.variants.map((variant, index) => (index === 0 ? { ...variant, why } : variant));
  const told = { changes: sound, why, limits: plan.limits.length };
  const decision = results.decision == null ? null : whyVerdict(results.decision, told);
  const words = adviceWords(advice, {
    little,
    matters: decision?.matters.size ?? little,
    asked,
    changes: sound,
    confidence: options.confidence,
    limits: plan.limits.length,
  });
  return { ...results, variants, decision, advice: { ...advice, words } };
}

/**
 * Days of their own of plan and finalists: as many as asked for, and twice and four times as many as long as a change that
 * is not shown to gain may yet be worth more than the best that is shown. Gives their number.
 */
async function runUntilTold(
  own: ChangeTrials,
  finalists: readonly PlanChange[],
  { response, little, days }: { response: ResponseInfo; little: number; days: number },
): Promise<number> {
  const most = days * MAX_TIMES;
  for (let asked = days; ; asked *= 2) {
    const results = await own.run(finalists, asked);
    if (asked >= most || !isOpen(triedOf(results, finalists), response, little)) return asked;
  }
}

function isOpen(tried: readonly TriedChange[], response: ResponseInfo, little: number): boolean {
  const sign = response.better === "less" ? -1 : 1;
  const shown = tried.filter(({ gains }) => gains).map(({ difference }) => sign * difference.mean);
  const best = Math.max(little, ...shown);
  return tried.some(
    ({ gains, difference }) => !gains && sign * difference.mean > 0 && gainEnds(difference, response)[1] > best,
  );
}

/** Over all days of both: what is at stake is harm, and the search did not choose by it. */
function finalHarm(plan: Plan, trials: readonly ChangeTrials[], change: PlanChange): string | null {
  if (trials.some((each) => each.hasFailed(change))) return "some of its days could not be simulated";
  const days = trials.map((each) => each.daysOf(change));
  const all = (of: PlanChange | null): Values => {
    const lists = trials.map((each) => each.valuesOf(of));
    const keys = Object.keys(lists[0]!);
    const joined = (key: string) => lists.flatMap((values, index) => (values[key] ?? []).slice(0, days[index]));
    return Object.fromEntries(keys.map((key) => [key, joined(key)]));
  };
  return harmOf(plan, all(null), all(change));
}

function bestFirst(changes: readonly PlanChange[], own: ChangeTrials, key: string, sign: number): PlanChange[] {
  const mean = (change: PlanChange) =>
    sign * (estimate(own.valuesOf(change)[key]!, 0.95)?.mean ?? Number.NEGATIVE_INFINITY);
  return [...changes].sort((a, b) => mean(b) - mean(a));
}

function triedOf({ variants, responses }: StudyResults, changes: readonly PlanChange[]): TriedChange[] {
  const response = responses[0]!;
  const { key } = response;
  return variants.slice(1).flatMap(({ name, differences, againstBest }): TriedChange[] => {
    const difference = differences?.[key];
    const { kind, of, label } = changes.find((change) => change.label === name)!;
    if (difference === undefined) return [];
    const gains = isShownToGain(difference, response);
    return [{ kind, of, label, variant: name, difference, gains, mayBeBest: againstBest?.[key]?.mayBeBest ?? true }];
  });
}

function otherOf({ change: { kind, of, label }, gains }: Tried, sign: number): OtherChange {
  const signed = gains.map((gain) => (gain === null ? null : sign * gain));
  return { kind, of, label, difference: estimate(signed, OTHERS_CONFIDENCE)! };
}

/** Those that look as if they gained: the others need no reason. */
function leftOutOf(
  { others, failed }: SearchResult,
  harms: readonly { change: PlanChange; harm: string | null }[],
  little: number,
): Advice["leftOut"] {
  const about = ({ kind, of, label }: PlanChange, reason: string) =>
    ({ kind, of, label, reason }) as { kind: ChangeKind; of: string; label: string; reason: string };
  return [
    ...harms.flatMap(({ change, harm }) => (harm === null ? [] : [about(change, harm)])),
    ...others
      .filter(({ harm, gain }) => harm !== null && (gain.low ?? gain.mean) > little)
      .sort((a, b) => b.gain.mean - a.gain.mean)
      .map(({ change, harm }) => about(change, harm!)),
    ...failed.map((change) => about(change, "some of its days could not be simulated")),
  ];
}

/**
 * A gain up to which nobody would change a plant: about 0.2 % of the day (of the heads, of the throughput), as a round number of the
 * response's unit. `mean`: the plan's own; for an end of work in seconds after the day's start.
 */
function littleWorth(plan: Plan, response: ResponseInfo, mean: number): number {
  const share = SHARE * Math.max(0, mean - startOf(plan, response));
  if (response.format === "clock") return SPANS.findLast((span) => span <= Math.max(1, share * 1.1))!;
  const size = 10 ** Math.floor(Math.log10(Math.max(share, 0.1)));
  return [5, 2, 1].find((step) => step * size <= share)! * size || size;
}

/** Seconds after the day's start from which an end of work is counted; 0 for what is no time of day. */
function startOf({ day }: Plan, { format }: ResponseInfo): number {
  return format === "clock" ? (day.shifts[0]?.fromSeconds ?? 0) : 0;
}
