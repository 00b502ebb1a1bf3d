import type { Cause, PathCell } from "../../engine/index.ts";

/** First part of the keys that tell what the line waited for. */
export const BOUND = "bound";
export const SLOPE = "slope";
export const BOTTLENECK = "bottleneck";

/** True for responses that only a day with its binding path has. */
export function needsBinding(key: string): boolean {
  return [BOUND, SLOPE, BOTTLENECK].some((first) => key.startsWith(`${first}.`));
}

const CAUSE_KEYS: Partial<Record<Cause, string>> = {
  "planned stop": "plannedStop",
  "lorry away": "lorryAway",
  "left over": "leftOver",
  "few people": "fewPeople",
  "shared breakdown": "sharedBreakdown",
  "shared repairer": "sharedRepairer",
};

/** `bound.work.skinning`, `bound.repair.skinning.jam`, `bound.load.first lorry`. */
export function reasonKey({ cause, stage, detail }: PathCell): string {
  return [BOUND, CAUSE_KEYS[cause] ?? cause, stage, detail].filter((part) => part !== "").join(".");
}
