import { hostname } from "node:os";
import { join } from "node:path";
import { Redis } from "ioredis";
import { describe, expect, it, onTestFinished } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { folderDigest } from "../../../support/folderDigest.ts";
import { itWithRedis } from "../../../support/redisServer.ts";
import { runCli } from "../../../support/runCli.ts";
import { type StartedCli, startCli } from "../../../support/startCli.ts";

const PATIENCE = 180_000;
const ARGS = ["study", "study.json", "--replications", "300"];

/** Stops the worker again and again until it stands still with a task in hand, and kills it then. */
async function killInMidTask(worker: StartedCli, redis: Redis): Promise<void> {
  const name = `${hostname()}-${worker.child.pid}`;
  for (;;) {
    worker.child.kill("SIGSTOP");
    const active = await redis.lrange("gambrel:days:active", 0, -1);
    const owners = await Promise.all(active.map((job) => redis.hget(`gambrel:days:${job}`, "pb")));
    if (owners.includes(name)) break;
    worker.child.kill("SIGCONT");
    await new Promise((resolve) => setTimeout(resolve, 3));
  }
  worker.child.kill("SIGKILL");
  expect((await worker.ended()).signal).toBe("SIGKILL");
}

let here: Promise<Record<string, string>> | null = null;

/** The files of the same study without a queue: one run serves all tests. */
function withoutQueue(): Promise<Record<string, string>> {
  here ??= runHere();
  return here;
}

async function runHere(): Promise<Record<string, string>> {
  const folder = cliFolder();
  expect((await callCli(folder, [...ARGS, "--threads", "1", "--out", "here"])).code).toBe(0);
  return folderDigest(join(folder, "here"));
}

describe("gambrel worker", () => {
  itWithRedis(
    "can be killed in mid-task: another one does its work, and every file is the same",
    PATIENCE,
    async (address) => {
      const folder = cliFolder();
      const redis = new Redis(address);
      onTestFinished(() => redis.disconnect());
      const start = () => startCli(folder, ["worker", "--queue", address, "--concurrency", "1", "--lost-after", "2"]);
      const workers = [start(), start()];
      await Promise.all(workers.map((worker) => worker.until("Waiting for work")));
      const study = startCli(folder, [...ARGS, "--queue", address, "--out", "queue"]);
      await workers[0]!.until(/days? done, from day \d+ on/);
      await killInMidTask(workers[0]!, redis);
      const { code, err } = await study.ended();
      expect(code, err).toBe(0);
      expect(folderDigest(join(folder, "queue"))).toEqual(await withoutQueue());
      workers[1]!.child.kill("SIGTERM");
      const last = await workers[1]!.ended();
      expect(last.code).toBe(143);
      expect(last.err).toMatch(/Stopped\. All its tasks are finished\.\n$/);
    },
  );

  itWithRedis("leaves a study stopped with Ctrl-C to be resumed, without the queue", PATIENCE, async (address) => {
    const folder = cliFolder();
    const secret = { GAMBREL_QUEUE_PASSWORD: "" };
    const worker = startCli(folder, ["worker", "--queue", address, "--concurrency", "1"], secret);
    const study = startCli(folder, [...ARGS, "--queue", address, "--out", "run"]);
    await study.until("(25 %)");
    study.child.kill("SIGINT");
    const { code, err } = await study.ended();
    expect(code).toBe(130);
    expect(err).toContain(`--queue ${address} --resume`);
    worker.child.kill("SIGINT");
    expect((await worker.ended()).code).toBe(130);
    expect((await callCli(folder, [...ARGS, "--out", "run", "--resume"])).code).toBe(0);
    expect(folderDigest(join(folder, "run"))).toEqual(await withoutQueue());
  });

  it("fails in one sentence, without the password, where no queue is", { timeout: 60_000 }, async () => {
    const { code, err } = await runCli(cliFolder(), ["worker", "--queue", "redis://127.0.0.1:1"], {
      GAMBREL_QUEUE_PASSWORD: "s3cret",
    });
    expect(code).toBe(1);
    expect(err).toMatch(/^redis:\/\/127\.0\.0\.1:1: no queue to be had there \(connect ECONNREFUSED.*\n$/);
  });
});
