import type { VerdictKind } from "../results/index.ts";
import {
  gainClause,
  isOpenInMoney,
  type Judged,
  judged,
  most,
  nextSteps,
  reasonWords,
  type Spoken,
  withNo,
  yearly,
} from "./judged.ts";
import { listed, moneyRange, named, timeOf } from "./phrases.ts";
import type { Weighed } from "./weighed.ts";

/** Is it worth it? Each change by itself. */
export function worthIt(weighed: Weighed): Spoken {
  const all = weighed.rows.slice(1).map((row) => judged(weighed, row));
  const reason = reasonWords(weighed);
  const of = (answer: VerdictKind) => all.filter((each) => each.answer === answer);
  const yes = of("yes");
  const best = most(yes, ({ row }) => row.money?.perDay.mean ?? row.gain!.mean);
  const answer =
    (["yes", "told", "undecided", "too small", "no"] as const).find((each) => of(each).length > 0) ?? "told";
  const stays = answer === "no" || answer === "too small";
  return {
    answer,
    verdict: all.length === 1 ? oneVerdict(weighed, all[0]!, reason) : severalVerdict(all, reason),
    words: [
      ...(all.length === 1 ? [] : all.map(({ row, clause }) => `${named(row.name)}: ${clause}.`)),
      ...yearly(yes.map(({ row }) => row)),
    ],
    next: nextSteps(weighed, all),
    best: best === null ? (stays ? 0 : null) : weighed.rows.indexOf(best.row),
  };
}

const LEADS: Record<VerdictKind, string> = {
  yes: "Yes",
  no: "No",
  "too small": "Hardly",
  undecided: "It cannot be told yet",
  told: "It is a matter of choice",
};

function oneVerdict(weighed: Weighed, judged: Judged, reason: string): string {
  const { row, answer, clause } = judged;
  if (isOpenInMoney(judged))
    return `With ${named(row.name)} ${gainClause(weighed, row)}, but whether that pays cannot be told yet (${moneyRange(row.money!)} a ${timeOf(row.money!)}).`;
  const why = hasNothingToGain(judged) ? reason : "";
  return `${LEADS[answer]}: with ${named(row.name)} ${withNo(clause)}${why}.`;
}

/** Then it helps to know what the line waits for instead. */
function hasNothingToGain({ row: { harm, gain } }: Judged): boolean {
  return harm === null && (gain?.size === "no difference" || gain?.size === "too small");
}

const GROUPS: [VerdictKind | "open in money", string][] = [
  ["yes", "Worth it"],
  ["told", "A matter of choice"],
  ["open in money", "Shown to help, but whether it pays cannot be told yet"],
  ["undecided", "Cannot be told yet"],
  ["too small", "Too small to matter"],
  ["no", "Not worth it"],
];

function severalVerdict(all: readonly Judged[], reason: string): string {
  const groups = GROUPS.flatMap(([answer, lead]) => {
    const names = all
      .filter((each) => (isOpenInMoney(each) ? "open in money" : each.answer) === answer)
      .map(({ row }) => named(row.name));
    return names.length === 0 ? [] : [`${lead}: ${listed(names)}`];
  });
  return `${groups.join(". ")}${all.every(hasNothingToGain) ? reason : ""}.`;
}
