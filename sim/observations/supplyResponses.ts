import type { DayRecord, LoadRecord } from "../engine/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";

/** Lairage and lorries; nothing for a supply that does not come in loads. */
export function supplyResponses(plan: Plan): Response[] {
  return plan.supply.kind === "loads"
    ? [lairage("mean", "time average"), lairage("max", "most at once"), ...lorries()]
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
      label: "Lorry's arrival to its last crate off, longest",
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => longest(day, (load) => load.unloadedSeconds),
    },
    {
      key: "lorry.emptied.max",
      label: "Lorry's arrival to its last head out of the crates, longest",
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => longest(day, (load) => load.emptiedSeconds),
    },
  ];
}

/**
 * Longest time from a load's arrival; null when there was no load or one of them never got so far (no time after it).
 */
function longest(day: DayRecord, until: (load: LoadRecord) => number | null): number | null {
  let most: number | null = null;
  for (const load of day.loads) {
    const end = until(load);
    if (end === null || end < load.arrivedSeconds) return null;
    most = Math.max(most ?? 0, end - load.arrivedSeconds);
  }
  return most;
}
