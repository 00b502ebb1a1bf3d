import type { StudyResults } from "../../days/results/index.ts";
import {
  daysPerWorld,
  furtherWorlds,
  halfWidthOfWorlds,
  type Precision,
  varianceComponents,
} from "../../maths/statistics/index.ts";
import { analyse } from "./analyse.ts";
import type { Doubt, DoubtPrecision, DoubtQuestion, WorldCounts } from "./doubt.ts";

/** Changing, reading and compiling a plan, in simulated days of it: measured between 0.1 and 0.5 of them for the plant of 26 people. */
const WORLD_COST_DAYS = 0.3;
const MAX_DAYS = 50;
/** Worlds of all rounds together: beyond that a reader would wait for days. */
const MAX_ALL_WORLDS = 5000;

/** The worlds of one round, and what their days came to. */
interface Round {
  question: DoubtQuestion;
  results: Pick<StudyResults, "responses" | "variants">;
}

export interface RoundsOptions {
  /** The first round; and the only one where no precision is wanted. */
  counts: WorldCounts;
  /** How far chance may move the mean of the first response, either way; null: one round. */
  wanted: Precision | null;
  /** The worlds of a round; throws where they cannot be read. */
  questionOf(counts: WorldCounts): DoubtQuestion;
  simulate(question: DoubtQuestion): Promise<StudyResults>;
}

/**
 * Asks in rounds until chance moves the mean over all worlds by no more than is wanted, at least cost: how many days each
 * further world gets, and how many there are, follows from what worlds and days varied by so far (`daysPerWorld`). Each
 * round is a Latin hypercube with days of its own. A pure function of the options and of the simulated days.
 */
export async function doubtInRounds({ counts, wanted, questionOf, simulate }: RoundsOptions): Promise<Doubt> {
  const rounds: Round[] = [];
  let next: WorldCounts | null = counts;
  while (next !== null) {
    const question = questionOf(next);
    rounds.push({ question, results: await simulate(question) });
    next = wanted === null ? null : nextRound(rounds, wanted);
  }
  const { question, results } = joined(rounds);
  const doubt = analyse(question, results);
  return wanted === null ? doubt : { ...doubt, precision: precisionOf(rounds, wanted) };
}

/** All rounds as if they had been one: worlds of later ones come behind those of the earlier. */
function joined(rounds: readonly Round[]): Round {
  const first = rounds[0]!;
  if (rounds.length === 1) return first;
  const figures = first.question.figures.map((figure, index) => ({
    ...figure,
    factors: figure.factors.map((_, path) => rounds.flatMap(({ question }) => question.figures[index]!.factors[path]!)),
  }));
  const worlds = rounds.reduce((sum, { question }) => sum + question.counts.worlds, 0);
  const variants = rounds.flatMap(({ results }) => results.variants);
  return {
    question: { ...first.question, figures, counts: { ...first.question.counts, worlds } },
    results: { responses: first.results.responses, variants },
  };
}

/** Of each variant, the values of the first response by world. */
function worldsOf(rounds: readonly Round[]): number[][][] {
  const { question, results } = joined(rounds);
  const count = question.variants.length;
  return question.variants.map((_, variant) =>
    Array.from({ length: question.counts.worlds }, (_, world) =>
      (results.variants[world * count + variant]!.values[question.responses[0]!] ?? []).filter(
        (value) => value !== null,
      ),
    ),
  );
}

/** The variant that is known worst decides. Null where it is known well enough, or cannot be. */
function nextRound(rounds: readonly Round[], wanted: Precision): WorldCounts | null {
  const { confidence } = rounds[0]!.question.study;
  const { seed } = rounds[0]!.question.counts;
  const plans = worldsOf(rounds).map((worlds) => {
    if (worlds.some(({ length }) => length === 0)) return null;
    const variance = varianceComponents(worlds, confidence);
    const days = worlds.map(({ length }) => length);
    const each = daysPerWorld(variance, WORLD_COST_DAYS, MAX_DAYS);
    const most = Math.max(1, MAX_ALL_WORLDS - worlds.length);
    const asked = { wanted: amountOf(wanted, variance.mean), confidence, most };
    return { days: each, worlds: furtherWorlds(days, each, variance, asked) ?? most };
  });
  if (plans.includes(null)) return null;
  const needed = (plans as { days: number; worlds: number }[]).filter(({ worlds }) => worlds > 0);
  if (needed.length === 0) return null;
  const soFar = rounds.reduce((sum, { question }) => sum + question.counts.worlds, 0);
  if (soFar >= MAX_ALL_WORLDS) return null;
  // No round is larger than all before it: what they say of the variances may be wrong. Nor smaller than a hypercube may be.
  const least = 2 * rounds[0]!.question.figures.length;
  const worlds = Math.max(least, Math.min(soFar, Math.max(...needed.map((plan) => plan.worlds))));
  return { worlds, days: Math.max(...needed.map((plan) => plan.days)), seed: `${seed}, round ${rounds.length + 1}` };
}

function amountOf({ kind, value }: Precision, mean: number): number {
  return kind === "relative" ? value * Math.abs(mean) : value;
}

function precisionOf(rounds: readonly Round[], wanted: Precision): DoubtPrecision {
  const { confidence } = rounds[0]!.question.study;
  const reached = worldsOf(rounds).map((worlds) => {
    if (worlds.some(({ length }) => length === 0)) return null;
    const variance = varianceComponents(worlds, confidence);
    const halfWidth = halfWidthOfWorlds(
      worlds.map(({ length }) => length),
      variance,
      confidence,
    );
    return { halfWidth, isEnough: halfWidth <= amountOf(wanted, variance.mean) };
  });
  const widths = reached.map((each) => each?.halfWidth ?? null);
  return {
    wanted,
    reached: widths.includes(null) ? null : Math.max(...(widths as number[])),
    isEnough: reached.every((each) => each?.isEnough === true),
    rounds: rounds.map(({ question: { counts } }) => ({ worlds: counts.worlds, days: counts.days })),
  };
}
