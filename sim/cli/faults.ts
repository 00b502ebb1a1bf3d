import { join } from "node:path";
import { CommanderError } from "commander";
import { pathFromHere, projectRoot } from "./project.ts";

/** Something a person wrote is not as it must be: one line for each fault. */
export class BadInput extends Error {
  readonly lines: readonly string[];
  /** Documents of the project that say how it must be, by their paths in it. */
  readonly guides: readonly string[];

  constructor(lines: readonly string[], guides: readonly string[] = []) {
    super(lines.join("\n"));
    this.name = "BadInput";
    this.lines = lines;
    this.guides = guides;
  }
}

export const PLAN_GUIDE = "sim/asked/plan/README.md";

export const STUDY_GUIDE = "sim/asked/study/README.md";

export const SIZE_GUIDE = "sim/questions/size/README.md";

export const OPTIONS_GUIDE = "sim/questions/options/README.md";

export const IMPROVE_GUIDE = "sim/questions/improve/README.md";
export const SEASON_GUIDE = "sim/questions/season/README.md";

export const NEW_GUIDE = "sim/questions/new/README.md";

/** What ends a program politely: the terminal is closed, Ctrl-C, a polite kill. */
export const SIGNALS = ["SIGHUP", "SIGINT", "SIGTERM"] as const;

type StopSignal = (typeof SIGNALS)[number];

/** Thrown between two days after Ctrl-C, a polite kill, or when the terminal was closed. */
export class Stopped extends Error {
  readonly signal: StopSignal;

  constructor(signal: StopSignal, message = "Stopped. Nothing was written.") {
    super(message);
    this.name = "Stopped";
    this.signal = signal;
  }
}

const TOO_MANY_OPEN = "too many files are open; give fewer threads (--threads 1), or raise the limit (ulimit -n 4096)";

const REASONS: Record<string, string> = {
  ENOSPC: "the disk is full; make room",
  EDQUOT: "your disk quota is used up; make room",
  EACCES: "you may not write there; name another folder",
  EPERM: "you may not write there; name another folder",
  EROFS: "this disk is read-only; name another folder",
  ENOTDIR: "part of the path is a file, not a folder; name another folder",
  ENAMETOOLONG: "the name is too long; name another folder",
  ELOOP: "a link in the path leads back to itself, or must not be followed; name another folder",
  EFBIG: "the system does not allow so large a file here; raise that limit",
  EMFILE: TOO_MANY_OPEN,
  ENFILE: TOO_MANY_OPEN,
  EADDRINUSE: "another program uses that port; give another one with --port",
  EIO: "the disk reports an error; check it",
};

const NOTHING_THERE = "no folder can be made there; name another one";

const MAX_LINES = 200;

const LONGEST = 1000;

/** What the program tells the shell. */
const DONE = 0;

const FAILED = 1;

/**
 * Something a person wrote (arguments, a plan, a study, a folder to write to) is not as it must be. Nothing was
 * written.
 */
const BAD_INPUT = 2;

/** 128 + the number of the signal, as shells have it. */
const STOPPED = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;

/** Says what went wrong and gives the exit code. A stack trace helps nobody but whoever asked for it (`debug`). */
export function explain(error: unknown, { say }: { say(line: string, style?: "red"): void }, debug = false): number {
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

/** Faults as they are shown: a file can hold more of them, and longer names in them, than anybody reads. */
export function shownLines(lines: readonly string[]): string[] {
  const shown = lines.slice(0, MAX_LINES).map(shortened);
  const more = lines.length - shown.length;
  return more === 0 ? shown : [...shown, `... and ${more} more; correct these first.`];
}

function shortened(line: string): string {
  return line.length <= LONGEST ? line : `${line.slice(0, LONGEST)}...`;
}

/** What a failure of the system means to a person, in one line with its remedy; null when it is none of the known ones. */
export function diskWords(error: unknown): string | null {
  const { code, path, syscall } = error as NodeJS.ErrnoException;
  // Of a file that is read it says something else.
  const reason = code === "ENOENT" && syscall === "mkdir" ? NOTHING_THERE : REASONS[code ?? ""];
  return reason === undefined ? null : `${path === undefined ? "" : `${path}: `}${reason}, then run it again.`;
}
