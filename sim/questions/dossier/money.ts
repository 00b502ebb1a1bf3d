import { annuityFactor, loanPayment, power } from "../../maths/numeric/index.ts";
import { presentFactor } from "../options/index.ts";
import { type Demand, headsOfWeek, type Market, MONTHS_OF_YEAR, marketsOf } from "../size/index.ts";
import type { CapitalSheet, Surroundings } from "./capital.ts";
import type { SizedKind } from "./kinds.ts";
import type { RampWeek, StaffingPlan } from "./people.ts";
import type { KindTrial } from "./trial.ts";

/** Figures of the business that are not sure, each as a factor on what is written; 1 is what is written. */
export interface Factors {
  volume: number;
  price: number;
  animals: number;
  pay: number;
  energy: number;
  capital: number;
}

export const AS_WRITTEN: Factors = { volume: 1, price: 1, animals: 1, pay: 1, energy: 1, capital: 1 };

/** All that the money of one kind of plant follows from; money in the demand's currency. */
export interface Business {
  markets: Market[];
  years: { looked: number; weeks: number };
  daysPerWeek: number;
  /** The busiest day over the mean day. */
  peak: number;
  /** Heads that the shifts of a day can take. */
  capacityHeads: number;
  kgPerHead: number;
  /** A day: pay of all who are employed; overtime. */
  payPerDay: number;
  /** For each head hung. */
  perHead: { animals: number; energy: number; packing: number; byProducts: number };
  /** Of a kilogram of carcass where a market names none; null where nobody does. */
  pricePerKg: number | null;
  overheadPerYear: number;
  /** Null without prices: then nothing is bought as far as the money knows. */
  capital: CapitalSheet | null;
  /** Pay of those who are trained before the first day. */
  training: number;
  interest: number;
  life: number;
  buildingLife: number;
  maintenance: number;
  loan: { share: number; interest: number; years: number } | null;
  /** Heads that the first weeks fall short by. */
  rampUp: readonly RampWeek[];
}

/** One year's money, before capital. */
export interface YearMoney {
  year: number;
  heads: number;
  kilograms: number;
  revenue: number;
  animals: number;
  pay: number;
  energy: number;
  packing: number;
  overhead: number;
  upkeep: number;
  /** Revenue less all of these. */
  cash: number;
}

/** What a kind of plant's money is made of; null where the demand names no money. */
export function businessOf(
  { demand, design }: SizedKind,
  trial: KindTrial,
  {
    capital,
    staffing,
    ramp,
    around,
  }: { capital: CapitalSheet; staffing: StaffingPlan; ramp: readonly RampWeek[]; around: Surroundings },
): Business | null {
  const { money } = trial;
  if (money === null || demand.money === null) return null;
  const at = (key: string): number => money[key] ?? 0;
  const heads = design.rate.headsPerDay;
  const other = Object.keys(money).filter((key) => key.startsWith("revenue.") && key !== "revenue.carcass");
  const pay = (at("cost.regularPay") + at("cost.overtimePay")) * staffing.paidPerPost;
  const { plantCosts, prices } = demand.money;
  const daysPerYear = plantCosts?.daysPerYear ?? demand.years.weeks * demand.week.days;
  return {
    markets: marketsOf(demand),
    years: { looked: demand.years.looked, weeks: daysPerYear / demand.week.days },
    daysPerWeek: demand.week.days,
    peak: demand.week.peak,
    capacityHeads: trial.capacityHeads.mean,
    kgPerHead: design.rate.carcassKgPerDay / design.rate.headsPerDay,
    payPerDay: pay,
    perHead: {
      animals: at("cost.animals") / heads,
      energy: servicesOfDay(demand.money, around) / heads,
      packing: (at("plantCost.packaging") + at("plantCost.inspection") + at("plantCost.waste")) / heads,
      byProducts: other.reduce((sum, key) => sum + at(key), 0) / heads,
    },
    pricePerKg: prices.carcass?.amount ?? null,
    overheadPerYear: at("plantCost.overhead") * daysPerYear,
    capital: demand.capital === null ? null : capital,
    training: trainingPay(demand, design.rate.headsPerDay, { staffing, payPerDay: pay }),
    interest: demand.capital?.interest ?? DEFAULT_INTEREST,
    life: demand.capital?.life ?? 1,
    buildingLife: demand.capital?.buildingLife ?? 1,
    maintenance: demand.capital?.maintenance ?? 0,
    loan: demand.capital?.loan ?? null,
    rampUp: ramp,
  };
}

const JOULES = 3_600_000;

