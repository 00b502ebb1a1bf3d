const LONGEST_SHOWN = 60;

/** A value as a message quotes it: short, on one line, with text in double quotes. */
export function foundWords(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object" && value !== null) return objectWords(value);
  if (typeof value === "string") return quoted(value);
  return String(value);
}

function objectWords(value: object): string {
  const keys = Object.keys(value);
  if (keys.length === 0) return "an empty object";
  return `an object with ${shortened(keys.map((key) => JSON.stringify(key)).join(", "))}`;
}

function quoted(text: string): string {
  return text === "" ? "an empty text" : JSON.stringify(shortened(text));
}

function shortened(text: string): string {
  const characters = [...text];
  return characters.length <= LONGEST_SHOWN ? text : `${characters.slice(0, LONGEST_SHOWN).join("")}…`;
}
