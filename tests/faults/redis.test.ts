import { spawnSync } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { type AddressInfo, connect, createServer, type Server } from "node:net";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { createServer as createTlsServer } from "node:tls";
import { describe, expect, onTestFinished } from "vitest";
import { stableJson } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { onQueue, startQueueWorker } from "../../sim/days/run/queue/index.ts";
import { cliFolder } from "../support/cliFolder.ts";
import { folderDigest } from "../support/folderDigest.ts";
import { itWithRedis, startRedis, stopRedis } from "../support/redisServer.ts";
import { runCli } from "../support/runCli.ts";
import { startCli } from "../support/startCli.ts";
import { temporaryFolder } from "../support/temporaryFolder.ts";
import { threeVariants } from "../support/threeVariants.ts";

const PATIENCE = 120_000;
const STUDY = threeVariants({ replications: 10 });
const ABOUT = { gambrel: "1.2.3", command: "c" };
const UNDISTURBED = stableJson(await runStudy(STUDY, ABOUT));

/** Runs the study on a worker of its own at this address; gives its results and what either side said. */
async function runAt(
  address: string,
  whileRunning: (said: readonly string[]) => Promise<void> = async () => {},
): Promise<[string, string[]]> {
  const said: string[] = [];
  const say = (words: string): void => void said.push(words);
  const worker = await startQueueWorker(address, { gambrel: "1.2.3", concurrency: 1, lostAfterSeconds: 3, say });
  onTestFinished(async () => void (await worker.close()));
  const running = runStudy(STUDY, { ...ABOUT, runner: onQueue(address, { gambrel: "1.2.3", say }) });
  await whileRunning(said);
  return [stableJson(await running), said];
}

interface Certificate {
  certPath: string;
  cert: Buffer;
  key: Buffer;
}

/** A certificate of "localhost" that nobody has signed but itself. */
function selfSigned(): Certificate {
  const folder = temporaryFolder();
  const subject = ["-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost"];
  const files = ["-keyout", "key.pem", "-out", "cert.pem"];
  const args = ["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", ...files, ...subject];
  expect(spawnSync("openssl", args, { cwd: folder }).status).toBe(0);
  const certPath = join(folder, "cert.pem");
  return { certPath, cert: readFileSync(certPath), key: readFileSync(join(folder, "key.pem")) };
}

/** Speaks TLS on a port of its own and passes on what comes. */
async function tlsWay(toPort: number, { cert, key }: Certificate): Promise<number> {
  const server = createTlsServer({ cert, key }, (near) => {
    const far = connect(toPort, "127.0.0.1");
    near.pipe(far).pipe(near);
    for (const end of [near, far]) end.on("error", () => {});
  });
  return listening(server);
}

async function listening(server: Server): Promise<number> {
  server.on("tlsClientError", () => {});
  server.listen(0, "localhost");
  await once(server, "listening");
  onTestFinished(() => void server.close());
  return (server.address() as AddressInfo).port;
}

/** Passes bytes on to another port, each piece so many milliseconds late. */
async function slowWay(toPort: number, delayMs: number): Promise<number> {
  const server = createServer((near) => {
    const far = connect(toPort, "127.0.0.1");
    for (const [from, to] of [
      [near, far],
      [far, near],
    ] as const) {
      let last = Promise.resolve();
      from.on("data", (bytes) => {
        const due = setTimeout(delayMs);
        last = last.then(() => due).then(() => void to.write(bytes));
      });
      from.on("error", () => {});
      from.on("close", () => to.destroy());
    }
  });
  return listening(server);
}

describe("a queue", () => {
  itWithRedis("that answers slowly gives the same bytes", PATIENCE, async (address) => {
    const port = await slowWay(Number(new URL(address).port), 40);
    const [results] = await runAt(`redis://localhost:${port}`);
    expect(results).toBe(UNDISTURBED);
  });

  itWithRedis(
    "that is killed and comes back empty gives the same bytes, and both sides say so",
    PATIENCE,
    async (address) => {
      const { port } = new URL(address);
      const [results, said] = await runAt(address, async (said) => {
        await expect.poll(() => said.join(), { timeout: 60_000 }).toMatch(/ done, from day/);
        await stopRedis(address);
        await setTimeout(1500);
        await startRedis(Number(port));
      });
      expect(results).toBe(UNDISTURBED);
      expect(said.join("\n")).toMatch(/The queue cannot be reached \(.*\); trying again\./);
    },
  );

  itWithRedis("behind TLS serves those who trust its certificate, and nobody else", PATIENCE, async (address) => {
    const certificate = selfSigned();
    const port = await tlsWay(Number(new URL(address).port), certificate);
    const folder = cliFolder();
    const queue = ["--queue", `rediss://localhost:${port}`];
    const trusting = { NODE_EXTRA_CA_CERTS: certificate.certPath };
    const refused = await runCli(folder, ["worker", ...queue]);
    expect(refused.code).toBe(1);
    expect(refused.err).toMatch(/no queue to be had there \(.*self-signed certificate.*certificate right\?\n$/);
    const worker = startCli(folder, ["worker", ...queue, "--concurrency", "1"], trusting);
    await worker.until("Waiting for work");
    const study = ["study", "study.json", "--replications", "10"];
    expect((await runCli(folder, [...study, ...queue, "--out", "tls"], trusting)).code).toBe(0);
    expect((await runCli(folder, [...study, "--threads", "1", "--out", "here"])).code).toBe(0);
    expect(folderDigest(join(folder, "tls"))).toEqual(folderDigest(join(folder, "here")));
  });
});
