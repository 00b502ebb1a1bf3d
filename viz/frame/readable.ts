import type { Group } from "./selections.ts";

/** A group whose figures a page shows when somebody points at it or steps to it with the keyboard. */
export function readable(group: Group, words: string): Group {
  return group.append("g").attr("data-value", words.replace(/\s+/g, " "));
}
