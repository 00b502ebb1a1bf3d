import type { Plan } from "../../asked/plan/index.ts";
import type { SharedBreakdownRecord } from "../engine/index.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";

/** How often each breakdown that stops several stages struck, and how long they all stood for it. */
export function sharedBreakdownResponses(plan: Plan): Response[] {
  return plan.sharedBreakdowns.flatMap(({ name }) => {
    const read =
      (of: (record: SharedBreakdownRecord) => number): Response["of"] =>
      ({ sharedBreakdowns }) => {
        const record = sharedBreakdowns.find((each) => each.name === name);
        return record === undefined ? null : of(record);
      };
    const what = `time that everything it stops stood still, the wait for somebody to repair it included`;
    return [
      row(
        `sharedBreakdown.${name}.stops`,
        `${name}: breakdowns`,
        "stops",
        read(({ stops }) => stops),
        { better: "less" },
      ),
      row(
        `sharedBreakdown.${name}.down`,
        `${name}: ${what}`,
        "s",
        read(({ downSeconds }) => downSeconds),
        {
          format: "duration",
          better: "less",
        },
      ),
    ];
  });
}
