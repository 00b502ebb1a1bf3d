/**
 * A length in whole shackles. The little that is added keeps 0.6 m at a pitch of 0.2 m from becoming 2: their quotient
 * as doubles is 2.9999999999999996.
 */
export function shacklesIn(length: number, pitch: number): number {
  return Math.floor((length / pitch) * (1 + 1e-12));
}
