import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import process from "node:process";
import { type Section, shown } from "../section.ts";

const PROGRAM = join(import.meta.dirname, "..", "..", "..", "sim", "cli", "main.js");
const PLAN = "experiments/plans/every-part.json";
const STUDY = "experiments/studies/buffers.json";
const CALLS: Record<string, string[]> = {
  "node alone": ["-e", ""],
  "--help": [PROGRAM, "--help"],
  "--version": [PROGRAM, "--version"],
  "check, a plan": [PROGRAM, "check", PLAN],
  "check, a study": [PROGRAM, "check", STUDY],
  "day, a plan": [PROGRAM, "day", PLAN, "--traces", "none"],
};
const TIMES = 12;

/** From the call of the built program to its end, by the wall clock: the shortest of several. */
export function startUp(): Section {
  const section: Section = {
    title: "Start-up of the built program, wall clock",
    rows: [["call", "ms"]],
    figures: {},
  };
  const shortest = Object.values(CALLS).map(() => Infinity);
  for (let time = 0; time < TIMES; time++) {
    Object.values(CALLS).forEach((call, index) => {
      shortest[index] = Math.min(shortest[index]!, millisecondsOf(call));
    });
  }
  Object.keys(CALLS).forEach((name, index) => {
    section.rows.push([name, shown(shortest[index]!)]);
    section.figures[`${name}, ms`] = shortest[index]!;
  });
  return section;
}

function millisecondsOf(call: string[]): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, call, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${call.join(" ")}: ${stderr}`);
  return performance.now() - start;
}
