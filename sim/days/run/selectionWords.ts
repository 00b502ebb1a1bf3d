import type { ResponseInfo } from "../../day/observations/index.ts";
import { type SelectionState, verdict } from "../../maths/statistics/index.ts";
import { formatConfidence, formatSpan } from "../../text/units/index.ts";

/**
 * The sentence that says how a selection ended: which variant, how surely, after how many observations, or why
 * none. `names` in the order of the variants; `observation` is what one is called ("day", "antithetic pair").
 */
export function selectionWords(
  state: SelectionState,
  names: readonly string[],
  info: ResponseInfo,
  observation = "day",
): string {
  const { question, survivors } = state;
  const found = verdict(state);
  const percent = formatConfidence(1 - question.alpha);
  const zone = formatSpan(question.delta, info, "plain");
  const days = `${state.n} ${observation}s`;
  const noun = observation === "week" ? "weeks" : "days";
  switch (found.kind) {
    case "selected":
      return (
        `"${names[found.variant]}" is the best of ${question.k} with a probability of ${percent} or more, after ${days}; ` +
        `variants within ${zone} of the best count as equal.`
      );
    case "ceiling":
      return (
        `Undecided at the most ${noun} allowed (${days}): ${listed(survivors.map((variant) => names[variant]!))} are left. ` +
        `"${names[found.leader]}" has the best average, but is not shown to be the best. Allow more ${noun}, or let more than ${zone} count as equal.`
      );
    case "no value":
      return `No choice is possible: "${names[found.variant]}" has no value of this result on ${observation} ${found.observation + 1}.`;
    default:
      return `Undecided after ${days}; ${survivors.length} of ${question.k} variants are left.`;
  }
}

function listed(names: readonly string[]): string {
  const quoted = names.map((name) => `"${name}"`);
  return `${quoted.slice(0, -1).join(", ")} and ${quoted.at(-1)}`;
}
