import { expect, it } from "vitest";
import type { DaySource } from "../../../../sim/days/run/index.ts";
import { TaskCancelled } from "../../../../viz/page/worker/messages.ts";
import { warmUpWorkers } from "../../../../viz/page/worker/warmUpWorkers.ts";
import { WorkerPool } from "../../../../viz/page/worker/workerPool.ts";
import { TestWorkerPort } from "../../../support/testWorkerPort.ts";

const source = { seed: "1", plans: [{}] } as unknown as DaySource;

it("has every worker simulate days of the plan as it is, no day twice, until there are enough", async () => {
  const ports = [new TestWorkerPort(), new TestWorkerPort()];
  const done = warmUpWorkers(new WorkerPool(ports), source, () => true);
  for (let day = 0; day < 20; day++) for (const port of ports) port.reply({ days: [], failed: [] });
  await done;
  const days = ports.flatMap(({ asked }) => asked.map(({ task }) => task));
  expect(days).toHaveLength(40);
  const batches = days.map((task) => (task?.kind === "days" ? task.batch : null));
  expect(batches.every((batch) => batch?.variant === 0 && batch.count === 1)).toBe(true);
  expect(new Set(batches.map((batch) => batch?.first)).size).toBe(40);
});

it("lets whatever is asked go first, and leaves off when nobody wants it any more", async () => {
  const port = new TestWorkerPort();
  const pool = new WorkerPool([port]);
  let wanted = true;
  const warmUp = warmUpWorkers(pool, source, () => wanted);
  const read = pool.ask<"read">({ kind: "read", question: {} as never });
  port.reply({ days: [], failed: [] });
  expect(port.asked.at(-1)?.task?.kind).toBe("read");
  wanted = false;
  port.reply("read");
  expect(await read).toBe("read");
  await expect(warmUp).rejects.toBeInstanceOf(TaskCancelled);
  expect(port.asked).toHaveLength(2);
});

it("does not go on for long where days are long", async () => {
  const port = new TestWorkerPort();
  let clock = 0;
  const warmUp = warmUpWorkers(
    new WorkerPool([port]),
    source,
    () => true,
    () => clock,
  );
  for (let day = 0; day < 3; day++) {
    clock += 800;
    port.reply({ days: [], failed: [] });
  }
  await expect(warmUp).rejects.toBeInstanceOf(TaskCancelled);
  expect(port.asked).toHaveLength(2);
});
