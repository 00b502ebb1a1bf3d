import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { makeFolders } from "../../results/index.ts";
import { JournalProblem } from "./journalProblem.ts";
import { LOCK, TAKEOVER } from "./partialFolder.ts";
import { lifeOf, ownMark, type ProcessMark } from "./processMark.ts";

const MAX_TRIES = 5;
/** Milliseconds. */
const MOMENT = 20;

const MARK = z.strictObject({ host: z.string(), pid: z.int().positive(), began: z.string().nullable() });

/**
 * Makes this process the only one that works in a folder, which is made where it is absent; a `JournalProblem` when
 * another one does. The lock of a process that has ended is taken over.
 */
export function takeRunLock(folder: string): void {
  if (!createdIn(folder)) takeOver(folder);
}

/** A run that is just ending takes the folder away with its lock: it may be gone again before the lock is in it. */
function createdIn(folder: string): boolean {
  for (let tries = 1; ; tries++) {
    makeFolders(folder);
    try {
      return created(join(folder, LOCK), JSON.stringify(ownMark()));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "ENOENT" || tries === MAX_TRIES) throw error;
    }
  }
}

export function releaseRunLock(folder: string): void {
  rmSync(join(folder, LOCK), { force: true });
}

/**
 * Two processes may find the same dead one's lock: only the one that makes the takeover file may put its own in its
 * place, and only after another look.
 */
function takeOver(folder: string): void {
  refuseLiving(folder);
  const turn = join(folder, TAKEOVER);
  if (!created(turn, ""))
    throw new JournalProblem(`${folder}: another run is just starting there; if none is, delete ${turn}.`);
  try {
    refuseLiving(folder);
    writeFileSync(turn, JSON.stringify(ownMark()));
    renameSync(turn, join(folder, LOCK));
  } finally {
    rmSync(turn, { force: true });
  }
}

function refuseLiving(folder: string): void {
  const lock = join(folder, LOCK);
  const mark = readMark(lock);
  if (mark === null)
    throw new JournalProblem(`${lock}: this cannot be read; if no other run uses ${folder}, delete it.`);
  const life = lifeOf(mark);
  const who = `process ${mark.pid} on ${mark.host}`;
  if (life === "alive")
    throw new JournalProblem(`${folder}: a run is under way there (${who}); wait for it, or name another folder.`);
  if (life === "elsewhere") {
    throw new JournalProblem(
      `${folder}: a run on another machine holds it (${who}); if that has ended, delete ${lock}.`,
    );
  }
}

/** Another run makes its lock first and writes into it then: one that cannot be read is given a moment. */
function readMark(lock: string): ProcessMark | null {
  for (let tries = 1; ; tries++) {
    try {
      return MARK.parse(JSON.parse(readFileSync(lock, "utf8")));
    } catch {
      if (tries === MAX_TRIES) return null;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, MOMENT);
    }
  }
}

/** Writes a file unless it is there already. */
function created(path: string, text: string): boolean {
  try {
    writeFileSync(path, text, { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}
