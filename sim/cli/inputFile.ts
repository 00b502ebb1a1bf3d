import { dirname, resolve } from "node:path";
import { formatFault, parseJson, type TextFiles } from "../asked/plan/index.ts";
import { BadInput } from "./badInput.ts";
import { CEILINGS, type Ceilings } from "./ceilings.ts";
import { readTextFile } from "./readTextFile.ts";

/** A file named on the command line: its text as it stands, what it says, and the files it may name in turn. */
export interface InputFile {
  path: string;
  text: string;
  json: unknown;
  /** Reads files by the path that this file gives them, from its own folder. */
  files: TextFiles;
}

/** Reads a JSON file; `BadInput` when it is not there, too large, or no JSON. */
export function readInputFile(path: string, { megabytes }: Pick<Ceilings, "megabytes"> = CEILINGS): InputFile {
  const text = readNamedText(path, megabytes);
  const { value, fault } = parseJson(text);
  if (fault !== null) throw new BadInput([`${path}: ${formatFault(fault)}`]);
  const folder = dirname(path);
  return { path, text, json: value, files: { readText: (name) => readTextFile(resolve(folder, name), megabytes) } };
}

/** The text of a file named on the command line; `BadInput` when it is not there or too large. */
export function readNamedText(path: string, megabytes: number = CEILINGS.megabytes): string {
  try {
    return readTextFile(path, megabytes);
  } catch (error) {
    throw new BadInput([`${path}: ${reasonOf(error)}`]);
  }
}

const REASONS: Record<string, string> = {
  ENOENT: "there is no such file; check the name and the folder you are in.",
  EACCES: "you may not read this file.",
};

function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ""] ?? `${message}.`;
}
