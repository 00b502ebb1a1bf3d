import type { Plan } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { steps } from "../../day/line/index.ts";
import {
  bottleneckKey,
  reasonCells,
  reasonKey,
  reasonLabel,
  type Slope,
  shareKey,
  slopeKey,
  slopeLabel,
  slopesOf,
  TOTAL_KEY,
} from "../../day/observations/index.ts";
import type { Support } from "../../maths/statistics/index.ts";
import type { MeanEstimate, MeanTime, Why } from "../results/index.ts";
import { meanEstimate } from "./meanEstimate.ts";
import type { VariantDays } from "./variantDays.ts";

/** Below this share of the day a part is not worth a line. */
const MIN_SHARE = 0.0005;

type Days = Pick<VariantDays, "valuesOf">;

/**
 * Means over a variant's days of what the line waited for. Parts below 0.05 % of the day are left out. Null when
 * a day did not end by itself: its path leads nowhere; null, too, when nothing was worked on any day.
 */
export function whyOf(plan: Plan, days: Days, study: Pick<Study, "procedure" | "confidence">): Why | null {
  const ends = days.valuesOf(TOTAL_KEY);
  if (ends.includes(null)) return null;
  if (ends.every((end) => end === 0)) return null;
  const estimateOf = estimator(days, study);
  const total = estimateOf(TOTAL_KEY, "amount");
  const names = steps(plan).map(({ name }) => name);
  const slopes = slopesOf(plan);
  const isWorthIt = (seconds: number) => Math.abs(seconds) >= MIN_SHARE * total.mean;
  return {
    total,
    parts: reasonCells(plan)
      .map((cell) => ({ ...cell, label: reasonLabel(cell), seconds: estimateOf(reasonKey(cell), "amount") }))
      .filter(({ seconds }) => isWorthIt(seconds.mean))
      .sort((a, b) => b.seconds.mean - a.seconds.mean),
    stages: names
      .map((stage) => ({ stage, share: estimateOf(shareKey(stage), "share") }))
      .filter(({ share }) => share.mean >= MIN_SHARE)
      .sort((a, b) => b.share.mean - a.share.mean),
    slopes: slopes
      .filter(({ withheld }) => withheld === null)
      .map((slope) => {
        const [end, rate] = [slopeKey("end", slope), slopeKey("rate", slope)];
        return { ...meanTime(slope), slope: estimateOf(end, "any"), rateSlope: estimateOf(rate, "any") };
      })
      .filter(({ slope, meanSeconds }) => isWorthIt(slope.mean * (meanSeconds || total.mean))),
    withheldSlopes: slopes.flatMap((slope) =>
      slope.withheld === null ? [] : [{ ...meanTime(slope), reason: slope.withheld }],
    ),
    bottleneck: names
      .map((stage) => {
        const share = (kind: "sole" | "shifting") => estimateOf(bottleneckKey(kind, stage), "share");
        return { stage, sole: share("sole"), shifting: share("shifting") };
      })
      .filter(({ sole, shifting }) => sole.mean + shifting.mean >= MIN_SHARE),
  };
}

function meanTime(slope: Slope): MeanTime {
  const { parameter, stage, detail, meanSeconds } = slope;
  return { parameter, stage, detail, label: slopeLabel("end", slope), meanSeconds };
}

function estimator(
  days: Days,
  study: Pick<Study, "procedure" | "confidence">,
): (key: string, support: Support) => MeanEstimate {
  // Controls are chosen for the responses that the study reports.
  const plain = { ...study, procedure: { ...study.procedure, controls: [] } };
  return (key, support) => {
    return meanEstimate({ [key]: days.valuesOf(key) }, key, plain, support)!;
  };
}
