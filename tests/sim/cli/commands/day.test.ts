import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../../../support/cliFolder.ts";
import { runCli } from "../../../support/runCli.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };
const TABLES = [
  "data-dictionary.csv",
  "data-dictionary.json",
  "summary.csv",
  "traces.csv",
  "values.csv",
  "values.parquet",
];

describe("gambrel day", PATIENCE, () => {
  it("shows the day on standard error and writes nothing", async () => {
    const folder = cliFolder();
    const { code, out, err } = await runCli(folder, ["day", "plan.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/Carcasses out +\d+ carcasses/);
    expect(err).toMatch(/stage, share of own time +working +blocked +starved +no crew +down +on break/);
    expect(err).toMatch(/official veterinarian/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("gives the same data for the same seed and day, and other data for others", async () => {
    const folder = cliFolder();
    const day = async (...more: string[]): Promise<number | null> => {
      const { out } = await runCli(folder, ["day", "plan.json", "--json", "--traces", "none", ...more]);
      return JSON.parse(out).variants[0].values.finish[0];
    };
    const first = await day("--seed", "a");
    expect(await day("--seed", "a")).toBe(first);
    expect(await day("--seed", "b")).not.toBe(first);
    expect(await day("--seed", "a", "--day", "2")).not.toBe(first);
  });

  it("writes a run folder where it is told to", async () => {
    const folder = cliFolder();
    const { code } = await runCli(folder, ["day", "plan.json", "--out", "my day", "--traces", "exact"]);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "my day")).sort()).toEqual([
      "charts",
      ...TABLES.slice(0, 2),
      ...["plan.json", "report.html", "results.json", "stops.csv"],
      ...TABLES.slice(2),
    ]);
    expect(JSON.parse(readFileSync(join(folder, "my day", "plan.json"), "utf8"))).toEqual(SMALL_PLAN);
  });

  it("points out that a study is no plan", async () => {
    const { code, err } = await runCli(cliFolder(), ["day", "study.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/this is a study; run it with "gambrel study"/);
  });
});
