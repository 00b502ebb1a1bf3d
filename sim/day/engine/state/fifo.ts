import type { Item } from "./item.ts";

/** A first-in-first-out list of items, threaded through their `next`: an item stands in one list at a time. */
export class Fifo {
  length = 0;
  /** Who goes next; of no meaning in an empty list. */
  first: Item | null = null;
  /** Who came last; of no meaning in an empty list. */
  last: Item | null = null;

  push(item: Item): void {
    item.next = null;
    if (this.length === 0) this.first = item;
    else this.last!.next = item;
    this.last = item;
    this.length++;
  }

  /** Takes out an item that is in the list. Cost: those before it. */
  remove(item: Item): void {
    if (this.first === item) {
      this.shift();
      return;
    }
    let before = this.first!;
    while (before.next !== item) before = before.next!;
    before.next = item.next;
    if (this.last === item) this.last = before;
    this.length--;
  }

  /** Takes the first item; the list must not be empty. */
  shift(): Item {
    const item = this.first!;
    this.first = item.next;
    this.length--;
    return item;
  }
}
