import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { builtPage } from "../../../sim/cli/commands/page.ts";
import { writeLink } from "../../../viz/page/plan/link.ts";
import { openBrowser } from "../../support/browser.ts";
import { type Section, shown } from "../section.ts";

const PLANS = ["sallowfield-compact.json", "ferncote.json"];
const CHANGES = 6;
/** Whoever opens a page looks at it before moving anything. */
const LOOK_MILLISECONDS = 3000;
const FRAME_SECONDS = 4;
/** Names of measures that the page takes of itself. */
const FIRST = "first figures after a change";
const ALL = "figures after a change";

/**
 * How soon the live page answers a control, and how evenly it draws, in the real browser (headless), which draws as on a
 * machine without a graphics card. One that imitates a card on the processor would measure the imitation.
 */
export async function livePage(): Promise<Section> {
  const section: Section = {
    title: "The live page in the real browser, drawn without a graphics card",
    rows: [
      [
        "plan",
        "ms to first figures",
        "ms to all 20 days",
        "ms/frame, median",
        "ms/frame, 95 %",
        "of it in the page's script",
      ],
    ],
    figures: {},
  };
  const browser = await openBrowser({ imitatesCard: false });
  try {
    for (const plan of PLANS) await addPlan(section, browser, plan);
  } finally {
    await browser.close();
  }
  return section;
}

async function addPlan(section: Section, browser: Browser, plan: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1366, height: 900 } });
  const text = readFileSync(join("experiments", "plans", plan), "utf8");
  const path = await builtPage(process.cwd(), () => {}, resolve("node_modules/.cache/gambrel-page/page"));
  const link = await writeLink({ name: plan, text, files: {}, moves: {}, seed: "bench", replication: 0 });
  await page.goto(`${pathToFileURL(path).href}#plan=${link}`);
  await untilMeasured(page, 0);
  await page.waitForTimeout(LOOK_MILLISECONDS);
  await change(page);
  const first = median(await measured(page, FIRST));
  const all = median(await measured(page, ALL));
  const scripted = await scriptSeconds(page);
  const frames = (await frameTimes(page)).sort((a, b) => a - b);
  const script = (1e3 * (await scripted())) / frames.length;
  const values = [first, all, median(frames), frames[Math.floor(0.95 * frames.length)]!, script];
  section.rows.push([plan, ...values.map(shown)]);
  ["first figures, ms", "all figures, ms", "frame, ms", "95 % frame, ms", "script a frame, ms"].forEach(
    (name, index) => {
      section.figures[`${plan}: ${name}`] = values[index]!;
    },
  );
  await page.close();
}

/** Moves a control on, each time as soon as the figures are there, to values that it did not have before. */
async function change(page: Page): Promise<void> {
  await page.evaluate(() => performance.clearMeasures());
  await page.getByLabel("Where").selectOption({ index: 1 });
  for (let count = 0; count < CHANGES; count++) {
    await page.getByRole("button", { name: "More: " }).first().click();
    await untilMeasured(page, count);
  }
}

/** Asks now and then, not at every frame: that would have the browser draw without an end. */
async function untilMeasured(page: Page, before: number): Promise<void> {
  await page.waitForFunction(
    ([name, count]) => performance.getEntriesByName(name as string).length > (count as number),
    [ALL, before],
    { timeout: 100_000, polling: 20 },
  );
}

function measured(page: Page, name: string): Promise<number[]> {
  return page.evaluate((entry) => performance.getEntriesByName(entry).map(({ duration }) => duration), name);
}

/** Begins to measure; gives what tells the seconds since then in which the page's script ran on its main thread. */
async function scriptSeconds(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  const total = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "ScriptDuration")!.value;
  };
  const before = await total();
  return async () => (await total()) - before;
}

/** Milliseconds between frames while the day is played. */
async function frameTimes(page: Page): Promise<number[]> {
  await page.getByLabel("Go to").fill("08:30");
  await page.getByRole("button", { name: "Go", exact: true }).click();
  await page.getByRole("button", { name: "Play", exact: true }).click();
  return page.evaluate(
    (seconds) =>
      new Promise<number[]>((resolve) => {
        const times: number[] = [];
        let last = performance.now();
        const end = last + seconds * 1000;
        const note = (now: number) => {
          times.push(now - last);
          last = now;
          if (now < end) requestAnimationFrame(note);
          else resolve(times);
        };
        requestAnimationFrame(note);
      }),
    FRAME_SECONDS,
  );
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
