import { applyEdits, type JSONPath, modify } from "jsonc-parser";

const LAYOUT = { formattingOptions: { tabSize: 2, insertSpaces: true, eol: "\n" } };

/** The text with one value changed (undefined takes it out); everything else stays as it was written. */
export function setInText(text: string, path: JSONPath, value: unknown): string {
  return applyEdits(text, modify(text, path, value, LAYOUT));
}

/** The text with an element put into a list at an index. */
export function insertInText(text: string, list: JSONPath, index: number, value: unknown): string {
  return applyEdits(text, modify(text, [...list, index], value, { ...LAYOUT, isArrayInsertion: true }));
}
