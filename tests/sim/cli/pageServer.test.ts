import { request } from "node:http";
import { expect, it, onTestFinished } from "vitest";
import { servePage } from "../../../sim/cli/pageServer.ts";

async function served(): Promise<URL> {
  const server = await servePage(() => "<p>the page</p>", 0);
  onTestFinished(() => server.close());
  return new URL(server.address);
}

interface Reply {
  status: number | undefined;
  headers: NodeJS.Dict<string | string[]>;
  text: string;
}

/** As a browser or anything else may ask: fetch would not let the host be set. */
function ask(url: URL, path: string, { method = "GET", ...headers }: Record<string, string> = {}): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: url.hostname, port: url.port, path, method, headers }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part: string) => {
        text += part;
      });
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, text }));
    });
    sent.on("error", reject).end();
  });
}

it("listens on this machine's own address and gives the page with headers that keep others out", async () => {
  const url = await served();
  expect(url.hostname).toBe("127.0.0.1");
  const { status, headers, text } = await ask(url, "/");
  expect([status, text]).toEqual([200, "<p>the page</p>"]);
  expect(headers).toMatchObject({
    "content-security-policy": "frame-ancestors 'none'",
    "cross-origin-resource-policy": "same-origin",
    "x-content-type-options": "nosniff",
    "cache-control": "no-store",
  });
  expect((await ask(url, "/?again")).status).toBe(200);
  expect((await ask(url, "/", { host: `localhost:${url.port}` })).status).toBe(200);
  expect(await ask(url, "/", { method: "HEAD" })).toMatchObject({ status: 200, text: "" });
});

it.each([
  ["another host's name", "/", { host: "evil.example" }, 403],
  ["another port in the name", "/", { host: "127.0.0.1:1" }, 403],
  ["another site's script", "/", { origin: "http://evil.example" }, 403],
  ["a page without an origin of its own", "/", { origin: "null" }, 403],
  ["writing", "/", { method: "POST" }, 405],
  ["any other file", "/package.json", {}, 404],
  ["a way up", "/../package.json", {}, 404],
  ["a way up in disguise", "/%2e%2e/package.json", {}, 404],
  ["an address without a path", "//package.json", {}, 404],
])("refuses %s and does not give the page", async (_, path, headers, status) => {
  const reply = await ask(await served(), path, headers);
  expect(reply.status).toBe(status);
  expect(reply.text).not.toContain("the page</p>");
});
