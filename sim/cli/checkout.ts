import { existsSync, readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildFromSources, newestSource } from "./fromSources.ts";
import { projectRoot } from "./project.ts";

const DAY_MS = 24 * 3600 * 1000;

/**
 * The program of a checkout: its sources are put together once for each state they are in, since reading a thousand of them
 * takes longer than a day does.
 */
async function program(): Promise<string> {
  const root = projectRoot();
  const builds = join(root, ".built");
  const folder = join(builds, `program-${Math.round(newestSource(root, ["sim", "viz", "package.json"]))}`);
  const file = join(folder, "gambrel.js");
  if (!existsSync(file)) {
    forgetOld(builds);
    const config = join(root, "viz", "build", "program.config.ts");
    await buildFromSources(config, folder, () => existsSync(file));
  }
  return file;
}

/** Programs of earlier states stay for a day, because one may be running. */
function forgetOld(builds: string): void {
  if (!existsSync(builds)) return;
  const names = readdirSync(builds).filter((each) => each.startsWith("program-"));
  for (const path of names.map((name) => join(builds, name)))
    if (Date.now() - statSync(path).mtimeMs > DAY_MS) rmSync(path, { recursive: true, force: true });
}

await import(pathToFileURL(await program()).href);
