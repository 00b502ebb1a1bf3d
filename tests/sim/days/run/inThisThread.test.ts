import { expect, it } from "vitest";
import { type Batch, daySource, inThisThread, type SimulatedDay } from "../../../../sim/days/run/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const SOURCE = daySource(threeVariants(), "none", false);
const BATCHES: Batch[] = [
  { variant: 2, first: 1, count: 2 },
  { variant: 0, first: 0, count: 1 },
];

it("simulates day by day, the first days of every variant first, with a pause after each", async () => {
  const events: string[] = [];
  const runner = await inThisThread(async () => void events.push("pause"))(SOURCE);
  await runner.run(BATCHES, ({ days }) => {
    for (const { variant, replication } of days) events.push(`${variant}/${replication}`);
  });
  expect(events).toEqual(["0/0", "pause", "2/1", "pause", "2/2", "pause"]);
});

it("stops before the next day once the signal is aborted, with its reason", async () => {
  const controller = new AbortController();
  const found: SimulatedDay[] = [];
  const runner = await inThisThread(async () => controller.abort(new Error("enough")))(SOURCE);
  const run = runner.run(BATCHES, ({ days }) => void found.push(...days), controller.signal);
  await expect(run).rejects.toThrow("enough");
  expect(found).toHaveLength(1);
});
