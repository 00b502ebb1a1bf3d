import { improveJsonSchema } from "../../improve/index.ts";
import { planJsonSchema } from "../../plan/index.ts";
import { demandJsonSchema } from "../../size/index.ts";
import { studyJsonSchema } from "../../study/index.ts";
import { optionsJsonSchema } from "../../worth/index.ts";
import type { SchemaKind } from "../schemaKinds.ts";
import type { Terminal } from "../terminal.ts";

const SCHEMAS: Record<SchemaKind, () => Record<string, unknown>> = {
  plan: planJsonSchema,
  study: studyJsonSchema,
  demand: demandJsonSchema,
  options: optionsJsonSchema,
  improve: improveJsonSchema,
};

/** Prints the JSON Schema of one kind of file, for editors. */
export function schemaCommand(terminal: Terminal, kind: SchemaKind): void {
  terminal.data(`${JSON.stringify(SCHEMAS[kind](), null, 2)}\n`);
}
