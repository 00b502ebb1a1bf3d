import { csvParse } from "d3";
import { expect, it } from "vitest";
import { valuesCsv } from "../../../../sim/days/results/valuesCsv.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("has one row per variant, response and replication, an empty cell where there is no value", () => {
  const rows = csvParse([...valuesCsv(handMadeResults())].join(""));
  expect(rows).toHaveLength(2 * 3 * 3);
  expect(rows[1]).toMatchObject({ variant: "base", replication: "1", response: "headsPerHour", value: "480" });
  expect(rows.filter((row) => row.response === "beyond.chilling time").map((row) => row.value)).toEqual(
    new Array(6).fill(""),
  );
});
