import type { ResponseInfo } from "../../day/observations/index.ts";
import {
  amountWords,
  listed,
  moneyWords,
  named,
  paceOf,
  paceWords,
  usualMatters,
  yearWords,
} from "../../days/decision/index.ts";
import type { Decision, DecisionRow, NetMoney, Why } from "../../days/results/index.ts";
import { capital, formatDifference, formatEstimate, formatSpan } from "../../text/units/index.ts";
import { isEnd } from "./adviceWords.ts";
import type { PlanChange } from "./change.ts";

export interface VerdictContext {
  /** Those that have a row each, in the same order. */
  changes: readonly Pick<PlanChange, "kind" | "of" | "label" | "phrase" | "plural">[];
  /** Of today's plan. */
  why: Why | null;
  /** How many time limits the plan watches. */
  limits: number;
}

/** A change with what came of it. */
interface Tried {
  change: VerdictContext["changes"][number];
  row: DecisionRow;
}

/** Kinds that are bought, and of which a plan knows no price unless it says so. */
const BOUGHT = new Set<PlanChange["kind"]>(["position", "quicker machine", "more places", "pair"]);

/**
 * Which change to make first, as the answer of a decision whose rows are today's plan and changes that do no harm. A limit
 * that today's plan breaks comes first; then the change that gains most, what it costs, and, where it costs more than
 * it saves, the best one that does not. Gains below the least that matters are told as too small.
 */
export function whyVerdict(decision: Decision, context: VerdictContext): Decision {
  const info = decision.columns.find(({ key }) => key === decision.deciding)!;
  const rows = decision.rows.slice(1);
  const tried = context.changes.flatMap((change): Tried[] => {
    const row = rows.find(({ name }) => name === change.label);
    return row === undefined || row.gain === null ? [] : [{ change, row }];
  });
  const spoken = firstChange(tried, decision, info, context);
  const broken = brokenLimits(decision);
  return {
    ...decision,
    ...{ kind: "best", inferred: false },
    answer: spoken.answer,
    verdict: `${brokenWords(broken, decision)}${spoken.verdict}`,
    words: [...broken.map((limit) => mendingWords(limit, decision)), ...spoken.words],
    next: [...spoken.next, ...watchWords(context.limits)],
    best: spoken.best === null ? null : decision.rows.indexOf(spoken.best),
  };
}

interface Spoken extends Pick<Decision, "answer" | "verdict" | "words" | "next"> {
  best: DecisionRow | null;
}

function firstChange(tried: readonly Tried[], decision: Decision, info: ResponseInfo, context: VerdictContext): Spoken {
  const gaining = doable(withSize(tried, "gain"));
  const top = most(gaining, gainOfRow);
  if (top === null) return nothingGains(tried, decision, info, context);
  const free = most(
    gaining.filter(({ row }) => row.money?.size !== "loss"),
    worthOfRow,
  );
  const chosen = free ?? top;
  const start = `Start with ${top.change.of}: ${effectOf(top, top.change.phrase, info)}`;
  const other = free === null || free === top ? "" : `; ${effectOf(free, free.change.label, info)}`;
  const costly = free === null ? "; nothing that was tried gains as much as matters without costing more" : "";
  return {
    answer: free === null ? "told" : "yes",
    verdict: `${start}${other}${costly}.`,
    words: yearly([chosen]),
    next: [
      ...priceWords([...new Set([top, chosen])]),
      "Make one change, then ask again: the others may be worth less.",
    ],
    best: free === null ? null : free.row,
  };
}

function nothingGains(
  tried: readonly Tried[],
  decision: Decision,
  info: ResponseInfo,
  { why }: VerdictContext,
): Spoken {
  const pays = most(
    tried.filter(({ row }) => row.money?.size === "gain" && row.gain!.size !== "loss"),
    worthOfRow,
  );
  const pace = paceOf(why);
  const reason = pace === null ? "" : `; today ${paceWords(pace)}`;
  const least = amountWords(decision.matters.size, info);
  const small = most(withSize(tried, "too small"), gainOfRow);
  const open = most(withSize(tried, "open"), ({ row }) => row.gain!.high);
  if (pays !== null)
    return {
      answer: "yes",
      verdict: `No change tried gains the ${least} that matter, but for money ${effectOf(pays, pays.change.label, info)}.`,
      ...{ words: yearly([pays]), next: priceWords([pays]), best: pays.row },
    };
  if (open !== null && open.row.gain!.high >= decision.matters.size)
    return {
      answer: "undecided",
      verdict: `It cannot be told yet what to change first: most may be gained with ${named(open.change.label)}, ${rangeWords(open, info)}.`,
      words: [],
      next: ["More days would tell: add --replications with four times as many."],
      best: null,
    };
  if (small !== null)
    return {
      answer: "too small",
      verdict: `No change tried is worth making: the best of them, ${named(small.change.label)}, gains ${sizeOf(small, info)}, less than the ${least} that matter${reason}.`,
      ...{ words: [], next: [], best: decision.rows[0]! },
    };
  const what = isEnd(info) ? "ends work earlier" : "brings more";
  return {
    answer: "no",
    verdict: `No: none of the changes tried, alone or in pairs, ${what}${reason}.`,
    ...{ words: [], next: [], best: decision.rows[0]! },
  };
}

