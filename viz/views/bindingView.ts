import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { BindingColumns } from "../charts/index.ts";
import type { StudyResults, VariantResults, Why } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  CAUSE_KINDS,
  causeWords,
  isSingleDay,
  observationNoun,
  observationsOf,
  quoted,
  shareEstimate,
  spanEstimate,
  timesEstimate,
} from "../words/index.ts";

const MOST_ROWS = 12;

/** What the end of a variant's work was owed to, the longest first; what is left out stands below. */
export function bindingView(results: StudyResults, variant: VariantResults, why: Why): BindingColumns {
  const told = why.parts.slice(0, MOST_ROWS);
  const rest = why.total.mean - told.reduce((sum, { seconds }) => sum + seconds.mean, 0);
  return {
    title: "What the line waited for, up to the end of work",
    caption: "The longest bar is where time is to be won; its texture says by what kind of change",
    subtitle: `${whyScope(results, variant)}. Together they are the ${spanEstimate(why.total)} from the day's start to the end of work`,
    description: describe(why),
    kinds: CAUSE_KINDS,
    rows: told.map((part) => {
      const { where, what, kind } = causeWords(part);
      const { mean, low, high } = part.seconds;
      const share = timesEstimate(part.seconds, 1 / why.total.mean);
      return {
        stage: where,
        cause: what,
        kind,
        seconds: mean,
        low,
        high,
        text: `${spanEstimate(part.seconds)}\n${shareEstimate({ ...share, low: null, high: null })} of it`,
      };
    }),
    footnote:
      rest > 0.0005 * why.total.mean
        ? `All else together: ${spanEstimate({ ...why.total, mean: rest, low: null, high: null })}, ${formatDecimals((100 * rest) / why.total.mean, 1)} %.`
        : "",
  };
}

/** "“base”, mean over 25 days with its 95 % interval" or "one day, no interval". */
export function whyScope(results: StudyResults, variant: VariantResults): string {
  if (isSingleDay(results)) return "One day, no interval";
  const { confidence } = results.study;
  return `${quoted(variant.name)}, mean over ${observationsOf(results, variant)} ${observationNoun(results)} with its ${formatConfidence(confidence)} interval`;
}

function describe({ stages, parts }: Why): string {
  const shares = stages.slice(0, 4).map(({ stage, share }) => `${isolated(stage)} ${shareEstimate(share)}`);
  const first = parts[0];
  if (first === undefined) return "Nothing held the day up.";
  const { where, what } = causeWords(first);
  return `Most of the time to the end of work the line waited for ${where}, ${what}: ${spanEstimate(first.seconds)}. By stage, all causes together: ${shares.join(", ")}.`;
}
