import { z } from "zod";
import { optionsFile } from "./schema/optionsFile.ts";

/** The JSON Schema (draft 2020-12) of options files, made from the validator itself. */
export function optionsJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(optionsFile(), { io: "input", target: "draft-2020-12" });
  return {
    $schema,
    title: "Gambrel options",
    description: "A plan, and what suppliers offer for it, with prices.",
    ...rest,
  };
}
