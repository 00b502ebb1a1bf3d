import { NONE } from "./codes.ts";
import { Item } from "./item.ts";

/**
 * Heads and crates now in the plant. Who has left is taken anew, so the pool grows with what is present, not with what has
 * passed (the only allocation while a day runs).
 */
export class ItemPool {
  /** Items in the plant now. */
  live = 0;
  /** Items ever made: their rows are below. */
  made = 0;
  private readonly stamps: number;
  private free: Item | null = null;

  constructor(stamps: number) {
    this.stamps = stamps;
  }

  /** An item as new, but for what whoever takes it writes: load, number, weights and times. */
  take(): Item {
    this.live++;
    const item = this.free;
    if (item === null) return this.make();
    this.free = item.next;
    item.next = null;
    item.destination = NONE;
    item.sendTo = NONE;
    item.flags = 0;
    item.inside = 0;
    item.doneAt = NONE;
    item.stamps.fill(Number.NaN);
    return item;
  }

  give(item: Item): void {
    this.live--;
    item.next = this.free;
    this.free = item;
  }

  private make(): Item {
    const item = new Item(this.made++, this.stamps);
    item.stamps.fill(Number.NaN);
    return item;
  }
}
