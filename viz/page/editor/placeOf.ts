import { findNodeAtLocation, type Node, parseTree } from "jsonc-parser";
import { parsePath } from "../../../sim/asked/plan/index.ts";
import type { PlanFault } from "../worker/messages.ts";

export interface TextPlace {
  from: number;
  to: number;
}

/**
 * Where a fault is in the text: the value at its path; for what is missing, the nearest thing around it; for text that is
 * no JSON, the line and column that the message names.
 */
export function placeOf(text: string, { path }: Pick<PlanFault, "path">): TextPlace {
  const spot = /^line (\d+), column (\d+)$/u.exec(path);
  if (spot !== null) return at(text, offsetOf(text, Number(spot[1]), Number(spot[2])));
  const tree = parseTree(text);
  const steps = parsePath(path) ?? [];
  if (tree === undefined) return at(text, 0);
  for (let length = steps.length; length > 0; length--) {
    const node = findNodeAtLocation(tree, steps.slice(0, length));
    if (node !== undefined) return length === steps.length ? whole(node) : head(node);
  }
  return head(tree);
}

function whole(node: Node): TextPlace {
  // Of a long object or list the beginning is enough to be seen.
  return node.type === "object" || node.type === "array"
    ? head(node)
    : { from: node.offset, to: node.offset + node.length };
}

/** The key that a value stands at, or its first character. */
function head(node: Node): TextPlace {
  const key = node.parent?.type === "property" ? node.parent.children?.[0] : undefined;
  return key === undefined
    ? { from: node.offset, to: node.offset + Math.min(1, node.length) }
    : { from: key.offset, to: key.offset + key.length };
}

function at(text: string, offset: number): TextPlace {
  const from = Math.min(offset, Math.max(0, text.length - 1));
  return { from, to: Math.min(text.length, from + 1) };
}

/** Lines and columns count from 1, columns in characters. */
function offsetOf(text: string, line: number, column: number): number {
  let start = 0;
  for (let each = 1; each < line; each++) {
    const end = /\r\n|\r|\n/gu;
    end.lastIndex = start;
    const found = end.exec(text);
    if (found === null) break;
    start = found.index + found[0].length;
  }
  return start + [...text.slice(start)].slice(0, column - 1).join("").length;
}
