import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import { PLACES } from "../serialLine.ts";
import type { Measured } from "../tasks.ts";

const SOURCE = join(process.cwd(), "tests", "bench", "reference", "tandem.c");
const PROGRAM = join(import.meta.dirname, "tandem");

/** Compiles the loop in C; false where there is no C compiler. */
export function compileLoop(): boolean {
  const { status } = spawnSync("cc", ["-O3", "-march=native", "-o", PROGRAM, SOURCE, "-lm"], { stdio: "inherit" });
  return status === 0;
}

export function runLoop(stations: number, heads: number): Measured {
  const { stdout } = spawnSync(PROGRAM, [stations, PLACES, heads].map(String), { encoding: "utf8" });
  const [headsPerSecond, events, seconds] = stdout.split(" ").map(Number) as [number, number, number];
  // A process that another one starts inherits its peak memory: nothing can be said of this one's.
  return { milliseconds: [seconds * 1e3], events, heads, headsPerSecond, peakMegabytes: Number.NaN };
}
