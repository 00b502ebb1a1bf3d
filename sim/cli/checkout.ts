import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { newestSource } from "./newestSource.ts";
import { projectRoot } from "./project.ts";

/**
 * Starts the program in a checkout: the sources are put together once for each state they are in, since reading a
 * thousand of them takes longer than a day does. Programs of earlier states stay for a day, because one may be running.
 */
const root = projectRoot();
const BUILDS = join(root, ".built");
const DAY_MS = 24 * 3600 * 1000;

async function program(): Promise<string> {
  const folder = join(BUILDS, `program-${Math.round(newestSource(root, ["sim", "viz", "package.json"]))}`);
  if (!existsSync(folder)) await build(folder);
  return join(folder, "gambrel.js");
}

async function build(folder: string): Promise<void> {
  mkdirSync(BUILDS, { recursive: true });
  const fresh = mkdtempSync(join(BUILDS, "fresh-"));
  const { build } = await import("vite");
  const configFile = join(root, "viz", "build", "program.config.ts");
  await build({ configFile, logLevel: "error", build: { outDir: fresh, emptyOutDir: true } });
  for (const name of readdirSync(BUILDS).filter((each) => each.startsWith("program-")))
    if (Date.now() - statSync(join(BUILDS, name)).mtimeMs > DAY_MS)
      rmSync(join(BUILDS, name), { recursive: true, force: true });
  // Another process may have been as quick.
  if (existsSync(folder)) rmSync(fresh, { recursive: true, force: true });
  else renameSync(fresh, folder);
}

await import(pathToFileURL(await program()).href);
