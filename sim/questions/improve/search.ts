import type { CandidateDesign, Designs } from "./designs.ts";
import { atLevels, greedyPath, levelsOf } from "./greedyPath.ts";
import { type Guide, guideOf } from "./guide.ts";
import { nearestAllowed } from "./nearestAllowed.ts";
import { Estimates, guessOf, marginPerCarcass, promiseOf } from "./predict.ts";
import type { ImproveQuestion } from "./question.ts";
import { meanOf, ranked, scoreOf } from "./score.ts";
import { searchHarm } from "./searchHarm.ts";
import { type Counts, isAllowed, type Space } from "./space.ts";
import { firstDays, type Trial, type Trials } from "./trials.ts";
import { promisingWeeks, singleMoves } from "./week/weekSearch.ts";

/** Units that go from one element to another in one step. */
const STEPS = [1, 2];

/** Designs tried in one round. */
const ROUND = 4;

/** Neighbours that the slopes leave for the estimate to look at. */
const SHORTLIST = 10;

/** Rounds around one design, and designs that the search goes round. */
const MAX_ROUNDS = 3;

const MAX_CENTRES = 3;

/** Days on which every design is looked at before it gets all days of the search, and on which slopes are read. */
const FIRST_DAYS = 2;

/** Of what today's plan does: a design this much worse on each of the first days has fallen behind. */
const BEHIND = 0.01;

/** Analytic estimates of one search; of the same line at other hours they cost next to nothing. */
const MAX_ESTIMATES = 150;
const MAX_ESTIMATES_OF_TIMES = 3000;

/** Moments to which something is moved in one step, away from where it is. */
const TIME_STEPS = [1, 2, 4];

export interface SearchTools {
  designs: Designs;
  trials: Trials;
  /** Of the same days with what tells why they ended: for the slopes. */
  explained: Trials;
  /** Told after each round. */
  tell(tried: number, best: Trial | null): void;
}

/**
 * Tries designs, few of many: the plan as it is; what the estimate says and what the slopes of the plan as it is say;
 * then, round after round, the neighbours of the best one so far that slopes and estimate promise most. Everything that
 * was tried, the plan as it is first; designs outside the allowed totals are in it for the trade-off curve.
 */
export async function search(question: ImproveQuestion, tools: SearchTools): Promise<Trial[]> {
  const { search: asked, goal } = question;
  const [base] = await tools.trials.of([tools.designs.base], asked.days);
  const perCarcass = marginPerCarcass(base!, goal);
  const estimates =
    question.space.kind === "times"
      ? new Estimates(MAX_ESTIMATES_OF_TIMES, question.base.plan)
      : new Estimates(MAX_ESTIMATES);
  const state: State = { question, ...tools, perCarcass, estimates, tried: [base!] };
  await tryThem(state, await starts(state));
  const rounds = new Map<CandidateDesign, number>();
  while (state.tried.length < asked.designs) {
    const next = await nextRound(state, rounds);
    if (next.length === 0) break;
    await tryThem(state, next);
  }
  return state.tried;
}

interface State extends SearchTools {
  question: ImproveQuestion;
  perCarcass: number;
  estimates: Estimates;
  tried: Trial[];
}

async function tryThem(state: State, wanted: readonly CandidateDesign[]): Promise<void> {
  const { question, trials, tell } = state;
  const room = question.search.designs - state.tried.length;
  const fresh = [...new Set(wanted)].filter((design) => !isTried(state, design)).slice(0, Math.max(0, room));
  const looked = await trials.of(fresh, firstOf(question));
  const rival = allowedTrials(state).find((trial) => searchHarm(trial, state.tried, question) === null) ?? null;
  const hopeful = looked.filter((trial) => isHopeful(trial, rival, state));
  const whole = await trials.of(
    hopeful.map(({ design }) => design),
    question.search.days,
  );
  state.tried.push(...looked.map((trial) => whole.find(({ design }) => design === trial.design) ?? trial));
  tell(state.tried.length, allowedTrials(state)[0] ?? null);
}

function firstOf({ search: { days } }: ImproveQuestion): number {
  return Math.min(FIRST_DAYS, days);
}

/**
 * Whether a design may yet be the best of those that do no harm: not where each of its first days is worse than the best one's by more than
 * matters. What may not be recommended is tried for the trade-off curve alone, and the first days do for that.
 */
