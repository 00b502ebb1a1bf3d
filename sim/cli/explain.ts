import { join } from "node:path";
import { CommanderError } from "commander";
import { BadInput } from "./badInput.ts";
import { diskWords } from "./diskWords.ts";
import { BAD_INPUT, DONE, FAILED, STOPPED } from "./exitCodes.ts";
import { pathFromHere } from "./pathFromHere.ts";
import { projectRoot } from "./projectRoot.ts";
import { shownLines } from "./shownLines.ts";
import type { Terminal } from "./terminal.ts";
import { Stopped } from "./untilInterrupted.ts";

/** Says what went wrong and gives the exit code. A stack trace helps nobody but whoever asked for it (`debug`). */
export function explain(error: unknown, { say }: Pick<Terminal, "say">, debug = false): number {
  // Commander has already said what it had to say.
  if (error instanceof CommanderError) return error.exitCode === 0 ? DONE : BAD_INPUT;
  if (debug && error instanceof Error) for (const line of (error.stack ?? "").split("\n")) say(line);
  if (error instanceof BadInput) {
    for (const line of shownLines(error.lines)) say(line, "red");
    if (error.guides.length > 0) say(`Every key, unit and default: ${guidePaths(error)}`);
    say(`${error.lines.length} ${error.lines.length === 1 ? "fault" : "faults"} found. Nothing was written.`);
    return BAD_INPUT;
  }
  for (const line of shownLines([diskWords(error) ?? messageOf(error)])) say(line, "red");
  return error instanceof Stopped ? STOPPED[error.signal] : FAILED;
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function guidePaths({ guides }: BadInput): string {
  return guides.map((guide) => pathFromHere(join(projectRoot(), guide))).join(", ");
}
