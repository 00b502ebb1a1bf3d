import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { builtProgram } from "../../../support/builtProgram.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { folderDigest } from "../../../support/folderDigest.ts";
import { runCli } from "../../../support/runCli.ts";

const STUDY = ["study", "study.json", "--replications", "30"];

it("runs threads of the built program as it runs them from the sources, to the same bytes", {
  timeout: 120_000,
}, async () => {
  const folder = cliFolder();
  const args = [builtProgram(), ...STUDY, "--threads", "2", "--out", "built"];
  const built = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8" });
  expect(built.status, built.stderr).toBe(0);
  expect((await runCli(folder, [...STUDY, "--threads", "2", "--out", "sources"])).code).toBe(0);
  expect(folderDigest(join(folder, "built"))).toEqual(folderDigest(join(folder, "sources")));
});
