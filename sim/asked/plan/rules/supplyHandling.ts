import type { Fault } from "../fault.ts";
import { faultAt, located } from "./located.ts";

/** Loads come in crates and need the live handling; single heads do not, and must not have it. */
export function supplyHandling(json: unknown): Fault[] {
  const supply = located(json, "supply");
  if (supply === null) return [];
  const handling = located(json, "liveHandling");
  const isLoads = Object.hasOwn(supply.value, "loads");
  if (isLoads && handling === null && !isWrittenWrongly(json)) return [needsHandling()];
  if (!isLoads && handling !== null && Object.keys(supply.value).length > 0)
    return [needsNone(Object.keys(supply.value))];
  return [];
}

function needsHandling(): Fault {
  const remedy = 'add "liveHandling" with "unloading", "lairageCrates" and "feeding"';
  return faultAt(
    ["liveHandling"],
    "missing, but the supply comes in loads",
    "how crates get to the hanging point",
    remedy,
  );
}

function needsNone(kinds: readonly string[]): Fault {
  const found = `given, but the supply is '${kinds.join("', '")}', which has no crates`;
  return faultAt(["liveHandling"], found, 'nothing, or a supply in "loads"', "delete it");
}

/** Something stands there that the schema has complained of already. */
function isWrittenWrongly(json: unknown): boolean {
  const handling = (json as Record<string, unknown>).liveHandling;
  return handling !== undefined && handling !== null;
}
