import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { TABLES } from "../../experiments/timestudies/invent.ts";
import { readPlan } from "../../sim/asked/plan/index.ts";
import { readObserved } from "../../sim/questions/calibrate/index.ts";
import { fitColumn, readTimes } from "../../sim/questions/fit/index.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/timestudies");
const text = (name: string) => readFileSync(join(FOLDER, name), "utf8");
const fitsOf = (name: string) =>
  readTimes(text(name), { unit: null, by: null }).columns!.map((column) =>
    fitColumn(column, { seed: "1", samples: 199 }),
  );

describe("the invented time studies", () => {
  it.each(Object.keys(TABLES))("%s is what its program makes", (name) => {
    expect(text(name)).toBe(TABLES[name]!());
  });

  it("of Ferncote are plain: nothing strong, no more worth a look than chance makes, every column gets a family", () => {
    const fits = [...fitsOf("ferncote-cycles.csv"), ...fitsOf("ferncote-stops.csv")];
    const found = (wanted: string) =>
      fits.flatMap(({ heading, checks }) =>
        checks.filter(({ verdict }) => verdict === wanted).map(({ name }) => `${heading}: ${name}`),
      );
    expect(found("strong")).toEqual([]);
    // 51 tests at 0.05: 2.6 expected by chance.
    expect(found("look")).toEqual(["stunning: lag-1 correlation"]);
    for (const fit of fits) expect(fit.advice.kind).toBe("family");
  });

  it("that was careless shows its fault in each column", () => {
    const found = fitsOf("careless.csv").map(({ heading, checks }) => [
      heading,
      checks.filter(({ verdict }) => verdict === "strong" || verdict === "look").map(({ name }) => name),
    ]);
    expect(found).toEqual([
      ["final trim", ["drift"]],
      ["hand skinning", ["two populations"]],
      ["stunning", ["rounding", "two populations"]],
      ["inspection", ["zeros", "outliers"]],
      ["sticking", ["number of times"]],
    ]);
  });

  it("has observed days that can be held against Ferncote", () => {
    const plan = readPlan(JSON.parse(text("../plans/ferncote.json")), { readText: () => "" }).plan!;
    const { observed, faults } = readObserved(text("ferncote-observed.csv"), plan);
    expect(faults).toEqual([]);
    expect(observed!.quantities.map(({ quantity }) => quantity.kind)).toEqual([
      ...new Array(8).fill("count"),
      "response",
    ]);
  });
});
