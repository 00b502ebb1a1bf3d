import { existsSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { cwd } from "node:process";
import { fileURLToPath } from "node:url";

/**
 * The folder with this project's package.json: the checkout, or the installed package. This file lies at a different
 * depth in the two (sim/cli, dist/program), so the folders above are searched.
 */
export function projectRoot(): string {
  for (let folder = dirname(fileURLToPath(import.meta.url)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, "package.json"))) return folder;
    if (folder === dirname(folder))
      throw new Error("package.json of gambrel was not found; is the installation complete?");
  }
}

/** The version in package.json. */
export function programVersion(): string {
  const { version } = JSON.parse(readFileSync(join(projectRoot(), "package.json"), "utf8"));
  return String(version);
}

/** A path as the user would write it: short where it lies in or below the folder they are in. */
export function pathFromHere(path: string): string {
  const short = relative(cwd(), path);
  return short.startsWith("..") ? path : short;
}
