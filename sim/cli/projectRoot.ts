import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * The folder with this project's package.json: the checkout, or the installed package. This file lies at a different
 * depth in the two (sim/cli, dist/sim/cli), so the folders above are searched.
 */
export function projectRoot(): string {
  for (let folder = dirname(fileURLToPath(import.meta.url)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, "package.json"))) return folder;
    if (folder === dirname(folder))
      throw new Error("package.json of gambrel was not found; is the installation whole?");
  }
}
