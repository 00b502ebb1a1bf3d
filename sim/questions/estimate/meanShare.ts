import type { Plan, Point, ShareBy } from "../../asked/plan/index.ts";
import { Sampler, uniformStream, type Varying } from "../../maths/random/index.ts";
import { stretchSeconds } from "./stretchSeconds.ts";

/** Of a load's weights, each with the same chance. */
const QUANTILES = 200;

/**
 * The share of all heads: by live weight averaged over the weights of all loads; by time that of a head which takes the mean
 * times on its way and never waits, since waits are not in the estimate. Times in lairage count as none.
 */
export function meanShare(plan: Plan, { share, shareBy }: { share: number; shareBy?: ShareBy }): number {
  if (shareBy === undefined) return share;
  if (shareBy.of.kind === "time") return shareOf(shareBy, secondsBetween(plan, shareBy.of));
  const groups = weightsOf(plan);
  const heads = groups.reduce((sum, group) => sum + group.heads, 0);
  return groups.reduce((sum, group) => sum + (group.heads / heads) * averaged(shareBy, group.weightKg), 0);
}

function averaged(by: ShareBy, weightKg: Varying): number {
  const sampler = new Sampler(weightKg, uniformStream("", 0, "", ""));
  const weights = Array.from({ length: QUANTILES }, (_, row) => sampler.quantile((row + 0.5) / QUANTILES));
  return weights.reduce((sum, weight) => sum + shareOf(by, weight), 0) / QUANTILES;
}

function weightsOf({ supply }: Plan): { heads: number; weightKg: Varying }[] {
  if (supply.kind !== "loads") return [{ heads: 1, weightKg: supply.liveWeightKg }];
  return supply.loads.map(({ crates, headsPerCrate, comesShare, liveWeightKg }) => ({
    heads: crates * headsPerCrate * comesShare,
    weightKg: liveWeightKg,
  }));
}

function secondsBetween(plan: Plan, { from, to }: { from: Point; to: Point }): number {
  const until = (point: Point) => secondsTo(plan, point);
  return Math.max(0, until(to) - until(from));
}

/** From being hung; waiting left out. */
function secondsTo(plan: Plan, { stage, moment }: Point): number {
  const main = plan.line.filter(({ offLine }) => !offLine);
  if (stage === null) return moment === "entry" ? 0 : stretchSeconds(plan, main[0]!.name, null, true);
  return stretchSeconds(plan, main[0]!.name, stage, moment === "end" || moment === "exit");
}

function shareOf({ points, between }: ShareBy, measure: number): number {
  const row = points.findLastIndex(({ at }) => at <= measure);
  const [here, next] = [points[Math.max(row, 0)]!, points[row + 1]];
  if (row < 0 || next === undefined || between === "steps") return here.share;
  return here.share + ((measure - here.at) / (next.at - here.at)) * (next.share - here.share);
}