/** Electricity, fuel, water and waste water of a day as the connection sheet has them; without a price of fuel it is electricity that heats water. */
function servicesOfDay(money: NonNullable<Demand["money"]>, around: Surroundings): number {
  const perKilowattHour = (price: { amount: number } | null): number => (price?.amount ?? 0) * JOULES;
  const water = (money.water?.amount ?? 0) + (money.wasteWater?.amount ?? 0);
  return (
    around.kilowattHours * perKilowattHour(money.energy) +
    around.fuelKilowattHours * perKilowattHour(money.fuel ?? money.energy) +
    around.cubicMetres * water
  );
}

/** Where no capital is named, no money is moved over the years, and it does not matter. */
const DEFAULT_INTEREST = 0;

/** Days of everybody's pay before the first day: heads done in training over the heads that a person does in a day. */
function trainingPay(
  { staff }: Demand,
  headsPerDay: number,
  { staffing, payPerDay }: { staffing: StaffingPlan; payPerDay: number },
): number {
  const perPerson = headsPerDay / Math.max(1, staffing.atPosts);
  return (staff.done / Math.max(1, perPerson * staffing.posts.length)) * payPerDay;
}

/** Share of a year's demand that the plant can take, month by month: no more than its capacity on the busiest day of a week. */
export function soldHeads(business: Business, year: number, volume: number): { asked: number; sold: number } {
  const { markets, years, daysPerWeek, peak, capacityHeads, rampUp } = business;
  const weeks = years.weeks / MONTHS_OF_YEAR;
  const most = (capacityHeads * daysPerWeek) / peak;
  let [asked, sold] = [0, 0];
  for (let month = 0; month < MONTHS_OF_YEAR; month++) {
    const week = headsOfWeek(markets, year, month) * volume;
    asked += week * weeks;
    sold += Math.min(week, most) * weeks;
  }
  if (year > 1) return { asked, sold };
  const mean = asked / years.weeks;
  return { asked, sold: sold - rampUp.reduce((sum, { share }) => sum + Math.max(0, mean - most * share), 0) };
}

/** Money of one year; carcasses at the mean price of the markets, weighed by what they take. */
export function yearMoney(business: Business, year: number, factors: Factors = AS_WRITTEN): YearMoney {
  const { perHead, kgPerHead, years, daysPerWeek } = business;
  const heads = soldHeads(business, year, factors.volume).sold;
  const kilograms = heads * kgPerHead;
  const price = meanPrice(business, year) ?? 0;
  const parts = {
    revenue: kilograms * price * factors.price + heads * perHead.byProducts,
    animals: heads * perHead.animals * factors.animals,
    pay: business.payPerDay * daysPerWeek * years.weeks * factors.pay,
    energy: heads * perHead.energy * factors.energy,
    packing: heads * perHead.packing,
    overhead: business.overheadPerYear,
    upkeep: upkeepPerYear(business, factors.capital),
  };
  const { revenue, ...costs } = parts;
  const cash = revenue - Object.values(costs).reduce((sum, cost) => sum + cost, 0);
  return { year, heads, kilograms, ...parts, cash };
}

function upkeepPerYear({ capital, maintenance }: Business, factor: number): number {
  return capital === null ? 0 : maintenance * (capital.machines + capital.building) * factor;
}

/** Of a kilogram of carcass; null where a market has no price and the money names none. */
export function meanPrice({ markets, pricePerKg }: Business, year: number): number | null {
  let [sum, all] = [0, 0];
  for (const market of markets) {
    const price = market.pricePerKg ?? pricePerKg;
    if (price === null) return null;
    const heads = market.headsPerWeek * power(1 + market.growth, year - 1);
    sum += price * heads;
    all += heads;
  }
  return sum / all;
}

/** Whether the net present value can be told: all that is bought and sold has a price. */
export function hasValue(business: Business | null): business is Business {
  return (
    business !== null &&
    business.capital !== null &&
    business.capital.open.length === 0 &&
    meanPrice(business, 1) !== null
  );
}

/**
 * Money of each year's end from 0 on: what is bought and the training before the first day; each year's cash; machines bought anew when their
 * life is over; at the end the rest of their price, by the straight line. No taxes.
 */
export function cashFlows(business: Business, factors: Factors = AS_WRITTEN): number[] {
  const { capital, years, life, buildingLife } = business;
  const bought = capital ?? { machines: 0, building: 0, once: 0 };
  const machines = bought.machines * factors.capital;
  const building = bought.building * factors.capital;
  const flows = [-(machines + building + bought.once * factors.capital) - business.training * factors.pay];
  for (let year = 1; year <= years.looked; year++) {
    const anew = year % life === 0 && year < years.looked ? machines : 0;
    flows.push(yearMoney(business, year, factors).cash - anew);
  }
  const rest = machines * restShare(years.looked, life) + building * restShare(years.looked, buildingLife);
  flows[years.looked] = flows[years.looked]! + rest;
  return flows;
}

