import type { z } from "zod";
import { assumedValue } from "../assumed.ts";

/** A key that may be left out: the assumption made for this path then stands in its place, and the description says so. */
export function assumable<Schema extends z.ZodType>(path: string, schema: Schema, words: string) {
  const value = assumedValue(path);
  return schema
    .prefault(value as z.input<Schema>)
    .describe(`${words} Assumed where it is left out: ${JSON.stringify(value)}.`);
}
