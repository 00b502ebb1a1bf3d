import type { Plan } from "../../asked/plan/index.ts";
import { capitalPerDay, capitals, countedDays } from "../../day/observations/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import type { NetMoney } from "../results/index.ts";
import { sizedEstimate } from "./gain.ts";
import { MONEY_PART } from "./matters.ts";

/** Values by response, one for each observation. */
type Values = Readonly<Record<string, readonly (number | null)[]>>;

/** Where neither the plant costs nor a machine of the plan say it (common practice, no source). */
const DAYS_PER_YEAR = 250;
/** More heads than this share of the day's are no luck of transport and lairage. */
const OTHER_HEADS = 0.002;

/** Keys that `netMoney` reads. */
export const MONEY_KEYS = ["cost.processing", "plantCost.total", "margin", "fullMargin", "carcasses"];

interface Compared {
  plan: Plan;
  values: Values;
}

/**
 * What a variant brings beside today's plan on the same days: by the margin where the plan has prices, else by the cost of
 * the day; where it handles more or fewer heads without prices, or leaves others in the chiller over the end of a week, by the cost a head at today's heads. Null without money.
 */
export function netMoney(
  today: Compared,
  variant: Compared,
  { confidence, matters }: { confidence: number; matters: number | null },
): NetMoney | null {
  const { money } = today.plan;
  if (money === null || variant.plan.money === null) return null;
  const sold = has(today.values, "margin") && has(variant.values, "margin") && !leavesOthers(today, variant);
  const by = sold ? "margin" : "cost";
  const [before, after] = by === "margin" ? [margins(today), margins(variant)] : costPair(today, variant);
  // The values of a week are means over its days.
  const together = today.plan.week === undefined ? 1 : countedDays(today.plan).length;
  const perDay = estimate(
    before.map((from, day) => (from === null || after[day] == null ? null : (after[day]! - from) * together)),
    confidence,
  );
  if (perDay === null) return null;
  const running = together * (estimate(dayCosts(today), confidence)?.mean ?? 0);
  const { daysPerYear, assumed } = daysPerYearOf(today.plan);
  const price = prices(variant.plan) - prices(today.plan);
  const charge = charges(variant.plan) - charges(today.plan);
  const earned = (perDay.mean / together + charge) * daysPerYear;
  return {
    ...{ currency: money.currency, by, perDay, daysPerYear, daysAssumed: assumed, price },
    ...(together === 1 ? {} : { daysTogether: together }),
    size: sizedEstimate(perDay, matters ?? MONEY_PART * running).size,
    paybackYears: price > 0 && earned > 0 ? price / earned : null,
  };
}

function has(values: Values, key: string): boolean {
  return values[key]?.some((value) => value !== null) ?? false;
}

/** More or fewer carcasses hang in the chiller when the week ends: what they bring is next week's, so margins do not compare. */
function leavesOthers(today: Compared, variant: Compared): boolean {
  if (today.plan.week === undefined || variant.plan.week === undefined) return false;
  const [before, after] = [leftOf(today), leftOf(variant)];
  return Math.abs(after.left - before.left) > OTHER_HEADS * before.made;
}

/** Of a mean week: carcasses made, and how many of them have not left at its end. */
function leftOf({ plan, values }: Compared): { made: number; left: number } {
  const mean = (key: string) => estimate([...(values[key] ?? [])], 0.95)?.mean ?? 0;
  const made = mean("week.made");
  return { made, left: made - mean("carcasses") * countedDays(plan).length };
}

function margins({ values }: Compared): (number | null)[] {
  return [...(has(values, "fullMargin") ? values.fullMargin! : values.margin!)];
}

/** Processing and, where the plan gives it, the plant. */
function dayCosts({ values }: Compared): (number | null)[] {
  const plant = values["plantCost.total"];
  return (values["cost.processing"] ?? []).map((cost, day) => (cost === null ? null : cost + (plant?.[day] ?? 0)));
}

/** Costs with a minus sign; of the variant at the number of heads that today's plan has that day. */
function costPair(today: Compared, variant: Compared): [(number | null)[], (number | null)[]] {
  const [before, after] = [dayCosts(today), dayCosts(variant)];
  const headsOf = ({ values }: Compared) => values["week.made"] ?? values.carcasses ?? [];
  const [heads, others] = [headsOf(today), headsOf(variant)];
  const scale = (day: number) => {
    const [from, to] = [heads[day] ?? 0, others[day] ?? 0];
    return to > 0 && Math.abs(to - from) > OTHER_HEADS * from ? from / to : 1;
  };
  const minus = (cost: number | null, by: number) => (cost === null ? null : -cost * by);
  return [before.map((cost) => minus(cost, 1)), after.map((cost, day) => minus(cost, scale(day)))];
}

function prices(plan: Plan): number {
  return capitals(plan).reduce((sum, { price }) => sum + price, 0);
}

function charges(plan: Plan): number {
  return capitals(plan).reduce((sum, capital) => sum + capitalPerDay(capital), 0);
}

/** As the plan says, else 250. */
export function daysPerYearOf(plan: Plan): { daysPerYear: number; assumed: boolean } {
  const known = plan.money?.plantCosts?.daysPerYear ?? capitals(plan)[0]?.daysPerYear;
  return { daysPerYear: known ?? DAYS_PER_YEAR, assumed: known === undefined };
}
