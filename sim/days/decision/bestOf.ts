import type { ResponseInfo } from "../../day/observations/index.ts";
import type { DecisionRow, Gain } from "../results/index.ts";
import {
  gainClause,
  joined,
  judged,
  most,
  nextSteps,
  reasonWords,
  type Spoken,
  watchful,
  withNo,
  yearly,
} from "./judged.ts";
import { ENDS } from "./matters.ts";
import { amountWords, changeWords, listed, lowered, moneyWords, named } from "./phrases.ts";
import type { Weighed } from "./weighed.ts";

const OTHER_HEADS = 0.01;

/** When a day ends says nothing by itself where one variant works more heads than another. */
export function handlesOtherHeads({ info, rows }: Pick<Weighed, "info"> & { rows: readonly DecisionRow[] }): boolean {
  if (!ENDS.has(info.key)) return false;
  const heads = rows.flatMap(({ estimates }) => estimates.carcasses?.mean ?? []);
  return heads.length > 0 && Math.max(...heads) - Math.min(...heads) > OTHER_HEADS * Math.max(...heads);
}

/** Which is best? Of those that do no harm. */
export function bestOf(weighed: Weighed): Spoken {
  const { rows, info } = weighed;
  if (handlesOtherHeads(weighed)) return notRanked(weighed);
  const sound = rows.slice(1).filter(({ harm, gain }) => harm === null && gain !== null);
  const harmed = rows.filter(({ harm }) => harm !== null);
  const top = most(sound, ({ gain }) => gain!.mean);
  const left = harmed.length > 0 ? [`Left out because they do harm: ${harmWords(harmed)}.`] : [];
  if (top === null || top.gain!.mean <= 0)
    return stay(weighed, `Stay with today's plan: no other is better in ${lowered(info)}`, left);
  const { answer, clause } = judged(weighed, { ...top, money: null });
  if (answer === "too small" || answer === "no")
    return stay(
      weighed,
      `Stay with today's plan: with the best of the others, ${named(top.name)}, ${withNo(clause)}`,
      left,
    );
  const words = [...rivalWords(weighed, top), ...cheaperWords(sound, top, info), ...yearly([top]), ...left];
  const lead =
    answer === "yes" ? `Take ${named(top.name)}` : `It cannot be told yet; best so far is ${named(top.name)}`;
  return {
    answer,
    verdict: `${lead}: ${joined(weighed, clause, top)}.`,
    words,
    next: nextSteps(weighed, [{ row: top, answer }]),
    best: answer === "yes" ? rows.indexOf(top) : null,
  };
}

const NAMED = 3;

function harmWords(rows: readonly DecisionRow[]): string {
  const told = rows.slice(0, NAMED).map(({ name, harm }) => `${named(name)} (${harm})`);
  return rows.length <= NAMED ? told.join("; ") : `${told.join("; ")} and ${rows.length - NAMED} more`;
}

/** Where nothing gains as much as matters, what saves money without a loss is still worth taking. */
function stay(weighed: Weighed, lead: string, words: readonly string[]): Spoken {
  const { rows, info } = weighed;
  const sound = rows.slice(1).filter(({ harm, gain }) => harm === null && gain !== null);
  const paying = most(
    sound.filter(({ gain, money }) => money?.size === "gain" && COSTS_NOTHING.has(gain!.size)),
    ({ money }) => money!.perDay.mean,
  );
  if (paying !== null)
    return {
      answer: "yes",
      verdict: `For money take ${named(paying.name)}: it ${moneyWords(paying.money!)}; in ${lowered(info)} no plan tried is better by as much as matters.`,
      words: [...yearly([paying]), ...words],
      next: nextSteps(weighed, [{ row: paying, answer: "yes" }]),
      best: rows.indexOf(paying),
    };
  return {
    answer: "no",
    verdict: `${lead}${reasonWords(weighed)}.`,
    words: [...asGoodAsToday(weighed, sound), ...words],
    next: ["`gambrel why` with the plan tries what would help.", ...watchful(weighed)],
    best: 0,
  };
}

/** Those of which it is shown that they differ from today's plan by less than matters, or not yet shown whether they do. */
function asGoodAsToday({ matters, info }: Weighed, sound: readonly DecisionRow[]): string[] {
  const alike = sound.filter(({ gain }) => COSTS_NOTHING.has(gain!.size));
  const open = sound.filter(({ gain }) => gain!.size === "open");
  return [
    ...(alike.length === 0
      ? []
      : [`Less than ${amountWords(matters.size, info)} from today's plan: ${someNamed(alike)}.`]),
    ...(open.length === 0 ? [] : [`Not told apart from today's plan yet: ${someNamed(open)}.`]),
  ];
}

function someNamed(rows: readonly DecisionRow[]): string {
  const more = rows.length > NAMED ? [`${rows.length - NAMED} more`] : [];
  return listed([...rows.slice(0, NAMED).map(({ name }) => named(name)), ...more]);
}

