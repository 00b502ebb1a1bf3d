import { once } from "node:events";
import { createServer, type Server, type Socket } from "node:net";
import { expect, it, vi } from "vitest";
import { connect } from "../../../../../sim/days/run/queue/connect.ts";

/** What `connect` comes to where a server treats everyone like this. */
async function outcome(treat: (socket: Socket) => void): Promise<unknown> {
  const sockets: Socket[] = [];
  const server: Server = createServer((socket) => {
    sockets.push(socket);
    socket.on("error", () => {});
    treat(socket);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address() as { port: number };
  try {
    return await connect(`redis://127.0.0.1:${port}`, () => {}).catch((error: Error) => error.message);
  } finally {
    for (const socket of sockets) socket.destroy();
    server.close();
  }
}

it("gives up in a sentence where something takes the connection and never answers", async () => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  try {
    const silent = outcome(() => vi.advanceTimersByTimeAsync(10_000));
    expect(await silent).toMatch(/no queue to be had there \(no answer in 10 s\); is Redis or Valkey running/);
  } finally {
    vi.useRealTimers();
  }
});

it("says that something else than Redis is there, and closes", async () => {
  const words = await outcome((socket) => socket.end("HTTP/1.1 400 Bad Request\r\n\r\n"));
  expect(words).toMatch(/no queue to be had there \(what answers there speaks another language\)/);
});
