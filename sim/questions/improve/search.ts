import type { CandidateDesign, Designs } from "./designs.ts";
import { atLevels, greedyPath, levelsOf } from "./greedyPath.ts";
import { type Guide, guideOf } from "./guide.ts";
import { nearestAllowed } from "./nearestAllowed.ts";
import { Estimates, guessOf, marginPerCarcass, promiseOf } from "./predict.ts";
import type { ImproveQuestion } from "./question.ts";
import { ranked } from "./score.ts";
import { type Counts, isAllowed, type Space } from "./space.ts";
import type { Trial, Trials } from "./trials.ts";

/** Units that go from one element to another in one step. */
const STEPS = [1, 2];

/** Designs tried in one round. */
const ROUND = 4;

/** Neighbours that the slopes leave for the estimate to look at. */
const SHORTLIST = 10;

/** Rounds around one design, and designs that the search goes round. */
const MAX_ROUNDS = 3;

const MAX_CENTRES = 3;

/** Analytic estimates of one search. */
const MAX_ESTIMATES = 150;

export interface SearchTools {
  designs: Designs;
  trials: Trials;
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
  const state: State = { question, ...tools, perCarcass, estimates: new Estimates(MAX_ESTIMATES), tried: [base!] };
  await tryThem(state, starts(state));
  const rounds = new Map<CandidateDesign, number>();
  while (state.tried.length < asked.designs) {
    const next = nextRound(state, rounds);
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
  state.tried.push(...(await trials.of(fresh, question.search.days)));
  tell(state.tried.length, allowedTrials(state)[0] ?? null);
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
function starts(state: State): CandidateDesign[] {
  const { question, designs, tried } = state;
  const { space, search: asked } = question;
  const path = greedyPath(space, designs, (design) => estimatedPromise(state, design));
  const levels = asked.curve === 0 ? [space.most] : levelsOf(space, asked.curve).toReversed();
  const guide = guideFrom(tried[0]!, question);
  const shares = [space.most, space.least].map((upTo) => (guide === null ? null : nearestAllowed(space, guide, upTo)));
  const led = shares.flatMap((counts) => (counts === null ? [] : (designs.of(counts) ?? [])));
  const onPath = atLevels(path, levels).filter(({ counts }) => asked.curve > 0 || isAllowed(space, counts!));
  return [...onPath.slice(0, 1), ...led, ...onPath.slice(1)];
}

function guideFrom({ why }: Trial, question: ImproveQuestion): ((counts: Counts) => Guide) | null {
  return why === null ? null : (counts) => guideOf(why, counts, question);
}

/** Neighbours of the best design that was not gone round often enough; empty when there is no such design. */
function nextRound(state: State, rounds: Map<CandidateDesign, number>): CandidateDesign[] {
  for (const centre of allowedTrials(state).slice(0, MAX_CENTRES)) {
    const before = rounds.get(centre.design) ?? 0;
    if (before >= MAX_ROUNDS) continue;
    rounds.set(centre.design, before + 1);
    const picked = promising(state, centre);
    if (picked.length > 0) return picked;
  }
  return [];
}

/** By turns what the estimate and what the slopes promise most. */
function promising(state: State, centre: Trial): CandidateDesign[] {
  const { question, designs } = state;
  const counts = centre.design.counts!;
  const around = neighbours(question.space, counts)
    .flatMap((next) => designs.of(next) ?? [])
    .filter((design) => !isTried(state, design));
  const bySlope = sorted(around, (design) => slopePromise(state, centre, design));
  const shortlist = bySlope.slice(0, SHORTLIST);
  const byEstimate = sorted(shortlist, (design) => estimatedPromise(state, design));
  const turns = shortlist.flatMap((_, rank) => [byEstimate[rank]!, bySlope[rank]!]);
  return [...new Set(turns)].slice(0, ROUND);
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
function slopePromise({ question, perCarcass }: State, centre: Trial, design: CandidateDesign): number {
  const guess = guessOf(centre);
  const from = centre.design.counts!;
  const guide = guideFrom(centre, question)?.(from);
  const gained = design.counts!.reduce((sum, count, index) => {
    const change = count - from[index]!;
    if (guide === undefined || change === 0) return sum;
    return sum + change * (change > 0 ? guide.more[index]! : guide.fewer[index]!);
  }, 0);
  return promiseOf(design, { ...guess, finishSeconds: guess.finishSeconds - gained }, question.goal, perCarcass);
}

/**
 * Designs one step away that are allowed: one or two units from one element to another, one unit more, one fewer. Of a
 * budget: one option more, one fewer, one in place of another.
 */
export function neighbours(space: Space, counts: Counts): Counts[] {
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
