import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { COMPLETIONS } from "../../../../sim/cli/commands/completion.ts";
import { manualPage, manualText } from "../../../../sim/cli/commands/manual.ts";
import { commandTree } from "../../../../sim/cli/commandTree.ts";
import { program } from "../../../../sim/cli/program.ts";
import { NAMED_DANGERS } from "../../../support/dangers.ts";
import { fakeTerminal } from "../../../support/fakeTerminal.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const TREE = commandTree(program(async () => fakeTerminal(false).terminal));
const OPTIONS = TREE.flatMap(({ name, options }) => options.map(({ long }) => [name, long] as const));

function has(shell: string): boolean {
  return spawnSync(shell, ["--version"]).status === 0;
}

/** What bash offers after these words, the last of which is begun. */
function offered(...words: string[]): string[] {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "script"), COMPLETIONS.bash(TREE));
  const line = `source ./script; COMP_WORDS=(${words.map((word) => `'${word}'`).join(" ")}); COMP_CWORD=${words.length - 1}; _gambrel; printf '%s\\n' "\${COMPREPLY[@]}"`;
  return spawnSync("bash", ["-c", line], { cwd: folder, encoding: "utf8" }).stdout.trim().split("\n");
}

describe("completion for bash", () => {
  it("offers commands, options of the command, choices of an option, and files", () => {
    expect(offered("gambrel", "st")).toEqual(["study"]);
    expect(offered("gambrel", "study", "--rep")).toEqual(["--replications"]);
    expect(offered("gambrel", "study", "--traces", "b")).toEqual(["binned"]);
    expect(offered("gambrel", "schema", "pl")).toEqual(["plan"]);
    expect(offered("gambrel", "day", "scr")).toEqual(["script"]);
  });
});

describe.each(["bash", "zsh", "fish"] as const)("completion for %s", (shell) => {
  it("knows every command with every option", () => {
    const script = COMPLETIONS[shell](TREE);
    expect(TREE.length).toBeGreaterThan(7);
    for (const { name } of TREE) expect(script).toContain(name);
    for (const [, long] of OPTIONS) expect(script).toContain(shell === "fish" ? `-l ${long.slice(2)}` : long);
  });

  it.runIf(has(shell))("is a script that the shell can read", () => {
    const file = join(temporaryFolder(), "script");
    writeFileSync(file, COMPLETIONS[shell](TREE));
    expect(spawnSync(shell, ["-n", file], { encoding: "utf8" })).toMatchObject({ status: 0, stderr: "" });
  });
});

describe("the manual", () => {
  it("tells every command and option, exit codes, environment, files and the caution", () => {
    const text = manualText(TREE, "1.2.3");
    for (const { name } of TREE) expect(text).toMatch(new RegExp(`^ {4}gambrel ${name}`, "m"));
    for (const [, long] of OPTIONS) expect(text).toContain(`${long}`);
    expect(text).toMatch(/^EXIT STATUS\n {4}0\n {8}Done\./m);
    for (const danger of NAMED_DANGERS) expect(text.replace(/\s+/g, " ")).toMatch(danger);
    expect(text.replace(/\s+/g, " ")).toContain("Animal welfare and people's safety come first");
    expect(text.split("\n").filter((line) => line.length > 100)).toEqual([]);
  });

  it.runIf(has("man"))("is a page that man can show without a complaint", () => {
    const file = join(temporaryFolder(), "gambrel.1");
    writeFileSync(file, manualPage(TREE, "1.2.3"));
    const shown = spawnSync("man", ["--warnings", "-l", file], {
      encoding: "utf8",
      env: { ...process.env, MANPAGER: "cat" },
    });
    expect(shown).toMatchObject({ status: 0, stderr: "" });
    expect(shown.stdout).toMatch(/--replications/);
  });
});
