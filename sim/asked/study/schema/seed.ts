import { foundWords, type Reading } from "../../../text/units/index.ts";
import { readBy } from "../../plan/index.ts";

/** A seed as text; a whole number is the same as its digits. */
export function seed() {
  return readBy(readSeed, { anyOf: [{ type: "string", minLength: 1, maxLength: 60 }, { type: "integer" }] });
}

function readSeed(written: unknown): Reading<string> {
  if (Number.isSafeInteger(written)) return { value: String(written), fault: null };
  if (typeof written === "string" && written.length >= 1 && written.length <= 60)
    return { value: written, fault: null };
  const allowed = "a text of 1 to 60 characters, or a whole number";
  return {
    value: null,
    fault: { found: `${foundWords(written)} is not a seed`, allowed, remedy: 'write for example "2026"' },
  };
}
