import { readerOf } from "../../text/kinds/index.ts";
import type { Decision, DecisionRow, VerdictKind } from "../results/index.ts";
import {
  amountWords,
  changeWords,
  listed,
  lowered,
  moneyWords,
  named,
  paceOf,
  paceWords,
  simulated,
  yearWords,
} from "./phrases.ts";
import type { Weighed } from "./weighed.ts";

/** What the words of a decision add to it. */
export type Spoken = Pick<Decision, "answer" | "verdict" | "words" | "next" | "best">;

export interface Judged {
  row: DecisionRow;
  answer: VerdictKind;
  /** A clause: "work ends 69 min earlier, but it costs 115 EUR a day more than it saves". */
  clause: string;
}

/** One change weighed by harm first, then by money where the plan knows it, then by what was asked for. */
export function judged(weighed: Weighed, row: DecisionRow): Judged {
  const { gain, money, harm } = row;
  if (harm !== null) return { row, answer: "no", clause: `it does harm: ${harm}` };
  if (gain === null) return { row, answer: "undecided", clause: `no day gave ${lowered(weighed.info)} for both plans` };
  const clause = joined(weighed, gainClause(weighed, row), row);
  if (money === null || isWelfare(weighed)) return { row, answer: BY_SIZE[gain.size], clause };
  return { row, answer: byMoney(gain.size, money.size), clause };
}

const BY_SIZE = {
  gain: "yes",
  "too small": "too small",
  "no difference": "no",
  open: "undecided",
  loss: "no",
} as const satisfies Record<NonNullable<DecisionRow["gain"]>["size"], VerdictKind>;

type Size = keyof typeof BY_SIZE;

function byMoney(gain: Size, money: Size): VerdictKind {
  if (money === "gain") return gain === "loss" ? "told" : "yes";
  if (money === "loss") return gain === "open" ? "undecided" : "no";
  return money === "open" && gain === "gain" ? "undecided" : BY_SIZE[gain];
}

/** Of heads outside a limit no money decides. */
function isWelfare({ info }: Weighed): boolean {
  return /^(beyond|worst|shortest|p95|p05)\./.test(info.key);
}

export function gainClause({ info, matters, rows, study }: Weighed, { gain, estimates }: DecisionRow): string {
  const least = amountWords(matters.size, info);
  const { size } = gain!;
  if (size === "gain" || size === "loss") return changeWords(gain!, info);
  if (size === "too small") return `${changeWords(gain!, info)}, less than the ${least} that matter`;
  if (size === "no difference") return `no difference that matters in ${lowered(info)} (less than ${least})`;
  const n = (estimates[info.key] ?? rows[0]!.estimates[info.key])?.n ?? 0;
  return `${n} ${simulated(study)} cannot tell what it does to ${lowered(info)}`;
}

/** What a change does and what it costs, as one clause; an owner hears of the money first. */
export function joined({ study }: Weighed, clause: string, { gain, money }: DecisionRow): string {
  if (money === null) return clause;
  const against = (gain!.size === "gain" && money.size === "loss") || (gain!.size === "loss" && money.size === "gain");
  const link = against ? "but" : "and";
  return readerOf(study.reader) === "owner"
    ? `it ${moneyWords(money)}, ${link} ${withNo(clause)}`
    : `${clause}, ${link} it ${moneyWords(money)}`;
}

/** Whether the change is shown to gain what matters, and only its money is not told yet. */
export function isOpenInMoney({ row: { gain, money }, answer }: Pick<Judged, "row" | "answer">): boolean {
  return answer === "undecided" && gain?.size === "gain" && money?.size === "open";
}

/** "with X there is no difference ...", "with X work ends ...". */
export function withNo(clause: string): string {
  return clause.startsWith("no difference") ? `there is ${clause}` : clause;
}

/** "; today the line waits for animals (6 h 12 min of the day)": why a change has nothing to work on; "" where it is not known. */
export function reasonWords({ findings }: Weighed): string {
  const pace = paceOf(findings.whys[0]);
  return pace === null ? "" : `; today ${paceWords(pace)}`;
}

/** The one that is worth most; null of none. The first of those that are worth as much. */
export function most<Each>(all: readonly Each[], worth: (each: Each) => number): Each | null {
  return all.reduce<Each | null>((best, each) => (best === null || worth(each) > worth(best) ? each : best), null);
}

export function yearly(rows: readonly DecisionRow[]): string[] {
  return rows.flatMap(({ name, money }) => {
    if (money === null || money.size !== "gain") return [];
    const payback =
      money.paybackYears === null ? "" : `, and its price is back after ${money.paybackYears.toFixed(1)} years`;
    return [`${named(name)} comes to about ${yearWords(money)}${payback}.`];
  });
}

/** What to do next, going by what came of the changes. */
export function nextSteps(weighed: Weighed, all: readonly Pick<Judged, "row" | "answer">[]): string[] {
  const open = all.filter(({ answer }) => answer === "undecided");
  const days = Math.max(0, ...open.map(({ row }) => daysNeeded(weighed, row)));
  const unpriced = all.filter(
    ({ answer, row }) => answer === "yes" && row.money?.price === 0 && changesLine(weighed, row),
  );
  return [
    ...(days > 0
      ? [
          `About ${days} ${simulated(weighed.study)} of each would tell${open.every(isOpenInMoney) ? " whether it pays" : ""}: add --replications ${days}.`,
        ]
      : []),
    ...(unpriced.length > 0
      ? [
          `The plan has no price for ${listed(unpriced.map(({ row }) => named(row.name)))}: set what it costs against what it brings.`,
        ]
      : []),
    ...(open.length === 0 && all.every(({ answer }) => answer === "no" || answer === "too small")
      ? ["`gambrel why` with the plan tries what would help."]
      : []),
    ...watchful(weighed),
  ];
}

export function watchful({ study }: Weighed): string[] {
  if (study.variants[0]!.plan.limits.length > 0) return [];
  return [
    "The plan watches no time limit, so harm to animals or hygiene could not be seen: give it limits before you act.",
  ];
}

function changesLine({ study, rows }: Weighed, row: DecisionRow): boolean {
  const { set, insert } = study.variants[rows.indexOf(row)]!;
  return insert.length > 0 || Object.keys(set).some((path) => path.startsWith("line"));
}

/** So many that the interval is as narrow as the difference that has to be told; rounded up to tens. */
export function daysNeeded({ matters, info }: Weighed, { gain, estimates, money }: DecisionRow): number {
  const n = estimates[info.key]?.n ?? 0;
  const wanted = (mean: number, low: number, high: number, least: number) =>
    n * ((high - low) / 2 / Math.max(Math.abs(mean), least / 2)) ** 2;
  const byGain = gain?.size === "open" ? wanted(gain.mean, gain.low, gain.high, matters.size) : 0;
  const { mean = 0, low = null, high = null } = money?.perDay ?? {};
  const byMoney = money?.size === "open" && low !== null && high !== null ? wanted(mean, low, high, 0) : 0;
  return 10 * Math.ceil(Math.min(Math.max(byGain, byMoney, n), 100 * n) / 10);
}