function isHopeful(trial: Trial, best: Trial | null, { question, tried }: State): boolean {
  const { counts } = trial.design;
  if (counts === null || !isAllowed(question.space, counts)) return false;
  if (best === null) return true;
  const same = firstDays(best, trial.values.length);
  if (scoreOf(trial, question).excess < scoreOf(same, question).excess) return true;
  const today = meanOf(tried[0]!.values.filter((value) => value !== null)) ?? 0;
  const least = question.difference ?? BEHIND * Math.abs(today);
  const sign = question.response.better === "less" ? -1 : 1;
  return trial.values.some((value, day) => {
    const rival = same.values[day];
    return value !== null && (rival == null || sign * (rival - value) <= least);
  });
}

function isTried({ tried }: State, design: CandidateDesign): boolean {
  return tried.some((trial) => trial.design === design);
}

/** The best first. */
function allowedTrials({ tried, question }: State): Trial[] {
  const allowed = tried.filter(({ design }) => design.counts !== null && isAllowed(question.space, design.counts));
  return ranked(allowed, question);
}

/** The end of the greedy path first, since it is most likely good, then where slopes lead from the plan as it is. */
async function starts(state: State): Promise<CandidateDesign[]> {
  const { question, designs } = state;
  const { space, search: asked } = question;
  if (space.kind === "times") return startsOfTimes(state);
  if (space.kind === "week") return singleMoves(question).flatMap((counts) => designs.of(counts) ?? []);
  const path = greedyPath(space, designs, (design) => estimatedPromise(state, design));
  const levels = asked.curve === 0 ? [space.most] : levelsOf(space, asked.curve).toReversed();
  const guide = await guideFrom(state, designs.base);
  const shares = [space.most, space.least].map((upTo) => (guide === null ? null : nearestAllowed(space, guide, upTo)));
  const led = shares.flatMap((counts) => (counts === null ? [] : (designs.of(counts) ?? [])));
  const onPath = atLevels(path, levels).filter(({ counts }) => asked.curve > 0 || isAllowed(space, counts!));
  return [...onPath.slice(0, 1), ...led, ...onPath.slice(1)];
}

/** Where the estimate leads from today's moments, step by step; then each thing by itself half and all the way, both ways. */
function startsOfTimes(state: State): CandidateDesign[] {
  const { question, designs } = state;
  const { space } = question;
  const today = space.base as Counts;
  const alone = space.elements.flatMap(({ from, to }, index) => {
    const now = today[index]!;
    return [(now + to) / 2, (now + from) / 2, to, from].map((count) => today.with(index, Math.round(count)));
  });
  return [downhill(state, today), ...alone].flatMap((counts) => designs.of(counts) ?? []);
}

/** Steps that one walk takes at most. */
const MAX_STEPS = 50;

function downhill(state: State, from: Counts): Counts {
  const { question, designs } = state;
  const promise = (counts: Counts) => {
    const design = designs.of(counts);
    return design === null ? Number.NEGATIVE_INFINITY : estimatedPromise(state, design);
  };
  let [best, counts] = [promise(from), from];
  for (let step = 0; step < MAX_STEPS; step++) {
    const next = neighbours(question.space, counts).map((each) => ({ each, worth: promise(each) }));
    const leading = next.reduce((one, other) => (other.worth > one.worth ? other : one), { each: counts, worth: best });
    if (leading.worth <= best) break;
    [best, counts] = [leading.worth, leading.each];
  }
  return counts;
}

async function guideFrom({ question, explained }: State, design: CandidateDesign): Promise<GuideOf | null> {
  // Nobody can tell yet where the time of a week went.
  if (question.base.plan.week !== undefined) return null;
  const [trial] = await explained.of([design], firstOf(question));
  const { why } = trial!;
  return why === null ? null : (counts) => guideOf(why, counts, question);
}

type GuideOf = (counts: Counts) => Guide;

/** Neighbours of the best design that was not gone round often enough; empty when there is no such design. */
async function nextRound(state: State, rounds: Map<CandidateDesign, number>): Promise<CandidateDesign[]> {
  for (const centre of centres(state)) {
    const before = rounds.get(centre.design) ?? 0;
    if (before >= MAX_ROUNDS) continue;
    rounds.set(centre.design, before + 1);
    const picked = await promising(state, centre);
    if (picked.length > 0) return picked;
  }
  return [];
}

