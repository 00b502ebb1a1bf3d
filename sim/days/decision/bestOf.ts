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
  const words = [
    ...rivalWords(weighed, top),
    ...cheaperWords(sound, top, info),
    ...(top === null ? [] : yearly([top])),
    ...(harmed.length > 0 ? [`Left out because they do harm: ${harmWords(harmed)}.`] : []),
  ];
  if (top === null || top.gain!.mean <= 0)
    return stay(weighed, `Stay with today's plan: no other is better in ${lowered(info)}`, words);
  const { answer, clause } = judged(weighed, { ...top, money: null });
  if (answer === "too small" || answer === "no")
    return stay(
      weighed,
      `Stay with today's plan: with the best of the others, ${named(top.name)}, ${withNo(clause)}`,
      words,
    );
  const lead =
    answer === "yes" ? `Take ${named(top.name)}` : `It cannot be told yet; best so far is ${named(top.name)}`;
  return {
    answer,
    verdict: `${lead}: ${joined(clause, top)}.`,
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

function stay(weighed: Weighed, lead: string, words: string[]): Spoken {
  return {
    answer: "no",
    verdict: `${lead}${reasonWords(weighed)}.`,
    words,
    next: ["`gambrel why` with the plan tries what would help.", ...watchful(weighed)],
    best: 0,
  };
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
  if (rivals.length === 0) return [`${others} is shown to be worse.`];
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
  const change = variant === 0 ? "" : `: ${joined(gainClause(weighed, row), row)}`;
  const lead =
    variant === 0
      ? `Today's ${level} (${factor}) is enough`
      : `${level} (${factor}) ${isLast ? "is best of those tried" : "is enough"}`;
  const rest = isLast ? "" : ` Beyond that no step gains ${least} on average.`;
  return {
    answer: "told",
    verdict: `${lead}${change}.${rest}`,
    words: [
      ...(isLast && variant !== 0 ? ["More may gain more still: try larger ones, too."] : []),
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

function levelOf({ factors, variants }: Weighed["study"], variant: number): string | null {
  return factors[0]?.levels[variants[variant]!.levels[0]!] ?? null;
}

function amount(level: string): number {
  return /^-?[\d.]/.test(level) ? Number.parseFloat(level) : Number.POSITIVE_INFINITY;
}
