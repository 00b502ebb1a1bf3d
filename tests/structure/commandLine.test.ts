import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { commandTree } from "../../sim/cli/commandTree.ts";
import { program } from "../../sim/cli/program.ts";
import { fakeTerminal } from "../support/fakeTerminal.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const FOLDER = join(ROOT, "sim/cli/commands");
/** A command that needs more of its own room than this should be told in fewer files. */
const MAX_IMPORTS = 7;

function gambrel() {
  const made = program(async () => fakeTerminal(false).terminal);
  for (const command of [made, ...made.commands]) command.configureOutput({ writeErr: () => {}, writeOut: () => {} });
  return made;
}

const COMMANDS = commandTree(gambrel());
const text = (path: string) => readFileSync(join(ROOT, path), "utf8");

/** Words of a command line as a shell would give them, without what is redirected. */
function words(line: string): string[] {
  const kept = line.replace(/ [<>] .*$/, "");
  return [...kept.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]!);
}

describe("the command line", () => {
  it("has one file for each command, and none besides", () => {
    expect(readdirSync(FOLDER).sort()).toEqual(COMMANDS.map(({ name }) => `${name}.ts`).sort());
  });

  it.each(COMMANDS)("tells $name whole: its file needs few others of the room", ({ name }) => {
    const found = text(`sim/cli/commands/${name}.ts`).matchAll(/(?:from |import\()"(\.\.?\/(?!\.)[^"]+)"/g);
    expect(new Set([...found].map((match) => match[1])).size).toBeLessThanOrEqual(MAX_IMPORTS);
  });

  it.each(COMMANDS)("shows two or three examples of $name that it understands, ten of try", ({ name, examples }) => {
    expect(name === "try" ? [10] : [2, 3]).toContain(examples.length);
    for (const [line] of examples) {
      const [first, second, ...rest] = words(line);
      expect([first, second]).toEqual(["gambrel", name]);
      const command = gambrel().commands.find((each) => each.name() === name)!;
      let ran = false;
      command.action(() => {
        ran = true;
      });
      command.parse(rest, { from: "user" });
      expect(ran).toBe(true);
    }
  });

  it("is listed in the room's README by the words of --help", () => {
    const rows = [...text("sim/cli/README.md").matchAll(/^\| `gambrel ([^`]+)`\s*\| (.*?)\s*\|$/gm)];
    const listed = rows.map(([, line, words]) => [line, words]);
    expect(listed).toEqual(
      COMMANDS.map(({ name, arguments: taken, description }) => {
        const places = taken.map((word) => word.replace(/[<>]/g, "").toUpperCase());
        return [[name, ...places].join(" "), description];
      }),
    );
  });

  it("is named in the README by commands that there are", () => {
    const names = [...text("README.md").matchAll(/\| `gambrel (\w+)/g)].map((match) => match[1]);
    expect(names.length).toBeGreaterThan(9);
    expect(COMMANDS.map(({ name }) => name)).toEqual(expect.arrayContaining(names));
  });
});
