import { planJsonSchema } from "../../plan/index.ts";
import { studyJsonSchema } from "../../study/index.ts";
import type { Terminal } from "../terminal.ts";

/** Prints the JSON Schema of plan or study files, for editors. */
export function schemaCommand(terminal: Terminal, kind: "plan" | "study"): void {
  const schema = kind === "plan" ? planJsonSchema() : studyJsonSchema();
  terminal.data(`${JSON.stringify(schema, null, 2)}\n`);
}
