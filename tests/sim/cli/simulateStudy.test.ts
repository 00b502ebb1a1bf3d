import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cliFolder } from "../../support/cliFolder.ts";
import { runCli } from "../../support/runCli.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

describe("Ctrl-C", PATIENCE, () => {
  it("stops a run with exit code 130 and leaves nothing on the disk", async () => {
    const folder = cliFolder();
    const { code, err } = await runCli(folder, ["study", "study.json", "--replications", "1000"], {}, "(25 %)");
    expect(code).toBe(130);
    expect(err).toMatch(/Stopped\. Nothing was written\.\n$/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });
});
