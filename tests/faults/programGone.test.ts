import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import process from "node:process";
import { expect, it } from "vitest";
import { builtProgram } from "../support/builtProgram.ts";
import { cliFolder } from "../support/cliFolder.ts";

const PATIENCE_MS = 60_000;

it("ends with exit code 1 when the program itself was taken away under it", { timeout: 2 * PATIENCE_MS }, () => {
  const program = dirname(builtProgram());
  const copy = mkdtempSync(`${program}-copy-`);
  try {
    cpSync(program, copy, { recursive: true });
    for (const file of readdirSync(copy).filter((name) => /^(faults|check)-/.test(name))) rmSync(join(copy, file));
    const { status, stderr } = spawnSync(process.execPath, [join(copy, "gambrel.js"), "check", "plan.json"], {
      cwd: cliFolder(),
      encoding: "utf8",
      timeout: PATIENCE_MS,
    });
    expect(status).toBe(1);
    expect(stderr).toMatch(/(faults|check)-[\w-]+\.js/);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
});
