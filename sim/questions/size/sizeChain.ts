import { meanOf } from "../../maths/random/index.ts";
import type { Demand } from "./demand.ts";
import type { SizedChain } from "./design.ts";
import { stepShares } from "./stepShares.ts";

const BLEEDING = "bleeding";

/**
 * An overhead chain through the bleeding: so fast that enough shackles come by with some left empty, so long that a head stays its
 * time; shackles on it and on their way back (Little 1961). Null without bleeding.
 */
export function sizeChain(demand: Demand, headsPerSecond: number): SizedChain | null {
  const step = demand.steps.find(({ name, work }) => name === BLEEDING && work === "dwell");
  if (step === undefined) return null;
  const { pitch, filled, back } = demand.chain;
  const shacklesPerSecond = (headsPerSecond * stepShares(demand).get(BLEEDING)!) / filled;
  const metresPerSecond = shacklesPerSecond * pitch;
  // No way leads onto a chain: it begins where the heads are hung on it.
  const before = demand.steps[demand.steps.indexOf(step) - 1]?.figures.travel;
  const seconds = meanOf(step.figures.dwell!) + (before == null ? 0 : meanOf(before));
  const places = Math.ceil(shacklesPerSecond * seconds);
  return {
    shacklesPerSecond,
    seconds,
    metresPerSecond,
    metres: places * pitch,
    shackles: places + Math.ceil(shacklesPerSecond * back) + 1,
  };
}
