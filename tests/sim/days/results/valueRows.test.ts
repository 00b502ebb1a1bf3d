import { expect, it } from "vitest";
import { valueRows } from "../../../../sim/days/results/valueRows.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("goes variant by variant, response by response, day by day", () => {
  const rows = [...valueRows(handMadeResults())];
  expect(rows).toHaveLength(2 * 3 * 3);
  expect(rows.slice(0, 4).map(({ response, replication, value }) => [response, replication, value])).toEqual([
    ["headsPerHour", 0, 450],
    ["headsPerHour", 1, 480],
    ["headsPerHour", 2, 510],
    ["finish", 0, expect.any(Number)],
  ]);
});
