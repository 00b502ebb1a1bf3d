import { readFileSync } from "node:fs";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { formatFault } from "../../sim/asked/plan/index.ts";
import { type Demand, type PlantDesign, readDemand, sizePlant } from "../../sim/questions/size/index.ts";

/** Demands for tests: the least that a demand file must say, and what becomes of it. Invented. */

export const NO_FILES = {
  readText: () => {
    throw new Error("no files here");
  },
};

export function demandFile(changes: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    name: "Test plant",
    week: { heads: 20_000, days: 5 },
    day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
    ...changes,
  };
}

export function demandOf(changes: Record<string, unknown> = {}): Demand {
  const { demand, faults } = readDemand(demandFile(changes), NO_FILES);
  if (demand === null) throw new Error(faults.map(formatFault).join("\n"));
  return demand;
}

/** Faults of a demand that is not sound, or that no plan can meet, as people read them. */
export function demandFaults(changes: Record<string, unknown>): string[] {
  const { demand, faults } = readDemand(demandFile(changes), NO_FILES);
  return (demand === null ? faults : sizePlant(demand, NO_FILES).faults).map(formatFault);
}

export function designOf(changes: Record<string, unknown> = {}): { design: PlantDesign; plan: Plan } {
  const { design, plan, faults } = sizePlant(demandOf(changes), NO_FILES);
  if (design === null || plan === null) throw new Error(faults.map(formatFault).join("\n"));
  return { design, plan };
}

/** The example of experiments/demand. */
export function weeklyDemand(): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL("../../experiments/demand/weekly.json", import.meta.url), "utf8"));
}
