import type { Pace } from "../../asked/plan/plan.ts";
import type { PaceColumns } from "./compiledLine.ts";
import type { Step } from "./steps.ts";

/** Speed by the hour of stations, on chains or not, and of chains; null for stages that always work as written. */
export function compilePaces(all: Step[]): (PaceColumns | null)[] {
  return all.map((step) => {
    if (step.kind === "crates" || step.kind === "dwell" || step.of.pace.length === 0) return null;
    return columns(step.of.pace, step.kind === "chain" ? 1 : step.of.positions);
  });
}

function columns(paces: readonly Pace[], positions: number): PaceColumns {
  return {
    fromSeconds: Float64Array.from(paces, ({ fromSeconds }) => fromSeconds),
    speed: Float64Array.from(paces, ({ speed }) => speed),
    leastSeconds: Float64Array.from(paces, ({ mostPerSecond }) =>
      mostPerSecond === null ? 0 : positions / mostPerSecond,
    ),
  };
}
