import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { UNITS_OF_TIME } from "../../../../sim/cli/options.ts";
import { time } from "../../../../sim/text/units/index.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { NAMED_DANGERS } from "../../../support/dangers.ts";
import { CYCLES } from "../../../support/timeStudies.ts";

/** Starting the program and drawing take most of a second each time. */
const PATIENCE = { timeout: 60_000 };
const TIMES = `skinning (s)\n${CYCLES.join("\n")}\n`;
const FEW = ["--samples", "99"];

describe("gambrel fit", PATIENCE, () => {
  it("tells people on standard error and prints the part of the plan on standard output", async () => {
    const folder = cliFolder({ "times.csv": TIMES });
    const { code, out, err } = await callCli(folder, ["fit", "times.csv", ...FEW]);
    expect(code).toBe(0);
    expect(JSON.parse(out).line).toEqual([{ name: "skinning", cycle: { lognormal: { mean: "7.152 s", cv: 0.2403 } } }]);
    expect(err).toMatch(/skinning: 20 times/);
    expect(err).toMatch(/Worth a look, number of times/);
    expect(err).toMatch(/lognormal +mean 7\.152 s, cv 0\.24 +80\.74 +0\.00 +0\.115/);
    expect(err).toMatch(
      /4 tests were made\. With faultless times, chance alone gives about 0\.2 findings, 0\.04 of them strong/,
    );
    expect(err).toMatch(/Advice \(look at the findings first\): lognormal/);
    for (const danger of NAMED_DANGERS) expect(err).toMatch(danger);
    expect(out).not.toMatch(/veterinarian/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json", "times.csv"]);
  });

  it("gives everything as JSON, the same for the same seed", async () => {
    const folder = cliFolder({ "times.csv": TIMES.replace(" (s)", "") });
    const results = async (...more: string[]) => {
      const { out } = await callCli(folder, ["fit", "times.csv", "--unit", "s", "--json", ...FEW, ...more]);
      return JSON.parse(out);
    };
    const first = await results();
    expect(first).toMatchObject({ file: "times.csv", seed: "1", samples: 99, columns: [{ heading: "skinning" }] });
    expect(first.columns[0].fits).toHaveLength(8);
    expect(await results()).toEqual(first);
    expect(await results("--seed", "2")).not.toEqual(first);
  });

  it("writes pictures, results and the part of the plan where it is told to, and nothing over other files", async () => {
    const folder = cliFolder({ "times.csv": `who,${TIMES.replaceAll("\n", "\nx,").slice(0, -2)}` });
    const { code, err } = await callCli(folder, ["fit", "times.csv", "--out", "fits", ...FEW]);
    expect(code).toBe(0);
    expect(err).toMatch(/Left out, because they hold no times: who\./);
    expect(readdirSync(join(folder, "fits")).sort()).toEqual([
      "charts",
      "fragment.json",
      "report.html",
      "results.json",
    ]);
    expect(readdirSync(join(folder, "fits", "charts")).sort()).toEqual([
      "probability-1-skinning.svg",
      "times-1-skinning.svg",
    ]);
    expect(JSON.parse(readFileSync(join(folder, "fits", "fragment.json"), "utf8")).line[0].name).toBe("skinning");
    const again = await callCli(folder, ["fit", "times.csv", "--out", "fits", ...FEW]);
    expect(again.code).toBe(2);
    expect(again.err).toMatch(/add --overwrite/);
  });

  it("tells every fault of a table with its line and column, and writes nothing", async () => {
    const folder = cliFolder({ "times.csv": "a (s),b\n4,5\nx,6\n-1,7\n" });
    const { code, out, err } = await callCli(folder, ["fit", "times.csv", "--out", "fits"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/times\.csv: line 3, column "a \(s\)": "x"/);
    expect(err).toMatch(/times\.csv: line 4, column "a \(s\)": "-1"/);
    expect(err).toMatch(/times\.csv: column "b": the heading has no unit of time/);
    expect(err).toMatch(/3 faults found\. Nothing was written\./);
    expect(existsSync(join(folder, "fits"))).toBe(false);
  });

  it("answers a table that is not there and options that cannot be", async () => {
    const folder = cliFolder();
    expect((await callCli(folder, ["fit", "none.csv"])).err).toMatch(/none\.csv: there is no such file/);
    for (const args of [
      ["--unit", "sec"],
      ["--samples", "5"],
    ]) {
      expect((await callCli(folder, ["fit", "none.csv", ...args])).code).toBe(2);
    }
  });

  it("names the units of time that plans know", () => {
    expect(UNITS_OF_TIME).toEqual(Object.keys(time.units));
  });
});
