import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DwellEnds } from "../../../../../sim/day/engine/state/dwellEnds.ts";
import { Item } from "../../../../../sim/day/engine/state/item.ts";

function itemReadyAt(ready: number, row: number): Item {
  const item = new Item(row, 0);
  item.ready = ready;
  return item;
}

describe("the heads whose time is not up", () => {
  it("come out by time, at equal times in the order in which they came in, whenever some are taken", () => {
    // Against the plainest way: a list that is searched. Positive: a head comes with this time; 0: the next one goes.
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 6 }), { maxLength: 200 }), (moves) => {
        const ends = new DwellEnds();
        const list: Item[] = [];
        for (const [row, move] of moves.entries()) {
          if (move > 0) {
            const item = itemReadyAt(move, row);
            ends.push(item);
            list.push(item);
          } else if (list.length > 0) {
            const next = list.reduce((first, item) => (item.ready < first.ready ? item : first));
            list.splice(list.indexOf(next), 1);
            expect(ends.first).toBe(next);
            expect(ends.shift()).toBe(next);
          }
          expect(ends.length).toBe(list.length);
        }
      }),
      { seed: 16, numRuns: 300 },
    );
  });
});
