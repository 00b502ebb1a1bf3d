import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { getuid } from "node:process";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../support/cliFolder.ts";
import { folderDigest } from "../support/folderDigest.ts";
import { runCli } from "../support/runCli.ts";
import { runShell } from "../support/runShell.ts";
import { startCli } from "../support/startCli.ts";

const PATIENCE = { timeout: 180_000 };
const STUDY = "study study.json --threads 1";
/** A file system of 1.2 MB in a folder, seen by the one command alone; needs a kernel that lets its users do that. */
const SMALL_DISK = `unshare -rm bash -c 'mkdir -p small && mount -t tmpfs -o size=1200k none small && {`;
const END = "}'";
const HAS_SMALL_DISK = spawnSync("bash", ["-c", `cd "$(mktemp -d)" && ${SMALL_DISK} true; ${END}`]).status === 0;
const NOBODY = 65534;

describe("a disk that will not take a run", PATIENCE, () => {
  it.runIf(HAS_SMALL_DISK)("is full: one sentence, and the earlier run is whole", async () => {
    const folder = cliFolder();
    // One run fits; the next one, which is to take its place when it is complete, does not fit beside it.
    const line = `$GAMBREL day plan.json --out small/run 2>/dev/null && cp -r small/run before &&
      $GAMBREL day plan.json --seed 2 --out small/run --overwrite; echo "code $?"; ls -A small; cp -r small/run after;`;
    const { out, err } = await runShell(folder, `${SMALL_DISK} ${line} ${END}`);
    expect(out).toBe("code 1\nrun\n");
    const said = err.trimEnd().split("\n");
    expect(said.filter((line) => !line.startsWith("plan.json: warning: "))).toEqual([
      expect.stringMatching(/the disk is full; make room, then run it again\.$/),
    ]);
    expect(folderDigest(join(folder, "after"))).toEqual(folderDigest(join(folder, "before")));
  });

  it("fills up while days are written down: the days kept are kept, and --resume ends with the same files", async () => {
    const folder = cliFolder();
    const more = "--replications 200 --traces none";
    // Files end at 30 kB, as if the disk were full in the middle of the journal.
    const { code, err } = await runShell(folder, `ulimit -f 30; $GAMBREL ${STUDY} ${more} --out run`);
    expect(code).toBe(1);
    expect(err).toMatch(/\d+ of 600 days are kept in run\.partial\. Continue with: gambrel study .* --resume\n/);
    expect(err).toMatch(/the system does not allow so large a file here; .*\n$/);
    expect(err).not.toMatch(/^ +at /m);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "run.partial", "study.json"]);
    expect((await runShell(folder, `$GAMBREL ${STUDY} ${more} --out run --resume`)).code).toBe(0);
    expect((await runShell(folder, `$GAMBREL ${STUDY} ${more} --out whole`)).code).toBe(0);
    expect(folderDigest(join(folder, "run"))).toEqual(folderDigest(join(folder, "whole")));
  });

  it("belongs to somebody else: exit code 2 before anything is simulated", async () => {
    const folder = cliFolder();
    mkdirSync(join(folder, "closed"));
    chmodSync(folder, 0o755);
    chmodSync(join(folder, "closed"), 0o555);
    // Where this user may write anything, as another one.
    const user = getuid?.() === 0 ? NOBODY : undefined;
    const { code, err } = await runShell(folder, `$GAMBREL ${STUDY} --out closed/run`, user);
    expect(code).toBe(2);
    expect(err).toMatch(/closed\/run: you may not write in .*closed; name another folder\.\n/);
    expect(err).not.toMatch(/simulated/);
  });

  it("holds a folder that another run is being written to", async () => {
    const folder = cliFolder();
    const started = startCli(folder, ["study", "study.json", "--replications", "100000", "--out", "run"]);
    await expect.poll(() => readdirSync(folder), { timeout: 60_000 }).toContain("run.partial");
    const { code, err } = await runCli(folder, ["day", "plan.json", "--out", "run", "--overwrite"]);
    expect(code).toBe(2);
    expect(err).toMatch(/a run is under way there \(process \d+ on /);
    started.child.kill("SIGKILL");
    await started.ended();
  });
});
