import { existsSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { pid } from "node:process";
import { BadInput } from "./badInput.ts";

/** Refuses a file that cannot be written, before time is spent on what goes into it. */
export function checkNewFile(path: string, overwrite: boolean): void {
  if (path === "") throw new BadInput(["--out: the name is empty; name a file."]);
  const folder = dirname(path);
  if (!existsSync(folder)) throw new BadInput([`${path}: there is no folder ${folder}; make it first.`]);
  if (!existsSync(path)) return;
  if (statSync(path).isDirectory()) throw new BadInput([`${path}: this is a folder; name a file.`]);
  if (!overwrite) throw new BadInput([`${path}: it is there already; name another file, or add --overwrite.`]);
}

/** Writes the whole file or nothing: under another name first, which then takes its place. */
export function writeNewFile(path: string, text: string): void {
  const draft = `${path}.${pid}.tmp`;
  try {
    writeFileSync(draft, text);
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
}
