import { z } from "zod";
import type { Improvement } from "./improvement.ts";

const ENDS = z.looseObject({
  mean: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  n: z.number(),
});
const FOUND = z.looseObject({ name: z.string(), uses: z.number().nullable(), goal: ENDS.nullable() });
const LIMIT = z.looseObject({ name: z.string(), share: z.number(), found: ENDS.nullable() });

/** What the report walks through. */
const SHAPE = z.looseObject({
  format: z.literal(1),
  question: z.string(),
  confidence: z.number(),
  words: z.array(z.string()),
  verdict: z.string(),
  answer: z.string(),
  next: z.array(z.string()),
  goal: z.looseObject({ key: z.string(), label: z.string(), unit: z.string(), format: z.string() }),
  allocated: z.looseObject({
    kind: z.enum(["places", "people", "budget", "times", "week"]),
    unit: z.string(),
    most: z.number(),
    elements: z.array(z.looseObject({ name: z.string(), base: z.number().nullable() })),
  }),
  recommended: z
    .looseObject({
      ...{ ...FOUND.shape, isBase: z.boolean(), limits: z.array(LIMIT) },
      ...{ gain: ENDS.omit({ n: true }).nullable(), money: z.looseObject({ perDay: ENDS }).nullable() },
      ends: z.looseObject({ today: z.number(), pick: z.number(), startClockSeconds: z.number() }).nullable(),
    })
    .nullable(),
  finalists: z.array(z.looseObject({ ...FOUND.shape, limits: z.string(), droppedAfter: z.number().nullable() })),
  choice: z.looseObject({ kind: z.string(), probability: z.number(), difference: z.number() }),
  tried: z.array(z.looseObject({ ...FOUND.shape, keepsLimits: z.boolean(), allowed: z.boolean() })),
  curve: z.array(z.looseObject({ ...FOUND.shape, undominated: z.boolean(), keepsLimits: z.boolean() })),
});

/** What was found, from the JSON in an improvement.json; null where that holds nothing a report can be drawn from. */
export function readImprovement(json: unknown): Improvement | null {
  return SHAPE.safeParse(json).success ? (json as Improvement) : null;
}
