import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import packageJson from "../../../package.json" with { type: "json" };
import { cliFolder } from "../../support/cliFolder.ts";
import { runCli } from "../../support/runCli.ts";
import { SMALL_PLAN } from "../../support/smallPlan.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };
const RUN_FILES = ["charts", "plan.json", "report.html", "results.json", "study.json"];

describe("gambrel", PATIENCE, () => {
  it("says its version, that of package.json, on standard output", async () => {
    const { code, out, err } = await runCli(cliFolder(), ["--version"]);
    expect({ code, out, err }).toEqual({ code: 0, out: `${packageJson.version}\n`, err: "" });
  });

  it.each([[["--help"]], [["check", "--help"]], [["day", "--help"]], [["study", "--help"]], [["demo", "--help"]]])(
    "explains %j on standard output",
    async (args) => {
      const { code, out, err } = await runCli(cliFolder(), args);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(out).toMatch(/^Usage: gambrel/);
    },
  );

  it("lists its exit codes in --help", async () => {
    const { out } = await runCli(cliFolder(), ["--help"]);
    for (const line of [/0 +done/, /1 +failed/, /2 +bad input/, /130 +stopped/]) expect(out).toMatch(line);
  });

  it.each([
    [["dya", "plan.json"], /unknown command 'dya'[\s\S]*day/],
    [["day"], /missing required argument 'plan'/],
    [["day", "plan.json", "--sede", "1"], /unknown option '--sede'[\s\S]*--seed/],
    [["study", "study.json", "--replications", "0"], /whole number from 1/],
    [["study", "study.json", "--replications", "2.5"], /whole number from 1/],
    [["day", "plan.json", "--traces", "all"], /none, binned, exact/],
    [["day", "plan.json", "--seed", " "], /at least one character/],
    [["schema", "plans"], /plan, study/],
    [[], /Usage: gambrel/],
  ])("answers the slip %j with exit code 2 and a word on standard error", async (args, said) => {
    const { code, out, err } = await runCli(cliFolder(), args);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(said);
  });
});

