import { z } from "zod";
import type { Plan } from "../../../asked/plan/index.ts";
import type { Procedure } from "../../../asked/study/index.ts";
import type { DaySource } from "../index.ts";
import { simulatedDayShape } from "../wire/index.ts";

const whole = () => z.int().min(0);

/** A task as it lies in the queue. Who made it comes first: what follows is for the same program to understand. */
export const TASK = z.strictObject({
  maker: z.strictObject({ gambrel: z.string(), arithmetic: z.string() }),
  study: z.uuid(),
  variant: whole(),
  first: whole(),
  count: whole().min(1).max(1000),
});
export type Task = z.output<typeof TASK>;

/** A study without its plans. */
export const STUDY_ABOUT = z.strictObject({
  seed: z.string(),
  procedure: z.looseObject({ antithetic: z.boolean() }).transform((found) => found as unknown as Procedure),
  keys: z.array(z.string()),
  traces: z.enum(["none", "binned", "exact", "all"]),
  check: z.boolean(),
  mostEvents: whole(),
}) satisfies z.ZodType<Omit<DaySource, "plans">>;
export type StudyAbout = z.output<typeof STUDY_ABOUT>;

/** The parts of a checked plan that a line is compiled from; what is in them was checked where the plan was read. */
const PLAN = z.looseObject({
  name: z.string(),
  day: z.looseObject({ shifts: z.array(z.looseObject({})), breaks: z.array(z.looseObject({})) }),
  supply: z.looseObject({ kind: z.string() }),
  crews: z.array(z.looseObject({ name: z.string() })),
  line: z.array(z.looseObject({ kind: z.string(), name: z.string() })).min(1),
  limits: z.array(z.looseObject({ name: z.string() })),
});
export const PLAN_SHAPE = z.custom<Plan>((found) => PLAN.safeParse(found).success, "not a plan");

/** What a worker says: days, or that it cannot take a task. */
export function answerShape(source: DaySource) {
  const failedDay = z.strictObject({ variant: whole(), replication: whole(), message: z.string() });
  return z.union([
    z.strictObject({
      task: z.string(),
      days: z.array(simulatedDayShape(source)),
      failed: z.array(failedDay),
    }),
    z.strictObject({ task: z.string(), error: z.string() }),
    z.strictObject({ refused: z.string() }),
  ]);
}
export type Answer = z.output<ReturnType<typeof answerShape>>;
