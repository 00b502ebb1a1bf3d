import { existsSync } from "node:fs";
import chromium from "@sparticuz/chromium";
import { type Browser, chromium as driver } from "playwright-core";

const COMMON_PATHS = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** Made for one short-lived page: a browser in one process dies with its first page, and the checks must stay strict. */
const UNWANTED = ["--single-process", "--no-zygote", "--disable-web-security", "--allow-running-insecure-content"];

/** They make the browser imitate a graphics card on the processor. */
const IMITATION = [
  "--use-gl=",
  "--use-angle=",
  "--enable-unsafe-swiftshader",
  "--ignore-gpu-blocklist",
  "--in-process-gpu",
];

/**
 * What the browser that comes with the development dependencies is started with. Where `imitatesCard` is false it draws as
 * browsers do on a machine without a graphics card: by their own means for it, with a small part of the work.
 */
function argumentsFor(imitatesCard: boolean): string[] {
  const wanted = chromium.args.filter((arg) => !UNWANTED.includes(arg));
  if (imitatesCard) return wanted;
  return [...wanted.filter((arg) => !IMITATION.some((start) => arg.startsWith(start))), "--disable-gpu"];
}

/**
 * A real, headless Chromium: the one that comes with the development dependencies (Linux on x64), else the browser named
 * by GAMBREL_BROWSER or found at a usual place. Throws with all reasons when none starts. The caller closes it.
 */
export async function openBrowser({ imitatesCard = true } = {}): Promise<Browser> {
  const reasons: string[] = [];
  const attempts: (() => Promise<Browser>)[] = [
    async () =>
      driver.launch({
        executablePath: await chromium.executablePath(),
        args: argumentsFor(imitatesCard),
        headless: true,
      }),
    ...installedPaths().map((executablePath) => () => driver.launch({ executablePath, headless: true })),
  ];
  for (const attempt of attempts) {
    try {
      return await attempt();
    } catch (reason) {
      reasons.push(String(reason).split("\n")[0]!);
    }
  }
  throw new Error(`no browser starts; set GAMBREL_BROWSER to the path of a Chromium. Tried: ${reasons.join("; ")}`);
}

function installedPaths(): string[] {
  const named = process.env.GAMBREL_BROWSER;
  return [...(named ? [named] : []), ...COMMON_PATHS.filter((path) => existsSync(path))];
}