describe("gambrel check", PATIENCE, () => {
  it("tells plans and studies apart by what they hold and finds them sound", async () => {
    const folder = cliFolder({ "a.txt": SMALL_PLAN });
    const { code, out, err } = await runCli(folder, ["check", "a.txt", "study.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/^a\.txt: sound\. Plan "Small plant" with 4 stages/);
    expect(err).toMatch(/study\.json: sound\. Study "Skinners & places" with 3 variants/);
  });

  it("answers five mistakes with five messages, one a line, and exit code 2", async () => {
    const [hanging, stunning, bleeding, skinning] = SMALL_PLAN.line;
    const plan = {
      ...SMALL_PLAN,
      colour: "blue",
      target: 300,
      line: [{ ...hanging, rate: "360 kg" }, { ...stunning, buffer: -1 }, bleeding, { ...skinning, crew: "dresing" }],
    };
    const folder = cliFolder({ "plan.json": plan });
    const { code, out, err } = await runCli(folder, ["check", "plan.json"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    const lines = err.trim().split("\n");
    expect(lines.filter((line) => line.startsWith("plan.json: "))).toHaveLength(5);
    expect(lines.at(-1)).toBe("5 faults found. Nothing was written.");
    for (const word of ["colour", "target", "line[0].rate", "line[1].buffer", "line[3].crew"])
      expect(err).toContain(word);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("goes on to the next file after a bad one", async () => {
    const folder = cliFolder({ "broken.json": "{ not json" });
    const { code, err } = await runCli(folder, ["check", "absent.json", "broken.json", "plan.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/absent\.json: there is no such file/);
    expect(err).toMatch(/broken\.json: line 1, column 3/);
    expect(err).toMatch(/plan\.json: sound/);
  });

  it("gives its findings as JSON on standard output when asked", async () => {
    const { code, out } = await runCli(cliFolder(), ["check", "plan.json", "absent.json", "--json"]);
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject([
      { file: "plan.json", kind: "plan", sound: true, faults: [] },
      { file: "absent.json", kind: null, sound: false, faults: [expect.stringContaining("no such file")] },
    ]);
  });

  it.each(["[]", "{}", "3", "null"])("calls %s neither plan nor study", async (text) => {
    const { code, err } = await runCli(cliFolder({ "x.json": text }), ["check", "x.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/neither a plan .* nor a study/);
  });

  it("shows control characters in someone's file as question marks, never to the terminal", async () => {
    const name = "evil\u001b[2Jname";
    const { err } = await runCli(cliFolder({ "plan.json": { ...SMALL_PLAN, name } }), ["check", "plan.json"]);
    expect(err).not.toContain("\u001b");
  });
});

describe("gambrel day", PATIENCE, () => {
  it("shows the day on standard error and writes nothing", async () => {
    const folder = cliFolder();
    const { code, out, err } = await runCli(folder, ["day", "plan.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/Carcasses out +\d+ carcasses/);
    expect(err).toMatch(/stage +working +blocked +starved +no crew +down +on break/);
    expect(err).toMatch(/official veterinarian/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("gives the same data for the same seed and replication, and other data for others", async () => {
    const folder = cliFolder();
    const day = async (...more: string[]): Promise<number | null> => {
      const { out } = await runCli(folder, ["day", "plan.json", "--json", "--traces", "none", ...more]);
      return JSON.parse(out).variants[0].values.finish[0];
    };
    const first = await day("--seed", "a");
    expect(await day("--seed", "a")).toBe(first);
    expect(await day("--seed", "b")).not.toBe(first);
    expect(await day("--seed", "a", "--replication", "1")).not.toBe(first);
  });

  it("writes a run folder where it is told to", async () => {
    const folder = cliFolder();
    const { code } = await runCli(folder, ["day", "plan.json", "--out", "my day", "--traces", "exact"]);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "my day")).sort()).toEqual([
      ...RUN_FILES.filter((name) => name !== "study.json"),
      "summary.csv",
      "traces.csv",
      "values.csv",
    ]);
    expect(JSON.parse(readFileSync(join(folder, "my day", "plan.json"), "utf8"))).toEqual(SMALL_PLAN);
  });

  it("points out that a study is no plan", async () => {
    const { code, err } = await runCli(cliFolder(), ["day", "study.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/this is a study; run it with "gambrel study"/);
  });
});

describe("gambrel study", PATIENCE, () => {
  it("writes a folder named after the study and says what it found, with intervals", async () => {
    const folder = cliFolder();
    const { code, out, err } = await runCli(folder, ["study", "study.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(readdirSync(join(folder, "runs"))).toEqual(["skinners-places"]);
    expect(readdirSync(join(folder, "runs", "skinners-places")).sort()).toEqual([
      ...RUN_FILES,
      "summary.csv",
      "traces.csv",
      "values.csv",
    ]);
    expect(err).toMatch(/\+1 person +[\d.]+ carcasses\/h +\([\d.]+ to [\d.]+ carcasses\/h\)/);
    expect(err).toMatch(/95 % interval \+[\d.]+ to \+[\d.]+ carcasses\/h, 5 paired replications/);
    expect(err).toMatch(/The same as the base case in all 5 replications\./);
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

  it("fails with exit code 1, one sentence and no trace of the program when the disk says no", async () => {
    const folder = cliFolder({ blocker: "a file where a folder would have to be" });
    const { code, out, err } = await runCli(folder, [
      "study",
      "study.json",
      "--replications",
      "2",
      "--out",
      "blocker/a",
    ]);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).not.toMatch(/^ +at /m);
    expect((await runCli(folder, ["day", "plan.json", "--out", "blocker/a"], { GAMBREL_DEBUG: "1" })).err).toMatch(
      /^ +at /m,
    );
  });
});

describe("Ctrl-C", PATIENCE, () => {
  it("stops a run with exit code 130 and leaves nothing on the disk", async () => {
    const folder = cliFolder();
    const { code, err } = await runCli(folder, ["study", "study.json", "--replications", "1000"], {}, "(25 %)");
    expect(code).toBe(130);
    expect(err).toMatch(/Stopped\. Nothing was written\.\n$/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });
});

describe("gambrel schema", PATIENCE, () => {
  it.each(["plan", "study"])("prints the JSON Schema of a %s on standard output and nothing else", async (kind) => {
    const { code, out, err } = await runCli(cliFolder(), ["schema", kind]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(JSON.parse(out)).toMatchObject({ type: "object" });
  });
});
