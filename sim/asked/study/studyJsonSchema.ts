import { z } from "zod";
import { studyFile } from "./schema/studyFile.ts";

/** The JSON Schema (draft 2020-12) of study files, made from the validator itself. */
export function studyJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(studyFile(), { io: "input", target: "draft-2020-12" });
  return {
    $schema,
    title: "Gambrel study",
    description: "One base plan, its variants, and how often each is run.",
    ...rest,
  };
}
