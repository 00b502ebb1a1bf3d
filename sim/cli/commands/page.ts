import { once } from "node:events";
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { basename, join } from "node:path";
import process from "node:process";
import { readPlan, type TextFiles } from "../../asked/plan/index.ts";
import { BadInput } from "../faults.ts";
import { buildFromSources, newestSource } from "../fromSources.ts";
import { type InputFile, loadPlan, readInputFile } from "../inputs.ts";
import { projectRoot } from "../project.ts";
import { CAUTION, interruption, type Terminal, untilInterrupted } from "../terminal.ts";

/** A plan as the page opens it: its name, its text, and the CSV files it names, by the paths it names them with. */
interface OpenedPlan {
  name: string;
  text: string;
  files: Record<string, string>;
}

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

interface PageServer {
  /** "http://127.0.0.1:51234/" */
  address: string;
  close(): Promise<void>;
}

/** What the page is made of, below the project's folder. */
const SOURCES = ["viz", "sim", "experiments/lessons", "experiments/plans", "package.json"];

export interface PageCommandOptions {
  port: number;
  /** Open the browser. */
  open: boolean;
}

/** Serves the live page on this machine until Ctrl-C, with a plan in it when one is named. */
export async function pageCommand(
  terminal: Terminal,
  path: string | undefined,
  { port, open }: PageCommandOptions,
): Promise<void> {
  // Checked before anything is built or served.
  if (path !== undefined) loadPlan(readInputFile(path));
  const built = await builtPage(projectRoot(), (line) => terminal.say(line));
  const plan = path === undefined ? () => null : latestPlan(path);
  const page = () => pageWithPlan(readFileSync(built, "utf8"), plan());
  // Ctrl-C (or SIGTERM) is how a page that is served is meant to end.
  await untilInterrupted(process, async (signal) => {
    const server = await servePage(page, port);
    try {
      terminal.say(`The page is at ${server.address}, for this machine alone. Ctrl-C ends it.`, "bold");
      terminal.say(CAUTION, "dim");
      if (open) await openBrowser(terminal, server.address);
      await interruption(signal);
    } finally {
      await server.close();
    }
  });
}

/** The plan as the file is when the page is loaded; as it was last when it cannot be read meanwhile. */
function latestPlan(path: string): () => OpenedPlan {
  let latest = openedPlan(readInputFile(path));
  return () => {
    try {
      latest = openedPlan(readInputFile(path));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
    }
    return latest;
  };
}

/** Without a desktop there is nothing to open; the address has been told. */
async function openBrowser(terminal: Terminal, address: string): Promise<void> {
  try {
    const { default: launch } = await import("open");
    const child = await launch(address);
    child.on("error", () => terminal.say("No browser could be opened. Open the address yourself."));
  } catch {
    terminal.say("No browser could be opened. Open the address yourself.");
  }
}

/**
 * Path of the built page. An installed package has it; a checkout builds it when it is missing or older than its
 * sources, and `say` is told so. The new page takes the old one's place in one step, so nobody meets half of it.
 */
export async function builtPage(
  root: string,
  say: (line: string) => void,
  folder = join(root, "dist", "page"),
): Promise<string> {
  const page = join(folder, "index.html");
  const config = join(root, "viz", "build", "page.config.ts");
  if (!existsSync(config)) {
    if (existsSync(page)) return page;
    throw new Error(`${page} is missing; is the installation complete?`);
  }
  const isFresh = () => existsSync(page) && statSync(page).mtimeMs > newestSource(root, SOURCES);
  if (isFresh()) return page;
  say("Building the page from its sources: this takes some seconds, once.");
  await buildFromSources(config, folder, isFresh);
  return page;
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

/** A plan file with all the files it reads; the page has no disk to read them from. */
export function openedPlan({ path, text, json, files }: InputFile): OpenedPlan {
  const read: Record<string, string> = {};
  const noting: TextFiles = {
    readText(name) {
      read[name] = files.readText(name);
      return read[name];
    },
  };
  readPlan(json, noting);
  return { name: basename(path), text, files: read };
}

/** The page with a plan in it, as a block of data that no browser runs, whatever the plan says. */
export function pageWithPlan(page: string, plan: OpenedPlan | null): string {
  if (plan === null) return page;
  const data = JSON.stringify(plan).replace(/</gu, "\\u003c");
  return page.replace("</body>", () => `<script type="application/json" id="opened-plan">${data}</script>\n</body>`);
}
