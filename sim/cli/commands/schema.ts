import { planJsonSchema } from "../../asked/plan/index.ts";
import { studyJsonSchema } from "../../asked/study/index.ts";
import { improveJsonSchema } from "../../questions/improve/index.ts";
import { optionsJsonSchema } from "../../questions/options/index.ts";
import { seasonJsonSchema } from "../../questions/season/index.ts";
import { demandJsonSchema } from "../../questions/size/index.ts";
import type { SchemaKind } from "../options.ts";
import type { Terminal } from "../terminal.ts";

const SCHEMAS: Record<SchemaKind, () => Record<string, unknown>> = {
  plan: planJsonSchema,
  study: studyJsonSchema,
  demand: demandJsonSchema,
  options: optionsJsonSchema,
  improve: improveJsonSchema,
  season: seasonJsonSchema,
};

/** Prints the JSON Schema of one kind of file, for editors. */
export function schemaCommand(terminal: Terminal, kind: SchemaKind): void {
  terminal.data(`${JSON.stringify(SCHEMAS[kind](), null, 2)}\n`);
}
