import { spawnSync } from "node:child_process";
import { cpSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../support/callCli.ts";
import { cliFolder } from "../support/cliFolder.ts";

const WORKED = resolve(import.meta.dirname, "../../experiments/worked-path");
const PATIENCE = { timeout: 400_000 };

/** The commands of the document, in its order. */
function commands(): string[] {
  const text = readFileSync(join(WORKED, "README.md"), "utf8");
  return [...text.matchAll(/```sh\n(.*?)```/gs)].flatMap(([, block]) => block!.trim().split("\n"));
}

/** Threads show in no result, and for so few days each takes longer to start than it saves. */
const THREADED = new Set(["study", "doubt", "improve", "options"]);

/** "gambrel ..." by the program as published, "node ... > FILE" by Node; what went wrong, or "". */
async function give(folder: string, command: string): Promise<string> {
  const [program, ...words] = command.split(" ");
  if (program === "gambrel") {
    const { code, err } = await callCli(folder, [...words, ...(THREADED.has(words[0]!) ? ["--threads", "1"] : [])]);
    return code === 0 ? "" : err;
  }
  const [file] = words.slice(words.indexOf(">") + 1);
  const args = words.slice(0, words.indexOf(">"));
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8" });
  writeFileSync(join(folder, file!), stdout);
  return status === 0 ? "" : stderr;
}

describe("the worked path", PATIENCE, () => {
  it("leads from a demand and stopwatch times to a report, command by command as its document has them", async () => {
    const folder = cliFolder();
    cpSync(WORKED, folder, { recursive: true });
    const all = commands();
    const named = ["size", "fit", "paste.mjs", "check", "day", "study", "doubt", "improve", "options", "report"];
    expect(all.map((command) => command.split(" ")[1])).toEqual(named);
    for (const command of all) expect([command, await give(folder, command)]).toEqual([command, ""]);
    for (const file of [
      "first-plan.json",
      "fits/fragment.json",
      "day/report.html",
      "study/report.html",
      "doubt/report.html",
      "offers/report.html",
    ])
      expect(existsSync(join(folder, file)), file).toBe(true);
    // What the document says came of it.
    const { variants } = JSON.parse(readFileSync(join(folder, "study/results.json"), "utf8"));
    const gains = variants.slice(1).map(({ differences }: Variant) => differences.headsPerHour);
    expect(gains.map(({ shown }: Gain) => shown)).toEqual([true, false]);
    expect(gains[0].mean).toBeGreaterThan(29);
    expect(gains[0].mean).toBeLessThan(33);
    tellsWhatIsNotKnown(folder);
    const { recommended } = JSON.parse(readFileSync(join(folder, "people/improvement.json"), "utf8"));
    expect(recommended.set["crews.evisceration.people"]).toBe(3);
  });
});

/** From the stopwatch to the recommendation: what is not known, on the report's first screen and in the document alike. */
function tellsWhatIsNotKnown(folder: string): void {
  const { uncertain } = readJson(folder, "plan.json");
  const times = readFileSync(join(folder, "times.csv"), "utf8").trim().split("\n").slice(1);
  const eviscerations = times.map((line) => Number(line.split(",")[1]));
  const mean = eviscerations.reduce((sum, time) => sum + time, 0) / eviscerations.length;
  const squares = eviscerations.reduce((sum, time) => sum + (time - mean) ** 2, 0);
  // The standard error of a mean, as a share of it.
  const error = Math.sqrt(squares / (eviscerations.length - 1) / eviscerations.length) / mean;
  expect(Math.abs(uncertain[1].factor.lognormal.cv / error - 1)).toBeLessThan(0.005);
  expect(uncertain.map((figure: { kind?: string }) => ("guess" in figure ? "guess" : figure.kind))).toEqual([
    ...["measured", "measured", "measured", "guess", "guess"],
  ]);
  const { variants, decision, words, estimates, figures } = readJson(folder, "doubt/doubt.json");
  expect(variants[decision.best]).toBe("third eviscerator");
  expect(words.verdict).toMatch(/^“third eviscerator” is better .* in more than 99 of 100 worlds/);
  const shares = estimates[0][decision.best].figures.map(({ share }: { share: { value: number } }) => share.value);
  expect(figures[shares.indexOf(Math.max(...shares))].name).toBe("final trim's cycle time");
  expect(words.next[0]).toMatch(/^Measure first: final trim's cycle time/);
  expect(words.next.join(" ")).toMatch(/hanging's cycle time \(a guess\) changes next to nothing/);
  const [, low, high] = /between (\d+) and (\d+) carcasses\/h .* half of that span is luck of the day/.exec(
    words.words[0],
  )!;
  const told = readFileSync(join(WORKED, "README.md"), "utf8").replaceAll("\n", " ");
  expect(told).toContain(`between ${low} and ${high} carcasses an hour; half of that span is luck of the day`);
  const page = readFileSync(join(folder, "doubt/report.html"), "utf8").replaceAll("\u00A0", " ");
  const at = [words.verdict, words.words[0], words.next[0], "<table"].map((text) =>
    page.indexOf(text.replaceAll("'", "&#39;")),
  );
  expect(at).toEqual([...at].sort((a, b) => a - b));
  expect(at[0]).toBeGreaterThan(0);
}

const readJson = (folder: string, file: string) => JSON.parse(readFileSync(join(folder, file), "utf8"));

interface Gain {
  shown: boolean;
  mean: number;
}

interface Variant {
  differences: { headsPerHour: Gain };
}
