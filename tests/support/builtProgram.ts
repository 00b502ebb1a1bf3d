import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Names the folder to every worker of one run of the tests. */
const FOLDER = "GAMBREL_TEST_BUILD";
const PATIENCE_MS = 120_000;
const POLL_MS = 50;

/** Before any test: a folder for the built program, which goes away with the run. Nothing is built yet. */
export default function setup(): () => void {
  // Below node_modules, so that the packages it needs are found from there and no tool looks at it.
  const cache = join(ROOT, "node_modules", ".cache");
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, "gambrel-built-"));
  // Some tests start the program as another user.
  chmodSync(folder, 0o755);
  process.env[FOLDER] = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}

/**
 * Path of the command line built as it is published: it starts three times as fast as from the sources. The first test
 * that asks for it builds it, all others wait for that.
 */
export function builtProgram(): string {
  const folder = process.env[FOLDER];
  if (folder === undefined) throw new Error("the tests were started without their global setup");
  const done = join(folder, "done");
  if (!existsSync(done)) {
    if (isFirst(join(folder, "begun"))) build(folder, done);
    else waitFor(done);
  }
  return join(folder, "sim", "cli", "main.js");
}

function isFirst(mark: string): boolean {
  try {
    mkdirSync(mark);
    return true;
  } catch {
    return false;
  }
}

function build(folder: string, done: string): void {
  const compiler = join(ROOT, "node_modules", "typescript", "bin", "tsc");
  const args = [compiler, "-p", join(ROOT, "tsconfig.build.json"), "--outDir", folder];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`nothing was built: ${stdout} ${stderr}`);
  writeFileSync(done, "");
}

function waitFor(done: string): void {
  const word = new Int32Array(new SharedArrayBuffer(4));
  for (let waited = 0; !existsSync(done); waited += POLL_MS) {
    if (waited > PATIENCE_MS) throw new Error("another worker was to build the program and did not");
    Atomics.wait(word, 0, 0, POLL_MS);
  }
}
