import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { callCli } from "../support/callCli.ts";
import { cliFolder } from "../support/cliFolder.ts";
import { folderDigest } from "../support/folderDigest.ts";
import { startCli } from "../support/startCli.ts";

const PATIENCE = { timeout: 240_000 };
const ARGS = ["study", "study.json", "--replications", "150"];

describe("kill -9", PATIENCE, () => {
  it("again and again, at any moment, loses nothing: the last --resume ends with the files of one go", async () => {
    const folder = cliFolder();
    for (const wait of [0, 150, 300, 450]) {
      const started = startCli(folder, [...ARGS, "--threads", "2", "--out", "run", "--resume"]);
      await expect.poll(() => existsSync(join(folder, "run.partial")), { timeout: 60_000, interval: 5 }).toBe(true);
      await setTimeout(wait);
      started.child.kill("SIGKILL");
      await started.ended();
      if (existsSync(join(folder, "run"))) break;
    }
    if (!existsSync(join(folder, "run"))) {
      expect((await callCli(folder, [...ARGS, "--out", "run", "--resume"])).code).toBe(0);
    }
    expect((await callCli(folder, [...ARGS, "--threads", "1", "--out", "whole"])).code).toBe(0);
    expect(folderDigest(join(folder, "run"))).toEqual(folderDigest(join(folder, "whole")));
  });

  it("while the folder is being written leaves the earlier run or the new one, whole", async () => {
    const folder = cliFolder();
    const day = (seed: string) => ["day", "plan.json", "--traces", "exact", "--seed", seed, "--out", "run"];
    expect((await callCli(folder, day("1"))).code).toBe(0);
    const earlier = folderDigest(join(folder, "run"));
    const started = startCli(folder, [...day("2"), "--overwrite"]);
    const isWriting = () => readdirSync(folder).some((name) => name.includes("gambrel-"));
    while (!isWriting() && started.child.exitCode === null) await setTimeout(1);
    started.child.kill("SIGKILL");
    await started.ended();
    // What comes next puts things right before it looks at the folder; it may not replace what is there.
    const next = await callCli(folder, day("2"));
    expect(next.code).toBe(2);
    const left = folderDigest(join(folder, "run"));
    expect((await callCli(folder, [...day("2"), "--overwrite"])).code).toBe(0);
    const latest = folderDigest(join(folder, "run"));
    expect([earlier, latest]).toContainEqual(left);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "run", "study.json"]);
  });
});
