import { z } from "zod";
import { improveFile } from "./schema/improveFile.ts";

/** The JSON Schema (draft 2020-12) of files that ask for an improvement, made from the validator itself. */
export function improveJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(improveFile(), { io: "input", target: "draft-2020-12" });
  return {
    $schema,
    title: "Gambrel improvement",
    description: "A plan, what is to be shared out in it, and to what end.",
    ...rest,
  };
}
