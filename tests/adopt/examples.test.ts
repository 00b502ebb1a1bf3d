import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { temporaryFolder } from "../support/temporaryFolder.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const EXAMPLES = "experiments/examples";

it("each example of library use says how it is run, and that line runs from a checkout with nothing built", () => {
  const names = readdirSync(join(ROOT, EXAMPLES)).filter((name) => name.endsWith(".ts"));
  for (const name of names)
    expect(readFileSync(join(ROOT, EXAMPLES, name), "utf8")).toContain(`Run: npx tsx ${EXAMPLES}/${name}`);
  // All of them are run as a stranger would have them in packed.test.ts; here one, for the way it finds the library.
  const args = ["--import", "tsx", `${EXAMPLES}/drawChart.ts`, temporaryFolder()];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: ROOT, encoding: "utf8" });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(/^\d+ pictures in /);
}, 60_000);
