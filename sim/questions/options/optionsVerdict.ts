import { changeWords, gainOf, listed, named, usualMatters } from "../../days/decision/index.ts";
import type { Decision, StudyResults, VerdictKind } from "../../days/results/index.ts";
import { formatDecimals, intervalDecimals } from "../../text/units/index.ts";
import type { OfferWorth } from "./offerWorth.ts";

/** Which offer to buy, in one sentence, and what follows. */
export interface OptionsVerdict {
  answer: VerdictKind;
  verdict: string;
  /** What to do next. */
  next: string[];
  /** Index of the offer to buy; null where none is. */
  buy: number | null;
}

/** A yearly benefit below this share of the price is told as too small (our own rule, no source). */
const MIN_SHARE = 0.01;
/** A payback beyond a lifetime is none that a bank would read. */
const LONGEST_YEARS = 100;

/**
 * Buy the offer with the highest yearly benefit among those that pay and do no harm; else nothing, with the reason. Whether one pays
 * is shown by its net present value, so certainty, price, life, service and interest are all in it.
 */
export function optionsVerdict(
  { options, currency }: { options: readonly OfferWorth[]; currency: string },
  { decision, study, variants }: Pick<StudyResults, "decision" | "study" | "variants">,
): OptionsVerdict {
  const sound = options.filter(({ harm }) => harm === null);
  const paying = most(sound.filter(({ verdict }) => verdict === "pays"));
  const open = sound.filter(({ verdict }) => verdict === "not decided");
  if (paying !== null) {
    const index = options.indexOf(paying);
    return bought(paying, index, {
      currency,
      ends: endWords(decision, variants[index + 1]?.name),
      rivals: rivalsOf(sound, paying),
    });
  }
  if (open.length > 0) {
    const best = most(open)!;
    return {
      answer: "undecided",
      verdict: `Buy nothing yet: whether ${named(best.name)} pays cannot be told (net present value ${rangeOf(best.worth.presentValue, currency)}).`,
      next: [`More simulated days would tell: add --replications ${4 * study.replications}.`],
      buy: null,
    };
  }
  const harmful = options.filter(({ harm }) => harm !== null);
  const reason =
    sound.length === 0
      ? `${options.length === 1 ? "the offer does" : "each offer does"} harm (${named(harmful[0]!.name)}: ${harmful[0]!.harm})`
      : `${options.length === 1 ? "the offer does not pay" : sound.length < options.length ? "no offer that does no harm pays" : `none of the ${options.length} offers pays`} within its life`;
  return {
    answer: "no",
    verdict: `Buy nothing: ${reason}.`,
    next: ["`gambrel why` with the plan tries what would help without a purchase."],
    buy: null,
  };
}

function bought(
  offer: OfferWorth,
  index: number,
  { currency, ends, rivals }: { currency: string; ends: string; rivals: readonly OfferWorth[] },
): OptionsVerdict {
  const { perYear, paybackYears } = offer.worth;
  const year = `${money(perYear.mean, (perYear.high - perYear.low) / 2)} ${currency} a year after price, service and interest`;
  const next = [
    ...(rivals.length === 0
      ? []
      : [
          `May be as good: ${listed(rivals.map(({ name }) => named(name)))}. Ask for what else speaks for one of them, or simulate more days.`,
        ]),
    "Not reckoned: taxes, training, building work, and days lost while it is put in.",
  ];
  if (perYear.mean < MIN_SHARE * offer.price)
    return {
      answer: "too small",
      verdict: `Hardly: ${named(offer.name)} pays its price back, but brings only ${year}, less than a hundredth of its price.`,
      ...{ next, buy: null },
    };
  const back = offer.price > 0 ? `it pays back in ${yearsOf(paybackYears)} and brings` : "it brings";
  return { answer: "yes", verdict: `Buy ${named(offer.name)}: ${back} ${year}${ends}.`, next, buy: index };
}

/** "; work ends 12 min (10 to 14 min) earlier"; "" where no difference that matters is shown. */
function endWords(decision: Decision | null | undefined, variant: string | undefined): string {
  const row = decision?.rows.find(({ name }) => name === variant);
  const info = decision?.columns.find(({ key }) => key === "finish" || key === "headsPerHour");
  const difference = info === undefined ? undefined : row?.differences[info.key];
  if (row === undefined || info === undefined || difference === undefined) return "";
  const found = gainOf(difference, info.better!, usualMatters(info, decision!.rows[0]!.estimates[info.key]));
  return found.size === "gain" || found.size === "loss" ? `; ${changeWords(found, info)}` : "";
}

function rivalsOf(sound: readonly OfferWorth[], best: OfferWorth): OfferWorth[] {
  return sound.filter((offer) => offer !== best && offer.againstBest?.mayBeBest === true);
}

function most(offers: readonly OfferWorth[]): OfferWorth | null {
  return offers.reduce<OfferWorth | null>(
    (best, offer) => (best === null || offer.worth.perYear.mean > best.worth.perYear.mean ? offer : best),
    null,
  );
}

/** "2.1 to 6.0 years", "2.1 years or never". */
function yearsOf({ low, high }: OfferWorth["worth"]["paybackYears"]): string {
  if (high > LONGEST_YEARS) return `${low.toFixed(1)} years or never`;
  return low.toFixed(1) === high.toFixed(1)
    ? `${low.toFixed(1)} years`
    : `${low.toFixed(1)} to ${high.toFixed(1)} years`;
}

function rangeOf({ low, high }: OfferWorth["worth"]["presentValue"], currency: string): string {
  const half = (high - low) / 2;
  return `${money(low, half)} to ${money(high, half)} ${currency}`;
}

function money(value: number, halfWidth: number): string {
  return formatDecimals(value, halfWidth > 0 ? Math.min(0, intervalDecimals(halfWidth)) : 0);
}
