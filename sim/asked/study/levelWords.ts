import { isRecord, parsePath } from "../plan/index.ts";

const WITHOUT_LIMIT = new Set<unknown>(["buffer", "places", "lairageCrates"]);

/** A value of a plan file in words to show, for a level of the factor with this path: an object names its keys and values. */
export function levelWords(value: unknown, path: string): string {
  return value === null && WITHOUT_LIMIT.has(parsePath(path)?.at(-1)) ? "no limit" : valueWords(value);
}

function valueWords(value: unknown): string {
  if (value === null) return "none";
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return `[${value.map(valueWords).join(", ")}]`;
  if (!isRecord(value)) return String(value);
  return Object.entries(value)
    .map(([key, inner]) => (isRecord(inner) ? `${key} (${valueWords(inner)})` : `${key} ${valueWords(inner)}`))
    .join(", ");
}
