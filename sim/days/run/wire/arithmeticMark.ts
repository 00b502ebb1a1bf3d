import { createHash } from "node:crypto";

/** The functions whose last digits the language leaves to its runtime, as far as a plan's numbers may pass through them. */
const FUNCTIONS = ["exp", "expm1", "log", "log1p", "sin", "cos", "tan", "atan", "cbrt"] as const;
const INPUTS = 1000;

/**
 * A short mark of this runtime's mathematics. + - * / and the square root are exact everywhere, exp, log and their like
 * are not: runtimes with different marks could give days that differ in the last digit, so they do not share a study.
 * Powers do not count, since the program has its own (`sim/maths/numeric`).
 */
export function arithmeticMark(): string {
  const values = new Float64Array(INPUTS * FUNCTIONS.length);
  let at = 0;
  for (let i = 1; i <= INPUTS; i++) {
    const x = i / 37;
    for (const name of FUNCTIONS) values[at++] = Math[name](x);
  }
  return createHash("sha256").update(new Uint8Array(values.buffer)).digest("hex").slice(0, 12);
}
