import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { Command } from "commander";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { readStudy } from "../../../../sim/asked/study/index.ts";
import { commandTree } from "../../../../sim/cli/commandTree.ts";
import { program } from "../../../../sim/cli/program.ts";
import { addTryOptions } from "../../../../sim/cli/tryOptions.ts";
import { readTries, TRY_OPTIONS, tryStudyFile } from "../../../../sim/questions/try/index.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { fakeTerminal } from "../../../support/fakeTerminal.ts";

/** Starting the program takes most of a second each time. */
const PATIENCE = { timeout: 120_000 };
const FEW = ["--days", "3", "--threads", "1"];
const FERNCOTE = resolve(import.meta.dirname, "../../../../experiments/plans/ferncote.json");

/** Words of a command line as a shell would give them. */
function words(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]!);
}

describe("gambrel try", PATIENCE, () => {
  it("begins with what happens, then the table, and writes nothing", async () => {
    const folder = cliFolder();
    const { code, out, err } = await callCli(folder, ["try", "plan.json", "--ill", "dressing=1", ...FEW]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(
      /\nWith “one ill at dressing” (work ends .* later, at \d\d:\d\d|work ends as it does today|3 simulated days cannot tell)/,
    );
    expect(err).toMatch(/\n +as planned \(today's plan\) +\d\d:\d\d/);
    expect(err).toMatch(/3 simulated days of the plan and of each try, compared on the same days \(seed "1"\)\./);
    expect(err).toMatch(/official veterinarian/);
    expect(existsSync(join(folder, "runs"))).toBe(false);
  });

  it("asks what a study file asks, to the bit: one that it writes itself, in another folder too", async () => {
    const folder = cliFolder();
    const asked = [
      "--ill",
      "dressing=1",
      "--or",
      "--ill",
      "dressing=1",
      "--break",
      "coffee=07:15",
      "--matters",
      "finish=10 min",
    ];
    mkdirSync(join(folder, "questions"));
    const written = await callCli(folder, ["try", "plan.json", ...asked, ...FEW, "--as-study", "questions/ill.json"]);
    expect(written).toMatchObject({ code: 0, out: "" });
    expect(written.err).toMatch(/Written: questions\/ill\.json\. Run it with: gambrel study questions\/ill\.json/);
    expect(JSON.parse(readFileSync(join(folder, "questions/ill.json"), "utf8"))).toMatchObject({
      ...{ plan: "../plan.json", asks: "what if", replications: 3, seed: "1" },
      matters: [{ response: "finish", difference: "10 min" }],
    });
    const [tried, studied] = await Promise.all([
      callCli(folder, ["try", "plan.json", ...asked, ...FEW, "--json"]),
      callCli(folder, ["study", "questions/ill.json", "--json", "--threads", "1"]),
    ]);
    const [one, other] = [tried, studied].map(({ out }) => JSON.parse(out));
    expect(one.decision.verdict).toMatch(/“one ill at dressing/);
    expect(one.study.command).toMatch(
      /^gambrel try plan\.json --ill dressing=1 --or --ill dressing=1 --break coffee=07:15 --days 3/,
    );
    const withoutCommand = ({ study: { command: _, ...study }, ...rest }: Record<string, Record<string, unknown>>) => ({
      ...rest,
      study,
    });
    expect(withoutCommand(one)).toEqual(withoutCommand(other));
    const again = await callCli(folder, ["try", "plan.json", ...asked, ...FEW, "--as-study", "questions/ill.json"]);
    expect(again.code).toBe(2);
    expect(again.err).toMatch(/questions\/ill\.json: this file is there already/);
  });

  it("asks of today's plan alone where nothing is tried: what decides, what is told besides, and for whom", async () => {
    const folder = cliFolder();
    const asked = ["--decides", "headsPerHour", "--also", "carcasses", "finish", "--reader", "official veterinarian"];
    const { code, err, out } = await callCli(folder, ["try", "plan.json", ...asked, ...FEW, "--json"]);
    expect(code).toBe(0);
    const { decision, study, responses, variants } = JSON.parse(out);
    expect(variants).toHaveLength(1);
    expect(responses.map(({ key }: { key: string }) => key)).toEqual(["headsPerHour", "carcasses", "finish"]);
    expect(study.reader).toBe("official veterinarian");
    expect(study.command).toMatch(/--also carcasses --also finish --reader 'official veterinarian'/);
    expect(decision.verdict).toMatch(/^(Today|The plan watches no time limit).*Throughput.* on average\.$/s);
    expect(err).toMatch(/Nothing was tried: 3 simulated days of the plan as it is/);
    const wrong = await callCli(folder, ["try", "plan.json", "--also", "heads"]);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/--also heads: 'heads' is not a result of this plan/);
  });

  it("writes a whole run, of which the study can be run again", async () => {
    const folder = cliFolder();
    const { code, err } = await callCli(folder, [
      "try",
      "plan.json",
      "--fewer",
      "300",
      "--days",
      "2",
      "--threads",
      "1",
      "--out",
      "run",
    ]);
    expect(code).toBe(0);
    expect(err).toMatch(/With “300 heads fewer” work ends .* earlier, at .* fewer carcasses\s+come out/s);
    const [report, results, study] = ["report.html", "results.json", "study.json"].map((name) =>
      readFileSync(join(folder, "run", name), "utf8"),
    );
    expect(report).toContain(JSON.parse(results!).decision.verdict.slice(0, 30));
    const files = { readText: (name: string) => readFileSync(join(folder, "run", name), "utf8") };
    expect(readStudy(JSON.parse(study!), files).faults).toEqual([]);
  });

  it("tells all that is wrong at once, and what is allowed, and writes nothing", async () => {
    const folder = cliFolder();
    const { code, out, err } = await callCli(folder, [
      ...[
        "try",
        "plan.json",
        "--ill",
        "dresing=1",
        "--or",
        "--break",
        "tea=07:00",
        "--decides",
        "cost",
        "--matters",
        "finish",
      ],
      ...["--as-study", "new.json"],
    ]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/--ill dresing=1: 'dresing' is not a crew; allowed: 'dressing'; did you mean 'dressing'\?/);
    expect(err).toMatch(/--break tea=07:00: 'tea' is not a break; allowed: 'coffee'/);
    expect(err).toMatch(/--decides cost: 'cost' is not a result of this plan; allowed: 'finish'/);
    expect(err).toMatch(/--matters finish: no result with an amount/);
    expect(err).toMatch(/4 faults found\. Nothing was written\./);
    expect(existsSync(join(folder, "new.json"))).toBe(false);
    const outside = await callCli(folder, ["try", "plan.json", "--break", "coffee=09:00", "--matters", "finish=5"]);
    expect(outside.code).toBe(2);
    expect(outside.err).toMatch(/try 'coffee at 09:00', day\.breaks\[0\]: the break .* lies outside the shifts/);
  });

  it("points out that a study is no plan, and meets a wrong option by the nearest", async () => {
    const folder = cliFolder();
    const [study, option] = await Promise.all([
      callCli(folder, ["try", "study.json", "--ill", "dressing=1"]),
      callCli(folder, ["try", "plan.json", "--lories", "spread"]),
    ]);
    expect(study).toMatchObject({ code: 2, out: "" });
    expect(option.code).toBe(2);
    expect(option.err).toMatch(/--lorries/);
  });
});

describe("the help of gambrel try", () => {
  const entry = commandTree(program(async () => fakeTerminal(false).terminal)).find(({ name }) => name === "try")!;
  const json = JSON.parse(readFileSync(FERNCOTE, "utf8"));
  const files = { readText: () => "" };
  const { plan } = readPlan(json, files);

  /** What stood on a command line, in its order. */
  function given(line: string) {
    const command = new Command().allowUnknownOption().argument("<plan>").argument("[more...]");
    const options = addTryOptions(command);
    command.action(() => {}).parse(words(line).slice(2), { from: "user" });
    return options;
  }

  it.each(entry.examples)("has an example that can be asked of a whole plant: %s", (line) => {
    const reading = readTries(plan!, json, given(line));
    expect(reading.faults).toEqual([]);
    const question = { tries: reading.tries!, seed: "1", days: 2, matters: [] };
    const study = readStudy(tryStudyFile(plan!, json, question), files);
    expect(study.faults).toEqual([]);
    // Each " or " within an option of these examples stands between two values, and makes one try more.
    const tries = given(line).length === 0 ? 0 : line.split(/ --or | or /).length;
    expect(study.study!.variants).toHaveLength(1 + tries);
  });

  it("has an option for every change that there is, and takes values apart that PowerShell has split", () => {
    const longs = entry.options.map(({ long }) => long);
    expect(longs).toEqual(expect.arrayContaining([...TRY_OPTIONS, "or"].map((name) => `--${name}`)));
    expect(given("gambrel try p.json --ill a=1 b=2 --or --ill a=1,b=2")).toEqual([
      { option: "ill", text: "a=1" },
      { option: "ill", text: "b=2" },
      { option: "or", text: "" },
      { option: "ill", text: "a=1,b=2" },
    ]);
  });
});