/** Of the price, by the straight line, after so many years of purchases one after another. */
function restShare(years: number, life: number): number {
  const used = years % life;
  return used === 0 ? 0 : 1 - used / life;
}

/** Sum of flow / (1 + interest)^year, the first flow at year 0 (any engineering economy text). */
export function presentValue(flows: readonly number[], interest: number): number {
  return flows.reduce((sum, flow, year) => sum + flow * presentFactor(interest, year), 0);
}

export function netPresentValue(business: Business, factors: Factors = AS_WRITTEN): number {
  return presentValue(cashFlows(business, factors), business.interest);
}

/** Equal yearly amount of what was bought: price x i(1 + i)^n / ((1 + i)^n - 1), over the life of each; training over the years looked at. */
export function capitalPerYear(business: Business, factors: Factors = AS_WRITTEN): number {
  const { capital, interest, life, buildingLife, training, years } = business;
  if (capital === null) return 0;
  const bought =
    capital.machines / annuityFactor(interest, life) +
    capital.building / annuityFactor(interest, buildingLife) +
    capital.once / annuityFactor(interest, years.looked);
  return bought * factors.capital + (training / annuityFactor(interest, years.looked)) * factors.pay;
}

/** Full cost of a year, animals not included. */
export interface FullCost {
  parts: Record<"pay" | "energy" | "packing" | "overhead" | "upkeep" | "capital", number>;
  total: number;
  perHead: number;
  perKg: number;
}

export function fullCost(business: Business, year: number, factors: Factors = AS_WRITTEN): FullCost {
  const { heads, kilograms, pay, energy, packing, overhead, upkeep } = yearMoney(business, year, factors);
  const parts = { pay, energy, packing, overhead, upkeep, capital: capitalPerYear(business, factors) };
  const total = Object.values(parts).reduce((sum, part) => sum + part, 0);
  return { parts, total, perHead: total / heads, perKg: total / kilograms };
}

/** What a head brings beyond what it costs by itself; null without a price. */
export function contributionPerHead(business: Business, year: number): number | null {
  const price = meanPrice(business, year);
  const { perHead, kgPerHead } = business;
  return price === null
    ? null
    : price * kgPerHead + perHead.byProducts - perHead.animals - perHead.energy - perHead.packing;
}

/** Heads a day at which a year's contribution pays what is fixed: fixed / contribution / days. Infinity where a head brings nothing; null without a price. */
export function breakEvenHeads(business: Business, year: number): number | null {
  const contribution = contributionPerHead(business, year);
  if (contribution === null) return null;
  const { parts } = fullCost(business, year);
  const fixed = parts.pay + parts.overhead + parts.upkeep + parts.capital;
  const days = business.years.weeks * business.daysPerWeek;
  return contribution > 0 ? fixed / contribution / days : Number.POSITIVE_INFINITY;
}

/** Lost when the plant stands for a week and its animals go elsewhere: pay and all that is fixed goes on. Null without a price. */
export function standstillWeek(business: Business, year: number): number | null {
  const contribution = contributionPerHead(business, year);
  if (contribution === null) return null;
  return (soldHeads(business, year, 1).sold / business.years.weeks) * contribution;
}

export interface LoanPlan {
  amount: number;
  perMonth: number;
  perYear: number;
  interestPaid: number;
  /** Cash of each year over what is paid to the bank in it; while it is paid. */
  cover: number[];
}

const MONTHS = 12;

/** Equal monthly payments (annuity); null without a loan. */
export function loanPlan(business: Business): LoanPlan | null {
  const { loan, capital, years } = business;
  if (loan === null || capital === null) return null;
  const amount = loan.share * (capital.machines + capital.building + capital.once);
  const perMonth = amount * loanPayment(loan.interest / MONTHS, loan.years * MONTHS);
  const perYear = perMonth * MONTHS;
  const paying = Math.min(loan.years, years.looked);
  return {
    ...{ amount, perMonth, perYear, interestPaid: perYear * loan.years - amount },
    cover: Array.from({ length: paying }, (_, index) => yearMoney(business, index + 1).cash / perYear),
  };
}

/** Full years in which the busiest day fits into the shifts; null where that is beyond the years looked at. */
export function yearsUntilTooSmall({
  markets,
  years,
  daysPerWeek,
  peak,
  capacityHeads,
}: Pick<Business, "markets" | "daysPerWeek" | "peak" | "capacityHeads"> & { years: { looked: number } }):
  | number
  | null {
  for (let year = 1; year <= years.looked; year++) {
    for (let month = 0; month < MONTHS_OF_YEAR; month++) {
      if ((headsOfWeek(markets, year, month) / daysPerWeek) * peak > capacityHeads) return year - 1;
    }
  }
  return null;
}
