import { z } from "zod";
import { demandFile } from "./schema/demandFile.ts";

/** The JSON Schema (draft 2020-12) of demand files, made from the validator itself. */
export function demandJsonSchema(): Record<string, unknown> {
  const schema = demandFile({ readText: () => "" });
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" });
  return {
    $schema,
    title: "Gambrel demand",
    description: "What a plant is to bring in a week, to be sized from.",
    ...rest,
  };
}
