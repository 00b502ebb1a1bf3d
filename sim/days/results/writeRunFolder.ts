import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { makeFolders } from "./makeFolders.ts";
import type { RunFile } from "./runFiles.ts";
import { runFolderProblem } from "./runFolderProblem.ts";

/** A path inside the run folder: plain names only, so neither ".." nor a drive nor a device can be in it. */
const SAFE_PATH = /^([a-z0-9][a-z0-9_-]*\/)*[a-z0-9][a-z0-9_-]*(\.[a-z0-9]+)?$/i;

/**
 * Writes a run folder: all of it or nothing. The files go into a new folder beside it, which takes its name only when
 * the last one is complete; after a failure the disk is as it was. Refuses what `runFolderProblem` refuses, and a file
 * path that could leave the folder: throws an Error that says which and what to do. With `overwrite` an earlier run in the
 * folder is replaced, never anything else. One process at a time may write to a folder (see the run lock). Needs Node;
 * example at `runFiles`.
 */
export function writeRunFolder(folder: string, files: readonly RunFile[], overwrite: boolean): void {
  // A link to a folder stays a link: what it points to is replaced.
  const target = targetOf(folder);
  mendInterruptedSwap(target);
  const problem = runFolderProblem(folder, overwrite) ?? runFolderProblem(target, overwrite);
  if (problem !== null) throw new Error(problem);
  for (const { path } of files) {
    if (!SAFE_PATH.test(path)) throw new Error(`writeRunFolder: "${path}" is no plain path inside a run folder`);
  }
  const { work, aside } = workFolders(target);
  const madeFirst = makeFolders(dirname(target));
  try {
    mkdirSync(work);
    writeFiles(work, files);
    swapIn(work, target, aside);
  } catch (error) {
    rmSync(work, { recursive: true, force: true });
    removeEmpty(dirname(target), madeFirst);
    throw error;
  }
}

/** Puts a folder right that a kill left in the middle of being written; to be done before it is looked at. */
export function mendRunFolder(folder: string): void {
  mendInterruptedSwap(targetOf(folder));
}

function targetOf(folder: string): string {
  return existsSync(folder) ? realpathSync(folder) : resolve(folder);
}

function writeFiles(folder: string, files: readonly RunFile[]): void {
  for (const file of files) {
    const path = join(folder, file.path);
    makeFolders(dirname(path));
    if ("parts" in file) writeParts(path, file.parts);
    else writeFileSync(path, "text" in file ? file.text : file.bytes, { flag: "wx" });
  }
}

function writeParts(path: string, parts: Iterable<string>): void {
  const opened = openSync(path, "wx");
  try {
    for (const part of parts) writeFileSync(opened, part);
  } finally {
    closeSync(opened);
  }
}

/** Puts the finished folder in the place of the old one, which is kept aside until that has worked. */
function swapIn(work: string, target: string, aside: string): void {
  const replaces = existsSync(target);
  if (replaces) renameSync(target, aside);
  try {
    renameSync(work, target);
  } catch (error) {
    if (replaces) renameSync(aside, target);
    throw error;
  }
  if (replaces) rmSync(aside, { recursive: true, force: true });
}

/** Takes away the parent folders that were made for this run, as far as they are empty. */
function removeEmpty(from: string, madeFirst: string | undefined): void {
  if (madeFirst === undefined) return;
  const top = resolve(madeFirst);
  for (let folder = from; folder.startsWith(top); folder = dirname(folder)) {
    try {
      rmdirSync(folder);
    } catch {
      return; // Someone else has put something there in the meantime.
    }
  }
}

/** Where a run folder is made before it takes its name, and where the one it replaces waits until it has. */
export function workFolders(target: string): { work: string; aside: string } {
  const beside = (what: string): string => join(dirname(target), `.${basename(target)}-gambrel-${what}`);
  return { work: beside("new"), aside: beside("old") };
}

/**
 * Clears up what a kill in the middle of writing a run folder left behind: a folder that was half made goes, and one
 * that had been put aside takes its name again unless a new one has it. Nobody else may be writing to the folder.
 */
function mendInterruptedSwap(target: string): void {
  const { work, aside } = workFolders(target);
  if (existsSync(aside) && !existsSync(target)) renameSync(aside, target);
  for (const folder of [work, aside]) rmSync(folder, { recursive: true, force: true });
}
