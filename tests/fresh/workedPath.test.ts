import { spawnSync } from "node:child_process";
import { cpSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../support/callCli.ts";
import { cliFolder } from "../support/cliFolder.ts";

const WORKED = resolve(import.meta.dirname, "../../experiments/worked-path");
const PATIENCE = { timeout: 180_000 };

/** The commands of the document, in its order. */
function commands(): string[] {
  const text = readFileSync(join(WORKED, "README.md"), "utf8");
  return [...text.matchAll(/```sh\n(.*?)```/gs)].flatMap(([, block]) => block!.trim().split("\n"));
}

/** Threads show in no result, and for so few days each takes longer to start than it saves. */
const THREADED = new Set(["study", "improve", "options"]);

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
    const named = ["size", "fit", "paste.mjs", "check", "day", "study", "improve", "options", "report"];
    expect(all.map((command) => command.split(" ")[1])).toEqual(named);
    for (const command of all) expect([command, await give(folder, command)]).toEqual([command, ""]);
    for (const file of [
      "first-plan.json",
      "fits/fragment.json",
      "day/report.html",
      "study/report.html",
      "offers/report.html",
    ])
      expect(existsSync(join(folder, file)), file).toBe(true);
    // What the document says came of it.
    const { variants } = JSON.parse(readFileSync(join(folder, "study/results.json"), "utf8"));
    const gains = variants.slice(1).map(({ differences }: Variant) => differences.headsPerHour);
    expect(gains.map(({ shown }: Gain) => shown)).toEqual([true, false]);
    expect(gains[0].mean).toBeGreaterThan(29);
    expect(gains[0].mean).toBeLessThan(33);
    const { recommended } = JSON.parse(readFileSync(join(folder, "people/improvement.json"), "utf8"));
    expect(recommended.set["crews.evisceration.people"]).toBe(3);
  });
});

interface Gain {
  shown: boolean;
  mean: number;
}

interface Variant {
  differences: { headsPerHour: Gain };
}
