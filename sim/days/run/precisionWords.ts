import type { ResponseInfo } from "../../day/observations/index.ts";
import type { SequentialState } from "../../maths/statistics/index.ts";
import { formatSpan } from "../../text/units/index.ts";

/** The sentence that says whether enough was observed, how precise the mean is, and what was wanted. */
export function precisionWords({ kind, n, halfWidth, wanted, next }: SequentialState, info: ResponseInfo): string {
  const span = (value: number): string => formatSpan(value, info, "plain");
  const reached = halfWidth === null ? "no interval yet" : `half-width ${span(halfWidth)}`;
  const goal = wanted === null ? "" : `, wanted ${span(wanted)}`;
  const ends = {
    enough: `Precise enough after ${n} observations: ${reached}${goal}.`,
    more: `Not precise enough after ${n} observations: ${reached}${goal}; ${next} in all come next.`,
    ceiling: `Stopped at the most observations allowed, ${next}, before the wanted precision: ${reached}${goal}.`,
  };
  return ends[kind];
}
