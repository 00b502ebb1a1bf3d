import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, it } from "vitest";
import { cliFolder } from "../support/cliFolder.ts";
import { folderDigest } from "../support/folderDigest.ts";
import { itWithRedis } from "../support/redisServer.ts";
import { runCli } from "../support/runCli.ts";
import { startCli } from "../support/startCli.ts";

/** A wall clock that leaps a day ahead and two days back by turns, in every thread. */
const LEAPS = `
const { now } = Date;
let calls = 0;
Date.now = () => now() + (calls++ % 2 === 0 ? 1 : -2) * 86_400_000;
`;
const ARGS = ["study", "study.json", "--replications", "40"];

function leaping(folder: string): Record<string, string> {
  writeFileSync(join(folder, "leaps.mjs"), LEAPS);
  return { NODE_OPTIONS: `--import ${pathToFileURL(join(folder, "leaps.mjs")).href}` };
}

it("a wall clock that leaps to and fro changes no byte of a run", { timeout: 120_000 }, async () => {
  const folder = cliFolder();
  expect((await runCli(folder, [...ARGS, "--threads", "2", "--out", "leaps"], leaping(folder))).code).toBe(0);
  expect((await runCli(folder, [...ARGS, "--threads", "1", "--out", "steady"])).code).toBe(0);
  expect(folderDigest(join(folder, "leaps"))).toEqual(folderDigest(join(folder, "steady")));
});

itWithRedis("nor of one on a queue, whose worker's clock leaps too", 120_000, async (address) => {
  const folder = cliFolder();
  const env = leaping(folder);
  const worker = startCli(folder, ["worker", "--queue", address, "--concurrency", "1", "--lost-after", "3"], env);
  await worker.until("Waiting for work");
  expect((await runCli(folder, [...ARGS, "--queue", address, "--out", "leaps"], env)).code).toBe(0);
  expect((await runCli(folder, [...ARGS, "--threads", "1", "--out", "steady"])).code).toBe(0);
  expect(folderDigest(join(folder, "leaps"))).toEqual(folderDigest(join(folder, "steady")));
});
