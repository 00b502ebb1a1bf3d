import type { ResponseInfo } from "../../day/observations/index.ts";
import { formatDecimals, formatSpan } from "../../text/units/index.ts";
import { type DecisionRow, type Gain, type NetMoney, periodOf } from "../results/index.ts";
import { handlesOtherHeads } from "./bestOf.ts";
import { gainOf } from "./gain.ts";
import { daysNeeded, gainClause, most, type Spoken, watchful, withNo } from "./judged.ts";
import {
  amountWords,
  estimateWords,
  listed,
  lowered,
  money$,
  moneyWords,
  named,
  simulated,
  timeOf,
} from "./phrases.ts";
import { whatWillItBe } from "./told.ts";
import type { Weighed } from "./weighed.ts";

/** What happens if the day comes otherwise than planned? Nobody asks whether that is worth it; of several answers the one that copes best is named. */
export function whatIf(weighed: Weighed): Spoken {
  const tries = weighed.rows.slice(1);
  if (tries.length === 0) return whatWillItBe(weighed);
  const answer = tries.length === 1 ? oneTry(weighed, tries[0]!) : severalTries(weighed, tries);
  return { ...answer, next: [...moreDays(weighed, tries), ...answer.next, ...watchful(weighed)] };
}

function oneTry(weighed: Weighed, row: DecisionRow): Spoken {
  return {
    answer: isOpen(weighed, row) ? "undecided" : "told",
    verdict: `With ${named(row.name)} ${happens(weighed, row)}.`,
    words: [...singleDays(weighed, row), ...moneySentence(row)],
    next:
      changeOf(weighed, row)?.size === "loss" || row.harm !== null
        ? ["Compare what would help against it: more tries after `--or`, with people, a break or lorries moved."]
        : [],
    best: null,
  };
}

function severalTries(weighed: Weighed, tries: readonly DecisionRow[]): Spoken {
  const sound = tries.filter(({ harm, gain }) => harm === null && gain !== null);
  const top = most(sound, ({ gain }) => gain!.mean);
  if (handlesOtherHeads({ ...weighed, rows: tries })) return spoken(weighed, tries, null, byHeads(weighed, tries));
  if (top === null) return spoken(weighed, tries, null, unranked(weighed, tries));
  const then = `with it ${happens(weighed, top)}`;
  if (sound.length > MANY && sound.every(({ gain }) => STILL.has(gain!.size))) return noneHelps(weighed, tries, sound);
  if (sound.length === 1) return spoken(weighed, tries, top, `Only ${named(top.name)} does no harm: ${then}`);
  const rivals = sound.filter((row) => row !== top && (mayBeBest(weighed, row) || isClose(weighed, row)));
  if (rivals.length === 0) return spoken(weighed, tries, top, `${named(top.name)} copes best: ${then}`);
  const names = listed([top, ...rivals].map(({ name }) => named(name)));
  const least = amountWords(weighed.matters.size, weighed.info);
  if (rivals.every((row) => isClose(weighed, row)))
    return spoken(
      weighed,
      tries,
      top,
      `${names} cope alike (less than ${least} apart); with ${named(top.name)} ${happens(weighed, top)}`,
    );
  const days = top.estimates[weighed.info.key]?.n ?? 0;
  return {
    ...spoken(
      weighed,
      tries,
      top,
      `${days} ${simulated(weighed.study)} cannot tell which of ${names} copes best: ${meansOf(weighed, [top, ...rivals])}`,
    ),
    answer: "undecided",
    best: null,
  };
}

/** So many tries at least ask where something would help. */
const MANY = 3;
const STILL = new Set<Gain["size"]>(["no difference", "too small"]);

