import { z } from "zod";
import { planFile } from "./schema/planFile.ts";

/** The JSON Schema (draft 2020-12) of plan files, made from the validator itself. Cross-references are beyond it. */
export function planJsonSchema(): Record<string, unknown> {
  const schema = planFile({ readText: () => "" });
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" });
  return {
    $schema,
    title: "Gambrel plan",
    description: "One day of a small-animal slaughter and processing line.",
    ...rest,
  };
}