/** Nobody can buy a line without breakdowns: it is told for what remedies could bring, and chosen only where nothing else gains. */
function doable(tried: readonly Tried[]): readonly Tried[] {
  const found = tried.filter(({ change }) => change.kind !== "no breakdowns");
  return found.length > 0 ? found : tried;
}

function withSize(tried: readonly Tried[], size: NonNullable<DecisionRow["gain"]>["size"]): Tried[] {
  return tried.filter(({ row }) => row.gain!.size === size);
}

/** "one more position with its person ends work 69 min earlier, but costs 115 EUR a day more than it saves". */
function effectOf(tried: Tried, subject: string, info: ResponseInfo): string {
  const { row, change } = tried;
  const { gain, money } = row;
  const lost = gain!.mean < 0;
  const does = isEnd(info)
    ? `${change.plural ? "end" : "ends"} work ${sizeOf(tried, info)} ${lost ? "later" : "earlier"}`
    : `${change.plural ? "bring" : "brings"} ${sizeOf(tried, info)} ${lost ? "less" : "more"}`;
  if (money === null) return `${subject} ${does}`;
  const link = money.size === "loss" ? ", but" : " and";
  return `${subject} ${does}${link} ${change.plural ? plural(moneyWords(money)) : moneyWords(money)}`;
}

function plural(words: string): string {
  return words.replace(/^(cost|save|earn)s /, "$1 ").replace(/ it (save|bring)s$/, " they $1");
}

/** As finely as its range is known; the range stands in the table. */
function sizeOf({ row }: Tried, info: ResponseInfo): string {
  const { mean, low, high } = row.gain!;
  const turned = mean < 0 ? { mean: -mean, low: -high, high: -low } : { mean, low, high };
  return low === high ? formatSpan(turned.mean, info, "plain") : formatDifference(turned, info, "plain")[0];
}

function rangeWords({ row }: Tried, info: ResponseInfo): string {
  return formatDifference(row.gain!, info)[1];
}

function gainOfRow({ row }: Tried): number {
  return row.gain!.mean;
}

/** By money where there is any that is sure, else by what is gained. */
function worthOfRow({ row }: Tried): number {
  return row.money === null ? row.gain!.mean : row.money.perDay.mean;
}

function most(tried: readonly Tried[], worth: (of: Tried) => number): Tried | null {
  return tried.reduce<Tried | null>((best, each) => (best === null || worth(each) > worth(best) ? each : best), null);
}

function yearly(tried: readonly Tried[]): string[] {
  return tried.flatMap(({ change, row: { money } }) => {
    if (money === null || !SURE.has(money.size)) return [];
    const verb = money.perDay.mean > 0 ? "brings" : "costs";
    return [`${capital(change.label)}: ${verb} about ${yearWords(money)}.`];
  });
}

const SURE = new Set<NetMoney["size"]>(["gain", "loss"]);

function priceWords(tried: readonly Tried[]): string[] {
  const names = tried
    .filter(({ change, row: { money } }) => BOUGHT.has(change.kind) && (money === null || money.price === 0))
    .map(({ change }) => named(change.label));
  return names.length === 0
    ? []
    : [`The plan has no price for ${listed(names)}: set what it costs to buy against what it brings.`];
}

function watchWords(limits: number): string[] {
  return limits > 0
    ? []
    : [
        "The plan watches no time limit, so harm to animals or hygiene could not be seen: give it limits before you act.",
      ];
}

/** Time limits outside which today's plan leaves as many heads as matter. */
function brokenLimits({ columns, rows }: Decision): ResponseInfo[] {
  return columns.filter((column) => {
    const found = rows[0]!.estimates[column.key];
    return /^beyond\./.test(column.key) && found !== undefined && found.mean >= usualMatters(column, found);
  });
}

function brokenWords(broken: readonly ResponseInfo[], { rows }: Decision): string {
  if (broken.length === 0) return "";
  const shares = broken.map((limit) => `${shareOf(rows[0]!, limit)} of the heads are outside ${limitName(limit)}`);
  return `Today's plan already breaks ${broken.length === 1 ? "a limit" : "limits"}, mend that first: ${listed(shares)}. `;
}

/** What of that which was tried helps most. */
function mendingWords(limit: ResponseInfo, { rows }: Decision): string {
  const helping = rows.slice(1).filter(({ differences }) => {
    const found = differences[limit.key];
    return found?.shown === true && found.mean < 0;
  });
  const shareAt = (row: DecisionRow) => row.estimates[limit.key]?.mean ?? 1;
  const best = helping.reduce<DecisionRow | null>(
    (least, row) => (least === null || shareAt(row) < shareAt(least) ? row : least),
    null,
  );
  return best === null
    ? `None of the changes tried is shown to leave fewer heads outside ${limitName(limit)}.`
    : `With ${named(best.name)} ${shareOf(best, limit)} of the heads are outside ${limitName(limit)}.`;
}

function shareOf({ estimates }: DecisionRow, limit: ResponseInfo): string {
  return formatEstimate(estimates[limit.key]!, limit, 0)[0];
}

function limitName({ key }: ResponseInfo): string {
  return `'${key.slice("beyond.".length)}'`;
}
