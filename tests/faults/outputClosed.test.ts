import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../support/callCli.ts";
import { cliFolder } from "../support/cliFolder.ts";
import { folderDigest } from "../support/folderDigest.ts";
import { runShell } from "../support/runShell.ts";
import { startCli } from "../support/startCli.ts";

const PATIENCE = { timeout: 180_000 };
const STUDY = "study study.json --replications 40 --threads 1";

describe("a run that nobody listens to any more", PATIENCE, () => {
  it.each([
    ["whose reader has seen enough", "2>&1 | head -n 1"],
    ["whose words go to a full disk", "2>/dev/full"],
    ["whose output is closed from the start", ">&- 2>&-"],
  ])("%s goes on to the same files", async (_, redirection) => {
    const folder = cliFolder();
    await runShell(folder, `set -o pipefail; $GAMBREL ${STUDY} --out heard`);
    await runShell(folder, `$GAMBREL ${STUDY} --out unheard ${redirection}`);
    expect(folderDigest(join(folder, "unheard"))).toEqual(folderDigest(join(folder, "heard")));
  });

  it("ends with exit code 1 and a sentence where its data cannot be written", async () => {
    const { code, err } = await runShell(cliFolder(), "$GAMBREL day plan.json --json >/dev/full");
    expect(code).toBe(1);
    expect(err).toMatch(/the disk is full; make room, then run it again\.\n$/);
    expect(err).not.toMatch(/^ +at /m);
  });

  it("keeps its days when the terminal is closed under it, and resumes to the same files", async () => {
    const folder = cliFolder();
    const args = ["study", "study.json", "--replications", "120", "--threads", "1"];
    const started = startCli(folder, [...args, "--out", "run"]);
    await started.until("(25 %)");
    // What a terminal does when its window is closed: nobody reads, and the hang-up signal comes.
    started.child.stderr!.destroy();
    started.child.kill("SIGHUP");
    expect((await started.ended()).code).toBe(129);
    expect(existsSync(join(folder, "run.partial", "journal.jsonl"))).toBe(true);
    expect((await callCli(folder, [...args, "--out", "run", "--resume"])).code).toBe(0);
    expect((await callCli(folder, [...args, "--out", "whole"])).code).toBe(0);
    expect(folderDigest(join(folder, "run"))).toEqual(folderDigest(join(folder, "whole")));
  });
});
