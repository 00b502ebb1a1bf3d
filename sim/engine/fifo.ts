import type { ItemPool } from "./itemPool.ts";

const NONE = -1;

/** A first-in-first-out list of items, threaded through the pool's `next`: it has no size of its own. */
export class Fifo {
  length = 0;
  first = NONE;
  private last = NONE;
  private readonly pool: ItemPool;

  constructor(pool: ItemPool) {
    this.pool = pool;
  }

  push(item: number): void {
    const { next } = this.pool;
    next[item] = NONE;
    if (this.length === 0) this.first = item;
    else next[this.last] = item;
    this.last = item;
    this.length++;
  }

  /** Takes the first item; the list must not be empty. */
  shift(): number {
    const item = this.first;
    this.first = this.pool.next[item]!;
    this.length--;
    return item;
  }
}
