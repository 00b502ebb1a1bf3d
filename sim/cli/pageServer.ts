import { once } from "node:events";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** The one address it listens on: this machine, reachable from no other. */
const LOOPBACK = "127.0.0.1";

const HEADERS = {
  "Content-Type": "text/html; charset=utf-8",
  "Cache-Control": "no-store",
  "Content-Security-Policy": "frame-ancestors 'none'",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};

export interface PageServer {
  /** "http://127.0.0.1:51234/" */
  address: string;
  close(): Promise<void>;
}

/**
 * Serves one page on this machine alone: nothing but "/", nothing but reading. Requests that name another host (a
 * foreign site whose name was made to lead here) or come from another site's script are refused. `page` gives the text
 * afresh for every request; `port` 0 takes a free one.
 */
export async function servePage(page: () => string, port: number): Promise<PageServer> {
  const server = createServer((request, response) => answer(request, response, server, page));
  server.listen(port, LOOPBACK);
  await once(server, "listening");
  return {
    address: `http://${LOOPBACK}:${portOf(server)}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function answer(request: IncomingMessage, response: ServerResponse, server: Server, page: () => string): void {
  const refusal = refusalOf(request, portOf(server));
  if (refusal !== null) {
    response.writeHead(refusal.status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" });
    response.end(`${refusal.words}\n`);
    return;
  }
  const text = page();
  response.writeHead(200, { ...HEADERS, "Content-Length": Buffer.byteLength(text) });
  response.end(request.method === "HEAD" ? undefined : text);
}

/** Why a request is not answered with the page; null when it is. */
function refusalOf({ headers, method, url }: IncomingMessage, port: number): { status: number; words: string } | null {
  const hosts = [`${LOOPBACK}:${port}`, `localhost:${port}`];
  const { host, origin } = headers;
  if (host === undefined || !hosts.includes(host)) {
    return { status: 403, words: "This page is served to this machine only." };
  }
  if (origin !== undefined && !hosts.some((each) => origin === `http://${each}`)) {
    return { status: 403, words: "Another site may not read this page." };
  }
  if (method !== "GET" && method !== "HEAD") return { status: 405, words: "There is nothing but reading here." };
  return url?.split("?")[0] === "/" ? null : { status: 404, words: "There is nothing here but the page." };
}

function portOf(server: Server): number {
  return (server.address() as AddressInfo).port;
}
