import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";
import { explain } from "../../../sim/cli/faults.ts";
import { openFilesLimit, threadsFor } from "../../../sim/cli/openFiles.ts";

it("starts no more threads than can load under the limit on open files, and always one", () => {
  expect([64, 256, 310, 430, 1024].map(threadsFor)).toEqual([1, 16, 20, 30, 80]);
  expect(threadsFor(null)).toBe(Number.POSITIVE_INFINITY);
});

it("knows the limit that the shell set", () => {
  const limit = openFilesLimit();
  const { status, stdout } = spawnSync("sh", ["-c", "ulimit -n"], { encoding: "utf8" });
  expect(status).toBe(0);
  // The runtime raises its own limit to the hard one.
  expect(limit === null ? Number.POSITIVE_INFINITY : limit).toBeGreaterThanOrEqual(Number(stdout) || 0);
});

it.each(["EMFILE", "ENFILE"])("says of %s what to do", (code) => {
  const said: string[] = [];
  const error = Object.assign(new Error(`${code}: too many open files, open 'x.js'`), { code, path: "x.js" });
  expect(explain(error, { say: (line) => said.push(line) })).toBe(1);
  expect(said).toEqual([
    "x.js: too many files are open; give fewer threads (--threads 1), or raise the limit (ulimit -n 4096), then run it again.",
  ]);
});
