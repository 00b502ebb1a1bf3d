import type { Demand } from "./demand.ts";

/** How often a head hung comes to each step: those dead on arrival are taken off at hanging, condemned ones at inspection. */
export function stepShares({ steps, animals }: Demand): Map<string, number> {
  const shares = new Map<string, number>();
  const trimmed = steps.some(({ name }) => name === "trim") ? animals.toTrim : 0;
  let share = 1;
  let atInspection = 1;
  for (const { name, offLine } of steps) {
    const inspected = name === "inspection";
    shares.set(name, offLine ? atInspection * trimmed : share * (inspected ? 1 + trimmed : 1));
    if (share === 1) share = 1 - animals.deadOnArrival;
    if (!inspected) continue;
    atInspection = share;
    share *= 1 - animals.condemned;
  }
  return shares;
}
