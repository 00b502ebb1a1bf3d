import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vitest/config";
import type { TestProject } from "vitest/node";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Here and not below node_modules, so that the runtime takes the files for the modules they are. */
const BUILDS = join(ROOT, ".built");
/** Names the folder to every worker of one run of the tests. */
const FOLDER = "GAMBREL_TEST_BUILD";

/** Before any test: what is published is built from the sources, into a folder that goes away with the run. */
export default function setup(project: TestProject): () => void {
  mkdirSync(BUILDS, { recursive: true });
  const folder = mkdtempSync(join(BUILDS, "run-"));
  // Some tests start the program as another user.
  chmodSync(folder, 0o755);
  build(folder);
  project.onTestsRerun(() => build(folder));
  process.env[FOLDER] = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}

/** Types are not looked at: `npm run check` does that. */
function build(folder: string): void {
  const compiler = join(ROOT, "node_modules", "typescript", "bin", "tsc");
  const args = [compiler, "-p", join(ROOT, "tests", "support", "tsconfig.json"), "--outDir", folder];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`nothing was built: ${stdout} ${stderr}`);
}

/** Path of a built file of this run, named by its place in the sources: `sim/cli/main.js`. */
export function built(file: string): string {
  const folder = process.env[FOLDER];
  if (folder === undefined) throw new Error("the tests were started without their global setup");
  return join(folder, file);
}

/** Path of the command line built as it is published: it starts three times as fast as from the sources. */
export function builtProgram(): string {
  return built("sim/cli/main.js");
}

/**
 * Gives the tests the built simulator and charts instead of their sources: a day takes half the time, since the runner of
 * the tests turns every call from one module to another into a look-up. Where the tests run again at every change
 * they get the sources, so that it is known whom a change concerns.
 */
export function takeBuilt(): Plugin {
  let watched = false;
  return {
    name: "gambrel:take-built",
    enforce: "pre",
    configureVitest({ vitest }) {
      watched = vitest.config.watch;
    },
    resolveId(source, importer) {
      if (watched || importer === undefined || !source.startsWith(".") || !source.endsWith(".ts")) return null;
      const file = relative(ROOT, resolve(dirname(importer), source))
        .split(sep)
        .join("/");
      const isBuilt = /^(sim|viz)\//.test(file) && !file.startsWith("viz/page/");
      return isBuilt ? built(file.replace(/\.ts$/, ".js")) : null;
    },
  };
}
