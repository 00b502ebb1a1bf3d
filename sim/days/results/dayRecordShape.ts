import { z } from "zod";
import type { DayRecord } from "../../day/engine/index.ts";

/** The parts of a day record that everything downstream walks through; what is in them is as the engine left it. */
export function dayRecordShape(): z.ZodType<DayRecord> {
  const named = () => z.array(z.looseObject({ name: z.string() }));
  const shape = z.looseObject({
    replication: z.int().min(0),
    status: z.enum(["finished", "ceiling", "stuck"]),
    startClockSeconds: z.number(),
    finishSeconds: z.number(),
    heads: z.looseObject({ out: z.record(z.string(), z.number()) }),
    stages: named(),
    crews: named(),
    sections: named(),
    limits: named(),
    loads: named(),
    traces: z.looseObject({ queues: named(), wip: named(), crews: named(), states: named() }).nullable(),
    perHead: z.null(),
  });
  return z.custom<DayRecord>((found) => shape.safeParse(found).success, "not a day record");
}