/** Each by itself does next to nothing; what they cost is told once, from the least to the most. */
function noneHelps(weighed: Weighed, tries: readonly DecisionRow[], sound: readonly DecisionRow[]): Spoken {
  const { matters, info } = weighed;
  const of = sound.length === tries.length ? "" : " that do no harm";
  const money = sound.flatMap((row) => (row.money === null || row.money.by !== "margin" ? [] : [row.money]));
  const earned = money.map(({ perDay }) => perDay.mean).sort((a, b) => b - a);
  const costs = money.length === sound.length && earned[0]! < 0;
  const range = [earned[0]!, earned.at(-1)!].map((mean) => (costs ? money$(-mean, money[0]!) : ""));
  return {
    answer: "told",
    verdict: `None of the ${sound.length} tries${of} changes ${lowered(info)} by ${amountWords(matters.size, info)} or more${
      costs ? `; each by itself costs more than it brings: ${range[0]} to ${range[1]} a ${timeOf(money[0]!)}` : ""
    }.`,
    words: tries.filter((row) => !sound.includes(row)).map((row) => trySentence(weighed, row)),
    next: [],
    best: null,
  };
}

/** Overtime on more of the days than this is common. */
const COMMON = 0.5;

/** Of tries with other numbers of heads, which the end of work cannot rank: from which number on overtime is common. */
function byHeads({ rows, overtimeDays, study }: Weighed, tries: readonly DecisionRow[]): string {
  const points = [rows[0]!, ...tries].flatMap((row, index) => {
    const found = overtimeDays[rows.indexOf(row)];
    const name = index === 0 ? "today's heads" : named(row.name);
    return found == null ? [] : [{ name, ...found, heads: row.estimates.carcasses?.mean ?? 0 }];
  });
  if (points.length <= tries.length)
    return "The tries handle different numbers of heads, so the end of work cannot rank them";
  const sorted = points.sort((a, b) => a.heads - b.heads);
  const first = sorted.findIndex(({ days, of }) => days > COMMON * of);
  const told = (list: typeof points) => listed(list.map(({ name, days, of }) => `${name} (${days} of ${of})`));
  if (first === -1) return `Overtime comes on half of the ${simulated(study)} at most: with ${told(sorted)}`;
  if (first === 0)
    return `Overtime comes on more than half of the ${simulated(study)} throughout: with ${told(sorted)}`;
  const { name, days, of } = sorted[first]!;
  return `Overtime is common from ${name} on (${days} of ${of} ${simulated(study)}), and not with ${told(sorted.slice(0, first).reverse())}`;
}

const NAMED = 3;

function unranked(weighed: Weighed, tries: readonly DecisionRow[]): string {
  const harmed = tries.filter(({ harm }) => harm !== null);
  if (harmed.length < tries.length) return "The tries cannot be ranked by what was asked for";
  const told = harmed.slice(0, NAMED).map((row) => `with ${named(row.name)} ${harmWords(weighed, row)}`);
  return `Every try does harm: ${told.join("; ")}${harmed.length > NAMED ? `; and ${harmed.length - NAMED} more` : ""}`;
}

/** Every limit that is broken more than today, the worst first; where there is but one, or none, what the row says of its harm. */
function harmWords(weighed: Weighed, row: DecisionRow): string {
  const { columns, rows } = weighed;
  const share = (each: DecisionRow, key: string) => each.estimates[key]?.mean ?? 0;
  const worse = columns
    .filter(
      ({ key }) => key.startsWith("beyond.") && row.differences[key]?.shown && share(row, key) > share(rows[0]!, key),
    )
    .sort((a, b) => share(row, b.key) - share(row, a.key));
  if (worse.length < 2) return row.harm!;
  const told = worse.map((info) => {
    const [own, today] = [row, rows[0]!].map((each) => meanWords(each.estimates[info.key]!, info, weighed));
    return `${own} of the heads are outside '${info.key.slice("beyond.".length)}' (today ${today})`;
  });
  return listed(told);
}

/** "With “A” work ends 20 min later; all in all the day earns 30 EUR less." */
function trySentence(weighed: Weighed, row: DecisionRow): string {
  const said = `With ${named(row.name)} ${happens(weighed, row)}`;
  const { money } = row;
  if (money === null) return `${said}.`;
  if (money.size === "open") return `${said}; all in all it ${moneyWords(money)}.`;
  if (STAYS.has(money.size)) return `${said}; all in all the money of the ${timeOf(money)} stays about the same.`;
  return `${said}; all in all the ${timeOf(money)} ${earns(money)}.`;
}

