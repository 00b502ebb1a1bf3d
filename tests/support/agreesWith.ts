import { cephes } from "./cephes.ts";

/** How small the standard error has to be, so that agreement shows something: relative to the value, or absolute. */
export type Precision = { relative: number } | { absolute: number };

const USUAL: Precision = { relative: 0.005 };

/** Two-sided false-alarm probability of one comparison. */
export const FALSE_ALARM = 0.001;

/**
 * Demands that the mean of independent replications agrees with an exact value: at least 20 of them, |mean - expected| no
 * more than Student's t (0.9995, n - 1) standard errors, and a standard error under 0.5 % of the value (or as stated).
 */
export function agreesWith(what: string, samples: readonly number[], expected: number, precision = USUAL): void {
  const { n, mean, standardError } = momentsOf(samples);
  const t = cephes.stdtri(n - 1, 1 - FALSE_ALARM / 2);
  const allowed = "relative" in precision ? precision.relative * Math.abs(expected) : precision.absolute;
  const words = `${what}: expected ${expected}, found ${mean}, standard error ${standardError}, ${n} replications`;
  if (n < 20) throw new Error(`${words}; at least 20 are needed`);
  if (!(standardError <= allowed)) throw new Error(`${words}; too rough: the standard error may be ${allowed} at most`);
  if (!(Math.abs(mean - expected) <= t * standardError)) {
    throw new Error(`${words}; off by ${(mean - expected) / standardError} standard errors, allowed ${t}`);
  }
}

export function momentsOf(samples: readonly number[]): { n: number; mean: number; standardError: number } {
  const n = samples.length;
  const mean = samples.reduce((sum, value) => sum + value, 0) / n;
  const squares = samples.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { n, mean, standardError: Math.sqrt(squares / (n - 1) / n) };
}
