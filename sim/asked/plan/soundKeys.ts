import type { z } from "zod";
import { isRecord } from "./isRecord.ts";

/**
 * Of the JSON of a file whose shape is faulty, what stands under the keys of the file that have no fault, so that what these
 * say of a plan can be told along with it; null when the file is no object.
 */
export function soundKeys(json: unknown, issues: readonly z.core.$ZodIssue[]): Record<string, unknown> | null {
  if (!isRecord(json)) return null;
  const faulty = new Set(
    issues.flatMap((issue) => {
      if (issue.path.length > 0) return [issue.path[0]!];
      return issue.code === "unrecognized_keys" ? issue.keys : [];
    }),
  );
  return Object.fromEntries(Object.entries(json).filter(([key]) => !faulty.has(key)));
}
