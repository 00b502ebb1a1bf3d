import { describe, expect, it } from "vitest";
import { Fifo } from "../../../../../sim/day/engine/state/fifo.ts";
import { UNFINISHED } from "../../../../../sim/day/engine/state/item.ts";
import { ItemPool } from "../../../../../sim/day/engine/state/itemPool.ts";

describe("ItemPool", () => {
  it("takes anew who has left, so that it holds what is present and not what has passed", () => {
    const pool = new ItemPool(0);
    for (let head = 0; head < 100_000; head++) pool.give(pool.take());
    expect([pool.live, pool.made]).toEqual([0, 1]);
  });

  it("gives each item that is present a row of its own", () => {
    const pool = new ItemPool(0);
    const items = Array.from({ length: 1000 }, () => pool.take());
    expect(new Set(items.map(({ row }) => row)).size).toBe(1000);
    expect(Math.max(...items.map(({ row }) => row))).toBe(pool.made - 1);
  });

  it("hands out items without anything of the head before", () => {
    const pool = new ItemPool(2);
    const first = pool.take();
    const asNew = { ...first, stamps: [...first.stamps] };
    expect(asNew.stamps).toEqual([Number.NaN, Number.NaN]);
    first.stamps[1] = 5;
    Object.assign(first, { flags: UNFINISHED, inside: 3, sendTo: 2, destination: 1, doneAt: 4, next: pool.take() });
    pool.give(first);
    expect(pool.take()).toBe(first);
    expect({ ...first, stamps: [...first.stamps] }).toEqual(asNew);
  });
});

describe("Fifo", () => {
  it("gives items back in the order they came, each list its own, also after running empty", () => {
    const pool = new ItemPool(0);
    const one = new Fifo();
    const other = new Fifo();
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
