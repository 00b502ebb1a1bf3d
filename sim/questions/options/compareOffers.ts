import type { ResponseInfo } from "../../day/observations/index.ts";
import { type ComparisonInWords, comparisonsInWords, harmOf, type StudyResults } from "../../days/results/index.ts";
import { type AgainstBest, compareWithBest } from "../../maths/statistics/index.ts";
import { formatConfidence, groupDigits } from "../../text/units/index.ts";
import { type Appraisal, appraise } from "./appraise.ts";
import { cashOfDay } from "./cashOfDay.ts";
import type { OptionsQuestion } from "./readOptions.ts";

/** A figure with its interval; the intervals of all options hold at once. */
export interface Ranged {
  mean: number;
  low: number;
  high: number;
}

export interface OfferWorth {
  name: string;
  price: number;
  lifeYears: number;
  servicePerYear: number;
  /** Cash of a day more than as it is. */
  cashPerDay: ComparisonInWords;
  worth: Record<keyof Appraisal, Ranged>;
  /** Whether the net present value is shown to be above or below 0. */
  verdict: "pays" | "does not pay" | "not decided";
  /** Against the best of the others that harm nothing, in equal yearly amounts; buying nothing is one of them. Null where it does harm. */
  againstBest: AgainstBest | null;
  /** What it makes worse than the plan as it is, so that it is not offered whatever it earns; null for nothing. */
  harm: string | null;
  words: string;
}

export interface OptionsResult {
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
}

/**
 * What each offer is worth, from the simulated days of the plan as it is and of each offer on the same random numbers.
 * `results` are those of `question.study`. Money in the plan's currency; texts of engineering economy, see `appraise`. Example:
 *
 *     const { question } = readOptions(JSON.parse(text), files);
 *     const results = await runStudy(question.study, { gambrel: "my program 1.0", command: "" });
 *     compareOffers(question, results).words;
 */
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
    const earns = wordsOf(name, verdict, worth.presentValue, againstBest, { currency, confidence });
    const words =
      harm === null
        ? earns
        : `"${name}" is not to be bought, whatever it earns: compared with the plan as it is, ${harm}.`;
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
  return { ...found, words: resultWords(found) };
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

/** Every figure moves one way with the benefit: paybacks fall with it, all else rises. */
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
    ? "revenue less pay, water, energy and animals, purchases left out"
    : "less pay, water, energy and animals, purchases left out; the plan names no prices, so what is produced more earns nothing here";
}

function wordsOf(
  name: string,
  verdict: OfferWorth["verdict"],
  { low, high }: Ranged,
  againstBest: AgainstBest | null,
  { currency, confidence }: { currency: string; confidence: number },
): string {
  const percent = formatConfidence(confidence);
  const money = (value: number): string => groupDigits(`${Math.round(value)} ${currency}`);
  const said = {
    pays: `"${name}" pays: at ${percent} for all options at once its net present value lies between ${money(low)} and ${money(high)}.`,
    "does not pay": `"${name}" does not pay: at ${percent} for all options at once its net present value lies between ${money(low)} and ${money(high)}.`,
    "not decided": `Whether "${name}" pays is not decided: at ${percent} for all options at once its net present value lies between ${money(low)} and ${money(high)}; more days narrow that.`,
  }[verdict];
  return againstBest?.mayBeBest === false ? `${said} It is not the best of the line-up.` : said;
}

/** What was found, in sentences: which may be the best of all; each option, the best first; what is not reckoned. */
function resultWords(found: Omit<OptionsResult, "words">): string[] {
  const ranked = found.options.toSorted((a, b) => b.worth.perYear.mean - a.worth.perYear.mean);
  return [
    bestWords(found),
    ...ranked.map(({ words }) => words),
    "Not in it: taxes, inflation, training, building work, and days lost while it is put in.",
  ];
}

/** Which may be the best, buying nothing included. */
function bestWords({ options, nothing, confidence }: Omit<OptionsResult, "words">): string {
  const percent = formatConfidence(confidence);
  const may = options.filter(({ againstBest }) => againstBest?.mayBeBest).map(({ name }) => `"${name}"`);
  const names = nothing.mayBeBest ? [...may, "buying nothing"] : may;
  const words =
    names.length === 1
      ? `The best of the line-up by its yearly amount is ${names[0]}`
      : `The best by its yearly amount may be ${names.join(", ")}`;
  return `${words}, at ${percent} for all comparisons at once; options are taken one at a time, not together.`;
}
