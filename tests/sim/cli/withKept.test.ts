import { expect, it } from "vitest";
import { withKept } from "../../../sim/cli/withKept.ts";
import type { SimulatedDay } from "../../../sim/days/run/index.ts";

function day(variant: number, replication: number): SimulatedDay {
  return { variant, replication, values: [], day: null };
}

it("tells a search the days that the disk knows, once each and only those asked for; new ones go to both", () => {
  const told: SimulatedDay[] = [];
  const written: SimulatedDay[] = [];
  const own = { known: [day(0, 0)], note: (each: SimulatedDay) => void told.push(each) };
  const disk = {
    known: [day(0, 0), day(0, 1), day(1, 0), day(1, 0), day(1, 2)],
    note: (each: SimulatedDay) => void written.push(each),
  };
  const joined = withKept(own, disk, { replications: 2 });
  expect(joined.known).toEqual([day(0, 0), day(0, 1), day(1, 0)]);
  expect(told).toEqual([day(0, 1), day(1, 0)]);
  joined.note(day(1, 1));
  expect([told.at(-1), written]).toEqual([day(1, 1), [day(1, 1)]]);
});
