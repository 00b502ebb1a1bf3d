import { describe, expect, it } from "vitest";
import { type Outgoing, type Task, TaskCancelled } from "../../../../viz/page/worker/messages.ts";
import { WorkerPool } from "../../../../viz/page/worker/workerPool.ts";
import { TestWorkerPort } from "../../../support/testWorkerPort.ts";

const course = (seed: string): Extract<Task, { kind: "course" }> => ({
  kind: "course",
  plan: {} as never,
  seed,
  replication: 0,
});
const days = (number: number): Extract<Task, { kind: "days" }> => ({
  kind: "days",
  number,
  source: { seed: "1" } as never,
  batch: { variant: 0, first: 0, count: 1 },
});
const seedOf = ({ task }: Outgoing) => (task as { seed?: string }).seed;

describe("WorkerPool", () => {
  it("gives each worker one task at a time, the urgent ones first", async () => {
    const port = new TestWorkerPort();
    const pool = new WorkerPool([port]);
    const first = pool.ask<"course">(course("a"));
    void pool.ask<"course">(course("b"));
    void pool.ask<"course">(course("c"), { urgency: 2 });
    expect(port.asked.map(seedOf)).toEqual(["a"]);
    port.reply("done");
    expect(await first).toBe("done");
    port.reply("done");
    expect(port.asked.map(seedOf)).toEqual(["a", "c", "b"]);
  });

  it("drops a task that nobody wants when its turn comes", async () => {
    const port = new TestWorkerPort();
    const pool = new WorkerPool([port]);
    void pool.ask<"course">(course("a"));
    let wanted = true;
    const late = pool.ask<"course">(course("b"), { wanted: () => wanted });
    wanted = false;
    port.reply("done");
    await expect(late).rejects.toThrow(TaskCancelled);
    expect(port.asked).toHaveLength(1);
  });

  it("tells a worker once that what it has begun is not wanted any more, when something else is asked", async () => {
    const port = new TestWorkerPort();
    const pool = new WorkerPool([port]);
    let wanted = true;
    const late = pool.ask<"course">(course("a"), { wanted: () => wanted });
    void pool.ask<"course">(course("b"));
    expect(port.asked).toHaveLength(1);
    wanted = false;
    void pool.ask<"course">(course("c"));
    void pool.ask<"course">(course("d"));
    expect(port.asked.slice(1)).toEqual([{ id: port.asked[0]!.id, task: null }]);
    port.fail("stopped", "TaskCancelled");
    await expect(late).rejects.toThrow(TaskCancelled);
    expect(seedOf(port.asked.at(-1)!)).toBe("b");
  });

  it("sends a study's plans to a worker once", () => {
    const ports = [new TestWorkerPort(), new TestWorkerPort()];
    const pool = new WorkerPool(ports);
    void pool.ask<"days">(days(1));
    void pool.ask<"days">(days(1));
    ports[0]!.reply({});
    void pool.ask<"days">(days(1));
    ports[0]!.reply({});
    void pool.ask<"days">(days(2));
    const sources = ports.map(({ asked }) => asked.map(({ task }) => (task as { source: unknown }).source !== null));
    expect(sources).toEqual([[true, false, true], [true]]);
  });

  it("passes a worker's error on and goes on with the next task", async () => {
    const port = new TestWorkerPort();
    const pool = new WorkerPool([port]);
    const failing = pool.ask<"course">(course("a"));
    const next = pool.ask<"course">(course("b"));
    port.fail("broken");
    await expect(failing).rejects.toMatchObject({ name: "Broken", message: "broken" });
    port.reply("fine");
    expect(await next).toBe("fine");
  });

  it("lets one worker rest while something else is done, and no longer, even where that fails", async () => {
    const ports = [new TestWorkerPort(), new TestWorkerPort()];
    const pool = new WorkerPool(ports);
    let end = (): void => {};
    const other = pool.withOneResting(
      () =>
        new Promise<void>((_, fail) => {
          end = () => fail(new Error("broken"));
        }),
    );
    void pool.ask<"course">(course("a"));
    void pool.ask<"course">(course("b"));
    const seeds = () => ports.map(({ asked }) => asked.map(seedOf)).filter((asked) => asked.length > 0);
    expect(seeds()).toEqual([["a"]]);
    end();
    await expect(other).rejects.toThrow("broken");
    expect(seeds().flat().sort()).toEqual(["a", "b"]);
  });
});
