import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";

/** When the newest of these files and folders, and of all that is in them, below `root` was changed: milliseconds, 0 where there is none. */
export function newestSource(root: string, sources: readonly string[]): number {
  const files = sources.flatMap((name) => {
    const path = join(root, name);
    if (!existsSync(path)) return [];
    if (!statSync(path).isDirectory()) return [path];
    return [path, ...readdirSync(path, { recursive: true, encoding: "utf8" }).map((inside) => join(path, inside))];
  });
  return Math.max(0, ...files.map((path) => statSync(path).mtimeMs));
}

/**
 * Builds what a configuration of the bundler describes, and puts it in a folder's place in one step, so that nobody meets
 * half of it. Where another process has finished the same work meanwhile, its result stays: somebody may be using it.
 */
export async function buildFromSources(configFile: string, folder: string, isThere: () => boolean): Promise<void> {
  mkdirSync(dirname(folder), { recursive: true });
  const fresh = mkdtempSync(`${folder}-`);
  try {
    const vite = await import("vite");
    await vite.build({ configFile, logLevel: "error", build: { outDir: fresh, emptyOutDir: true } });
    if (isThere()) return;
    rmSync(folder, { recursive: true, force: true });
    renameSync(fresh, folder);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}
