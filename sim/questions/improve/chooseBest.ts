import {
  nextBatch,
  observe,
  type SelectionQuestion,
  type SelectionState,
  startSelection,
  verdict,
} from "../../maths/statistics/index.ts";
import type { CandidateDesign } from "./designs.ts";
import type { Trials } from "./trials.ts";

/** Days of every design in one round. */
const ROUND = 10;

/** What the choice among the finalists came to. */
export interface Choice {
  /** Null where a day has no value. */
  best: CandidateDesign | null;
  /** "only one": there was nothing to choose; "ceiling": picked without the promise. */
  kind: "selected" | "ceiling" | "only one" | "no value";
  /** Null with one design only. */
  state: SelectionState | null;
  /** Days of each design, in the order given. */
  days: number[];
}

/** Picks the best of some designs with the stated probability (Kim and Nelson 2001, see `startSelection`). */
export async function chooseBest(
  designs: readonly CandidateDesign[],
  trials: Trials,
  asked: Omit<SelectionQuestion, "k">,
): Promise<Choice> {
  if (designs.length === 1) return { best: designs[0]!, kind: "only one", state: null, days: [asked.n0] };
  let state = startSelection({ ...asked, k: designs.length });
  const days = designs.map(() => 0);
  for (let batch = nextBatch(state, ROUND); batch !== null; batch = nextBatch(state, ROUND)) {
    const until = batch.from + batch.count;
    const running = await trials.of(
      batch.variants.map((variant) => designs[variant]!),
      until,
    );
    const values = designs.map((design) => running.find((trial) => trial.design === design)?.values);
    for (const variant of batch.variants) days[variant] = until;
    state = observe(
      state,
      Array.from({ length: batch.count }, (_, row) => values.map((list) => list?.[batch.from + row])),
    );
  }
  const found = verdict(state);
  if (found.kind === "selected") return { best: designs[found.variant]!, kind: "selected", state, days };
  if (found.kind === "ceiling") return { best: designs[found.leader]!, kind: "ceiling", state, days };
  return { best: null, kind: "no value", state, days };
}
