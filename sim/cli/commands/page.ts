import { readFileSync } from "node:fs";
import process from "node:process";
import { BadInput } from "../badInput.ts";
import { builtPage } from "../builtPage.ts";
import { readInputFile } from "../inputFile.ts";
import { loadPlan } from "../loadPlan.ts";
import { type OpenedPlan, openedPlan, pageWithPlan } from "../openedPlan.ts";
import { servePage } from "../pageServer.ts";
import { projectRoot } from "../projectRoot.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";
import { interruption, untilInterrupted } from "../untilInterrupted.ts";

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
      terminal.say(`The page is at ${server.address} for this machine alone; Ctrl-C ends it.`, "bold");
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
    child.on("error", () => terminal.say("No browser could be opened; open the address by hand."));
  } catch {
    terminal.say("No browser could be opened; open the address by hand.");
  }
}
