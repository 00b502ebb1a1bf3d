import type { Study } from "../../asked/study/index.ts";

/** What a study simulates again and again, and compares: a day, or where its plan has one a week. */
export function periodOf({ variants }: Pick<Study, "variants">): "day" | "week" {
  return variants[0]!.plan.week === undefined ? "day" : "week";
}
