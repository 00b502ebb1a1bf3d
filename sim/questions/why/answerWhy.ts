import type { Plan } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { countedDays, type ResponseInfo, responsesOf } from "../../day/observations/index.ts";
import {
  type Advice,
  type ChangeKind,
  harmOf,
  harmResponses,
  type MeanEstimate,
  type OtherChange,
  type StudyResults,
  type TriedChange,
  type Why,
} from "../../days/results/index.ts";
import type { DayJournal, Simulate } from "../../days/run/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import { adviceWords } from "./adviceWords.ts";
import type { PlanChange } from "./change.ts";
import { type ChangesToTry, changesToTry } from "./changesToTry.ts";
import { ChangeTrials, type Values } from "./changeTrials.ts";
import { changesOnDay, dayKeys, dayResponse, dayWords, decidingDay } from "./dayOfWeek.ts";
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
  if (plan.week !== undefined) return answerOfWeek(plan, options, tools);
  const alone = await tools.simulate(whyStudy(plan, options) satisfies Study, NO_JOURNAL, "binned");
  const { why, estimates } = alone.variants[0]!;
  const response = alone.responses[0]!;
  if (why === null || estimates[response.key] === undefined) return alone;
  const responses = [...new Set([...whyResponses(plan), ...harmResponses(plan)])];
  const today = estimates[response.key]!;
  const asked = changesToTry(plan);
  return advised(
    { plan, dayPlan: plan, asked, why, response, today, responses, before: [], name: studyName(plan) },
    options,
    tools,
  );
}

/**
 * The same of one day of a week: what the days before left it, and what each change is worth in that day's end of work, simulated in whole weeks. Where the time went
 * is traced on such a day alone, which begins with an empty plant.
 */
async function answerOfWeek(plan: Plan, options: WhyOptions, tools: WhyTools): Promise<StudyResults> {
  const { seed, confidence, replications } = options;
  const keys = [...new Set([...dayKeys(plan), ...harmResponses(plan)])];
  const name = `Why ${plan.name} goes as it does`;
  const first = new ChangeTrials({ plan, name, confidence, responses: keys, seed, traces: "none" }, tools.simulate);
  const weeks = await first.run([], replications);
  const { estimates } = weeks.variants[0]!;
  const on = options.on ?? decidingDay(plan, estimates);
  const day = countedDays(plan).find((each) => each.name === on);
  if (day === undefined) return weeks;
  const key = dayResponse(day);
  const alone = await tools.simulate(whyStudy(day.plan, options) satisfies Study, NO_JOURNAL, "none");
  const { why, estimates: ofDay } = alone.variants[0]!;
  const today = estimates[key] ?? estimates[`${day.name}.finish`];
  if (today === undefined) return weeks;
  const known = responsesOf(plan).find((each) => each.key === key)!;
  const before = dayWords(plan, day.name, weeks, why === null ? undefined : ofDay.finish);
  const responses = [...new Set([key, `${day.name}.overtime`, ...harmResponses(plan)])];
  const found = changesToTry(day.plan);
  const asked = changesOnDay(day, found, await gainsAlone(day.plan, found, { seed, confidence }, tools));
  return advised(
    {
      plan,
      dayPlan: day.plan,
      asked,
      why,
      response: known,
      today,
      responses,
      before,
      name: `Why ${day.name} of ${plan.name} ends when it does`,
    },
    options,
    tools,
  );
}

/** Days alone on which changes are looked at before any is tried in weeks. */
const SCREENING_DAYS = 3;

/** What each change gains on such a day that begins with an empty plant: a hint at what is worth a week. */
async function gainsAlone(
  plan: Plan,
  { singles }: ChangesToTry,
  { seed, confidence }: Pick<WhyOptions, "seed" | "confidence">,
  { simulate, say = () => {} }: WhyTools,
): Promise<(change: PlanChange) => number> {
  say(`Looking at ${singles.length} changes on the day alone.`);
  const about = { plan, name: studyName(plan), confidence, responses: whyResponses(plan) };
  const trials = new ChangeTrials({ ...about, seed: `${seed}, day alone`, traces: "none" }, simulate);
  const { responses } = await trials.run(singles, SCREENING_DAYS);
  const [{ key, better }] = responses as [ResponseInfo, ...ResponseInfo[]];
  const mean = (change: PlanChange | null) => estimate(trials.valuesOf(change)[key] ?? [], 0.95)?.mean ?? Number.NaN;
  const today = mean(null);
  return (change) => {
    const gain = trials.hasFailed(change) ? Number.NaN : (mean(change) - today) * (better === "less" ? -1 : 1);
    return Number.isNaN(gain) ? Number.NEGATIVE_INFINITY : gain;
  };
}

/** What is asked of: a plan of one day, or one day of a plan with a week. */
interface Asked {
  /** What is simulated. */
  plan: Plan;
  /** The plan of the day that is asked of. */
  dayPlan: Plan;
  asked: ChangesToTry;
  why: Why | null;
  /** What changes are told by. */
  response: ResponseInfo;
  today: MeanEstimate;
  responses: string[];
  /** Of a week: what is to be said first. */
  before: string[];
  name: string;
}

async function advised(
  { plan, dayPlan, asked, why, response, today, responses, before, name }: Asked,
  options: WhyOptions,
  { simulate, say = () => {} }: WhyTools,
): Promise<StudyResults> {
  const noun = plan.week === undefined ? "days" : "weeks";
  say(`Trying ${asked.singles.length} changes on the same ${noun}.`);
  const little = littleWorth(dayPlan, response, today.mean);
  const days = searchDays({ ...today, mean: today.mean - startOf(dayPlan, response) });
  const about = { plan, name, confidence: options.confidence, responses };
  const searching = new ChangeTrials({ ...about, seed: `${options.seed}, search`, traces: "none" }, simulate);
  const found = await searchAdvice(plan, asked, { trials: searching, response, little, days });
  say(`Trying the best ${found.finalists.length} on ${options.replications} new ${noun}.`);
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
  const verdict = results.decision == null ? null : whyVerdict(results.decision, told);
  const decision = verdict === null ? null : { ...verdict, words: [...before, ...verdict.words] };
  const words = adviceWords(advice, {
    little,
    matters: decision?.matters.size ?? little,
    asked,
    changes: sound,
    confidence: options.confidence,
    noun,
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
