import { existsSync, lstatSync, readdirSync, rmdirSync, rmSync, truncateSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
import { exactJson, type MakerMark, parseExactJson } from "../wire/index.ts";
import {
  BEGIN_ANEW,
  type JournalHeader,
  type JournalOf,
  journalHeader,
  readHeader,
  refuseOther,
  writeHeader,
} from "./journalHeader.ts";
import { journalLines } from "./journalLines.ts";
import { JournalProblem } from "./journalProblem.ts";
import { JournalWriter } from "./journalWriter.ts";
import { DAYS, HEADER, LOCK, PARTS, partialFolder } from "./partialFolder.ts";
import { releaseRunLock, takeRunLock } from "./runLock.ts";

export interface JournalOptions {
  maker: MakerMark;
  /** Go on with the days of an unfinished run, if there is one. */
  resume: boolean;
  /** Throw the days of an unfinished run away; `resume` comes first. */
  overwrite: boolean;
}

/** What the lines of a journal are made from, and what each of them has to look like. */
export interface Lines<Line> {
  of: JournalOf;
  digest: string;
  shape: z.ZodType<Line>;
}

/** One of `keep` and `discard` ends it. */
export interface OpenLines<Line> {
  /** Where it lies. */
  folder: string;
  known: readonly Line[];
  add(line: Line): void;
  /** Leaves the days for a later run to go on with; gives their number. With none, everything is taken away. */
  keep(): number;
  /** Takes everything away. */
  discard(): void;
}

/**
 * Opens the journal of a run into `folder`: an append-only file of days in a folder beside it, which no other process
 * may use at the same time. A `JournalProblem` says what is in the way: another run under way, an unfinished one that
 * nobody said what to do with, or one made from something else or by another version. A last line that a kill cut off is
 * dropped.
 */
export function openLines<Line>(folder: string, lines: Lines<Line>, options: JournalOptions): OpenLines<Line> {
  const beside = partialFolder(folder);
  refuseForeign(beside);
  takeRunLock(beside);
  try {
    const header = journalHeader(lines.digest, options.maker);
    const known = options.resume ? linesOfSame(beside, header, lines) : [];
    if (!options.resume) clear(beside, options.overwrite);
    writeHeader(beside, header);
    return opened(beside, known);
  } catch (error) {
    releaseRunLock(beside);
    throw error;
  }
}

function opened<Line>(folder: string, known: readonly Line[]): OpenLines<Line> {
  const writer = new JournalWriter(join(folder, DAYS));
  return {
    folder,
    known,
    add(line) {
      writer.add(exactJson(line));
    },
    keep() {
      closeQuietly(writer);
      const days = known.length + writer.lines;
      if (days === 0) removePartial(folder);
      else releaseRunLock(folder);
      return days;
    },
    discard() {
      closeQuietly(writer);
      removePartial(folder);
    },
  };
}

/** What could not be written is not in the number of days kept; a disk that is full was told of by `note`. */
function closeQuietly(writer: JournalWriter): void {
  try {
    writer.close();
  } catch {}
}

/** So that nobody's files are deleted with the journal, or written to through a link. */
function refuseForeign(folder: string): void {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (found === undefined) return;
  if (!found.isDirectory()) throw new JournalProblem(`${folder}: this is a link or a file; move it away.`);
  const entries = readdirSync(folder, { withFileTypes: true });
  const foreign = entries.find(
    (entry) => !(PARTS.has(entry.name) || entry.name === `${HEADER}-new`) || !entry.isFile(),
  );
  if (foreign !== undefined) {
    throw new JournalProblem(
      `${folder}: holds a file that is not of an unfinished run (${foreign.name}); move it away.`,
    );
  }
}

function clear(folder: string, mayDelete: boolean): void {
  if (existsSync(join(folder, HEADER)) && !mayDelete) {
    const remedy = "add --resume to finish it, or --overwrite to begin anew";
    throw new JournalProblem(`${folder}: an unfinished run is there; ${remedy}.`);
  }
  for (const name of [HEADER, `${HEADER}-new`, DAYS]) rmSync(join(folder, name), { force: true });
}

function linesOfSame<Line>(folder: string, header: JournalHeader, { of, shape }: Lines<Line>): Line[] {
  const left = readHeader(folder);
  if (left === null) {
    clear(folder, false);
    return [];
  }
  refuseOther(folder, left, header, of);
  return readLines(join(folder, DAYS), shape);
}

/** Reads the days and cuts a torn last line off, so that the next one begins a line of its own. */
function readLines<Line>(path: string, shape: z.ZodType<Line>): Line[] {
  if (!existsSync(path)) return [];
  const lines: Line[] = [];
  let soundBytes = 0;
  const damaged = () => new JournalProblem(`${path}: line ${lines.length + 1} is damaged; ${BEGIN_ANEW}.`);
  try {
    for (const { text, endByte } of journalLines(path)) {
      const found = shape.safeParse(parsed(text));
      if (!found.success) throw damaged();
      lines.push(found.data);
      soundBytes = endByte;
    }
  } catch (error) {
    // Too long a line, or nested too deep to be looked at.
    throw error instanceof RangeError ? damaged() : error;
  }
  truncateSync(path, soundBytes);
  return lines;
}

function parsed(text: string): unknown {
  try {
    return parseExactJson(text);
  } catch {
    return undefined;
  }
}

/** The lock goes last: until then nobody else comes in. */
function removePartial(folder: string): void {
  for (const name of [DAYS, HEADER, `${HEADER}-new`, LOCK]) rmSync(join(folder, name), { force: true });
  try {
    rmdirSync(folder);
  } catch {
    // Another run has begun in it in the meantime.
  }
}
