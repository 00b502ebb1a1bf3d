import type { Study } from "../../asked/study/index.ts";
import {
  antitheticEstimate,
  controlVariateEstimate,
  estimateWithin,
  pairMeans,
  type Support,
  within,
} from "../../maths/statistics/index.ts";
import type { MeanEstimate } from "../results/index.ts";

/** Values of one variant: response -> one per day. */
export type ValuesByResponse = Record<string, (number | null)[]>;

/**
 * The estimate of a response's mean as the study's procedure has it: from antithetic pairs, corrected by the controls, or
 * from plain days. A control itself is estimated as it is. The interval fits what the values can be, by `support`
 * (see `estimateWithin`). Null where no observation has a value.
 */
export function meanEstimate(
  values: ValuesByResponse,
  key: string,
  { procedure, confidence }: Pick<Study, "procedure" | "confidence">,
  support: Support,
): MeanEstimate | null {
  const { antithetic } = procedure;
  const own = procedure.controls.some(({ response }) => response === key);
  const controls = own ? [] : procedure.controls;
  const days = values[key]!;
  if (!antithetic && controls.length === 0) return estimateWithin(support, days, confidence);
  const pairs = antithetic ? antitheticEstimate(days, confidence) : null;
  const observed = (list: (number | null)[]) => (antithetic ? pairMeans(list) : list);
  const known = controls.map(({ response, mean }) => ({ key: response, mean, values: observed(values[response]!) }));
  const controlled = controls.length > 0 ? controlVariateEstimate(observed(days), known, confidence) : null;
  const found = controlled ?? pairs;
  if (found === null) return null;
  const { n, mean, sd, halfWidth, low, high, min, max } = within(support, found, confidence);
  const reduction = {
    antitheticRatio: pairs?.halfWidthRatio ?? null,
    controlRatio: controlled?.halfWidthRatio ?? null,
    controls: controlled?.controls ?? [],
    words: [pairs, controlled].flatMap((one) => (one === null ? [] : [one.words])).join(" "),
  };
  return { n, mean, sd, halfWidth, low, high, min, max, reduction };
}
