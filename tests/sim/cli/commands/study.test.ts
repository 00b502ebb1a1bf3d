import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../../../support/cliFolder.ts";
import { runCli } from "../../../support/runCli.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };
const RUN_FILES = [
  "charts",
  "data-dictionary.csv",
  "data-dictionary.json",
  "plan.json",
  "report.html",
  "results.json",
  "study.json",
];

describe("gambrel study", PATIENCE, () => {
  it("writes a folder named after the study and says what it found, with intervals", async () => {
    const folder = cliFolder();
    const { code, out, err } = await runCli(folder, ["study", "study.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(readdirSync(join(folder, "runs"))).toEqual(["skinners-places"]);
    expect(readdirSync(join(folder, "runs", "skinners-places")).sort()).toEqual([
      ...RUN_FILES.filter((name) => name !== "study.json"),
      "stops.csv",
      "study.json",
      "summary.csv",
      "traces.csv",
      "values.csv",
      "values.parquet",
    ]);
    expect(err).toMatch(/\+1 person +[\d.]+ carcasses\/h +\([\d.]+ to [\d.]+ carcasses\/h\)/);
    expect(err).toMatch(
      /more than today's plan \(\+[\d.]+ to \+[\d.]+ carcasses\/h at 95 %, sure even though 2 changes were compared; on the same 5 days\)/,
    );
    expect(err).toMatch(/The same as today's plan on all 5 days\./);
    expect(err).not.toContain("\u001b");
    const study = readFileSync(join(folder, "runs", "skinners-places", "study.json"), "utf8");
    expect(study).toBe(readFileSync(join(folder, "study.json"), "utf8"));
  });

  it("says in its results how to repeat them, and doing so gives the same bytes", async () => {
    const folder = cliFolder();
    await runCli(folder, ["study", "study.json", "--out", "a", "--seed", "x y", "--replications", "2"]);
    const written = readFileSync(join(folder, "a", "results.json"), "utf8");
    expect(JSON.parse(written).study.command).toBe("gambrel study study.json --seed 'x y' --replications 2");
    const { out } = await runCli(folder, ["study", "study.json", "--seed", "x y", "--replications", "2", "--json"]);
    expect(out).toBe(written);
    expect(readdirSync(folder).sort()).toEqual(["a", "plan.json", "study.json"]);
  });

  it("refuses a folder with a run in it before running, and replaces it with --overwrite", async () => {
    const folder = cliFolder();
    const args = ["study", "study.json", "--replications", "2", "--out", "a"];
    await runCli(folder, args);
    const refused = await runCli(folder, args);
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(/already holds a run.*--overwrite/);
    expect(refused.err).not.toMatch(/simulated/);
    expect((await runCli(folder, [...args, "--overwrite"])).code).toBe(0);
  });

  it("never replaces someone's files, even with --overwrite", async () => {
    const folder = cliFolder();
    mkdirSync(join(folder, "thesis"));
    writeFileSync(join(folder, "thesis", "chapter.txt"), "text");
    const { code, err } = await runCli(folder, ["study", "study.json", "--out", "thesis", "--overwrite"]);
    expect(code).toBe(2);
    expect(err).toMatch(/files that are not of a run \(chapter\.txt\)/);
    expect(readdirSync(join(folder, "thesis"))).toEqual(["chapter.txt"]);
  });

  it("writes nothing when a variant is unsound", async () => {
    const study = {
      name: "x",
      plan: "plan.json",
      design: { list: [{ name: "bad", set: { "line.skining.buffer": 1 } }] },
    };
    const folder = cliFolder({ "study.json": study });
    const { code, err } = await runCli(folder, ["study", "study.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/skining/);
    expect(existsSync(join(folder, "runs"))).toBe(false);
  });

  it("refuses a folder below a file before running", async () => {
    const folder = cliFolder({ blocker: "a file where a folder would have to be" });
    const { code, err } = await runCli(folder, ["study", "study.json", "--out", "blocker/a"]);
    expect(code).toBe(2);
    expect(err).toMatch(/blocker is a file, not a folder; name another folder/);
  });

  it("fails with exit code 1, one sentence and no trace of the program when the disk says no", async () => {
    const args = ["day", "plan.json", "--out", "n".repeat(300)];
    const { code, out, err } = await runCli(cliFolder(), args);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(/the name is too long; name another folder, then run it again\.\n$/);
    expect(err).not.toMatch(/^ +at /m);
    expect((await runCli(cliFolder(), args, { GAMBREL_DEBUG: "1" })).err).toMatch(/^ +at /m);
  });
});
