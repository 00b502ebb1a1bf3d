import type { OrderRecord, PlacedOrder } from "../dayRecord.ts";

/**
 * Fills orders with the carcasses that leave the line, the one that is due first before the others. Each takes whole
 * carcasses; what leaves when all are filled is free.
 */
export class OrderBook {
  readonly #orders: OrderRecord[];
  readonly #got: Float64Array;
  /** The order being filled, and the next one whose time comes. */
  #row = 0;
  #due = 0;

  constructor(orders: readonly PlacedOrder[]) {
    this.#orders = orders.map((order) => ({ ...order, filledSeconds: null, short: 0 }));
    this.#got = new Float64Array(orders.length);
  }

  /** A carcass of that weight leaves; `now` on the clock of the orders. */
  leave(kilograms: number, now: number): void {
    this.#pass(now);
    const order = this.#orders[this.#row];
    if (order === undefined) return;
    this.#got[this.#row]! += order.carcasses === null ? kilograms : 1;
    if (this.#got[this.#row]! < amountOf(order)) return;
    order.filledSeconds = now;
    this.#row++;
  }

  /** What is there when the days are over. */
  close(): OrderRecord[] {
    this.#pass(Number.POSITIVE_INFINITY);
    return this.#orders;
  }

  /** Orders whose time is over by now: what they lack then. At the very second it is not over. */
  #pass(now: number): void {
    for (; this.#due < this.#orders.length && this.#orders[this.#due]!.bySeconds < now; this.#due++) {
      const order = this.#orders[this.#due]!;
      order.short = order.filledSeconds === null ? amountOf(order) - this.#got[this.#due]! : 0;
    }
  }
}

function amountOf({ carcasses, kilograms }: PlacedOrder): number {
  return carcasses ?? kilograms!;
}
