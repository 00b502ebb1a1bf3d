import { expect, it } from "vitest";
import type { DaySource } from "../../../../sim/days/run/index.ts";
import { Dropped } from "../../../../viz/page/worker/dropped.ts";
import { practise } from "../../../../viz/page/worker/practise.ts";
import { WorkerPool } from "../../../../viz/page/worker/workerPool.ts";
import { TestHand } from "../../../support/testHand.ts";

const source = { seed: "1", plans: [{}] } as unknown as DaySource;

it("has every worker simulate days of the plan as it is, no day twice, until there are enough", async () => {
  const hands = [new TestHand(), new TestHand()];
  const done = practise(new WorkerPool(hands), source, () => true);
  for (let day = 0; day < 20; day++) for (const hand of hands) hand.reply({ days: [], failed: [] });
  await done;
  const days = hands.flatMap(({ asked }) => asked.map(({ task }) => task));
  expect(days).toHaveLength(40);
  const batches = days.map((task) => (task?.kind === "days" ? task.batch : null));
  expect(batches.every((batch) => batch?.variant === 0 && batch.count === 1)).toBe(true);
  expect(new Set(batches.map((batch) => batch?.first)).size).toBe(40);
});

it("lets whatever is asked go first, and leaves off when nobody wants it any more", async () => {
  const hand = new TestHand();
  const pool = new WorkerPool([hand]);
  let wanted = true;
  const practice = practise(pool, source, () => wanted);
  const read = pool.ask<"read">({ kind: "read", question: {} as never });
  hand.reply({ days: [], failed: [] });
  expect(hand.asked.at(-1)?.task?.kind).toBe("read");
  wanted = false;
  hand.reply("read");
  expect(await read).toBe("read");
  await expect(practice).rejects.toBeInstanceOf(Dropped);
  expect(hand.asked).toHaveLength(2);
});

it("does not go on for long where days are long", async () => {
  const hand = new TestHand();
  let clock = 0;
  const practice = practise(
    new WorkerPool([hand]),
    source,
    () => true,
    () => clock,
  );
  for (let day = 0; day < 3; day++) {
    clock += 800;
    hand.reply({ days: [], failed: [] });
  }
  await expect(practice).rejects.toBeInstanceOf(Dropped);
  expect(hand.asked).toHaveLength(2);
});
