import type { ItemPool } from "./itemPool.ts";

const NONE = -1;

/** Several first-in-first-out lists of items, threaded through the pool's `next`: no list has a size of its own. */
export class Fifos {
  readonly length: Int32Array;
  readonly first: Int32Array;
  private readonly last: Int32Array;
  private readonly pool: ItemPool;

  constructor(lists: number, pool: ItemPool) {
    this.length = new Int32Array(lists);
    this.first = new Int32Array(lists).fill(NONE);
    this.last = new Int32Array(lists).fill(NONE);
    this.pool = pool;
  }

  push(list: number, item: number): void {
    this.pool.next[item] = NONE;
    if (this.length[list] === 0) this.first[list] = item;
    else this.pool.next[this.last[list]!] = item;
    this.last[list] = item;
    this.length[list]!++;
  }

  /** Takes the first item; the list must not be empty. */
  shift(list: number): number {
    const item = this.first[list]!;
    this.first[list] = this.pool.next[item]!;
    this.length[list]!--;
    return item;
  }
}
