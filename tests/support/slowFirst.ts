import { BaseSequencer, type TestSpecification } from "vitest/node";

/**
 * Test files that take longest, the longest first. The order of a first run knows only how long a file's text is: one
 * that takes a minute could come last, and all but one processor would wait for it.
 */
export const SLOW = [
  "page/livePage",
  "sim/cli/simulate",
  "sim/questions/calibrate/noticeableFigures",
  "fresh/workedPath",
  "sim/days/run/queue/onQueue",
  "pictures/inBrowser",
  "sim/cli/commands/worker",
  "experiments/plans",
  "sim/questions/improve/tenCases",
  "proofs/slopes",
  "faults/redis",
  "sim/cli/commands/improve",
  "page/lessons",
  "outside/saturatedLines",
  "experiments/week",
  "sim/cli/commands/doubt",
  "pictures/firstPages",
  "faults/outputClosed",
  "adopt/packed",
  "page/access",
  "outside/batchArrivals",
  "outside/queues",
  "fresh/demo",
].map((name) => `tests/${name}.test.ts`);

/** Starts the slow files first, all others in the usual order. */
export class SlowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((a, b) => placeOf(a) - placeOf(b));
  }
}

function placeOf({ moduleId }: TestSpecification): number {
  const place = SLOW.findIndex((name) => moduleId.endsWith(`/${name}`));
  return place === -1 ? SLOW.length : place;
}
