import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** When the newest of these files, and of all files in these folders, below `root` was changed: milliseconds, 0 where there is none. */
export function newestSource(root: string, sources: readonly string[]): number {
  const files = sources.flatMap((name) => {
    const path = join(root, name);
    if (!existsSync(path)) return [];
    if (!statSync(path).isDirectory()) return [path];
    return readdirSync(path, { recursive: true, encoding: "utf8" }).map((inside) => join(path, inside));
  });
  return Math.max(0, ...files.map((path) => statSync(path).mtimeMs));
}
