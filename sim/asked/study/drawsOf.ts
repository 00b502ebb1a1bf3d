import type { Study } from "./study.ts";

/** Which random numbers a day is run on: the replication number of their streams, and whether they are mirrored. */
export interface Draws {
  replication: number;
  antithetic: boolean;
}

/**
 * The random numbers of a study's day. Without antithetic pairs day i has those of replication i; with them days 2i and
 * 2i + 1 share those of replication i, mirrored on the second. Every variant of a block has the same (common random
 * numbers), and the days of one block go on where those of the block before ended.
 */
export function drawsOf({ procedure }: Pick<Study, "procedure">, variant: number, day: number): Draws {
  const { blocks, antithetic } = procedure;
  const before = blocks === undefined ? 0 : Math.floor(variant / blocks.variants) * blocks.days;
  const row = before + day;
  return antithetic
    ? { replication: Math.floor(row / 2), antithetic: row % 2 === 1 }
    : { replication: row, antithetic: false };
}
