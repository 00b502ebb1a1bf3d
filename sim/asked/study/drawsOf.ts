import type { Study } from "./study.ts";

/** Which random numbers a day is run on: the replication number of their streams, and whether they are mirrored. */
export interface Draws {
  replication: number;
  antithetic: boolean;
}

/**
 * The random numbers of a study's day. Without antithetic pairs day i has those of replication i; with them days 2i and
 * 2i + 1 share those of replication i, mirrored on the second. Every variant has the same (common random numbers).
 */
export function drawsOf({ procedure }: Pick<Study, "procedure">, day: number): Draws {
  return procedure.antithetic
    ? { replication: Math.floor(day / 2), antithetic: day % 2 === 1 }
    : { replication: day, antithetic: false };
}
