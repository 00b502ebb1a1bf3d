import { describe, expect, it } from "vitest";
import { Fifos } from "../../../sim/engine/fifos.ts";
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

describe("Fifos", () => {
  it("gives items back in the order they came, list by list, also after running empty", () => {
    const pool = new ItemPool(0);
    const fifos = new Fifos(2, pool);
    const [a, b, c, d] = [pool.take(), pool.take(), pool.take(), pool.take()];
    fifos.push(0, a);
    fifos.push(1, b);
    fifos.push(0, c);
    expect([fifos.length[0], fifos.length[1]]).toEqual([2, 1]);
    expect([fifos.shift(0), fifos.shift(0), fifos.shift(1)]).toEqual([a, c, b]);
    fifos.push(0, d);
    expect(fifos.first[0]).toBe(d);
    expect(fifos.shift(0)).toBe(d);
    expect(fifos.length[0]).toBe(0);
  });
});
