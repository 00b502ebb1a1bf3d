import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import { formatDecimals, formatDifference, formatEstimate, formatMinutes, formatSpan } from "../../text/units/index.ts";
import { type Gain, type MeanEstimate, type NetMoney, periodOf, type Why } from "../results/index.ts";

/** Words of a decision, each piece made once. */

/** "simulated days". */
export function simulated(study: Pick<Study, "variants">): string {
  return `simulated ${periodOf(study)}s`;
}

export function named(name: string): string {
  return `\u201C${name}\u201D`;
}

/** "“A”, “B” and “C”". */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** "69 min (66 to 72 min)", a size without a sign. */
export function sizeWords({ mean, low, high }: Gain, info: ResponseInfo): string {
  const turned = mean < 0 ? { mean: -mean, low: -high, high: -low } : { mean, low, high };
  if (turned.low === turned.high) return formatSpan(turned.mean, info, "plain");
  const [size, range] = formatDifference(turned, info, "plain");
  return range === "" ? size : `${size} (${range})`;
}

export function amountWords(size: number, info: ResponseInfo): string {
  return formatSpan(size, info, "plain");
}

/** A response's label within a sentence. */
export function lowered({ key, label }: ResponseInfo): string {
  // Of one day of a week: the day keeps its capital, and stands behind.
  const day = label.split(": ", 1)[0]!;
  if (label.length > day.length && key.startsWith(`${day}.`))
    return `${lowered({ ...BARE, label: label.slice(day.length + 2) })} on ${day}`;
  return /^\p{Lu}\p{Ll}/u.test(label) ? label.replace(/\p{Lu}/u, (letter) => letter.toLowerCase()) : label;
}

const BARE: ResponseInfo = { key: "", label: "", unit: "", format: "number", better: null };

/** "work ends 69 min (66 to 72 min) earlier": what a variant does to the response, as a clause. */
export function changeWords(gain: Gain, info: ResponseInfo): string {
  const size = sizeWords(gain, info);
  const isBetter = gain.mean >= 0;
  const [, day = ""] = /^(?:(.+)\.)?finish$/.exec(info.key) ?? [];
  if (info.key === "finish" || day !== "")
    return `work ${day === "" ? "" : `on ${day} `}ends ${size} ${isBetter ? "earlier" : "later"}`;
  if (info.key === "overtime" || info.key === "week.overtime")
    return `overtime is ${size} ${isBetter ? "shorter" : "longer"}`;
  if (info.key === "headsPerHour") return `the line makes ${size} ${isBetter ? "more" : "fewer"}`;
  const goesUp = isBetter === (info.better === "more");
  if (info.key.startsWith("p95."))
    return `the time that 95 % of the heads stay below in '${info.key.slice("p95.".length)}' is ${size} ${goesUp ? "longer" : "shorter"}`;
  if (info.format === "clock") return `${lowered(info)} is ${size} ${goesUp ? "later" : "earlier"}`;
  return `${lowered(info)} is ${size} ${goesUp ? "higher" : "lower"}`;
}

/** "saves 23 EUR a day", "costs 115 EUR a day more than it saves", as what a variant does. */
export function moneyWords(money: NetMoney): string {
  const { perDay, size, by } = money;
  if (size === "no difference" || size === "too small") return "costs about as much as it brings";
  const each = `a ${timeOf(money)}`;
  if (size === "open") return `may bring or cost money (${moneyRange(money)} ${each})`;
  const amount = money$(Math.abs(perDay.mean), money);
  if (perDay.mean > 0) return by === "cost" ? `saves ${amount} ${each}` : `earns ${amount} ${each} more`;
  return by === "cost" ? `costs ${amount} ${each} more than it saves` : `earns ${amount} ${each} less`;
}

/** What the money is of: "day" or "week". */
export function timeOf({ daysTogether = 1 }: NetMoney): string {
  return daysTogether > 1 ? "week" : "day";
}

/** "5,800 EUR a year at 250 working days (assumed)". */
export function yearWords(money: NetMoney): string {
  const { perDay, daysPerYear, daysAssumed, daysTogether = 1 } = money;
  const year = (Math.abs(perDay.mean) * daysPerYear) / daysTogether;
  const rounded = Number(year.toPrecision(2));
  const days = `${formatDecimals(daysPerYear, 0)} working days${daysAssumed ? ", assumed" : ""}`;
  return `${formatDecimals(rounded, 0)} ${money.currency} a year (${days})`;
}

/** "−62 to +29 EUR": what a change may bring or cost. */
export function moneyRange({ perDay: { mean, low, high }, currency }: NetMoney): string {
  const info: ResponseInfo = { key: "", label: "", unit: currency, format: "number", better: null };
  const [, range] = formatDifference({ mean, low, high }, info);
  return range;
}

export function money$(value: number, { currency, perDay }: NetMoney): string {
  const halfWidth = perDay.halfWidth ?? 0;
  const fine = halfWidth > 0 && halfWidth < 1 && value < 100;
  return `${formatDecimals(value, fine ? 2 : 0)} ${currency}`;
}

/** "14:37 (14:30 to 14:44)": a mean with its interval. */
export function estimateWords(found: MeanEstimate, info: ResponseInfo, startClockSeconds: number): string {
  const [mean, range] = formatEstimate(found, info, startClockSeconds);
  return range === "" ? mean : `${mean} (${range})`;
}

/** What the line ran at the pace of for most of the day. `stage` is null where it waited for animals. */
export interface LinePace {
  stage: string | null;
  seconds: number;
  /** No other stage may have set the pace for as long. */
  clear: boolean;
}

const ANIMALS = new Set(["load", "arrivals", "lorry away"]);

export function paceOf(why: Why | null | undefined): LinePace | null {
  if (why == null) return null;
  const total = why.total.mean;
  const animals = why.parts
    .filter(({ cause }) => ANIMALS.has(cause))
    .reduce((sum, { seconds }) => sum + seconds.mean, 0);
  const [top, second] = why.stages;
  if (top === undefined || animals > top.share.mean * total)
    return animals > 0 ? { stage: null, seconds: animals, clear: true } : null;
  const ends = [top.share.low ?? top.share.mean, second?.share.high ?? second?.share.mean ?? 0];
  return { stage: top.stage, seconds: top.share.mean * total, clear: ends[0]! > ends[1]! };
}

/** "the line waits for animals (6 h 12 min of the day)". */
export function paceWords({ stage, seconds }: LinePace): string {
  const span = `${formatMinutes(seconds)} of the day`;
  return stage === null ? `the line waits for animals (${span})` : `${stage} sets the pace (${span})`;
}
