import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { env } from "node:process";
import { it, onTestFinished } from "vitest";
import { temporaryFolder } from "./temporaryFolder.ts";

const PROGRAM = ["redis-server", "valkey-server"].find((name) => spawnSync(name, ["--version"]).status === 0);
const MISSING =
  "This test starts a real Redis or Valkey and finds neither: install one (Debian, Ubuntu: apt-get install redis-server; macOS: brew install redis).";

/**
 * A test with a Redis of its own. Where none is installed it is skipped and says what to install; on the machine that
 * checks every change (CI=true) that is a failure.
 */
export function itWithRedis(title: string, timeout: number, test: (address: string) => Promise<void>): void {
  it(title, { timeout }, async (context) => {
    if (PROGRAM === undefined && env.CI !== "true") context.skip(MISSING);
    await test(await startRedis());
  });
}

const servers = new Map<string, ChildProcess>();

/** Kills the server at an address as a power cut would. */
export async function stopRedis(address: string): Promise<void> {
  const server = servers.get(address)!;
  server.kill("SIGKILL");
  await once(server, "exit");
}

/** Starts a server on this machine, empty, in a folder of its own, on a free port unless told; it ends with the test. */
export async function startRedis(onPort: number | null = null, ...more: string[]): Promise<string> {
  if (PROGRAM === undefined) throw new Error(MISSING);
  const port = onPort ?? (await freePort());
  const here = ["--port", String(port), "--bind", "127.0.0.1", "--save", "", "--dir", temporaryFolder()];
  const server = spawn(PROGRAM, [...here, ...more], { stdio: ["ignore", "pipe", "inherit"] });
  onTestFinished(async () => {
    server.kill("SIGTERM");
    if (server.exitCode === null && server.signalCode === null) await once(server, "exit");
  });
  let said = "";
  for await (const text of server.stdout.setEncoding("utf8")) {
    said += text;
    if (said.includes("Ready to accept connections")) break;
  }
  // What it says later on must be taken, or it would wait for that in the end.
  server.stdout.resume();
  const address = `redis://127.0.0.1:${port}`;
  servers.set(address, server);
  return address;
}

async function freePort(): Promise<number> {
  const listener = createServer().listen(0, "127.0.0.1");
  await once(listener, "listening");
  const address = listener.address();
  listener.close();
  await once(listener, "close");
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}
