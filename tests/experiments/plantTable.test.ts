import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { type PlantDays, USES, YIELDS } from "./plantFigures.ts";
import { plantDays, plantTable } from "./plantTable.ts";

let plants: PlantDays[];

beforeAll(async () => {
  plants = await plantDays();
}, 120_000);

describe("the table of the example plants", () => {
  it("is current (if not: npx tsx tests/experiments/makePlantTable.ts)", () => {
    const file = new URL("../../experiments/plans/README.md", import.meta.url);
    expect(readFileSync(file, "utf8")).toBe(plantTable(plants));
  });

  it("has every limit of every plant, and every figure beside a published one or the words that there is none", () => {
    const text = plantTable(plants);
    for (const { plan } of plants) {
      const own = text.split("\n").filter((line) => line.startsWith(`| ${plan.name.split(",")[0]} `));
      expect(own.map((line) => line.split("|")[2]!.trim())).toEqual(plan.limits.map(({ name }) => name));
    }
    for (const { published, range } of [...YIELDS, ...USES])
      expect(published).toMatch(range === null ? /^no source found/ : /(19|20)\d\d/);
  });

  it("marks a figure outside its range, and only such a one", () => {
    const [carcass] = YIELDS;
    const plant = (share: number): PlantDays => ({
      ...plants[0]!,
      mean: (key) => (key === "dressingPercentage" ? share : plants[0]!.mean(key)),
    });
    const rowOf = (share: number) =>
      plantTable([plant(share)])
        .split("\n")
        .find((line) => line.startsWith(`| ${carcass!.what}`));
    expect(rowOf(0.61)).toContain("**61.0**");
    expect(rowOf(0.59)).toContain("| 59.0 ");
  });
});
