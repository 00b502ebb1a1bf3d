import type { StageColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, stageOf } from "./steps.ts";

type Branches = Pick<StageColumns, "branchFrom" | "branchShare" | "branchTo">;

/** Shares of the heads that do not simply go on: removals first, then diversions, cumulative within their stage. */
export function compileBranches(all: Step[], names: string[], destinations: string[]): Branches {
  const branches = all.map((step) => {
    const stage = stageOf(step);
    const removed = (stage?.removals ?? []).map(({ as, share }) => ({ share, to: destinations.indexOf(as) }));
    const diverted = (stage?.diversions ?? []).map(({ to, share }) => ({ share, to: -1 - names.lastIndexOf(to) }));
    return [...removed, ...diverted];
  });
  return {
    branchFrom: rowRanges(branches.map((list) => list.length)),
    branchShare: Float64Array.from(branches.flatMap((list) => cumulative(list.map(({ share }) => share)))),
    branchTo: Int32Array.from(branches.flat(), ({ to }) => to),
  };
}

function cumulative(shares: number[]): number[] {
  let sum = 0;
  return shares.map((share) => {
    sum += share;
    return sum;
  });
}
