import { formatPath, type Plan } from "../../asked/plan/index.ts";
import { steps } from "../../day/line/index.ts";

/** Where a place of work's key stands in the plan's file, as studies write it: "line.skinning.positions". */
export function pathOfWork(plan: Plan, name: string, key: string): string {
  const step = steps(plan).find((each) => each.name === name);
  if (step?.kind === "chain station") return formatPath(["line", step.chain.name, "stations", name, key]);
  return formatPath([step?.kind === "crates" ? "liveHandling" : "line", name, key]);
}
