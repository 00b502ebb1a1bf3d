import { existsSync } from "node:fs";
import type { Browser } from "playwright-core";

/** Installed browsers by the names under which the driver knows where they are on each system. */
const CHANNELS = ["chrome", "msedge", "chromium"] as const;
const COMMON_PATHS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium"];

/** PNG and PDF cannot be drawn here; the message says why and names the remedy. */
export class NoBrowser extends Error {}

/**
 * The user's own browser, headless and without a window: the one that GAMBREL_BROWSER names, else an installed Chrome,
 * Edge or Chromium. The caller closes it. Throws `NoBrowser` when there is none.
 */
export async function openBrowser(named = process.env.GAMBREL_BROWSER): Promise<Browser> {
  const driver = await loadDriver();
  const paths = named ? [named] : COMMON_PATHS.filter((path) => existsSync(path));
  const attempts = [
    ...paths.map((executablePath) => ({ executablePath })),
    ...(named ? [] : CHANNELS.map((channel) => ({ channel }))),
  ];
  for (const attempt of attempts) {
    try {
      return await driver.launch({ ...attempt, headless: true });
    } catch {
      // Not there, or not willing: the next one.
    }
  }
  throw new NoBrowser(
    named
      ? `No PNG and no PDF was drawn. GAMBREL_BROWSER: no browser starts from ${named}; give the path of Chrome, Edge or Chromium.`
      : "No PNG and no PDF was drawn: that takes a browser, and none was found. Install Chrome, Edge or Chromium, or set GAMBREL_BROWSER to its path; or leave --png and --pdf out: report.html prints from any browser.",
  );
}

async function loadDriver() {
  try {
    return (await import("playwright-core")).chromium;
  } catch {
    throw new NoBrowser(
      "No PNG and no PDF was drawn: that takes the package playwright-core, which was left out when this program was installed: npm install playwright-core.",
    );
  }
}
