import { z } from "zod";
import { SOURCE_KINDS } from "../plan.ts";
import { record } from "./record.ts";
import { freeText } from "./text.ts";

/** Where figures come from. */
export function source() {
  return record({
    path: z
      .string()
      .max(500)
      .default("")
      .describe('What it speaks for: "" for the whole plan, "line.skinning" for that stage and all below it.'),
    kind: z.enum(SOURCE_KINDS).describe("How far the figures can be trusted."),
    note: freeText().default("").describe("Who, when, which document."),
  });
}
