import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** SHA-256 of every file below a folder, by its path. */
export function folderDigest(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = names.map(({ parentPath, name }) => join(parentPath, name)).sort();
  return Object.fromEntries(
    paths.map((path) => [path.slice(folder.length + 1), createHash("sha256").update(readFileSync(path)).digest("hex")]),
  );
}
