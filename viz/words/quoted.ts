import { isolated } from "../frame/index.ts";

/** A name in quotation marks, safe beside figures whatever its script. */
export function quoted(name: string): string {
  return `\u201C${isolated(name)}\u201D`;
}
