/** Days of one variant that follow each other: the unit of work that is handed out. */
export interface Batch {
  /** Index into the study's variants. */
  variant: number;
  /** Number of the first replication. */
  first: number;
  count: number;
}

/**
 * The same days in batches of at most `size`, the first days of every variant before later days of any: a run that is
 * stopped then has about as many days of one variant as of another.
 */
export function splitBatches(batches: readonly Batch[], size: number): Batch[] {
  const parts = batches.flatMap(({ variant, first, count }) =>
    Array.from({ length: Math.ceil(count / size) }, (_, part): Batch => {
      const skipped = part * size;
      return { variant, first: first + skipped, count: Math.min(size, count - skipped) };
    }),
  );
  return parts.sort((a, b) => a.first - b.first || a.variant - b.variant);
}

/** Number of days in them. */
export function countDays(batches: readonly Batch[]): number {
  return batches.reduce((sum, { count }) => sum + count, 0);
}
