import { execFile } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import type { Plugin } from "vitest/config";
import type { TestProject } from "vitest/node";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Here and not below node_modules, so that the runtime takes the files for the modules they are. */
const BUILDS = join(ROOT, ".built");
/** Names the folder to every worker of one run of the tests. */
const FOLDER = "GAMBREL_TEST_BUILD";
/** Below it the program in its few files; the modules lie beside, as in the sources. */
const PROGRAM = "program";

/** Before any test: what is published is built from the sources, into a folder that goes away with the run. */
export default async function setup(project: TestProject): Promise<() => void> {
  mkdirSync(BUILDS, { recursive: true });
  const folder = mkdtempSync(join(BUILDS, "run-"));
  // Some tests start the program as another user.
  chmodSync(folder, 0o755);
  await build(folder);
  project.onTestsRerun(() => build(folder));
  process.env[FOLDER] = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}

/** Each module by itself, for tests of modules, and the program as it is published. Types are not looked at: `npm run check` does that. */
async function build(folder: string): Promise<void> {
  const modules = ["typescript/bin/tsc", "-p", join(ROOT, "tests", "support", "tsconfig.json"), "--outDir", folder];
  const config = join(ROOT, "viz", "build", "program.config.ts");
  const program = ["vite/bin/vite.js", "build", "-c", config, "--outDir", join(folder, PROGRAM), "--logLevel", "error"];
  await Promise.all(
    [modules, program].map(([tool, ...args]) =>
      promisify(execFile)(process.execPath, [join(ROOT, "node_modules", tool!), ...args], { cwd: ROOT }),
    ),
  );
}

/** Path of a built file of this run, named by its place in the sources: `sim/index.js`. */
export function built(file: string): string {
  const folder = process.env[FOLDER];
  if (folder === undefined) throw new Error("the tests were started without their global setup");
  return join(folder, file);
}

/** Path of the command line built as it is published: it starts five times as fast as from the sources. */
export function builtProgram(): string {
  return built(join(PROGRAM, "gambrel.js"));
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
      const isBuilt = /^(sim|viz)\//.test(file) && !/^viz\/(page|build)\//.test(file);
      return isBuilt ? built(file.replace(/\.ts$/, ".js")) : null;
    },
  };
}
