import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "gambrel-demo-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it("the demo runs one study for each user on the invented plant and leaves reports, tables and charts", () => {
  const main = join(ROOT, "sim/cli/checkout.ts");
  execFileSync(process.execPath, ["--import", "tsx", main, "demo", "--replications", "3", "--out", folder], {
    cwd: ROOT,
    stdio: "pipe",
  });
  const studies = readdirSync(folder).sort();
  expect(studies).toEqual(["buffers", "moving-bottleneck", "one-more-operator"]);
  for (const study of studies) {
    const inside = readdirSync(join(folder, study));
    for (const name of [
      "results.json",
      "summary.csv",
      "traces.csv",
      "report.html",
      "charts",
      "plan.json",
      "study.json",
    ]) {
      expect(inside, study).toContain(name);
    }
    const results = JSON.parse(readFileSync(join(folder, study, "results.json"), "utf8"));
    expect(results.variants[0].estimates.headsPerHour.n).toBe(3);
  }
}, 120_000);
