import { expect, it } from "vitest";
import { doorMetres, passageMetres, workRoomSquareMetres } from "../../../../sim/questions/dossier/passages.ts";

/** ASR A1.8 (2022), Table 2: people who use it, clear width of doors (column B), of passages (column C). */
const TABLE = [
  [5, 0.8, 0.9],
  [20, 0.9, 1.0],
  [50, 0.9, 1.2],
  [100, 1.0, 1.2],
  [200, 1.05, 1.2],
  [300, 1.65, 1.8],
  [400, 2.25, 2.4],
] as const;

it("passages and doors are as wide as ASR A1.8 (2022), Table 2 has them, for all numbers up to 200 by the next row", () => {
  for (const [people, door, passage] of TABLE) {
    expect(passageMetres(people)).toBeCloseTo(passage, 12);
    expect(doorMetres(people)).toBeCloseTo(door, 12);
  }
  expect([0, 1, 5].map(passageMetres)).toEqual([0.9, 0.9, 0.9]);
  expect([6, 21, 51].map(passageMetres)).toEqual([1, 1.2, 1.2]);
  expect([6, 51, 101].map(doorMetres)).toEqual([0.9, 1, 1.05]);
});

it("over 200 people widths lie between the rows, over 400 on the line of the last two", () => {
  expect(passageMetres(250)).toBeCloseTo(1.5, 12);
  expect(doorMetres(350)).toBeCloseTo(1.95, 12);
  expect(passageMetres(500)).toBeCloseTo(3, 12);
});

it("work rooms have 8 m² for the first person and 6 m² for each other (ASR A1.2, from memory)", () => {
  expect([0, 1, 2, 12].map(workRoomSquareMetres)).toEqual([0, 8, 14, 74]);
});
