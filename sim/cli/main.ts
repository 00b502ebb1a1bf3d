#!/usr/bin/env node
import process from "node:process";
import { CommanderError } from "commander";
import { BadInput } from "./badInput.ts";
import { BAD_INPUT, DONE, FAILED, STOPPED } from "./exitCodes.ts";
import { program } from "./program.ts";
import type { Terminal } from "./terminal.ts";
import { Stopped } from "./untilInterrupted.ts";

async function terminal(): Promise<Terminal> {
  return (await import("./terminal.ts")).processTerminal(process);
}

/** Says what went wrong and gives the exit code. A stack trace helps nobody but whoever asked for it. */
async function explain(error: unknown): Promise<number> {
  // Commander has already said what it had to say.
  if (error instanceof CommanderError) return error.exitCode === 0 ? DONE : BAD_INPUT;
  const { say } = await terminal();
  if (process.env.GAMBREL_DEBUG === "1" && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  if (error instanceof BadInput) {
    for (const line of error.lines) say(line, "red");
    say(`${error.lines.length} ${error.lines.length === 1 ? "fault" : "faults"} found. Nothing was written.`);
    return BAD_INPUT;
  }
  say(error instanceof Error ? error.message : String(error), "red");
  return error instanceof Stopped ? STOPPED[error.signal] : FAILED;
}

// A reader that has seen enough ("gambrel schema plan | head") closes the pipe: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  await program(terminal).parseAsync(process.argv);
} catch (error) {
  // Not process.exit: data still on its way into a pipe would be cut off.
  process.exitCode = await explain(error);
}
