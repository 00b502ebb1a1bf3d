import type { ImproveQuestion } from "../question.ts";
import { meanOf, scoreOf } from "../score.ts";
import { searchHarm } from "../searchHarm.ts";
import { type Counts, isAllowed, type Space } from "../space.ts";
import { firstDays, type Trial } from "../trials.ts";

/**
 * Weeks are sought without an estimate: no formula tells what a day leaves to the next. But days touch each other little, so what one
 * move does by itself tells nearly what it does beside others. Each is tried alone first; then what all those that gained make together,
 * and its neighbours in the order of the sum of what was seen.
 */

/** Of the designs of a search: more single moves than this part leave too few for what goes together. */
const PART_ALONE = 2 / 3;

/** How far one thing is moved from where it is in one step. */
const STEPS = [1, 2, 4];

/** Every element by itself, half and all the way, both ways; first all of them a way, so that a short search leaves none out. */
export function singleMoves({ space, search }: Pick<ImproveQuestion, "space" | "search">): Counts[] {
  const today = space.base as Counts;
  const levels = space.elements.map(({ from, to }, index) => {
    const now = today[index]!;
    const [later, earlier] = [(now + to) / 2, (now + from) / 2].map((count) =>
      count > now ? Math.ceil(count) : Math.floor(count),
    );
    return [...new Set([later!, earlier!, to, from])].filter((count) => count !== now);
  });
  const turns = Math.max(0, ...levels.map(({ length }) => length));
  const moves = Array.from({ length: turns }, (_, turn) =>
    levels.flatMap((counts, index) => (counts[turn] === undefined ? [] : [today.with(index, counts[turn])])),
  );
  return moves
    .flat()
    .filter((counts) => isAllowed(space, counts))
    .slice(0, Math.floor(search.designs * PART_ALONE));
}

/** What one count of an element did by itself, beside the week as it is on the same weeks. */
interface Effect {
  count: number;
  /** In the goal, more being better. */
  gain: number;
  /** In the shares beyond the limits asked for. */
  excess: number;
  harmful: boolean;
}

/** Designs to try next, the most promising first: all together what gained alone, that without one of them, and what lies around the best so far. */
export function promisingWeeks(tried: readonly Trial[], centre: Counts, question: ImproveQuestion): Counts[] {
  const { space } = question;
  const effects = space.elements.map((_, index) => effectsOf(index, tried, question));
  const together = allThatGained(effects, space);
  const around = weekNeighbours(space, centre);
  const without = space.elements.map((_, index) => together.with(index, space.base[index]!));
  const wanted = [together, ...without, ...around].filter((counts) => isAllowed(space, counts));
  const known = new Set(tried.map(({ design }) => design.counts?.join()));
  const fresh = [...new Map(wanted.map((counts) => [counts.join(), counts]))].filter(([key]) => !known.has(key));
  const [base] = tried;
  const todayExcess = scoreOf(base!, question).excess;
  const promised = fresh.map(([, counts]) => ({ counts, ...sumOf(effects, counts, todayExcess) }));
  return promised
    .sort((a, b) => a.harmful - b.harmful || a.excess - b.excess || b.gain - a.gain)
    .map(({ counts }) => counts);
}

/** One thing moved by some steps or back to where it is today, or two by one step. */
export function weekNeighbours(space: Space, counts: Counts): Counts[] {
  const each = space.elements.map((_, index) => index);
  const by = (index: number, step: number, from: Counts = counts) => from.with(index, from[index]! + step);
  const alone = each.flatMap((index) => [
    counts.with(index, space.base[index]!),
    ...STEPS.flatMap((step) => [by(index, step), by(index, -step)]),
  ]);
  const two = each.flatMap((index) =>
    each
      .slice(index + 1)
      .flatMap((other) => [-1, 1].flatMap((one) => [-1, 1].map((step) => by(other, step, by(index, one))))),
  );
  return [...alone, ...two].filter((design) => isAllowed(space, design));
}

/** In the order of counts, today's among them. */
function effectsOf(index: number, tried: readonly Trial[], question: ImproveQuestion): Effect[] {
  const today = question.space.base as Counts;
  const alone = tried.flatMap((trial): Effect[] => {
    const { counts } = trial.design;
    const isAlone = counts?.every((count, element) => (count !== today[element]) === (element === index)) ?? false;
    return isAlone ? [{ count: counts![index]!, ...effectOf(trial, tried, question) }] : [];
  });
  return [...alone, { count: today[index]!, gain: 0, excess: 0, harmful: false }].sort((a, b) => a.count - b.count);
}

function effectOf(trial: Trial, tried: readonly Trial[], question: ImproveQuestion): Omit<Effect, "count"> {
  const base = firstDays(tried[0]!, trial.values.length);
  const sign = question.response.better === "less" ? -1 : 1;
  const pairs = trial.values.flatMap((value, day) => {
    const before = base.values[day];
    return value === null || before == null ? [] : [sign * (value - before)];
  });
  return {
    gain: pairs.length < trial.values.length ? Number.NEGATIVE_INFINITY : (meanOf(pairs) ?? 0),
    excess: scoreOf(trial, question).excess - scoreOf(base, question).excess,
    harmful: searchHarm(trial, [base], question) !== null,
  };
}

/** Of each element the count that gained most by itself and did no harm; what gains most goes first, as far as people are there. */
function allThatGained(effects: readonly Effect[][], space: Space): Counts {
  const best = effects.map((of, index) => ({ index, ...of.filter(({ harmful }) => !harmful).reduce(better) }));
  const gaining = best.sort((a, b) => a.excess - b.excess || b.gain - a.gain);
  return gaining.reduce((counts: Counts, { index, count }) => {
    const next = counts.with(index, count);
    return isAllowed(space, next) ? next : counts;
  }, space.base as Counts);
}

function better(one: Effect, other: Effect): Effect {
  if (one.excess !== other.excess) return other.excess < one.excess ? other : one;
  return other.gain > one.gain ? other : one;
}

/** The sum of what each of its moves did alone; between two counts that were tried in proportion, beyond them as the outermost. */
function sumOf(
  effects: readonly Effect[][],
  counts: Counts,
  todayExcess: number,
): { gain: number; excess: number; harmful: number } {
  const own = counts.map((count, index) => between(effects[index]!, count));
  const sum = (of: (effect: Omit<Effect, "count">) => number) => own.reduce((total, effect) => total + of(effect), 0);
  return {
    gain: sum(({ gain }) => gain),
    excess: Math.max(0, todayExcess + sum(({ excess }) => excess)),
    harmful: own.filter(({ harmful }) => harmful).length,
  };
}

function between(effects: readonly Effect[], count: number): Omit<Effect, "count"> {
  const after = effects.findIndex((effect) => effect.count >= count);
  if (after <= 0) return effects.at(after === 0 ? 0 : -1)!;
  const [one, other] = [effects[after - 1]!, effects[after]!];
  const part = (count - one.count) / (other.count - one.count);
  return {
    gain: one.gain + part * (other.gain - one.gain),
    excess: one.excess + part * (other.excess - one.excess),
    harmful: part === 1 ? other.harmful : one.harmful,
  };
}
