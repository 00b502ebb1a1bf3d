import { existsSync } from "node:fs";
import type { Browser, LaunchOptions } from "playwright-core";

/** Installed browsers by the names under which the driver knows where they are on each system. */
const CHANNELS = ["chrome", "msedge", "chromium"] as const;

const COMMON_PATHS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium"];

/** A browser that a checkout of this program brings for its tests; an installed program has none. */
const CHECKOUT_BROWSER = "@sparticuz/chromium";

/** What it is started with beyond its own needs and would not outlive its first page with. */
const UNWANTED = ["--single-process", "--no-zygote", "--disable-web-security", "--allow-running-insecure-content"];

/** PNG and PDF cannot be drawn here; the message says why and names the remedy. */
export class NoBrowser extends Error {}

/**
 * A browser, headless and without a window: the one that GAMBREL_BROWSER names, else an installed Chrome,
 * Edge or Chromium, else the one that a checkout brings. The caller closes it. Throws `NoBrowser` when there is none.
 */
export async function openBrowser(named = process.env.GAMBREL_BROWSER): Promise<Browser> {
  const driver = await loadDriver();
  const paths = named ? [named] : COMMON_PATHS.filter((path) => existsSync(path));
  const attempts: (() => Promise<LaunchOptions>)[] = [
    ...paths.map((executablePath) => async () => ({ executablePath })),
    ...(named ? [] : CHANNELS.map((channel) => async () => ({ channel }))),
    ...(named ? [] : [checkoutBrowser]),
  ];
  for (const attempt of attempts) {
    try {
      return await driver.launch({ ...(await attempt()), headless: true });
    } catch {
      // Not there, or not willing: the next one.
    }
  }
  throw new NoBrowser(
    named
      ? `No PNG or PDF was written. GAMBREL_BROWSER: no browser starts from ${named}; give the path of Chrome, Edge or Chromium.`
      : "No PNG or PDF was written: that needs a browser, and none was found. Install Chrome, Edge or Chromium, or set GAMBREL_BROWSER to its path; or do without: the HTML prints from any browser.",
  );
}

/** Rejects outside a checkout, and where that browser does not run. */
async function checkoutBrowser(): Promise<LaunchOptions> {
  const { default: browser } = (await import(CHECKOUT_BROWSER)) as {
    default: { args: string[]; executablePath(): Promise<string> };
  };
  return {
    executablePath: await browser.executablePath(),
    args: browser.args.filter((arg) => !UNWANTED.includes(arg)),
  };
}

async function loadDriver() {
  try {
    return (await import("playwright-core")).chromium;
  } catch {
    throw new NoBrowser(
      "No PNG or PDF was written: that needs the package playwright-core, which is not installed. Run: npm install playwright-core.",
    );
  }
}

/** A page on the paper that its style names, with everything that is folded away on the screen because it is long. */
export async function pagePrint(browser: Browser, pageHtml: string): Promise<Uint8Array> {
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    await page.setContent(pageHtml.replace('<details class="inputs">', '<details class="inputs" open>'));
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
    return new Uint8Array(pdf);
  } finally {
    await context.close();
  }
}

/** A drawing in millimetres on paper of just its size, at its own scale. */
export async function sheetPrint(
  browser: Browser,
  { svg, widthMillimetres, heightMillimetres }: { svg: string; widthMillimetres: number; heightMillimetres: number },
): Promise<Uint8Array> {
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    await page.setContent(`<style>@page{margin:0}body{margin:0}svg{display:block}</style>${svg}`);
    const [width, height] = [`${widthMillimetres}mm`, `${heightMillimetres}mm`];
    return new Uint8Array(await page.pdf({ width, height, printBackground: true, pageRanges: "1" }));
  } finally {
    await context.close();
  }
}
