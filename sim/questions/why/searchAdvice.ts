import type { Plan } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import { harmOf } from "../../days/results/index.ts";
import { compareWithBest, type Estimate, estimate } from "../../maths/statistics/index.ts";
import type { PlanChange } from "./change.ts";
import type { ChangesToTry } from "./changesToTry.ts";
import type { ChangeTrials } from "./changeTrials.ts";

/** Days of every change, and of those that looked best on them. */
export interface SearchDays {
  first: number;
  second: number;
}

/** Where days are much alike, few tell what a change does; where they are not, what it does may show on few of them. */
const ALIKE: SearchDays = { first: 4, second: 10 };
const UNLIKE: SearchDays = { first: 10, second: 20 };
/** Standard deviation by mean of the plan's own days up to which they are alike. */
const MAX_SPREAD = 0.1;

/** `mean` and `sd` of the response over days of the plan as it is, from the start of work where it is an end. */
export function searchDays({ mean, sd }: Pick<Estimate, "mean" | "sd">): SearchDays {
  return sd <= MAX_SPREAD * Math.abs(mean) ? ALIKE : UNLIKE;
}

const MAX_SECOND = 12;
const MAX_SECOND_PAIRS = 6;
export const MAX_FINALISTS = 6;

/** A change that was simulated, and what it gained: more is better, whatever the response. */
export interface Tried {
  change: PlanChange;
  gain: Estimate;
  /** The same day by day. */
  gains: (number | null)[];
  harm: string | null;
}

export interface SearchResult {
  finalists: PlanChange[];
  /** Everything that was simulated and is no finalist. */
  others: Tried[];
  /** Changes that could not be simulated. */
  failed: PlanChange[];
  pairsTried: number;
}

/**
 * Simulates every change on a few days and gives more days to those that may be best.
 *
 * All get the first days (4, or 10 where the plan's days differ much) on the same random numbers; the 12 with the highest mean gain plus its standard error get the
 * second (10 or 20). Then comparisons with the best, all at once at 95 %, say which may be the best: those are finalists (4 at most), and the
 * best change of each other place, 6 in all. Pairs are tried where no single change is shown to gain `little`; of
 * them the 6 that look best get the second days. Nothing that does harm on these days becomes a finalist.
 */
export async function searchAdvice(
  plan: Plan,
  { singles, pairs }: ChangesToTry,
  tools: Omit<Race, "plan">,
): Promise<SearchResult> {
  const race: Race = { plan, ...tools };
  const { trials, little } = race;
  const tried = await round(race, singles, MAX_SECOND);
  const found = tried.some(({ harm, gain }) => harm === null && lowEnd(gain) > little);
  const morePairs = found ? [] : await round(race, pairs, MAX_SECOND_PAIRS);
  const all = [...tried, ...morePairs];
  const finalists = finalistsOf(all, race);
  return {
    finalists,
    others: all.filter(({ change }) => !finalists.includes(change)),
    failed: [...singles, ...morePairs.map(({ change }) => change)].filter((change) => trials.hasFailed(change)),
    pairsTried: found ? 0 : pairs.length,
  };
}

interface Race {
  plan: Plan;
  trials: ChangeTrials;
  response: ResponseInfo;
  little: number;
  days: SearchDays;
}

async function round(race: Race, changes: readonly PlanChange[], most: number): Promise<Tried[]> {
  if (changes.length === 0) return [];
  await race.trials.run(changes, race.days.first);
  const first = triedOf(race, changes);
  const hopeful = first
    .filter(({ gain, harm }) => harm === null && highEnd(gain) > 0)
    .sort((a, b) => optimistic(b) - optimistic(a))
    .slice(0, most)
    .map(({ change }) => change);
  if (hopeful.length > 0) await race.trials.run(hopeful, race.days.second);
  return triedOf(race, changes);
}

function triedOf({ plan, trials, response }: Race, changes: readonly PlanChange[]): Tried[] {
  const [base, sign] = [trials.valuesOf(null), response.better === "less" ? -1 : 1];
  return changes.flatMap((change): Tried[] => {
    if (trials.hasFailed(change)) return [];
    const values = trials.valuesOf(change);
    const [before, after] = [base[response.key]!, values[response.key]!];
    const gains = Array.from({ length: trials.daysOf(change) }, (_, day) => {
      const [from, to] = [before[day] ?? null, after[day] ?? null];
      return from === null || to === null ? null : sign * (to - from);
    });
    const gain = estimate(gains, 0.95);
    return gain === null ? [] : [{ change, gain, gains, harm: harmOf(plan, base, values) }];
  });
}

/** A pair has to gain more than any single change does: it asks for more. */
function finalistsOf(all: readonly Tried[], { trials, response, little, days }: Race): PlanChange[] {
  const single = Math.max(
    0,
    ...all.filter(({ change, harm }) => change.kind !== "pair" && harm === null).map(({ gain }) => gain.mean),
  );
  const tried = all.filter(({ change, gain }) => change.kind !== "pair" || gain.mean > single + little);
  const ranked = tried
    .filter(
      ({ change, harm, gain }) => harm === null && trials.daysOf(change) >= days.second && highEnd(gain) > little / 2,
    )
    .sort((a, b) => b.gain.mean - a.gain.mean);
  const values = ranked.map(({ change }) => trials.valuesOf(change)[response.key]!.slice(0, days.second));
  const against = compareWithBest(values, response.better!, 0.95);
  const maybe = ranked.filter((_, index) => against?.[index]?.mayBeBest ?? true).slice(0, MAX_FINALISTS - 2);
  const chosen = new Set(maybe);
  for (const one of ranked) {
    const isNew = ![...chosen].some(({ change }) => change.of === one.change.of);
    if (isNew && chosen.size < MAX_FINALISTS) chosen.add(one);
  }
  for (const one of ranked) if (chosen.size < MAX_FINALISTS) chosen.add(one);
  return [...chosen].map(({ change }) => change);
}

function optimistic({ gain }: Tried): number {
  return gain.mean + gain.sd / Math.sqrt(gain.n);
}

function lowEnd({ mean, low }: Estimate): number {
  return low ?? mean;
}

function highEnd({ mean, high }: Estimate): number {
  return high ?? mean;
}
