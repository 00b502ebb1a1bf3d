import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../../../support/cliFolder.ts";
import { runCli } from "../../../support/runCli.ts";

const WEEK = resolve(import.meta.dirname, "../../../../experiments/plans/parts/week.json");

describe("gambrel season", { timeout: 120_000 }, () => {
  it("tells the year, draws it, and leaves a folder that can be drawn again", async () => {
    const folder = cliFolder();
    const plan = JSON.parse(readFileSync(WEEK, "utf8"));
    const weeks = [
      { name: "usual", times: 48 },
      { name: "quiet", times: 4, heads: 0.5 },
    ];
    writeFileSync(join(folder, "year.json"), JSON.stringify({ name: "our year", plan, runs: 2, weeks }));
    const { code, err } = await runCli(folder, ["season", "year.json", "--threads", "1", "--out", "run"]);
    expect({ code, err }).toMatchObject({ code: 0 });
    expect(err).toMatch(/Hardest of 52 weeks is “usual” \(weeks 1 to 48\)/);
    for (const file of ["season.json", "charts/season.svg", "report.html"])
      expect(existsSync(join(folder, "run", file)), file).toBe(true);
    expect(readFileSync(join(folder, "run", "report.html"), "utf8")).toContain("The year, week by week");
    const again = await runCli(folder, ["report", "run"]);
    expect({ ...again }).toMatchObject({ code: 0 });
    expect(readFileSync(join(folder, "run", "report.html"), "utf8")).toContain("The year, week by week");
  });
});
