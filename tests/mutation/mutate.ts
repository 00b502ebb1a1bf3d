import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { alignedTable } from "../outside/outsideTable.ts";
import { FAULTS, type Fault } from "./faults.ts";

/*
 * Breaks a copy of the sources in one way after another and lists which check noticed: npx tsx tests/mutation/mutate.ts
 * Words on the command line choose the faults whose names hold one of them; the record is written for a whole run only.
 * Takes some minutes; not part of the tests.
 */

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const COPIED = [
  "sim",
  "viz",
  "tests",
  "experiments",
  "package.json",
  "tsconfig.json",
  "tsconfig.build.json",
  "vitest.config.ts",
];

interface Outcome {
  fault: string;
  /** The check that failed first; null when none did. */
  caughtBy: string | null;
  alsoByOwnTests: boolean;
}

function main(): void {
  const words = process.argv.slice(2);
  const chosen = FAULTS.filter(({ name }) => words.length === 0 || words.some((word) => name.includes(word)));
  const folder = mkdtempSync(join(tmpdir(), "gambrel-mutation-"));
  try {
    copyProject(folder);
    demandSound(folder, [...new Set(chosen.flatMap((fault) => fault.checks))]);
    const outcomes = chosen.map((fault) => outcomeOf(fault, folder));
    if (words.length === 0) writeFileSync(new URL("README.md", import.meta.url), record(outcomes));
    if (outcomes.some((outcome) => outcome.caughtBy === null)) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function copyProject(folder: string): void {
  for (const name of COPIED) cpSync(join(ROOT, name), join(folder, name), { recursive: true });
  symlinkSync(join(ROOT, "node_modules"), join(folder, "node_modules"));
}

/** Without a fault every check has to pass, else a failure would show nothing. */
function demandSound(folder: string, checks: string[]): void {
  const failing = [...checks.map(fileOf), OWN_TESTS].filter((file) => fails(folder, file));
  if (failing.length > 0) throw new Error(`these fail without any fault: ${failing.join(", ")}`);
  console.log(`sound: ${checks.join(", ")}`);
}

const OWN_TESTS = "tests/sim/day/engine";
/** Below tests: see Fault. */
const placeOf = (check: string) => (check.includes("/") ? check : `outside/${check}`);
const fileOf = (check: string) => `tests/${placeOf(check)}.test.ts`;

function outcomeOf(fault: Fault, folder: string): Outcome {
  const originals = new Map(fault.edits.map(({ file }) => [file, readFileSync(join(folder, file), "utf8")]));
  for (const edit of fault.edits) applyEdit(fault.name, edit, folder);
  const caughtBy = fault.checks.find((check) => fails(folder, fileOf(check))) ?? null;
  const alsoByOwnTests = fails(folder, OWN_TESTS);
  for (const [file, text] of originals) writeFileSync(join(folder, file), text);
  console.log(`${caughtBy === null ? "NOT CAUGHT" : `caught by ${caughtBy}`}: ${fault.name}`);
  return { fault: fault.name, caughtBy, alsoByOwnTests };
}

function applyEdit(name: string, { file, find, replace }: Fault["edits"][number], folder: string): void {
  const text = readFileSync(join(folder, file), "utf8");
  const times = text.split(find).length - 1;
  if (times !== 1) throw new Error(`"${name}": ${file} holds the text to replace ${times} times, not once:\n${find}`);
  writeFileSync(
    join(folder, file),
    text.replace(find, () => replace),
  );
}

/** A fault must be wrong, not broken: a program that cannot even run would be caught by anything. */
const BROKEN = /ReferenceError|SyntaxError|Transform failed|nothing was built|is not a function/;

function fails(folder: string, file: string): boolean {
  const { status, stdout, stderr } = spawnSync("npx", ["vitest", "run", file, "--bail", "1"], {
    cwd: folder,
    timeout: 300_000,
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  if (status === 0) return false;
  const broken = BROKEN.exec(stdout + stderr);
  if (broken) throw new Error(`${file}: the changed sources do not run (${broken[0]})`);
  return true;
}

function record(outcomes: Outcome[]): string {
  const caught = outcomes.filter((outcome) => outcome.caughtBy !== null).length;
  const rows = outcomes.map(({ fault, caughtBy, alsoByOwnTests }) => [
    fault,
    caughtBy === null ? "**not caught**" : placeOf(caughtBy),
    alsoByOwnTests ? "yes" : "no",
  ]);
  return `# Deliberate faults

Written by \`npx tsx tests/mutation/mutate.ts\`: a copy of the sources is broken in one way at a time (\`faults.ts\`), and the checks
against the outside world have to notice; the engine's own where no such check knows the rule. The last column says whether the engine's own tests notice as well. Not part of \`npm test\`.

**${caught} of ${outcomes.length} caught.**

${alignedTable(["fault", "caught first by", "also by the engine's own tests"], rows, 0)}
`;
}

main();
