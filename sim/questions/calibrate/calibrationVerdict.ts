import { usualMatters } from "../../days/decision/index.ts";
import type { ResponseInfo, VerdictKind } from "../../days/results/index.ts";
import { formatDuration, formatNumber, formatSpan } from "../../text/units/index.ts";
import type { Calibration, ComparedQuantity } from "./calibrate.ts";
import type { ComparedDays } from "./compare.ts";
import type { Explanation } from "./explanation.ts";

/** Whether the plan may be relied on, in one sentence, and what follows. */
export interface CalibrationVerdict {
  answer: VerdictKind;
  verdict: string;
  /** What to do next. */
  next: string[];
}

/** A quantity that could be compared. */
interface Known {
  info: ResponseInfo;
  stretch: ComparedQuantity["stretch"];
  comparison: ComparedDays;
  /** The least difference that matters, in its unit. */
  matters: number;
}

/** More days than this nobody observes for one plan. */
const MAX_DAYS = 200;

/** Whether a plan fits observed days: by what is shown, by how much matters, and by what so few days could have shown. */
export function calibrationVerdict({
  quantities,
  observedDays,
  explanations,
}: Pick<Calibration, "quantities" | "observedDays" | "explanations">): CalibrationVerdict {
  const known = quantities.flatMap((each) => knownOf(each) ?? []);
  const days = `the ${observedDays === 1 ? "observed day" : `${observedDays} observed days`}`;
  const shown = known.filter(({ comparison }) => comparison.shown);
  if (known.length === 0)
    return { answer: "undecided", verdict: "Nothing could be compared: the plan's days give no value.", next: [] };
  if (shown.length === 0) return fits(mostTelling(known), observedDays, days);
  const grave = shown.filter(({ comparison, matters }) => Math.abs(comparison.difference) >= matters);
  if (grave.length === 0) {
    const most = largest(shown);
    return {
      answer: "too small",
      verdict: `Nearly: the plan differs from ${days}, but by less than matters (${gapWords(most)}; ${formatSpan(most.matters, most.info, "plain")} matter).`,
      next: [],
    };
  }
  return differs(grave, days, explanations);
}

function knownOf({ info, stretch, comparison }: ComparedQuantity): Known[] | null {
  if (comparison === null) return null;
  return [{ info, stretch, comparison, matters: usualMatters(info, comparison.observed) }];
}

function fits({ info, comparison, matters }: Known, observedDays: number, days: string): CalibrationVerdict {
  const { noticeable } = comparison;
  const size =
    noticeable === 0
      ? "any difference"
      : `a difference of ${formatSpan(Number(noticeable.toPrecision(2)), info, "plain")} or more`;
  const found = `${size} in ‘${info.label}’ would have been found in four of five cases`;
  if (noticeable <= matters || matters === 0)
    return {
      answer: "yes",
      verdict: `Yes: the plan fits ${days}; ${found}.`,
      next: ["It may still be wrong where nobody looked: compare again after every change of the line."],
    };
  const wanted = Math.ceil(observedDays * (noticeable / matters) ** 2);
  return {
    answer: "undecided",
    verdict: `No difference shows, but ${days} cannot tell whether the plan fits: only ${found}, and ${formatSpan(matters, info, "plain")} matter.`,
    next: [
      wanted > MAX_DAYS
        ? "Time the figures themselves: whole days vary too much to tell."
        : `About ${wanted} observed days would tell.`,
    ],
  };
}

function differs(grave: readonly Known[], days: string, explanations: readonly Explanation[]): CalibrationVerdict {
  const most = largest(grave);
  const others = grave.length === 1 ? "" : ` and ${grave.length - 1} more`;
  const best = explanations.find(({ plausible }) => plausible) ?? explanations[0];
  const cause =
    best === undefined
      ? "no single figure explains it"
      : `${best.label} ${best.plausible ? "would explain" : "alone would explain"} ${Math.floor(100 * best.removed)} % of it, were it ${amount(best, best.to)} instead of ${amount(best, best.from)}${best.plausible ? "" : ", which is hard to believe"}`;
  return {
    answer: "no",
    verdict: `No: the plan does not fit ${days} (${gapWords(most)}${others}); ${cause}.`,
    next:
      best === undefined
        ? ["Look for what is not in the plan: a stage, a break, a crew, a day unlike others."]
        : [`Measure ${best.label} before you change the plan: what would explain the gap need not be its cause.`],
  };
}

/** Responses of the whole day say most; of counts, the last one. */
function mostTelling(known: readonly Known[]): Known {
  return known.findLast(({ stretch }) => stretch === null) ?? known.at(-1)!;
}

function largest(known: readonly Known[]): Known {
  const size = ({ comparison, matters }: Known) => Math.abs(comparison.difference) / (matters || 1);
  return known.reduce((most, each) => (size(each) > size(most) ? each : most));
}

/** "End of work 12 min later than in the plan". */
function gapWords({ info, comparison: { difference } }: Known): string {
  const isClock = info.format === "clock";
  const way = difference > 0 ? (isClock ? "later" : "more") : isClock ? "earlier" : "less";
  return `${info.label} ${formatSpan(Math.abs(difference), info, "plain")} ${way} than in the plan`;
}

function amount({ kind }: Explanation, value: number): string {
  return kind === "people" ? formatNumber(value) : formatDuration(value);
}
