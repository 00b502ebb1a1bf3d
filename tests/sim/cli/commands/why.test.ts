import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";

/** Starting the program takes most of a second each time, and each run tries several plans. */
const PATIENCE = { timeout: 120_000 };
const FEW = ["--replications", "3", "--threads", "1"];

describe("gambrel why", PATIENCE, () => {
  it("says what the end of work was owed to, how it moves, and what to change first", async () => {
    const folder = cliFolder();
    const { code, out, err } = await callCli(folder, ["why", "plan.json", ...FEW]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/Means over 3 days of seed "1", 95 % intervals in brackets/);
    expect(err).toMatch(/The line waited for \w+.*: its work +[\d.]+ (s|min|h) +\(.+ to .+\) +\d+\.\d %/);
    expect(err).toMatch(/What small changes of each time would do is not given, because breaks begin at an hour/);
    expect(err).not.toMatch(/one second less/i);
    expect(err).toMatch(/Momentary bottleneck +alone +with others/);
    expect(err).toMatch(
      /What each change is worth\n +((Start with|Most is gained at) [\w ]+: |None of the changes tried)/,
    );
    expect(err).toMatch(/Where the time went\n +For .* the line (ran at the pace of|waited for) /);
    expect(err).toMatch(/\d+\s+days\s+were\s+simulated\s+to\s+try\s+\d+\s+changes/);
    expect(err).toMatch(/official veterinarian/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("gives all of it as data, and a run folder where it is told to", async () => {
    const folder = cliFolder();
    const { out, code } = await callCli(folder, ["why", "plan.json", ...FEW, "--json", "--out", "why"]);
    expect(code).toBe(0);
    const results = JSON.parse(out);
    const [base, ...tried] = results.variants;
    const sum = base.why.parts.reduce(
      (total: number, { seconds }: { seconds: { mean: number } }) => total + seconds.mean,
      0,
    );
    expect(sum / base.why.total.mean).toBeGreaterThan(0.98);
    expect(results.advice.changes.map(({ variant }: { variant: string }) => variant).sort()).toEqual(
      tried.map(({ name }: { name: string }) => name).sort(),
    );
    expect(JSON.parse(readFileSync(join(folder, "why", "results.json"), "utf8"))).toEqual(results);
    const page = readFileSync(join(folder, "why", "report.html"), "utf8");
    const report = page.replaceAll("\u00a0", " ").replaceAll("&#39;", "'");
    const told = results.advice.words.map((line: string) => report.indexOf(`<li>${line}</li>`));
    expect(results.advice.words.filter((_: string, index: number) => told[index] < 0)).toEqual([]);
    expect(told).toEqual([...told].sort((a: number, b: number) => a - b));
  });

  it("points out that a study is no plan, and that days are counted in whole numbers", async () => {
    const folder = cliFolder();
    expect(await callCli(folder, ["why", "study.json"])).toMatchObject({ code: 2, out: "" });
    const { code, err } = await callCli(folder, ["why", "plan.json", "--replications", "many"]);
    expect(code).toBe(2);
    expect(err).toMatch(/Give a whole number/);
  });
});
