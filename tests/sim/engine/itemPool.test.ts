import { describe, expect, it } from "vitest";
import { Fifo } from "../../../sim/engine/fifo.ts";
import { ItemPool } from "../../../sim/engine/itemPool.ts";

describe("ItemPool", () => {
  it("reuses rows, so that it holds what is present and not what has passed", () => {
    const pool = new ItemPool(0);
    for (let head = 0; head < 100_000; head++) pool.give(pool.take());
    expect(pool.live).toBe(0);
    expect(pool.next.length).toBe(256);
  });

  it("keeps the rows' contents when it grows", () => {
    const pool = new ItemPool(2);
    const items = Array.from({ length: 1000 }, (_, index) => {
      const item = pool.take();
      pool.arrived[item] = index;
      pool.stamps[item * 2 + 1] = -index;
      return item;
    });
    expect(new Set(items).size).toBe(1000);
    expect(items.map((item) => pool.arrived[item])).toEqual(items.map((_, index) => index));
    expect(items.map((item) => pool.stamps[item * 2 + 1])).toEqual(items.map((_, index) => -index));
  });

  it("hands out rows without stamps of the head before", () => {
    const pool = new ItemPool(1);
    const first = pool.take();
    pool.stamps[first] = 5;
    pool.give(first);
    expect(pool.take()).toBe(first);
    expect(pool.stamps[first]).toBeNaN();
  });
});

describe("Fifo", () => {
  it("gives items back in the order they came, each list its own, also after running empty", () => {
    const pool = new ItemPool(0);
    const one = new Fifo(pool);
    const other = new Fifo(pool);
    const [a, b, c, d] = [pool.take(), pool.take(), pool.take(), pool.take()];
    one.push(a);
    other.push(b);
    one.push(c);
    expect([one.length, other.length]).toEqual([2, 1]);
    expect([one.shift(), one.shift(), other.shift()]).toEqual([a, c, b]);
    one.push(d);
    expect(one.first).toBe(d);
    expect(one.shift()).toBe(d);
    expect(one.length).toBe(0);
  });
});
