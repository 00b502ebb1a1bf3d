/**
 * Runs the same days and studies on several releases of Node.js and holds their files to each other, byte by byte:
 *
 *   npx tsx tests/runtimes/sameBits.ts 20 22 24
 *
 * Each release comes from the npm registry's package "node" (a hundred megabytes or so) into node_modules/.cache. Not part
 * of `npm test`: it takes minutes and the network. Ends with exit code 1 where any byte differs.
 */

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { argv, execPath, exit } from "node:process";
import { fileURLToPath } from "node:url";
import { folderDigest } from "../support/folderDigest.ts";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const CACHE = join(ROOT, "node_modules", ".cache");

/** Every distribution, chilling by conduction, crews, chains; antithetic pairs, a selection, screening. */
const RUNS = [
  ["day", "experiments/plans/every-part.json", "--traces", "exact"],
  ["day", "experiments/plans/parts/capacity.json"],
  ["day", "experiments/plans/parts/chiller.json"],
  ["study", "experiments/studies/choose-the-best.json"],
  ["study", "experiments/studies/screening.json"],
  ["study", "experiments/studies/buffers.json", "--replications", "4"],
];

function run(program: string, args: readonly string[], cwd = ROOT): void {
  const { status, stdout, stderr } = spawnSync(program, args, { cwd, encoding: "utf8" });
  if (status !== 0) throw new Error(`${program} ${args.join(" ")}: exit code ${status}\n${stdout}${stderr}`);
}

/** The path of a release of Node.js, fetched unless it is there. */
function release(major: string): string {
  const folder = join(CACHE, `node-${major}`);
  const program = join(folder, "node_modules", "node", "bin", "node");
  if (existsSync(program)) return program;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{"private":true}');
  run("npm", ["install", `node@${major}`, "--no-audit", "--no-fund"], folder);
  return program;
}

/** Digests of every file that a release writes. */
function filesOf(node: string, program: string): Record<string, string> {
  const folder = mkdtempSync(join(tmpdir(), "gambrel-bits-"));
  try {
    for (const [index, args] of RUNS.entries()) run(node, [program, ...args, "--out", join(folder, String(index))]);
    return folderDigest(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const majors = argv.slice(2).length > 0 ? argv.slice(2) : ["20", "22", "24"];
const built = join(CACHE, "gambrel-bits");
rmSync(built, { recursive: true, force: true });
run(execPath, ["node_modules/typescript/bin/tsc", "-p", "tsconfig.build.json", "--outDir", built]);
const releases = majors.map((major) => {
  const node = release(major);
  const version = spawnSync(node, ["--version"], { encoding: "utf8" }).stdout.trim();
  const files = filesOf(node, join(built, "sim", "cli", "main.js"));
  console.log(`${version}: ${Object.keys(files).length} files`);
  return { version, files };
});
const [first, ...others] = releases;
const differing = others.flatMap(({ version, files }) =>
  Object.keys({ ...first!.files, ...files })
    .filter((name) => files[name] !== first!.files[name])
    .map((name) => `${name}: ${version} differs from ${first!.version}`),
);
for (const line of differing) console.log(line);
console.log(differing.length === 0 ? "Not a byte differs." : `${differing.length} files differ.`);
exit(differing.length === 0 ? 0 : 1);
