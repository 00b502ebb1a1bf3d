import { AleaStream } from "./aleaStream.ts";
import type { UniformStream } from "./uniforms.ts";

/**
 * The stream of one purpose of one stage in one replication (alea generator, 53-bit doubles).
 *
 * The four names alone decide the draws, so a change to one stage leaves the draws of every other stage as they were
 * (common random numbers). `antithetic` mirrors every draw to 1 - u; the caller's inversion has to bear u = 1 then.
 */
export function uniformStream(
  seed: string,
  replication: number,
  owner: string,
  purpose: string,
  antithetic = false,
): UniformStream {
  return new AleaStream(JSON.stringify([seed, replication, owner, purpose]), antithetic);
}
