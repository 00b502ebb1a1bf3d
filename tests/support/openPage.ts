import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { builtPage } from "../../sim/cli/commands/page.ts";
import { writeLink } from "../../viz/page/plan/link.ts";

const ROOT = resolve(import.meta.dirname, "../..");
/** Tests build for themselves, so that a test run never changes what `npm run build` made. */
const FOLDER = resolve(ROOT, "node_modules/.cache/gambrel-page/page");

export interface OpenedPage {
  page: Page;
  /** Everything the browser complained about, and every address but the page's own that it asked for. */
  complaints: string[];
}

/** Path of the page, built from the sources as they are. */
export function pagePath(): Promise<string> {
  return builtPage(ROOT, () => {}, FOLDER);
}

/** Opens the built page from the disk, as somebody would who got the file; `hash` is what stands behind "#". */
export async function openPage(
  browser: Browser,
  {
    hash = "",
    width = 1366,
    height = 900,
    address,
  }: { hash?: string; width?: number; height?: number; address?: string } = {},
): Promise<OpenedPage> {
  const home = address ?? pathToFileURL(await pagePath()).href;
  const page = await browser.newPage({ viewport: { width, height } });
  // On a machine that is busy with other tests everything takes its time.
  page.setDefaultTimeout(100_000);
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(`console: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("requestfailed", (request) => complaints.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    const url = request.url();
    if (url.split("#")[0] !== home && !url.startsWith("blob:") && !url.startsWith("data:"))
      complaints.push(`asked for: ${url}`);
  });
  await page.goto(home + hash);
  return { page, complaints };
}

/** Waits until the figures of the latest change are there; `since`: how many updates there were before it. */
export async function figuresThere(page: Page, since = 0): Promise<void> {
  await page.waitForFunction(
    (before) => performance.getEntriesByName("figures after a change").length > before,
    since,
    { timeout: 100_000 },
  );
}

/** Waits until nothing is being simulated. */
export async function figuresStand(page: Page): Promise<void> {
  await page.getByText(/^Means of 20 simulated days/).waitFor({ timeout: 100_000 });
}

/** How often the figures were brought up to date so far. */
export function updates(page: Page): Promise<number> {
  return page.evaluate(() => performance.getEntriesByName("figures after a change").length);
}

/** The "#" part of a link to the page with this plan in it. */
export async function linkTo(plan: unknown, moves: Record<string, number> = {}): Promise<string> {
  const text = typeof plan === "string" ? plan : JSON.stringify(plan, null, 2);
  return `#plan=${await writeLink({ name: "plan.json", text, files: {}, moves, seed: "1", replication: 0 })}`;
}
