import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";
import { readPlan } from "../../../../../sim/asked/plan/index.ts";
import { stableJson } from "../../../../../sim/days/results/index.ts";
import {
  type BatchResult,
  daySource,
  type OpenRunner,
  runStudy,
  type SimulatedDay,
} from "../../../../../sim/days/run/index.ts";
import { inThreads, lastingThreads } from "../../../../../sim/days/run/threads/index.ts";
import { exactJson, parseExactJson, simulatedDayShape } from "../../../../../sim/days/run/wire/index.ts";
import { weekStudy } from "../../../../../sim/questions/week/index.ts";
import { threeVariants } from "../../../../support/threeVariants.ts";

const WEEK = resolve(import.meta.dirname, "../../../../../experiments/plans/parts/week.json");

async function textOf(runner?: OpenRunner): Promise<string> {
  const options = { gambrel: "1.2.3", command: "c", ...(runner === undefined ? {} : { runner }) };
  return stableJson(await runStudy(threeVariants({ replications: 7 }), options));
}

it("gives the same bytes in this thread and in 1, 2 and 3 others", async () => {
  const here = await textOf();
  for (const threads of [1, 2, 3]) expect(await textOf(inThreads(threads))).toBe(here);
});

it("gives the same bytes of weeks in this thread and in 2 others, and of a part of them known from a journal", async () => {
  const { plan } = readPlan(JSON.parse(readFileSync(WEEK, "utf8")));
  const study = weekStudy(plan!, "1", 5);
  const kept: SimulatedDay[] = [];
  const options = { gambrel: "1.2.3", command: "c" };
  const journal = (known: SimulatedDay[]) => ({ known, note: (day: SimulatedDay) => void kept.push(day) });
  const here = stableJson(await runStudy(study, { ...options, journal: journal([]) }));
  expect(stableJson(await runStudy(study, { ...options, runner: inThreads(2) }))).toBe(here);
  const shape = simulatedDayShape(daySource(study, "binned", false));
  // As a journal writes and reads them, two of the five.
  const known = kept.slice(0, 2).map((day) => shape.parse(parseExactJson(exactJson(day))));
  expect(stableJson(await runStudy(study, { ...options, journal: journal(known) }))).toBe(here);
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
