import { readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { formatFault, type Plan, readPlan } from "../../sim/asked/plan/index.ts";

const FOLDER = join(process.cwd(), "experiments", "plans");

/** A plan of experiments/plans whose loads bring `heads` heads in all, as near as whole crates come to it (0: as it is). */
export function scaledPlan(file: string, heads: number): Plan {
  const files = { readText: (name: string) => readFileSync(join(FOLDER, name), "utf8") };
  const { plan, faults } = readPlan(JSON.parse(readFileSync(join(FOLDER, file), "utf8")), files);
  if (plan === null) throw new Error(faults.map(formatFault).join("\n"));
  const { supply } = plan;
  if (heads === 0 || supply.kind !== "loads") return plan;
  const now = supply.loads.reduce((sum, load) => sum + load.crates * load.headsPerCrate, 0);
  const loads = supply.loads.map((load) => ({ ...load, crates: Math.round((load.crates * heads) / now) }));
  return { ...plan, supply: { ...supply, loads } };
}
