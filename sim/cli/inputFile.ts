import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { formatFault, parseJson, type TextFiles } from "../plan/index.ts";
import { BadInput } from "./badInput.ts";

/** A file named on the command line: its text as it stands, what it says, and the files it may name in turn. */
export interface InputFile {
  path: string;
  text: string;
  json: unknown;
  /** Reads files by the path that this file gives them, from its own folder. */
  files: TextFiles;
}

/** Reads a JSON file; `BadInput` when it is not there or is no JSON. */
export function readInputFile(path: string): InputFile {
  const text = readTextFile(path);
  const { value, fault } = parseJson(text);
  if (fault !== null) throw new BadInput([`${path}: ${formatFault(fault)}`]);
  const folder = dirname(path);
  return { path, text, json: value, files: { readText: (name) => readFileSync(resolve(folder, name), "utf8") } };
}

function readTextFile(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    throw new BadInput([`${path}: ${reasonOf(error)}`]);
  }
}

const REASONS: Record<string, string> = {
  ENOENT: "there is no such file; check the name and the folder you are in.",
  EISDIR: "this is a folder; name a plan or study file in it.",
  EACCES: "you may not read this file.",
};

function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ""] ?? message;
}
