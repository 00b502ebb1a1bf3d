import { foundWords, type Reading } from "../../text/units/index.ts";

/** Reads a three-letter currency code as ISO 4217 has them; its form is checked, not its existence. */
export function readCurrency(written: unknown): Reading<string> {
  if (typeof written === "string" && /^[A-Z]{3}$/u.test(written)) return { value: written, fault: null };
  const found = `${foundWords(written)} is no currency code`;
  return { value: null, fault: { found, allowed: "three capital letters", remedy: 'write for example "EUR"' } };
}