function notRanked(weighed: Weighed): Spoken {
  const { rows } = weighed;
  const paying = rows.filter(({ harm, money }) => harm === null && money?.by === "margin" && money.size === "gain");
  const top = most(paying, ({ money }) => money!.perDay.mean);
  const said = "The plans handle different numbers of heads, so the end of work alone cannot rank them";
  if (top === null)
    return {
      answer: "undecided",
      verdict: `${said}.`,
      words: [],
      next: ["Ask the study for 'headsPerHour' or 'costPerHead' first.", ...watchful(weighed)],
      best: null,
    };
  return {
    answer: "yes",
    verdict: `For money take ${named(top.name)}: it ${moneyWords(top.money!)}.`,
    words: [`${said}.`, ...yearly([top])],
    next: watchful(weighed),
    best: rows.indexOf(top),
  };
}

function rivalWords({ againstBest, rows }: Weighed, top: DecisionRow | null): string[] {
  if (againstBest === null || top === null) return [];
  const rivals = rows.filter((row, index) => row !== top && againstBest[index]?.mayBeBest);
  const others = rows.some(({ harm }) => harm !== null) ? "Every other plan that does no harm" : "Every other plan";
  if (rivals.length === 0) return [`${others} that was tried is shown to be worse.`];
  const names = rivals
    .slice(0, NAMED)
    .map(({ name }, index) => (rows.indexOf(rivals[index]!) === 0 ? "today's plan" : named(name)));
  const more = rivals.length > NAMED ? [`${rivals.length - NAMED} more`] : [];
  return [`May be as good: ${listed([...names, ...more])}.`];
}

/** Where the best costs money: what is best of those that do not, and what brings most. */
function cheaperWords(sound: readonly DecisionRow[], top: DecisionRow | null, info: ResponseInfo): string[] {
  if (top === null) return [];
  const free = sound.filter(
    ({ gain, money }) => gain?.size === "gain" && money !== null && COSTS_NOTHING.has(money.size),
  );
  const best = most(free, ({ gain }) => gain!.mean);
  const paying = most(
    sound.filter(({ money }) => money?.size === "gain"),
    ({ money }) => money!.perDay.mean,
  );
  return [
    ...(top.money?.size === "loss" && best !== null
      ? [`At no cost: with ${named(best.name)} ${changeWords(best.gain!, info)}.`]
      : []),
    ...(paying === null || paying === top || paying === best
      ? []
      : [`For money ${named(paying.name)} is better: it ${moneyWords(paying.money!)}.`]),
  ];
}

const COSTS_NOTHING = new Set<Gain["size"]>(["gain", "no difference", "too small"]);

/** The smallest amount from which more gains less than matters. */
export function howMuch(weighed: Weighed): Spoken {
  const { rows, study, info, matters } = weighed;
  const amounts = rows.map((_, variant) => levelOf(study, variant));
  const order = rows
    .map((row, variant) => ({ row, variant, amount: amounts[variant]!, gain: row.gain?.mean ?? 0 }))
    .filter(({ row, amount, variant }) => amount !== null && (row.harm === null || variant === 0))
    .sort((a, b) => amount(a.amount!) - amount(b.amount!));
  const highest = Math.max(...order.map(({ gain }) => gain));
  const enough = order.find(({ gain }) => highest - gain < matters.size);
  if (enough === undefined || order.length < 2) return bestOf(weighed);
  const least = amountWords(matters.size, info);
  const { row, variant, amount: level } = enough;
  const isLast = enough === order.at(-1);
  const factor = study.factors[0]!.name;
  const change = variant === 0 ? "" : `: ${joined(weighed, gainClause(weighed, row), row)}`;
  if (variant !== 0 && row.gain!.size === "open") return notEnoughDays(weighed, row, `${level} (${factor})`);
  const lead =
    variant === 0
      ? `Today's ${level} (${factor}) is enough`
      : `${level} (${factor}) ${isLast ? "gains most of those tried" : "is enough"}`;
  const rest = isLast ? "" : ` Beyond that no step tried gains ${least} on average.`;
  return {
    answer: "told",
    verdict: `${lead}${change}.${rest}`,
    words: [
      ...(isLast && variant !== 0 && row.money?.size !== "loss"
        ? ["More may gain more still: try larger ones, too."]
        : []),
      ...(variant === 0 ? [] : yearly([row])),
      ...cheaperWords(
        rows.slice(1).filter(({ harm, gain }) => harm === null && gain !== null),
        variant === 0 ? null : row,
        info,
      ),
    ],
    next: variant === 0 ? watchful(weighed) : nextSteps(weighed, [{ row, answer: "yes" }]),
    best: variant,
  };
}

/** By the means an amount would do, and the days do not show that it gains anything. */
function notEnoughDays(weighed: Weighed, row: DecisionRow, level: string): Spoken {
  return {
    answer: "undecided",
    verdict: `It cannot be told yet; by the averages ${level} would do, but ${joined(weighed, gainClause(weighed, row), row)}.`,
    words: [],
    next: nextSteps(weighed, [{ row, answer: "undecided" }]),
    best: null,
  };
}

function levelOf({ factors, variants }: Weighed["study"], variant: number): string | null {
  return factors[0]?.levels[variants[variant]!.levels[0]!] ?? null;
}

function amount(level: string): number {
  return /^-?[\d.]/.test(level) ? Number.parseFloat(level) : Number.POSITIVE_INFINITY;
}
