import { annuityFactor } from "../../maths/numeric/index.ts";
import { presentFactor } from "./presentFactor.ts";

/** What an option costs to buy and to keep; money in the plan's currency. */
export interface OfferCost {
  price: number;
  lifeYears: number;
  /** What it brings when its life is over. */
  residual: number;
  servicePerYear: number;
}

/** What a purchase is worth at one yearly benefit. */
export interface Appraisal {
  /** Benefit of a year less service. */
  netPerYear: number;
  /** Net present value over the life. */
  presentValue: number;
  /** The same as an equal amount every year of the life: compares options of different lives. */
  perYear: number;
  /** Years until the net benefit has paid the price, without interest; Infinity when it never does. */
  paybackYears: number;
  /** Years until it has paid the price with interest; Infinity when it never does. Life and residual are not looked at. */
  discountedPaybackYears: number;
}

/**
 * Net present value -price + net benefit x P/A + residual x P/F, its equal yearly amount (equivalent annual worth), and both
 * paybacks (Blank and Tarquin, Engineering Economy; Park, Contemporary Engineering Economics; from memory). Benefits are taken
 * at the ends of years; taxes, inflation and depreciation rules are left out.
 */
export function appraise(
  { price, lifeYears, residual, servicePerYear }: OfferCost,
  benefitPerYear: number,
  interest: number,
): Appraisal {
  const netPerYear = benefitPerYear - servicePerYear;
  const factor = annuityFactor(interest, lifeYears);
  const presentValue = netPerYear * factor + residual * presentFactor(interest, lifeYears) - price;
  return {
    netPerYear,
    presentValue,
    perYear: presentValue / factor,
    paybackYears: netPerYear > 0 ? price / netPerYear : price === 0 ? 0 : Number.POSITIVE_INFINITY,
    discountedPaybackYears: discountedPayback(price, netPerYear, interest),
  };
}

/** From price = net benefit x P/A(i, n): n = -ln(1 - i x price / net) / ln(1 + i). */
function discountedPayback(price: number, netPerYear: number, interest: number): number {
  if (price === 0) return 0;
  if (netPerYear <= 0) return Number.POSITIVE_INFINITY;
  const years = price / netPerYear;
  if (interest === 0) return years;
  return years * interest >= 1 ? Number.POSITIVE_INFINITY : -Math.log1p(-years * interest) / Math.log1p(interest);
}
