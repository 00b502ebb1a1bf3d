import type { Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import { steps } from "../line/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { workingSeconds } from "./workingTime.ts";

/** Heads between a gate's two points, and how long each stage behind a gate, a safe stop or the hold before stunning was held back. */
export function gateResponses(plan: Plan): Response[] {
  return [...plan.gates.flatMap(({ name }) => [level(name, "mean"), level(name, "max")]), ...heldBack(plan)];
}

function level(gate: string, key: "mean" | "max"): Response {
  const words = key === "mean" ? "average" : "most at once";
  const of: Response["of"] = ({ gates }) => gates.find(({ name }) => name === gate)?.[key] ?? null;
  return row(`gate.${gate}.${key}`, `Heads inside gate ${gate}, ${words}`, "heads", of);
}

function heldBack(plan: Plan): Response[] {
  const starts = new Set(plan.gates.map(({ from }) => from));
  if (plan.day.safeStop !== null) starts.add(plan.day.safeStop.from);
  if (plan.stunned?.hold) starts.add(plan.stunned.from);
  return steps(plan)
    .filter((step) => !does(step, "handle crates") && starts.has(step.name))
    .map(({ name }) =>
      row(
        `held.${name}`,
        `${name}: a head was held back by a gate or a due stop`,
        "share of working time",
        (day) => per(stageRecordOf(day, name)?.heldSeconds ?? null, workingSeconds(day, plan)),
        { format: "share" },
      ),
    );
}
