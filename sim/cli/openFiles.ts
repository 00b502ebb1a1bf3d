import process from "node:process";

/**
 * Files that the program itself has open at once while it loads, and each of its threads: measured on Linux with `ulimit -n`,
 * by studies of 1 to 32 threads of the program as it is published: 16 threads fail with 128 files, 32 with 256.
 */
const OF_PROGRAM = 60;
const OF_THREAD = 12;

/** How many threads can load their files at once under a limit on open files; at least one. Null: no limit is known. */
export function threadsFor(limit: number | null): number {
  return limit === null ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor((limit - OF_PROGRAM) / OF_THREAD));
}

/** How many files this process may have open; null where there is no limit, or the system does not say. */
export function openFilesLimit(): number | null {
  // The types of the oldest supported runtime do not know the switch, which later ones have.
  const report = process.report as typeof process.report & { excludeNetwork?: boolean };
  const before = report.excludeNetwork ?? false;
  // Looking up who is connected can take seconds.
  report.excludeNetwork = true;
  const { userLimits } = report.getReport() as { userLimits?: { open_files?: { soft: number | string } } };
  report.excludeNetwork = before;
  const soft = userLimits?.open_files?.soft;
  return typeof soft === "number" ? soft : null;
}
