/** Marks a number that JSON has no word for; no plan and no day record has a key like it with a text as its value. */
const MARK = "#number";

/**
 * JSON from which `parseExactJson` gets the very same numbers back: Infinity, -Infinity, NaN and -0 too, which plain
 * JSON would lose. For plain data; an undefined property is left out.
 */
export function exactJson(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    isPlain(part) ? part : { [MARK]: Object.is(part, -0) ? "-0" : `${part}` },
  );
}

/** Throws a SyntaxError where the text is no JSON. */
export function parseExactJson(text: string): unknown {
  // Walking through every value takes several times as long as parsing, and marks are rare.
  return text.includes(MARK)
    ? JSON.parse(text, (_, part) => (isMarked(part) ? Number(part[MARK]) : part))
    : JSON.parse(text);
}

function isPlain(part: unknown): boolean {
  return typeof part !== "number" || (Number.isFinite(part) && !Object.is(part, -0));
}

function isMarked(part: unknown): part is { [MARK]: string } {
  if (typeof part !== "object" || part === null || Array.isArray(part)) return false;
  const keys = Object.keys(part);
  return keys.length === 1 && keys[0] === MARK && typeof (part as Record<string, unknown>)[MARK] === "string";
}
