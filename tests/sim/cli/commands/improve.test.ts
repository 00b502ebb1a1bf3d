import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { reportCommand } from "../../../../sim/cli/commands/report.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { fakeTerminal } from "../../../support/fakeTerminal.ts";
import { folderDigest } from "../../../support/folderDigest.ts";
import { improveFileOf } from "../../../support/improveCases.ts";
import { startCli } from "../../../support/startCli.ts";

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
    const { code, out, err } = await callCli(folder, ["improve", "improve.json", "--out", "found", "--json"]);
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
    expect(readFileSync(join(inside, "charts/trade-off.svg"), "utf8")).toMatch(/Places and throughput/);
    // The answer comes first: the pick with its interval, how sure it is, what was tried; then the study it rests on.
    const page = readFileSync(join(inside, "report.html"), "utf8");
    expect(page).toMatch(/<h2>Answer<\/h2>.*class="verdict">.*What is recommended, and how sure that is/s);
    expect(page.replaceAll(/&amp;|<[^>]*>/g, "")).toContain(found.verdict.split(":")[0]);
    const titles = [
      "What is recommended, and how sure that is",
      "What a larger total brings",
      "Arrangements tried",
      "Results",
    ];
    const places = titles.map((title) => page.indexOf(`<h2>${title}</h2>`));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(page.indexOf("<h2>Answer</h2>"));
    expect(page).toContain("gambrel improve improve.json");
    expect(found.tried).toHaveLength(found.effort.designsTried);
    // The report's days are those that the recommendation rests on.
    const { variants } = JSON.parse(readFileSync(join(inside, "results.json"), "utf8"));
    expect(variants[1].estimates.headsPerHour.mean).toBeCloseTo(found.recommended.goal.mean, 9);
    const before = folderDigest(inside);
    expect((await callCli(folder, ["report", "found"])).code).toBe(0);
    expect(folderDigest(inside)).toEqual(before);
    writeFileSync(join(inside, "improvement.json"), "{}");
    const spoilt = reportCommand(fakeTerminal(false).terminal, inside, {});
    await expect(spoilt).rejects.toThrow(/improvement\.json: there is no answer in this file/);
    const again = await callCli(folder, ["improve", "improve.json", "--out", "found"]);
    expect([again.code, again.err]).toEqual([2, expect.stringMatching(/--overwrite/)]);
  });

  it("tells every fault and ends with 2, and writes nothing", async () => {
    const folder = folderWith({ goal: "margin", firstStage: 300 });
    const { code, err } = await callCli(folder, ["improve", "improve.json", "--out", "found"]);
    expect(code).toBe(2);
    expect(err).toMatch(/improve\.json: goal: 'margin', but the plan reckons no margin/);
    expect(err).toMatch(/improve\.json: firstStage: 300/);
    expect(existsSync(join(folder, "found"))).toBe(false);
  });
});

describe("a search that is stopped", { timeout: 180_000 }, () => {
  /** Long enough to be stopped twice. */
  const LONG = { search: { days: 30, designs: 12, finalists: 2, curve: 0 }, atMost: 30 };
  const ARGS = ["improve", "improve.json", "--out", "found"];

  it("by SIGTERM, then by kill -9, goes on each time and leaves the files of one that was not; another question is refused", async () => {
    const folder = folderWith(LONG);
    const first = startCli(folder, [...ARGS, "--threads", "1"]);
    await first.until("arrangements tried");
    first.child.kill("SIGTERM");
    const { code, err } = await first.ended();
    expect([code, err]).toEqual([143, expect.stringMatching(/Stopped\. \d+ days are kept in found\.partial\./)]);
    expect(err).toMatch(/Continue with: gambrel improve improve\.json --out found --threads 1 --resume\n$/);
    expect(readdirSync(folder)).not.toContain("found");

    const other = await callCli(folder, [...ARGS, "--seed", "another", "--resume"]);
    expect([other.code, other.err]).toEqual([
      2,
      expect.stringMatching(/the unfinished run is of another question \(its file, the plan or the seed/),
    ]);
    expect((await callCli(folder, ARGS)).err).toMatch(/an unfinished run is there; add --resume/);

    const kept = linesIn(folder);
    const second = startCli(folder, [...ARGS, "--threads", "1", "--resume"]);
    await expect.poll(() => linesIn(folder), { timeout: 60_000, interval: 20 }).toBeGreaterThan(kept);
    second.child.kill("SIGKILL");
    expect((await second.ended()).signal).toBe("SIGKILL");
    expect((await callCli(folder, [...ARGS, "--threads", "2", "--resume"])).code).toBe(0);
    expect(existsSync(join(folder, "found.partial"))).toBe(false);
    expect((await callCli(folder, [...ARGS.slice(0, -1), "whole", "--threads", "1"])).code).toBe(0);
    expect(folderDigest(join(folder, "found"))).toEqual(folderDigest(join(folder, "whole")));
  });

  it("needs a folder to be gone on with", async () => {
    const { code, err } = await callCli(folderWith(QUICK), ["improve", "improve.json", "--resume"]);
    expect([code, err]).toEqual([
      2,
      expect.stringMatching(/--resume: a search without a folder is not kept; add --out/),
    ]);
  });
});

function linesIn(folder: string): number {
  const path = join(folder, "found.partial", "journal.jsonl");
  return existsSync(path) ? readFileSync(path, "utf8").split("\n").length - 1 : 0;
}
