import { readdirSync } from "node:fs";
import { chdir, cwd } from "node:process";
import { afterAll, expect, it } from "vitest";
import { explain } from "../../sim/cli/faults.ts";
import { program } from "../../sim/cli/program.ts";
import { cliFolder } from "../support/cliFolder.ts";
import { fakeTerminal } from "../support/fakeTerminal.ts";
import commandLines from "./corpus/commandLine.json" with { type: "json" };

const before = cwd();
afterAll(() => chdir(before));

/** Runs a command line in this process: its exit code and what it said to people. */
async function outcome(args: readonly string[]): Promise<{ code: number; said: string[] }> {
  const { terminal, said } = fakeTerminal(false);
  const gambrel = program(async () => terminal);
  const words = (text: string): void => void said.push(...text.trimEnd().split("\n"));
  for (const command of [gambrel, ...gambrel.commands]) command.configureOutput({ writeErr: words, writeOut: words });
  try {
    await gambrel.parseAsync([...args], { from: "user" });
    return { code: 0, said };
  } catch (error) {
    return { code: explain(error, terminal), said };
  }
}

it.each(commandLines.map((args) => [args]))(
  "%j is bad input: exit code 2, words, and nothing written",
  async (args) => {
    const folder = cliFolder();
    chdir(folder);
    try {
      const { code, said } = await outcome(args);
      expect({ code, said }).toEqual({ code: 2, said: expect.arrayContaining([expect.any(String)]) });
      expect(said.join("\n")).not.toMatch(/undefined|\[object|^ +at /m);
      expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
    } finally {
      chdir(before);
    }
  },
);
