import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { screeningTable, studyListing, studySummary } from "../../../../sim/cli/commands/study.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";
import { killLinePlan, killLineStudy, smoothPlan } from "../../../support/killStopResults.ts";
import { screeningResults } from "../../../support/screeningResults.ts";

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
    const { code, out, err } = await callCli(folder, ["study", "study.json", "--more"]);
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
      /more than today's plan \([\d.]+ to [\d.]+ carcasses\/h at 95 %, sure even though 2 changes were compared; on the same 5 days\)/,
    );
    expect(err).toMatch(/The same as today's plan on all 5 days\./);
    expect(err).not.toContain("\u001b");
    const study = readFileSync(join(folder, "runs", "skinners-places", "study.json"), "utf8");
    expect(study).toBe(readFileSync(join(folder, "study.json"), "utf8"));
  });

  it("says in its results how to repeat them, and doing so gives the same bytes", async () => {
    const folder = cliFolder();
    await callCli(folder, ["study", "study.json", "--out", "a", "--seed", "x y", "--replications", "2"]);
    const written = readFileSync(join(folder, "a", "results.json"), "utf8");
    expect(JSON.parse(written).study.command).toBe("gambrel study study.json --seed 'x y' --replications 2");
    const { out } = await callCli(folder, ["study", "study.json", "--seed", "x y", "--replications", "2", "--json"]);
    expect(out).toBe(written);
    expect(readdirSync(folder).sort()).toEqual(["a", "plan.json", "study.json"]);
  });

  it("refuses a folder with a run in it before running, and replaces it with --overwrite", async () => {
    const folder = cliFolder();
    const args = ["study", "study.json", "--replications", "2", "--out", "a"];
    await callCli(folder, args);
    const refused = await callCli(folder, args);
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(/already holds a run.*--overwrite/);
    expect(refused.err).not.toMatch(/simulated/);
    expect((await callCli(folder, [...args, "--overwrite"])).code).toBe(0);
  });

  it("never replaces someone's files, even with --overwrite", async () => {
    const folder = cliFolder();
    mkdirSync(join(folder, "thesis"));
    writeFileSync(join(folder, "thesis", "chapter.txt"), "text");
    const { code, err } = await callCli(folder, ["study", "study.json", "--out", "thesis", "--overwrite"]);
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
    const { code, err } = await callCli(folder, ["study", "study.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/skining/);
    expect(existsSync(join(folder, "runs"))).toBe(false);
  });

  it("refuses a folder below a file before running", async () => {
    const folder = cliFolder({ blocker: "a file where a folder would have to be" });
    const { code, err } = await callCli(folder, ["study", "study.json", "--out", "blocker/a"]);
    expect(code).toBe(2);
    expect(err).toMatch(/blocker is a file, not a folder; name another folder/);
  });

  it("fails with exit code 1, one sentence and no trace of the program when the disk says no", async () => {
    const args = ["day", "plan.json", "--out", "n".repeat(300)];
    const { code, out, err } = await callCli(cliFolder(), args);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toMatch(/the name is too long; name another folder, then run it again\.\n$/);
    expect(err).not.toMatch(/^ +at /m);
    expect((await callCli(cliFolder(), args, { GAMBREL_DEBUG: "1" })).err).toMatch(/^ +at /m);
  });
});

describe("studySummary", () => {
  it("shows every variant's headline with its interval, and each difference in words", () => {
    expect(studyListing(handMadeResults()).slice(0, 5)).toEqual([
      '2 variants, 3 simulated days of each, seed "rabbit", 95 % intervals',
      "Throughput, from the start of the shift to the end of work:",
      "  base                 480 carcasses/h  (405 to 555 carcasses/h)",
      "  +1 person, skinning  510 carcasses/h  (435 to 585 carcasses/h)",
      "      30 carcasses/h more than today's plan (30 to 30 carcasses/h at 95 %; on the same 3 days).",
    ]);
  });

  it("leads with stunned heads that waited too long in any variant", async () => {
    const lines = studySummary(await killLineStudy({ base: smoothPlan(), jam: killLinePlan() }));
    expect(lines.join(" ").replace(/ +/g, " ")).toMatch(
      /^Animal welfare first\. With “jam” .* of stunned heads waited longer for sticking/u,
    );
  });

  it("says that a value has no interval, or that there is no value", () => {
    const results = handMadeResults();
    const [base, other] = results.variants as [(typeof results.variants)[0], (typeof results.variants)[0]];
    const one = { ...base.estimates.headsPerHour!, n: 1, low: null, high: null, halfWidth: null };
    const variants = [
      { ...base, estimates: { headsPerHour: one } },
      { ...other, estimates: {}, differences: {} },
    ];
    const text = studyListing({ ...results, variants }).join("\n");
    expect(text).toMatch(/base +480 carcasses\/h +\(one value, no interval\)/);
    expect(text).toMatch(/skinning +no value/);
  });

  it("says how many differences chance alone would show once there is more than one comparison", () => {
    const results = handMadeResults();
    const procedure = { ...results.procedure, errorRate: "per comparison" as const };
    const more = { ...results, procedure, variants: [...results.variants, results.variants[1]!] };
    expect(studyListing(more).join("\n")).toMatch(/of 2 comparisons, chance alone shows about 0\.1 on average/);
    expect(studyListing(results).join("\n")).not.toMatch(/chance/);
  });

  it("says verdict, table and what to do next in lines of at most 100 characters, and no method", () => {
    const results = handMadeResults();
    const lines = studySummary(results);
    expect(lines[0]).toBe(results.decision!.verdict);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(lines.join("\n")).not.toMatch(/on the same 3 days/);
  });

  it("warns of days that did not end by themselves", () => {
    const results = handMadeResults();
    const variants = results.variants.map((variant, index) =>
      index === 0 ? variant : { ...variant, values: { ...variant.values, unfinished: [0, 1, 1] } },
    );
    expect(studySummary({ ...results, variants }).at(-1)).toMatch(/"\+1 person, skinning": 2 of 3 days did not end/);
    const stuck = variants.map((variant): typeof variant => ({
      ...variant,
      dayNotes: ["5 heads at 'trim' stay unworked: nobody is there."],
      day: { ...variant.day, status: "stuck" },
    }));
    expect(studySummary({ ...results, variants: stuck }).at(-1)).toMatch(
      /On the first day: 5 heads at 'trim' stay unworked: nobody is there\.$/,
    );
  });
});

it("lists the factors of a screening, the one that matters most first, in place of its variants", () => {
  const results = screeningResults();
  const lines = screeningTable(results, results.responses[0]!);
  expect(lines[2]).toMatch(/^ {2}time per head +46 heads\/h +2 heads\/h +\u221246 heads\/h +34 heads\/h$/);
  expect(lines[3]).toMatch(/^ {2}walking/);
  expect(lines[5]).toMatch(/^ {2}an unused factor +no value/);
  const text = studySummary(results).join("\n");
  expect(text).toContain(lines.join("\n"));
  expect(text).not.toContain("than today's plan");
});