/** Of weeks alone none that does harm: more of them do than of days, and what lies around them does as well. */
function centres(state: State): Trial[] {
  const { question, tried } = state;
  const trials = allowedTrials(state);
  const open =
    question.space.kind === "week" ? trials.filter((trial) => searchHarm(trial, tried, question) === null) : trials;
  return open.slice(0, MAX_CENTRES);
}

/** By turns what the estimate and what the slopes promise most. */
async function promising(state: State, centre: Trial): Promise<CandidateDesign[]> {
  const { question, designs } = state;
  const counts = centre.design.counts!;
  if (question.space.kind === "week") return firstThatGo(promisingWeeks(state.tried, counts, question), state);
  const around = neighbours(question.space, counts)
    .flatMap((next) => designs.of(next) ?? [])
    .filter((design) => !isTried(state, design));
  // Slopes tell nothing of hours.
  if (question.space.kind === "times")
    return sorted(around, (design) => estimatedPromise(state, design)).slice(0, ROUND);
  const guide = (await guideFrom(state, centre.design))?.(counts);
  const bySlope = sorted(around, (design) => slopePromise(state, centre, design, guide));
  const shortlist = bySlope.slice(0, SHORTLIST);
  const byEstimate = sorted(shortlist, (design) => estimatedPromise(state, design));
  const turns = shortlist.flatMap((_, rank) => [byEstimate[rank]!, bySlope[rank]!]);
  return [...new Set(turns)].slice(0, ROUND);
}

/** Reading a week's plan takes longer than reckoning what it promises, so no more are read than are tried. */
function firstThatGo(counts: readonly Counts[], { designs }: State): CandidateDesign[] {
  const found: CandidateDesign[] = [];
  for (const each of counts) {
    const design = designs.of(each);
    if (design !== null) found.push(design);
    if (found.length === ROUND) break;
  }
  return found;
}

function sorted(designs: readonly CandidateDesign[], promise: (design: CandidateDesign) => number): CandidateDesign[] {
  const known = designs.map((design) => ({ design, promise: promise(design) }));
  return known.sort((a, b) => b.promise - a.promise).map(({ design }) => design);
}

/** Minus infinity where no estimate can be had any more. */
function estimatedPromise({ estimates, question, perCarcass }: State, design: CandidateDesign): number {
  const guess = estimates.of(design);
  const promise = guess === null ? Number.NaN : promiseOf(design, guess, question.goal, perCarcass);
  return Number.isFinite(promise) ? promise : -Number.MAX_VALUE;
}

/** The centre's day, its end moved as the slopes say. */
function slopePromise(
  { question, perCarcass }: State,
  centre: Trial,
  design: CandidateDesign,
  guide: Guide | undefined,
): number {
  const guess = guessOf(centre);
  const from = centre.design.counts!;
  const gained = design.counts!.reduce((sum, count, index) => {
    const change = count - from[index]!;
    if (guide === undefined || change === 0) return sum;
    return sum + change * (change > 0 ? guide.more[index]! : guide.fewer[index]!);
  }, 0);
  return promiseOf(design, { ...guess, finishSeconds: guess.finishSeconds - gained }, question.goal, perCarcass);
}

/**
 * Designs one step away that are allowed: one or two units from one element to another, one unit more, one fewer. Of a
 * budget: one option more, one fewer, one in place of another. Of moments: one thing moved, then two of them.
 */
export function neighbours(space: Space, counts: Counts): Counts[] {
  if (space.kind === "times") return movedAround(space, counts);
  const each = space.elements.map((_, index) => index);
  const moves = each.flatMap((index) => [
    [[index, 1] as const],
    [[index, -1] as const],
    ...each
      .filter((other) => other !== index)
      .flatMap((other) => STEPS.map((step) => [[index, step] as const, [other, -step] as const])),
  ]);
  return moves
    .map((move) => counts.map((count, index) => count + (move.find(([of]) => of === index)?.[1] ?? 0)))
    .filter((design) => isAllowed(space, design));
}

function movedAround(space: Space, counts: Counts): Counts[] {
  const each = space.elements.map((_, index) => index);
  const by = (index: number, step: number, from: Counts = counts) => from.with(index, from[index]! + step);
  const alone = TIME_STEPS.flatMap((step) => each.flatMap((index) => [by(index, step), by(index, -step)]));
  const two = each.flatMap((index) =>
    each
      .filter((other) => other > index)
      .flatMap((other) => [-1, 1].flatMap((one) => [-1, 1].map((step) => by(other, step, by(index, one))))),
  );
  return [...alone, ...two].filter((design) => isAllowed(space, design));
}
