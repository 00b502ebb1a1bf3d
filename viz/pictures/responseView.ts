import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Estimate, ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  differenceEnds,
  differenceIn,
  differenceWords,
  estimateWords,
  observationsWords,
  quoted,
  studyFormat,
} from "../words/index.ts";
import { describeDifferences, describeVariants } from "./describeVariants.ts";
import type { DifferenceColumns } from "./difference.ts";
import type { ResponseColumns } from "./response.ts";

/** One response over the variants, in the order of the study, the base first. */
export function responseView(results: StudyResults, info: ResponseInfo): ResponseColumns {
  const format = studyFormat(results, info);
  const { confidence, replications } = results.study;
  const rows = results.variants.map((variant) => {
    const estimate = variant.estimates[info.key];
    const words = estimateWords(estimate, format, confidence);
    return {
      name: isolated(variant.name),
      ...endsOf(estimate),
      text: words.interval === "" ? words.mean : `${words.mean}\n${words.interval}`,
    };
  });
  const several =
    replications > 1
      ? `Mean over ${observationsWords(results)} with its ${formatConfidence(confidence)} interval`
      : "One day, no interval";
  return {
    title: isolated(info.label),
    caption: "Compare with the band: variants whose interval lies clear of it are likely to differ from the base",
    subtitle: `${several}${wish(info)}${meaningOf(info)}`,
    description: describeVariants(results, info),
    quantity: format.quantity,
    rows,
    base: 0,
  };
}

/** The same as differences to the base, which has no row of its own. */
export function differenceView(results: StudyResults, info: ResponseInfo): DifferenceColumns {
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const scale = (value: number | null) => (value === null ? null : value * format.differenceScale);
  const rows = results.variants.slice(1).map((variant) => {
    const difference = differenceIn(variant, info.key);
    const words = differenceWords(difference, format, confidence);
    const ends = endsOf(difference && { ...difference, ...differenceEnds(difference) });
    const text =
      words.interval === "" ? `${words.mean}\n${words.verdict}` : `${words.mean}, ${words.verdict}\n${words.interval}`;
    return {
      name: isolated(variant.name),
      mean: scale(ends.mean),
      low: scale(ends.low),
      high: scale(ends.high),
      text,
      shown: difference?.shown ?? false,
    };
  });
  const base = results.variants[0];
  const joint = results.variants.some((variant) => differenceIn(variant, info.key)?.joint);
  const interval = `${formatConfidence(confidence)} intervals${joint ? ` that allow for ${results.variants.length - 1} changes compared` : ""}`;
  return {
    title: `${isolated(info.label)}: difference to today's plan`,
    caption: "If the bar does not touch the upright line, the difference is real in this model",
    subtitle: `Against ${quoted(base?.name ?? "")}, compared on the same days, ${interval}. Filled dot: a difference is shown; open dot: not shown${meaningOf(info)}`,
    description: describeDifferences(results, info),
    quantity: format.differenceQuantity,
    rows,
    sides: sidesOf(info, format.sides),
  };
}

function sidesOf(info: ResponseInfo, sides: readonly [string, string]): [string, string] {
  if (info.better === null) return [sides[0], sides[1]];
  const more = info.better === "more";
  return [`${sides[0]}: ${more ? "worse" : "better"}`, `${sides[1]}: ${more ? "better" : "worse"}`];
}

function meaningOf({ meaning }: ResponseInfo): string {
  return meaning === undefined ? "" : `. ${isolated(meaning)}`;
}

function wish(info: ResponseInfo): string {
  return info.better === null
    ? ""
    : info.better === "more"
      ? ". More is better"
      : `. ${info.format === "clock" ? "Earlier" : "Less"} is better`;
}

export function endsOf(estimate: Estimate | undefined): {
  mean: number | null;
  low: number | null;
  high: number | null;
} {
  if (!estimate || estimate.n === 0) return { mean: null, low: null, high: null };
  return { mean: estimate.mean, low: estimate.low, high: estimate.high };
}
