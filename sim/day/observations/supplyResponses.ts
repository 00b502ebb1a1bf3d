import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord, LoadRecord } from "../engine/index.ts";
import type { Response } from "./response.ts";

/** Lairage and lorries; nothing for a supply that does not come in loads. */
export function supplyResponses(plan: Plan): Response[] {
  return plan.supply.kind === "loads"
    ? [lairage("mean", "average"), lairage("max", "most at once"), ...lorries(), ...turnaround(plan), ...missing(plan)]
    : [];
}

function lairage(key: "mean" | "max", words: string): Response {
  return {
    key: `lairage.${key}`,
    label: `Crates in lairage, ${words}`,
    unit: "crates",
    format: "number",
    better: "less",
    of: (day) => day.lairage?.[key] ?? null,
  };
}

function lorries(): Response[] {
  return [
    {
      key: "lorry.unloading.max",
      label: "From a lorry's arrival to its last crate unloaded, longest",
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => longest(day, (load) => load.unloadedSeconds),
    },
    {
      key: "lorry.emptied.max",
      label: "From a lorry's arrival to its last head out of the crates, longest",
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => longest(day, (load) => load.emptiedSeconds),
    },
  ];
}

/** Only where a lorry may stay away. */
function missing({ supply }: Plan): Response[] {
  if (supply.kind !== "loads" || supply.loads.every(({ comesShare }) => comesShare === 1)) return [];
  const row = (key: string, label: string, unit: string, of: (load: LoadRecord) => number): Response => ({
    ...{ key, label, unit, format: "number", better: "less" },
    of: ({ loads }) => loads.reduce((sum, load) => sum + (load.arrivedSeconds === null ? of(load) : 0), 0),
  });
  return [
    row("lorry.notCome", "Lorries that did not come", "lorries", () => 1),
    row("lorry.notCome.heads", "Heads of lorries that did not come", "heads", ({ heads }) => heads),
  ];
}

/** Only where lorries wait for their empty crates; elsewhere they leave when unloaded. */
function turnaround(plan: Plan): Response[] {
  if ((plan.liveHandling?.back.length ?? 0) === 0) return [];
  const row = (key: string, words: string, of: (stays: number[]) => number): Response => ({
    key: `lorry.turnaround.${key}`,
    label: `From a lorry's arrival until it leaves with empty crates, ${words}`,
    unit: "s",
    format: "duration",
    better: "less",
    of: (day) => {
      const stays = staysUntil(day, (load) => load.leftSeconds);
      return stays === null ? null : of(stays);
    },
  });
  return [
    row("mean", "average", (stays) => stays.reduce((sum, seconds) => sum + seconds, 0) / stays.length),
    row("max", "longest", (stays) => Math.max(...stays)),
  ];
}

/**
 * Longest time from a load's arrival; null when there was no load or one of them never got so far (no time after it).
 */
function longest(day: DayRecord, until: (load: LoadRecord) => number | null): number | null {
  const stays = staysUntil(day, until);
  return stays === null ? null : Math.max(...stays);
}

/** Seconds from each load's arrival; null when no load came or one of them never got so far. */
function staysUntil(day: DayRecord, until: (load: LoadRecord) => number | null): number[] | null {
  const stays: number[] = [];
  for (const load of day.loads) {
    if (load.arrivedSeconds === null) continue;
    const end = until(load);
    if (end === null || end < load.arrivedSeconds) return null;
    stays.push(end - load.arrivedSeconds);
  }
  return stays.length > 0 ? stays : null;
}
