import { describe, expect, it } from "vitest";
import { Dropped } from "../../../../viz/page/worker/dropped.ts";
import type { Outgoing, Task } from "../../../../viz/page/worker/messages.ts";
import { WorkerPool } from "../../../../viz/page/worker/workerPool.ts";
import { TestHand } from "../../../support/testHand.ts";

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
    const hand = new TestHand();
    const pool = new WorkerPool([hand]);
    const first = pool.ask<"course">(course("a"));
    void pool.ask<"course">(course("b"));
    void pool.ask<"course">(course("c"), { urgency: 2 });
    expect(hand.asked.map(seedOf)).toEqual(["a"]);
    hand.reply("done");
    expect(await first).toBe("done");
    hand.reply("done");
    expect(hand.asked.map(seedOf)).toEqual(["a", "c", "b"]);
  });

  it("drops a task that nobody wants when its turn comes", async () => {
    const hand = new TestHand();
    const pool = new WorkerPool([hand]);
    void pool.ask<"course">(course("a"));
    let wanted = true;
    const late = pool.ask<"course">(course("b"), { wanted: () => wanted });
    wanted = false;
    hand.reply("done");
    await expect(late).rejects.toThrow(Dropped);
    expect(hand.asked).toHaveLength(1);
  });

  it("tells a worker once that what it has begun is not wanted any more, when something else is asked", async () => {
    const hand = new TestHand();
    const pool = new WorkerPool([hand]);
    let wanted = true;
    const late = pool.ask<"course">(course("a"), { wanted: () => wanted });
    void pool.ask<"course">(course("b"));
    expect(hand.asked).toHaveLength(1);
    wanted = false;
    void pool.ask<"course">(course("c"));
    void pool.ask<"course">(course("d"));
    expect(hand.asked.slice(1)).toEqual([{ id: hand.asked[0]!.id, task: null }]);
    hand.fail("stopped", "Dropped");
    await expect(late).rejects.toThrow(Dropped);
    expect(seedOf(hand.asked.at(-1)!)).toBe("b");
  });

  it("sends a study's plans to a worker once", () => {
    const hands = [new TestHand(), new TestHand()];
    const pool = new WorkerPool(hands);
    void pool.ask<"days">(days(1));
    void pool.ask<"days">(days(1));
    hands[0]!.reply({});
    void pool.ask<"days">(days(1));
    hands[0]!.reply({});
    void pool.ask<"days">(days(2));
    const sources = hands.map(({ asked }) => asked.map(({ task }) => (task as { source: unknown }).source !== null));
    expect(sources).toEqual([[true, false, true], [true]]);
  });

  it("passes a worker's error on and goes on with the next task", async () => {
    const hand = new TestHand();
    const pool = new WorkerPool([hand]);
    const failing = pool.ask<"course">(course("a"));
    const next = pool.ask<"course">(course("b"));
    hand.fail("broken");
    await expect(failing).rejects.toMatchObject({ name: "Broken", message: "broken" });
    hand.reply("fine");
    expect(await next).toBe("fine");
  });

  it("lets one worker rest while something else is done, and no longer, even where that fails", async () => {
    const hands = [new TestHand(), new TestHand()];
    const pool = new WorkerPool(hands);
    let end = (): void => {};
    const other = pool.withOneResting(
      () =>
        new Promise<void>((_, fail) => {
          end = () => fail(new Error("broken"));
        }),
    );
    void pool.ask<"course">(course("a"));
    void pool.ask<"course">(course("b"));
    const seeds = () => hands.map(({ asked }) => asked.map(seedOf)).filter((asked) => asked.length > 0);
    expect(seeds()).toEqual([["a"]]);
    end();
    await expect(other).rejects.toThrow("broken");
    expect(seeds().flat().sort()).toEqual(["a", "b"]);
  });
});
