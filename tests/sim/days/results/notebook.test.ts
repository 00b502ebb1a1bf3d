import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { summaryCsv } from "../../../../sim/days/results/summaryCsv.ts";
import { valuesCsv } from "../../../../sim/days/results/valuesCsv.ts";
import { runStudy } from "../../../../sim/days/run/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const ROOT = resolve(import.meta.dirname, "../../../..");

/** Two-sided 95 % point of Student's t with 7 degrees of freedom, from any table of it (NIST/SEMATECH e-Handbook, 1.3.6.7.2). */
const T_7 = 2.365;

it("the notebook example of the README works out the differences that summary.csv has", async () => {
  const readme = readFileSync(join(ROOT, "sim/days/results/README.md"), "utf8");
  const program = /```js\n([\s\S]*?)```/.exec(readme)![1]!;
  const study = threeVariants({ replications: 8, responses: ["finish", "carcasses"] });
  const results = await runStudy(study, { gambrel: "1", command: "", traces: "none" });
  const folder = mkdtempSync(join(tmpdir(), "notebook-"));
  try {
    writeFileSync(join(folder, "values.csv"), [...valuesCsv(results)].join(""));
    writeFileSync(join(folder, "summary.csv"), [...summaryCsv(results)].join(""));
    const options = { cwd: ROOT, encoding: "utf8" } as const;
    const printed = execFileSync(process.execPath, ["--input-type=module", "-e", program, folder], options);
    const rows = printed.trim().split("\n");
    expect(rows).toHaveLength(2);
    for (const [index, row] of rows.entries()) {
      const [name, ...cells] = row.split("\t");
      const [mean, byHandLow, byHandHigh, low, high] = cells.map(Number) as [number, number, number, number, number];
      const { name: variant, differences } = results.variants[index + 1]!;
      expect(name).toBe(variant);
      expect(mean).toBeCloseTo(differences!.finish!.mean, 6);
      // Two standard errors by hand, Student's t in the program.
      const width = ((byHandHigh - byHandLow) / 2) * T_7;
      expect(Math.abs(high - low - width)).toBeLessThanOrEqual(3e-4 * width);
      expect((high + low) / 2).toBeCloseTo((byHandHigh + byHandLow) / 2, 6);
    }
    expect(results.variants[1]!.differences!.finish!.mean).toBeGreaterThan(1);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
