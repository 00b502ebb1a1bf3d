import { formatDecimals } from "../../../sim/text/units/index.ts";
import { runningDifference } from "../scene/runningDifference.ts";
import { differenceWords } from "../scene/runningDifferenceWords.ts";
import * as state from "./state.ts";
import { useSlowSeconds } from "./ticks.ts";

/** How far the variant is ahead by now, in heads and in time. */
export function Difference() {
  const seconds = useSlowSeconds();
  const base = state.courses.base.value;
  const variant = state.courses.variant.value;
  if (base === null || variant === null) return null;
  const found = runningDifference(base, variant, seconds);
  const counts = `${formatDecimals(found.base, 0)} as it is, ${formatDecimals(found.variant, 0)} in the variant`;
  return (
    <p class="difference">
      <strong>{state.isChanged.value ? differenceWords(found) : "Nothing is changed yet."}</strong>
      <span>
        Heads past the last work: {counts}. This is one day; the figures of twenty are under “What it comes to”.
      </span>
    </p>
  );
}