const STAYS = new Set<NetMoney["size"]>(["no difference", "too small"]);

/** "earns 30 EUR less". */
function earns(money: NetMoney): string {
  const { by, perDay } = money;
  const more = perDay.mean > 0 === (by === "margin") ? "more" : "less";
  return `${by === "margin" ? "earns" : "costs"} ${money$(Math.abs(perDay.mean), money)} ${more}`;
}

/** The verdict, then a sentence for every try that it does not tell of. */
function spoken(weighed: Weighed, tries: readonly DecisionRow[], best: DecisionRow | null, verdict: string): Spoken {
  return {
    answer: "told",
    verdict: `${verdict}.`,
    words: tries.flatMap((row) => (row === best ? moneySentence(row) : [trySentence(weighed, row)])),
    next: [],
    best: best === null ? null : weighed.rows.indexOf(best),
  };
}

/** "end of work 14:23 with “A” and 14:25 with “B”". */
function meansOf(weighed: Weighed, rows: readonly DecisionRow[]): string {
  const { info } = weighed;
  const parts = rows.flatMap(({ name, estimates }) => {
    const found = estimates[info.key];
    return found === undefined ? [] : [`${meanWords(found, info, weighed)} with ${named(name)}`];
  });
  return `${lowered(info)} ${listed(parts)}`;
}

function mayBeBest({ againstBest, rows }: Weighed, row: DecisionRow): boolean {
  return againstBest?.[rows.indexOf(row)]?.mayBeBest ?? true;
}

/** Whether it is behind the best of the others by less than matters, however luck has it. */
function isClose({ againstBest, rows, info, matters }: Weighed, row: DecisionRow): boolean {
  const found = againstBest?.[rows.indexOf(row)];
  if (found === undefined) return false;
  return (info.better === "less" ? found.high : -found.low) < matters.size;
}

/** "work ends 48 min (45 to 51 min) later, at 15:05, overtime costs 110 EUR a day more, and no limit is broken". */
function happens(weighed: Weighed, row: DecisionRow): string {
  const parts = [...endParts(weighed, row), ...overtimeParts(weighed, row), ...carcassParts(weighed, row)];
  const told = parts.length > 1 ? `${parts.slice(0, -1).join(", ")}, and ${parts.at(-1)}` : parts[0]!;
  const limits = limitWords(weighed, row);
  if (row.harm !== null) return `${told}; it does harm: ${harmWords(weighed, row)}`;
  return limits === null ? told : `${told}; ${limits}`;
}

function endParts(weighed: Weighed, row: DecisionRow): string[] {
  const gain = changeOf(weighed, row);
  const { info } = weighed;
  if (gain === null) return [`no day gave ${lowered(info)} for both plans`];
  const [, day] = /^(?:(.+)\.)?finish$/.exec(info.key) ?? [null, null];
  if (day !== null && gain.size === "no difference")
    return [
      `work ${day === undefined ? "" : `on ${day} `}ends as it does today (less than ${amountWords(weighed.matters.size, info)} of difference)`,
    ];
  const clause = withNo(gainClause(weighed, { ...row, gain }));
  if (info.format !== "clock" || !SHOWN.has(gain.size)) return [clause];
  const found = row.estimates[info.key]!;
  return [`${clause}, at ${meanWords(found, info, weighed)}`];
}

const SHOWN = new Set<Gain["size"]>(["gain", "loss"]);

/** The difference in the deciding response; of one without a wanted way less counts as the better, which only sets the sign. */
function changeOf({ info, matters }: Weighed, { gain, differences }: DecisionRow): Gain | null {
  const difference = differences[info.key];
  if (gain !== null || difference === undefined) return gain;
  return gainOf(difference, info.better ?? "less", matters.size);
}

function isOpen(weighed: Weighed, row: DecisionRow): boolean {
  return row.harm === null && changeOf(weighed, row)?.size === "open";
}

