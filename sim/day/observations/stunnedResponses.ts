import type { Plan } from "../../asked/plan/index.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";

/** How often somebody had to help a stunned head that waited too long; the one of the two that the plan provides for. */
export function stunnedResponses({ stunned }: Plan): Response[] {
  if (stunned === null || stunned.late === null) return [];
  const { from, to, late } = stunned;
  return late.help === "stun again"
    ? [
        row(
          "stunnedAgain",
          `Heads stunned again because they waited too long for ${to}`,
          "heads",
          (day) => day.stunned?.stunnedAgain ?? null,
          {
            better: "less",
          },
        ),
      ]
    : [
        row(
          "stuckThere",
          `Heads stuck where they were because they waited too long after ${from}`,
          "heads",
          (day) => day.stunned?.stuckThere ?? null,
          {
            better: "less",
          },
        ),
      ];
}
