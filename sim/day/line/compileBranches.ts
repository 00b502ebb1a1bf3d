import type { Diversion, Plan, Point, Removal, ShareBy } from "../../asked/plan/plan.ts";
import type { BranchShares, StageColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, stageOf } from "./steps.ts";

type Branches = Pick<StageColumns, "branchFrom" | "branchShare" | "branchTo" | "branchBy" | "sharesVary">;

/** Shares of the heads that do not simply go on: removals first, then diversions, cumulative within their stage. */
export function compileBranches(all: Step[], names: string[], destinations: string[]): Branches {
  const branches = all.map((step) => {
    const stage = stageOf(step);
    const removed = (stage?.removals ?? []).map((each) => ({ ...each, to: destinations.indexOf(each.as) }));
    const diverted = (stage?.diversions ?? []).map((each) => ({ ...each, to: -1 - names.lastIndexOf(each.to) }));
    return [...removed, ...diverted];
  });
  const varies = branches.map((list) => list.some(({ shareBy }) => shareBy !== undefined));
  let spans = 0;
  const sharesOf = (by: ShareBy | undefined): BranchShares | null =>
    by === undefined ? null : compileShares(by, by.of.kind === "time" ? spans++ : -1);
  return {
    branchFrom: rowRanges(branches.map((list) => list.length)),
    branchShare: Float64Array.from(
      branches.flatMap((list, stage) => {
        const shares = list.map(({ share }) => share);
        return varies[stage] ? shares : cumulative(shares);
      }),
    ),
    branchTo: Int32Array.from(branches.flat(), ({ to }) => to),
    branchBy: branches.flat().map(({ shareBy }) => sharesOf(shareBy)),
    sharesVary: Int8Array.from(varies, (vary) => (vary ? 1 : 0)),
  };
}

/** The times that shares depend on, in the order of the branches. */
export function spansOf({ line }: Plan): { from: Point; to: Point }[] {
  const branches = line.flatMap(({ removals, diversions }): (Removal | Diversion)[] => [...removals, ...diversions]);
  return branches.flatMap(({ shareBy }) => (shareBy?.of.kind === "time" ? [shareBy.of] : []));
}

function compileShares({ points, between }: ShareBy, span: number): BranchShares {
  return {
    span,
    at: Float64Array.from(points, ({ at }) => at),
    share: Float64Array.from(points, ({ share }) => share),
    steps: between === "steps",
  };
}

function cumulative(shares: number[]): number[] {
  let sum = 0;
  return shares.map((share) => {
    sum += share;
    return sum;
  });
}
