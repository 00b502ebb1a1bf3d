import { expect, it } from "vitest";
import { stableJson } from "../../../../../sim/days/results/index.ts";
import { type BatchResult, daySource, type OpenRunner, runStudy } from "../../../../../sim/days/run/index.ts";
import { inThreads, lastingThreads } from "../../../../../sim/days/run/threads/index.ts";
import { threeVariants } from "../../../../support/threeVariants.ts";

async function textOf(runner?: OpenRunner): Promise<string> {
  const options = { gambrel: "1.2.3", command: "c", ...(runner === undefined ? {} : { runner }) };
  return stableJson(await runStudy(threeVariants({ replications: 7 }), options));
}

it("gives the same bytes in this thread and in 1, 2 and 3 others", async () => {
  const here = await textOf();
  for (const threads of [1, 2, 3]) expect(await textOf(inThreads(threads))).toBe(here);
});

it("stops all threads between two days, having given away the days that were finished", async () => {
  const source = daySource(threeVariants({ replications: 100_000 }), "none", false);
  const controller = new AbortController();
  const runner = await inThreads(2)(source);
  const found = new Set<string>();
  const take = ({ days }: BatchResult): void => {
    for (const { variant, replication } of days) found.add(`${variant}/${replication}`);
    controller.abort(new Error("enough"));
  };
  const run = runner.run([{ variant: 0, first: 0, count: 100_000 }], take, controller.signal);
  await expect(run).rejects.toThrow("enough");
  await runner.close();
  expect(found.size).toBeGreaterThan(0);
  // Each of the threads stops in its batch of 16 days at the latest; batches that wait are not begun.
  expect(found.size).toBeLessThan(100);
});

it("lets a day that fails in a thread fail alone, with its message", async () => {
  const source = daySource(threeVariants(), "none", false);
  const plans = source.plans.map((plan, index) => (index === 1 ? { ...plan, line: null as never } : plan));
  const runner = await inThreads(2)({ ...source, plans });
  const results: BatchResult[] = [];
  await runner.run(
    [0, 1, 2].map((variant) => ({ variant, first: 0, count: 2 })),
    (result) => void results.push(result),
  );
  await runner.close();
  expect(results.flatMap(({ days }) => days)).toHaveLength(4);
  const failed = results.flatMap((result) => result.failed);
  expect(failed.map(({ variant }) => variant)).toEqual([1, 1]);
  expect(failed[0]!.message).toMatch(/null/);
});

it("keeps threads from study to study, with the same bytes and failures that are told of their variant", async () => {
  const threads = lastingThreads(2);
  try {
    const here = await textOf();
    for (let study = 0; study < 2; study++) expect(await textOf(threads.runner)).toBe(here);
    const source = daySource(threeVariants(), "none", false);
    const plans = source.plans.map((plan, index) => (index === 1 ? { ...plan, line: null as never } : plan));
    const runner = await threads.runner({ ...source, plans });
    const failed: number[] = [];
    await runner.run(
      [0, 1, 2].map((variant) => ({ variant, first: 0, count: 2 })),
      (result) => void failed.push(...result.failed.map(({ variant }) => variant)),
    );
    expect(failed).toEqual([1, 1]);
  } finally {
    await threads.close();
  }
});
