import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../../../support/cliFolder.ts";
import { improveFileOf } from "../../../support/improveCases.ts";
import { runCli } from "../../../support/runCli.ts";

const PATIENCE = { timeout: 60_000 };
const QUICK = { search: { days: 2, designs: 6, finalists: 2, curve: 3 } };

function folderWith(changes: Record<string, unknown>): string {
  const folder = cliFolder();
  writeFileSync(join(folder, "improve.json"), JSON.stringify(improveFileOf({ ...QUICK, ...changes })));
  return folder;
}

describe("gambrel improve", PATIENCE, () => {
  it("tells the recommendation, what it shares out, finalists and curve; leaves them in a folder with a report", async () => {
    const folder = folderWith({});
    const { code, out, err } = await runCli(folder, ["improve", "improve.json", "--out", "found", "--json"]);
    expect([code, err]).toEqual([
      0,
      expect.stringMatching(/^Recommended: stunning \d+, sticking \d+, skinning \d+\.$/m),
    ]);
    expect(err).toMatch(/as it is {2}recommended\nstunning +1 +\d+\n/);
    expect(err).toMatch(/of 15 places +15/);
    expect(err).toMatch(/dropped after 6 days/);
    const found = JSON.parse(out);
    const inside = join(folder, "found");
    expect(JSON.parse(readFileSync(join(inside, "improvement.json"), "utf8"))).toEqual(found);
    expect(readdirSync(inside)).toEqual(expect.arrayContaining(["asked.json", "report.html", "results.json"]));
    expect(readFileSync(join(inside, "trade-off.svg"), "utf8")).toMatch(/Places, against throughput/);
    // The report's days are those that the recommendation rests on.
    const { variants } = JSON.parse(readFileSync(join(inside, "results.json"), "utf8"));
    expect(variants[1].estimates.headsPerHour.mean).toBeCloseTo(found.recommended.goal.mean, 9);
    const again = await runCli(folder, ["improve", "improve.json", "--out", "found"]);
    expect([again.code, again.err]).toEqual([2, expect.stringMatching(/--overwrite/)]);
  });

  it("tells every fault and ends with 2, and writes nothing", async () => {
    const folder = folderWith({ goal: "margin", firstStage: 300 });
    const { code, err } = await runCli(folder, ["improve", "improve.json", "--out", "found"]);
    expect(code).toBe(2);
    expect(err).toMatch(/improve\.json: goal: 'margin', but the plan reckons no margin/);
    expect(err).toMatch(/improve\.json: firstStage: 300/);
    expect(existsSync(join(folder, "found"))).toBe(false);
  });
});
