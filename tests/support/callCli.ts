import process from "node:process";
import type { Command } from "commander";
import { explain } from "../../sim/cli/faults.ts";
import { program } from "../../sim/cli/program.ts";
import { processTerminal } from "../../sim/cli/terminal.ts";
import type { CliRun } from "./runCli.ts";

let last: Promise<unknown> = Promise.resolve();

/**
 * The command line as `runCli` runs it, but in this process: no start, and an engine that is warm. For tests of what a
 * command does; what becomes of its process (signals, pipes, memory) needs `runCli`. One call at a time: a process has one folder.
 */
export function callCli(folder: string, args: readonly string[], env: Record<string, string> = {}): Promise<CliRun> {
  const call = last.then(() => answer(folder, args, env));
  last = call.catch(() => {});
  return call;
}

async function answer(folder: string, args: readonly string[], env: Record<string, string>): Promise<CliRun> {
  const said = { out: "", err: "" };
  const stdout = {
    write(text: string): void {
      said.out += text;
    },
  };
  const stderr = {
    write(text: string): void {
      said.err += text;
    },
  };
  const terminal = processTerminal({ stdout, stderr, env: process.env });
  const gambrel = program(async () => terminal);
  for (const command of [gambrel, ...everyCommand(gambrel)])
    command.configureOutput({ writeOut: stdout.write, writeErr: stderr.write });
  const before = { folder: process.cwd(), env: { ...process.env } };
  process.chdir(folder);
  Object.assign(process.env, env);
  try {
    await gambrel.parseAsync([process.execPath, "gambrel", ...args]);
    return { code: 0, ...said };
  } catch (error) {
    const code = await explain(error, terminal, env.GAMBREL_DEBUG === "1");
    return { code, ...said };
  } finally {
    process.chdir(before.folder);
    for (const name of Object.keys(env)) {
      if (before.env[name] === undefined) delete process.env[name];
      else process.env[name] = before.env[name];
    }
  }
}

function everyCommand(of: Command): Command[] {
  return of.commands.flatMap((command) => [command as Command, ...everyCommand(command as Command)]);
}
