import type { Item } from "./item.ts";

/**
 * The heads of a dwell stage whose time is not up, the one that is ready next on top; at equal times who came in first.
 * A binary heap threaded through one array, which grows with the places taken.
 */
export class DwellEnds {
  length = 0;
  private readonly heap: Item[] = [];
  private turns = 0;

  /** Whose time is up next; there must be one. */
  get first(): Item {
    return this.heap[0]!;
  }

  push(item: Item): void {
    const { heap } = this;
    item.turn = this.turns++;
    let at = this.length++;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!isBefore(item, heap[above]!)) break;
      heap[at] = heap[above]!;
      at = above;
    }
    heap[at] = item;
  }

  /** Takes the first one; there must be one. */
  shift(): Item {
    const { heap } = this;
    const first = heap[0]!;
    const last = heap[--this.length]!;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= this.length) break;
      if (below + 1 < this.length && isBefore(heap[below + 1]!, heap[below]!)) below++;
      if (!isBefore(heap[below]!, last)) break;
      heap[at] = heap[below]!;
      at = below;
    }
    heap[at] = last;
    return first;
  }
}

function isBefore(a: Item, b: Item): boolean {
  return a.ready < b.ready || (a.ready === b.ready && a.turn < b.turn);
}
