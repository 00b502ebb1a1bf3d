import type { Diversion, Plan, Removal, Stage } from "../../asked/plan/index.ts";
import { meanShare } from "./meanShare.ts";

/** How often a head that is hung comes to each stage, on the average. */
export interface HeadFlow {
  /** By stage name. */
  visits: Map<string, number>;
  /** Carcasses out for each head hung. */
  carcasses: number;
}

/** Follows one head hung through removals and diversions; no head is diverted twice. */
export function headFlow(plan: Plan): HeadFlow {
  const main = plan.line.filter(({ offLine }) => !offLine);
  const visits = new Map<string, number>();
  const shareOf = (branches: readonly (Removal | Diversion)[]) =>
    branches.reduce((total, each) => total + meanShare(plan, each), 0);
  let carcasses = 0;
  const walk = (stage: Stage | undefined, heads: number, mayDivert: boolean): void => {
    if (heads === 0) return;
    if (stage === undefined) {
      carcasses += heads;
      return;
    }
    visits.set(stage.name, (visits.get(stage.name) ?? 0) + heads);
    const removed = heads * (shareOf(stage.removals) + (stage === main[0] ? deadShare(plan) : 0));
    const diversions = mayDivert ? stage.diversions : [];
    for (const each of diversions) walk(named(plan, each.to), heads * meanShare(plan, each), false);
    walk(following(plan, main, stage), heads - removed - heads * shareOf(diversions), mayDivert);
  };
  walk(main[0], 1, true);
  return { visits, carcasses };
}

function following(plan: Plan, main: readonly Stage[], stage: Stage): Stage | undefined {
  if (stage.next !== null) return named(plan, stage.next);
  if (!stage.offLine) return main[main.indexOf(stage) + 1];
  return plan.line.slice(plan.line.indexOf(stage)).find(({ offLine }) => !offLine);
}

function named({ line }: Plan, name: string): Stage | undefined {
  return line.find((stage) => stage.name === name);
}

function deadShare({ supply }: Plan): number {
  if (supply.kind !== "loads") return 0;
  const [dead, all] = supply.loads.reduce(
    ([deadSoFar, allSoFar], { crates, headsPerCrate, comesShare, deadOnArrivalShare }) => [
      deadSoFar + crates * headsPerCrate * comesShare * deadOnArrivalShare,
      allSoFar + crates * headsPerCrate * comesShare,
    ],
    [0, 0],
  );
  return all === 0 ? 0 : dead / all;
}
