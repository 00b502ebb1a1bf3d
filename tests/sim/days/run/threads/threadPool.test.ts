import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { cliFolder } from "../../../../support/cliFolder.ts";
import { folderDigest } from "../../../../support/folderDigest.ts";
import { cliCommand, sourceCommand } from "../../../../support/runCli.ts";

const STUDY = ["study", "study.json", "--replications", "30"];

it("runs threads of the built program as it runs them from the sources, to the same bytes", {
  timeout: 120_000,
}, () => {
  const folder = cliFolder();
  for (const [out, command] of [
    ["built", cliCommand()],
    ["sources", sourceCommand()],
  ] as const) {
    const [program, ...before] = command;
    const args = [...before, ...STUDY, "--threads", "2", "--out", out];
    const { status, stderr } = spawnSync(program!, args, { cwd: folder, encoding: "utf8" });
    expect(status, stderr).toBe(0);
  }
  expect(folderDigest(join(folder, "built"))).toEqual(folderDigest(join(folder, "sources")));
});
