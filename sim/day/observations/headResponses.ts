import type { Plan } from "../../asked/plan/index.ts";
import { CARCASS, destinationsOf } from "../line/index.ts";
import type { Response } from "./response.ts";

/**
 * Where the heads of the day went: every name that the plan's removals use, dead on arrival, left in lairage, turned
 * away.
 */
export function headResponses(plan: Plan): Response[] {
  const removed = destinationsOf(plan).filter((name) => name !== CARCASS);
  const rows = removed.map(
    (name): Response => ({
      key: `removed.${name}`,
      label: `Heads ${name}`,
      unit: "heads",
      format: "number",
      better: null,
      of: (day) => day.heads.out[name] ?? 0,
    }),
  );
  if (plan.supply.kind === "loads") rows.push(leftInLairage());
  if (plan.supply.kind === "stream" && plan.supply.whenFull === "turn away") rows.push(turnedAway());
  return rows;
}

function leftInLairage(): Response {
  return {
    key: "leftInLairage",
    label: "Heads still in lairage at the end of the day",
    unit: "heads",
    format: "number",
    better: "less",
    of: (day) => day.heads.inLairage,
  };
}

function turnedAway(): Response {
  return {
    key: "turnedAway",
    label: "Heads turned away because the first stage was full",
    unit: "heads",
    format: "number",
    better: "less",
    of: (day) => day.heads.turnedAway,
  };
}
