import { describe, expect, it } from "vitest";
import { type Range, readRange } from "../../../../sim/asked/study/range.ts";

const range = (from: unknown, to: unknown): Range => readRange(from, to).value as Range;
const grid = (from: unknown, to: unknown, points: number) =>
  Array.from({ length: points }, (_, point) => range(from, to).at(point / (points - 1)));

describe("readRange", () => {
  it.each([
    ["whole numbers stay whole", 2, 8, 4, [2, 4, 6, 8]],
    ["whole numbers are rounded", 20, 40, 4, [20, 27, 33, 40]],
    ["other numbers are not", 0.1, 0.4, 4, [0.1, 0.2, 0.3, 0.4]],
    ["quantities keep their unit and its spacing", "2 min", "3 min", 4, ["2 min", "2.3333 min", "2.6667 min", "3 min"]],
    ["a quantity may be written without a space", "4s", "6s", 3, ["4s", "5s", "6s"]],
    ["shares", "0.5 %", "1.5 %", 3, ["0.5 %", "1 %", "1.5 %"]],
    ["money rates", "18 EUR/h", "24 EUR/h", 3, ["18 EUR/h", "21 EUR/h", "24 EUR/h"]],
    ["times of day in full minutes", "06:00", "07:30", 4, ["06:00", "06:30", "07:00", "07:30"]],
    ["times of day with seconds", "06:00:00", "06:00:30", 3, ["06:00", "06:00:15", "06:00:30"]],
    ["downward as well", "9 s", "5 s", 3, ["9 s", "7 s", "5 s"]],
    ["negative temperatures", "-2 °C", "4 °C", 3, ["-2 °C", "1 °C", "4 °C"]],
  ])("%s", (_, from, to, points, values) => {
    expect(grid(from, to, points as number)).toEqual(values);
  });

  it("keeps its ends to the digit and its values between them, however narrow it is", () => {
    const narrow = range("1000000.1 s", "1000000.2 s");
    expect([narrow.at(0), narrow.at(1)]).toEqual(["1000000.1 s", "1000000.2 s"]);
    const values = new Set(Array.from({ length: 101 }, (_, step) => narrow.at(step / 100)));
    expect(values.size).toBe(101);
  });

  it("draws each whole number as often, which rounding would not do at the ends", () => {
    const draws = Array.from({ length: 300 }, (_, step) => range(1, 3).drawn((step + 0.5) / 300));
    expect([1, 2, 3].map((value) => draws.filter((draw) => draw === value).length)).toEqual([100, 100, 100]);
    expect(range(1, 3).count).toBe(3);
    expect(range(1, 3.5).count).toBeNull();
  });

  it.each([
    [5, 5, "both ends are 5"],
    ["5 s", "5.0 s", 'both ends are "5 s"'],
    ["5 s", "1 min", "the ends have the units 's' and 'min'"],
    [5, "8 s", '5 to "8 s"'],
    ["few", "many", '"few" to "many"'],
    [null, 3, "null to 3"],
  ])("refuses %j to %j", (from, to, found) => {
    expect(readRange(from, to).fault?.found).toBe(found);
  });
});
