import type { Difference, ResponseInfo, StudyResults } from "../days/results/index.ts";
import type { OptionsResult, Ranged } from "../questions/options/index.ts";
import {
  formatConfidence,
  formatDifference,
  formatNumber,
  formatShare,
  groupDigits,
  textTable,
} from "../text/units/index.ts";
import type { SummaryLine } from "./sizeSummary.ts";

/** A line-up as lines of text: a table in the order of the file, then a sentence for each option, the best first. */
export function optionsSummary(found: OptionsResult, results: StudyResults): SummaryLine[] {
  const { interest, daysPerYear, confidence, cashWords, currency } = found;
  const percent = formatConfidence(confidence);
  const lines = [
    `${results.study.replications} days of each on the same random numbers, seed "${results.study.seed}"; intervals in brackets hold for all options at once (${percent}).`,
    `Interest ${formatShare(interest)} a year, ${daysPerYear} days a year, money in ${currency}. Cash of a day: ${cashWords}.`,
    "",
    ...table(found, results),
    "",
    ...found.words,
  ];
  return lines.map((line) => ({ line, style: "plain" }));
}

function table({ options }: OptionsResult, results: StudyResults): string[] {
  const throughput = results.responses.find(({ key }) => key === "headsPerHour")!;
  return textTable([
    ["", "price", "cash a day", "net present value", "a year", "payback, years", "with interest", "throughput"],
    ...options.map(({ name, price, cashPerDay, worth }, index) => {
      const faster = results.variants[index + 1]!.differences?.headsPerHour;
      return [
        name,
        whole(price),
        ranged(
          {
            mean: cashPerDay.mean,
            low: cashPerDay.familyLow ?? cashPerDay.mean,
            high: cashPerDay.familyHigh ?? cashPerDay.mean,
          },
          whole,
        ),
        ranged(worth.presentValue, whole),
        whole(worth.perYear.mean),
        ranged(worth.paybackYears, years),
        ranged(worth.discountedPaybackYears, years),
        faster === undefined ? "-" : rangeOf(faster, throughput),
      ];
    }),
  ]);
}

/** The interval that holds for all options at once. */
function rangeOf({ mean, familyLow: low, familyHigh: high }: Difference, info: ResponseInfo): string {
  return formatDifference({ mean, low, high }, info)[1] || "-";
}

function ranged({ mean, low, high }: Ranged, show: (value: number) => string): string {
  return show(low) === show(high) ? show(mean) : `${show(mean)} (${show(low)} to ${show(high)})`;
}

function whole(value: number): string {
  return groupDigits(formatNumber(Math.round(value)));
}

/** A payback beyond a lifetime is none that a bank would read. */
const LONGEST = 100;

function years(value: number): string {
  return value > LONGEST ? "never" : value.toFixed(1);
}
