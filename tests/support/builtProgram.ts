import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** Builds the project as it is published and gives the path of its command line; goes away with the test. */
export function builtProgram(): string {
  // Below node_modules, so that the packages it needs are found from there and no tool looks at it.
  const cache = join(ROOT, "node_modules", ".cache");
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, "gambrel-built-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const compiler = join(ROOT, "node_modules", "typescript", "bin", "tsc");
  const build = spawnSync(process.execPath, [compiler, "-p", join(ROOT, "tsconfig.build.json"), "--outDir", folder]);
  const program = join(folder, "sim", "cli", "main.js");
  if (!existsSync(program)) throw new Error(`nothing was built: ${build.stdout} ${build.stderr}`);
  return program;
}
