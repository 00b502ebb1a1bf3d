import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import process from "node:process";
import { expect, it } from "vitest";
import { builtProgram } from "../support/builtProgram.ts";
import { cliFolder } from "../support/cliFolder.ts";

const PATIENCE_MS = 60_000;

it("ends with exit code 1 when the program itself was taken away under it", { timeout: 2 * PATIENCE_MS }, () => {
  const built = dirname(dirname(dirname(builtProgram())));
  const copy = mkdtempSync(`${built}-copy-`);
  try {
    for (const part of ["sim", "viz"]) cpSync(join(built, part), join(copy, part), { recursive: true });
    for (const gone of ["faults.js", "commands/check.js"]) rmSync(join(copy, "sim", "cli", gone));
    const { status, stderr } = spawnSync(process.execPath, [join(copy, "sim/cli/main.js"), "check", "plan.json"], {
      cwd: cliFolder(),
      encoding: "utf8",
      timeout: PATIENCE_MS,
    });
    expect(status).toBe(1);
    expect(stderr).toMatch(/faults\.js|check\.js/);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
});
