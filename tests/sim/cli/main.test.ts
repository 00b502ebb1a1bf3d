import { describe, expect, it } from "vitest";
import packageJson from "../../../package.json" with { type: "json" };
import { cliFolder } from "../../support/cliFolder.ts";
import { NAMED_DANGERS } from "../../support/dangers.ts";
import { runCli } from "../../support/runCli.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

describe("gambrel", PATIENCE, () => {
  it("says its version, that of package.json, on standard output", async () => {
    const { code, out, err } = await runCli(cliFolder(), ["--version"]);
    expect({ code, out, err }).toEqual({ code: 0, out: `${packageJson.version}\n`, err: "" });
  });

  it.each([
    [["--help"]],
    [["check", "--help"]],
    [["day", "--help"]],
    [["study", "--help"]],
    [["worker", "--help"]],
    [["demo", "--help"]],
  ])("explains %j on standard output", async (args) => {
    const { code, out, err } = await runCli(cliFolder(), args);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Usage: gambrel/);
  });

  it("lists its exit codes in --help", async () => {
    const { out } = await runCli(cliFolder(), ["--help"]);
    for (const line of [/0 +done/, /1 +failed/, /2 +bad input/, /130 +stopped/, /143 +stopped/])
      expect(out).toMatch(line);
  });

  it("says in --help, in two lines, what hurts on such a line and who decides", async () => {
    const { out } = await runCli(cliFolder(), ["--help"]);
    const last = out.trimEnd().split("\n").slice(-2);
    for (const danger of NAMED_DANGERS) expect(last.join("\n")).toMatch(danger);
    expect(Math.max(...last.map((line) => line.length))).toBeLessThan(125);
  });

  it.each([
    [["dya", "plan.json"], /unknown command 'dya'[\s\S]*day/],
    [["day"], /missing required argument 'plan'/],
    [["day", "plan.json", "--sede", "1"], /unknown option '--sede'[\s\S]*--seed/],
    [["study", "study.json", "--replications", "0"], /whole number from 1/],
    [["study", "study.json", "--replications", "2.5"], /whole number from 1/],
    [["study", "study.json", "--threads", "0"], /whole number from 1 to 512/],
    [["study", "study.json", "--queue", "host:6379"], /redis:\/\/127\.0\.0\.1:6379/],
    [["study", "study.json", "--queue", "redis://h", "--threads", "2"], /cannot be used with option/],
    [["worker"], /required option '--queue/],
    [["worker", "--queue", "redis://h", "--concurrency", "x"], /whole number from 1/],
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
