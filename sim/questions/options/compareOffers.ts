import type { ResponseInfo } from "../../day/observations/index.ts";
import { comparisonsInWords, harmOf, type StudyResults } from "../../days/results/index.ts";
import { type AgainstBest, compareWithBest } from "../../maths/statistics/index.ts";
import { formatConfidence, formatDecimals, intervalDecimals } from "../../text/units/index.ts";
import { type Appraisal, appraise } from "./appraise.ts";
import { cashOfDay } from "./cashOfDay.ts";
import type { OffersInWorlds } from "./offersInWorlds.ts";
import type { OfferWorth, Ranged } from "./offerWorth.ts";
import { type OptionsVerdict, optionsVerdict } from "./optionsVerdict.ts";
import type { OptionsQuestion } from "./readOptions.ts";

export interface OptionsResult extends OptionsVerdict {
  currency: string;
  interest: number;
  daysPerYear: number;
  confidence: number;
  /** What the cash of a day is made of. */
  cashWords: string;
  /** Against the best: buying nothing. */
  nothing: AgainstBest;
  /** In the order of the file. */
  options: OfferWorth[];
  /** Which may be the best of all; a sentence for each option, the best first; what is not reckoned. */
  words: string[];
  /** How they fare for all that is not known; absent where that was not asked. */
  inWorlds?: OffersInWorlds;
}

type FoundOffers = Omit<OptionsResult, "words" | "inWorlds" | keyof OptionsVerdict>;

/** What each option is worth, from simulated days of today's plan and of each option on the same random numbers. */
export function compareOffers(question: OptionsQuestion, results: StudyResults): OptionsResult {
  const { offerCosts, interest, daysPerYear, currency, study } = question;
  const { plan } = study.variants[0]!;
  const { confidence } = results.study;
  const cash = results.variants.map(({ values }) => cashOfDay(values));
  const info: ResponseInfo = { key: "cash", label: "Cash of a day", unit: currency, format: "number", better: "more" };
  const compared = comparisonsInWords(cash, 0, { confidence, errorRate: "family-wise" }, info);
  const perYear = [
    cash[0]!.map(() => 0),
    ...offerCosts.map((cost, index) =>
      cash[index + 1]!.map((value, day) => appraise(cost, (value - cash[0]![day]!) * daysPerYear, interest).perYear),
    ),
  ];
  const harms = results.variants.map(({ values }, variant) =>
    variant === 0 ? null : harmOf(plan, results.variants[0]!.values, values),
  );
  const best = amongSound(perYear, harms, confidence);
  const options = offerCosts.map((cost, index): OfferWorth => {
    const cashPerDay = compared[index + 1]!;
    const of = (perDay: number): Appraisal => appraise(cost, perDay * daysPerYear, interest);
    const worth = ranged(
      of(cashPerDay.mean),
      of(cashPerDay.familyLow ?? cashPerDay.mean),
      of(cashPerDay.familyHigh ?? cashPerDay.mean),
    );
    const { name } = results.variants[index + 1]!;
    const { price, lifeYears, servicePerYear } = cost;
    const verdict = worth.presentValue.low > 0 ? "pays" : worth.presentValue.high < 0 ? "does not pay" : "not decided";
    const againstBest = best[index + 1]!;
    const harm = harms[index + 1]!;
    const earns = wordsOf(name, verdict, worth.presentValue, { againstBest, currency });
    const words =
      harm === null ? earns : `"${name}" should not be bought, whatever it earns: compared with today's plan, ${harm}.`;
    return { name, price, lifeYears, servicePerYear, cashPerDay, worth, verdict, againstBest, harm, words };
  });
  const found = {
    currency,
    interest,
    daysPerYear,
    confidence,
    cashWords: cashWords(results),
    nothing: best[0]!,
    options,
  };
  return { ...found, ...optionsVerdict(found, results), words: resultWords(found) };
}

/** Each against the best of the others that harm nothing, buying nothing among them; null for those that do harm. */
function amongSound(
  perYear: readonly number[][],
  harms: readonly (string | null)[],
  confidence: number,
): (AgainstBest | null)[] {
  const sound = harms.flatMap((harm, variant) => (harm === null ? [variant] : []));
  const alone: AgainstBest = { gap: 0, low: 0, high: 0, mayBeBest: true };
  const found = compareWithBest(
    sound.map((variant) => perYear[variant]!),
    "more",
    confidence,
  ) ?? [alone];
  return harms.map((_, variant) => (sound.includes(variant) ? found[sound.indexOf(variant)]! : null));
}

/** Every figure moves in one direction with the benefit: paybacks fall, all else rises. */
function ranged(mean: Appraisal, atLow: Appraisal, atHigh: Appraisal): Record<keyof Appraisal, Ranged> {
  const keys = Object.keys(mean) as (keyof Appraisal)[];
  return Object.fromEntries(
    keys.map((key) => [
      key,
      { mean: mean[key], low: Math.min(atLow[key], atHigh[key]), high: Math.max(atLow[key], atHigh[key]) },
    ]),
  ) as Record<keyof Appraisal, Ranged>;
}

function cashWords({ responses }: StudyResults): string {
  return responses.some(({ key }) => key === "margin")
    ? "revenue minus pay, water, energy and animals, purchases left out"
    : "minus pay, water, energy and animals, purchases left out; the plan names no prices, so more carcasses earn nothing here";
}

function wordsOf(
  name: string,
  verdict: OfferWorth["verdict"],
  { mean, low, high }: Ranged,
  { againstBest, currency }: { againstBest: AgainstBest | null; currency: string },
): string {
  const decimals = high > low ? Math.min(0, intervalDecimals((high - low) / 2)) : 0;
  const money = (value: number): string => formatDecimals(value, decimals);
  const value = `net present value ${money(mean)} ${currency} (${money(low)} to ${money(high)} ${currency})`;
  const said = {
    pays: `"${name}" pays: ${value}.`,
    "does not pay": `"${name}" does not pay: ${value}.`,
    "not decided": `Whether "${name}" pays is not clear: ${value}. More simulated days would narrow the range.`,
  }[verdict];
  return againstBest?.mayBeBest === false ? `${said} Another choice is better.` : said;
}

/** What was found, in sentences: which may be the best of all; each option, the best first; how; what is left out. */
function resultWords(found: FoundOffers): string[] {
  const ranked = found.options.toSorted((a, b) => b.worth.perYear.mean - a.worth.perYear.mean);
  return [
    bestWords(found),
    ...ranked.map(({ words }) => words),
    `Best means the highest average yearly benefit after price, service and interest, each option bought alone. Ranges are at ${formatConfidence(found.confidence)}, sure even though all options were compared.`,
    "Left out: taxes, inflation, training, building work, and days lost while it is put in.",
  ];
}

/** Which may be the best, buying nothing included. */
function bestWords({ options, nothing }: FoundOffers): string {
  const may = options.filter(({ againstBest }) => againstBest?.mayBeBest).map(({ name }) => `"${name}"`);
  const names = nothing.mayBeBest ? [...may, "buying nothing"] : may;
  if (names.length === 1) return `Best is ${names[0]}.`;
  const last = names.at(-1);
  return names.length === 2
    ? `Best is either ${names[0]} or ${last}.`
    : `Best is one of these; the days do not tell which: ${names.slice(0, -1).join(", ")} or ${last}.`;
}