/** In money where the plan pays overtime, else in time; left out where the end of work says it already or nothing is shown. */
function overtimeParts({ columns, deciding }: Weighed, { differences }: DecisionRow): string[] {
  const paid = columns.find(({ key }) => key === "cost.overtimePay" && key !== deciding);
  const timed = columns.find(({ key }) => key === `${dayPrefix(deciding)}overtime` && key !== deciding);
  const shown = (info: ResponseInfo | undefined) => (info === undefined ? 0 : shownMean(differences[info.key]));
  const [pay, span] = [shown(paid), shown(timed)];
  if (pay !== 0)
    return [`overtime costs ${formatSpan(Math.abs(pay), paid!, "plain")} a day ${pay > 0 ? "more" : "less"}`];
  if (paid !== undefined || span === 0) return [];
  return [`overtime is ${formatSpan(Math.abs(span), timed!, "plain")} ${span > 0 ? "longer" : "shorter"}`];
}

/** A few heads more or less are luck of transport and trimming. */
const FEW_HEADS = 0.002;

/** Carcasses of the day that is asked about, as the end of work and overtime are. */
function carcassParts({ deciding, rows }: Weighed, { differences }: DecisionRow): string[] {
  const key = `${dayPrefix(deciding)}carcasses`;
  const more = Math.round(shownMean(differences[key]));
  const today = rows[0]!.estimates[key]?.mean ?? 0;
  if (deciding === key || Math.abs(more) <= FEW_HEADS * today) return [];
  return [`${formatDecimals(Math.abs(more), 0)} ${more > 0 ? "more" : "fewer"} carcasses come out`];
}

/** "Thursday." of the end of that day's work, else "". */
function dayPrefix(deciding: string): string {
  return /^.+\.(?=finish$)/.exec(deciding)?.[0] ?? "";
}

function shownMean(difference: DecisionRow["differences"][string] | undefined): number {
  return difference?.shown ? difference.mean : 0;
}

/** Null where the plan watches no limit. */
function limitWords({ study, columns, deciding }: Weighed, { estimates, harm }: DecisionRow): string | null {
  if (study.variants[0]!.plan.limits.length === 0 || harm !== null) return null;
  const broken = columns.some(({ key }) => key.startsWith("beyond.") && (estimates[key]?.mean ?? 0) > 0);
  if (broken) return "no limit is broken more than today";
  return `no limit is broken in ${estimates[deciding]?.n ?? 0} ${simulated(study)}`;
}

function singleDays(weighed: Weighed, row: DecisionRow): string[] {
  const { info } = weighed;
  const found = row.estimates[info.key];
  if (found === undefined || found.min === found.max) return [];
  const [lowest, highest] = [found.min, found.max].map((mean) => meanWords({ ...found, mean }, info, weighed));
  return [`Single ${periodOf(weighed.study)}s lie between ${lowest} and ${highest} (${found.n} simulated).`];
}

function meanWords(found: DecisionRow["estimates"][string], info: ResponseInfo, { study }: Weighed): string {
  return estimateWords({ ...found, low: null, high: null }, info, study.variants[0]!.plan.day.startClockSeconds);
}

function moneySentence({ name, money }: DecisionRow): string[] {
  if (money === null) return [];
  const { size } = money;
  if (size === "open") return [`All in all the ${timeOf(money)} with ${named(name)} ${moneyWords(money)}.`];
  if (STAYS.has(size))
    return [`All in all the money of the ${timeOf(money)} stays about the same with ${named(name)}.`];
  return [`All in all the ${timeOf(money)} ${earns(money)} with ${named(name)}.`];
}

function moreDays(weighed: Weighed, tries: readonly DecisionRow[]): string[] {
  const open = tries.filter((row) => row.gain !== null && isOpen(weighed, row));
  const days = Math.max(0, ...open.map((row) => daysNeeded(weighed, row)));
  return days === 0
    ? []
    : [`About ${days} ${simulated(weighed.study)} of each would tell (\`gambrel try --days ${days}\`).`];
}
