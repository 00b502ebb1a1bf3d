/** Days of one variant that follow each other: the unit of work that is handed out. */
export interface Batch {
  /** Index into the study's variants. */
  variant: number;
  /** Number of the first replication. */
  first: number;
  count: number;
}

/** The same days in batches of at most `size`, order kept. */
export function splitBatches(batches: readonly Batch[], size: number): Batch[] {
  return batches.flatMap(({ variant, first, count }) =>
    Array.from({ length: Math.ceil(count / size) }, (_, part): Batch => {
      const skipped = part * size;
      return { variant, first: first + skipped, count: Math.min(size, count - skipped) };
    }),
  );
}

/** Number of days in them. */
export function countDays(batches: readonly Batch[]): number {
  return batches.reduce((sum, { count }) => sum + count, 0);
}
