#!/usr/bin/env node
import process from "node:process";
import { program } from "./program.ts";
import type { Terminal } from "./terminal.ts";

async function terminal(): Promise<Terminal> {
  return (await import("./terminal.ts")).processTerminal(process);
}

async function exitCode(error: unknown): Promise<number> {
  const { explain } = await import("./faults.ts");
  return explain(error, await terminal(), process.env.GAMBREL_DEBUG === "1");
}

// A reader that has seen enough ("gambrel schema plan | head") closes the pipe: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

// Words for people: when nobody hears them any more ("2>&1 | head", a terminal that is gone) the work goes on.
process.stderr.on("error", () => {});

// What fails outside of every command, in a timer or a thread, is told like everything else.
process.on("uncaughtException", async (error) => {
  process.exit(await exitCode(error).catch(() => bareExitCode(error)));
});

/** Where even the words cannot be loaded any more (the program was taken away while it ran): the failure's own. */
function bareExitCode(error: Error): number {
  process.stderr.write(`${error.message}\n`);
  return 1;
}

try {
  await program(terminal).parseAsync(process.argv);
} catch (error) {
  // Not process.exit: data still on its way into a pipe would be cut off.
  process.exitCode = await exitCode(error);
}
