import { z } from "zod";
import { dayRecordShape } from "../../results/index.ts";
import type { DaySource, SimulatedDay } from "../index.ts";

/**
 * What a day that comes from a file or another machine must look like before it is used: of a variant of this study,
 * with a value or null for each kept response, and with the day itself exactly where it is the first of its variant.
 */
export function simulatedDayShape({ plans, keys }: Pick<DaySource, "plans" | "keys">): z.ZodType<SimulatedDay> {
  return z
    .strictObject({
      variant: whole().max(plans.length - 1),
      replication: whole(),
      values: z.array(value()).length(keys.length),
      day: dayRecordShape().nullable(),
    })
    .refine(({ replication, day }) => (replication === 0) === (day !== null), "a day is kept of replication 0 only");
}

/** Infinity would be sound as a value of a day, NaN never is. */
function value() {
  return z.custom<number | null>((found) => found === null || (typeof found === "number" && !Number.isNaN(found)));
}

function whole() {
  return z.int().min(0);
}
