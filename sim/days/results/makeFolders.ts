import { existsSync, mkdirSync } from "node:fs";
import { dirname, resolve } from "node:path";

/**
 * Makes a folder, and those above it as far as they are absent; gives the uppermost that was made, undefined when all
 * were there. Throws the system's own error. In place of the `recursive` of `mkdirSync`, which never comes back where a
 * folder that is there says of anything new in it that there is no such place, as /proc does.
 */
export function makeFolders(folder: string): string | undefined {
  const path = resolve(folder);
  try {
    mkdirSync(path);
    return path;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST" && existsSync(path)) return undefined;
    const above = dirname(path);
    if (code !== "ENOENT" || existsSync(above) || above === path) throw error;
    const madeFirst = makeFolders(above);
    mkdirSync(path);
    return madeFirst ?? path;
  }
}
