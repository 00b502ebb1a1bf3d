import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { doubtWords } from "../../sim/questions/doubt/index.ts";
import { chartFiles, renderDayReport, renderDoubtReport, renderReport, type ThemeName } from "../../viz/index.ts";
import { axeFaults } from "../support/axeFaults.ts";
import { openBrowser } from "../support/browser.ts";
import { seenDoubt } from "../support/doubtCase.ts";
import { hostileStudy } from "../support/hostileStudy.ts";
import { referenceFont } from "../support/referenceFont.ts";
import { pictureFault } from "../support/referencePicture.ts";
import { syntheticCurve, syntheticFactorial, syntheticSingleDay, syntheticStudy } from "../support/syntheticStudy.ts";
import { textFaults } from "../support/textFaults.ts";
import { whyDay, whyStudy } from "../support/whyStudy.ts";

const PACKAGED = Number.parseInt(
  JSON.parse(readFileSync("node_modules/@sparticuz/chromium/package.json", "utf8")).version,
  10,
);
const OTHER_BROWSER = "the stored pictures are of the packaged browser, and this is another";
const folder = mkdtempSync(join(tmpdir(), "gambrel-report-"));
let browser: Browser;
/** The packaged browser and its font: references are of these, and another browser smooths its letters in another way. */
let font: string | null;

beforeAll(async () => {
  browser = await openBrowser();
  font = browser.version().startsWith(`${PACKAGED}.`) ? referenceFont() : null;
}, 60_000);

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

/** Opens a text as a file and collects everything that the browser complains about or asks for. */
async function open(name: string, content: string): Promise<{ page: Page; complaints: string[] }> {
  const path = join(folder, name);
  writeFileSync(path, content);
  const page = await browser.newPage({ viewport: { width: 900, height: 1200 } });
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(`console: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("requestfailed", (request) => complaints.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    if (request.url() !== pathToFileURL(path).href) complaints.push(`asked for: ${request.url()}`);
  });
  await page.goto(pathToFileURL(path).href);
  return { page, complaints };
}

/** What a reader does who wants all of the appendix. */
async function openParts(page: Page): Promise<void> {
  for (const part of await page.locator("details.part > summary").all()) await part.click();
}

/** A sheet less the margins that the report's style sets, pixels. */
const A4 = { width: 703, height: 1016 };

function doubtReport(): string {
  const doubt = seenDoubt({ choice: true });
  return renderDoubtReport({ doubt, words: doubtWords(doubt) });
}

const REPORTS = {
  "a study of variants": () => renderReport(syntheticStudy()),
  "one numeric factor": () => renderReport(syntheticCurve()),
  "two numeric factors": () => renderReport(syntheticFactorial()),
  "a single day": () => renderDayReport(syntheticSingleDay()),
  "a day that tells why it ended": () => renderDayReport(whyDay()),
  "hostile names": () => renderReport(hostileStudy()),
  "what is not known": () => doubtReport(),
};

test.each(Object.entries(REPORTS))(
  "the report of %s opens offline: no complaint, no text under 11 px, none overlapping, nothing cut off, on screen and on paper",
  async (name, render) => {
    const { page, complaints } = await open(`${name.replaceAll(" ", "-")}.html`, render());
    expect(complaints).toEqual([]);
    expect(await textFaults(page)).toEqual([]);
    await openParts(page);
    expect(await textFaults(page)).toEqual([]);
    expect(await page.title()).not.toBe("taken");
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize(A4);
    expect(await textFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(A4.width);
    await page.close();
  },
  60_000,
);

test("what is folded is not printed, what the reader has opened is", async () => {
  const { page } = await open("paper.html", renderReport(await whyStudy()));
  await openParts(page);
  const printed = async () => {
    await page.emulateMedia({ media: "print" });
    const shown = await page.evaluate(
      () => [...document.querySelectorAll("table, figure")].filter((each) => each.checkVisibility()).length,
    );
    await page.emulateMedia({ media: "screen" });
    return shown;
  };
  const closed = await printed();
  await page.locator("figure summary").first().click();
  await page.locator("details.day > summary").click();
  const day = await page.locator("details.day figure").count();
  expect(day).toBeGreaterThan(3);
  expect(await printed()).toBe(closed + 1 + day);
  await page.close();
}, 60_000);

test("a stand-alone chart file is well-formed XML that a browser draws", async () => {
  const file = chartFiles(hostileStudy()).find(({ name }) => name === "base-queues")!;
  const { page, complaints } = await open("chart.svg", file.svg);
  const root = await page.evaluate(() => [
    document.documentElement.namespaceURI,
    document.querySelectorAll("text").length > 10,
  ]);
  expect(root).toEqual(["http://www.w3.org/2000/svg", true]);
  expect(complaints).toEqual([]);
  await page.close();
}, 60_000);

test("the report turns dark with the reader's screen and is printed dark on white all the same", async () => {
  const { page } = await open("theme.html", REPORTS["a single day"]());
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  await page.emulateMedia({ colorScheme: "dark" });
  expect(await paper()).toBe("rgb(20, 24, 29)");
  await page.emulateMedia({ colorScheme: "dark", media: "print" });
  expect(await paper()).toBe("rgb(255, 255, 255)");
  await page.close();
}, 60_000);

/** The stored pictures of all kinds of charts; those of the live page's rail have tests of their own. */
const CHARTS = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".svg") && !file.startsWith("rail"))
  .map((file) => basename(file, ".svg"));

/** Opens pictures on a page of their own, written in the reference font. */
async function openCharts(svgs: readonly string[], width: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 400 } });
  await page.setContent(`<body style="margin:0">${svgs.join("")}</body>`);
  return page;
}

test("a chart of every kind can be read: no text under 11 px, none overlapping, nothing cut off", async () => {
  const page = await openCharts(CHARTS.map(stored), 760);
  expect(await textFaults(page)).toEqual([]);
  await page.close();
}, 60_000);

function stored(name: string): string {
  return readFileSync(join(import.meta.dirname, `${name}.svg`), "utf8");
}

/** What every axis, or where there is none every figure, must have beside it; a new kind of chart has to be added. */
const UNITS: Record<string, readonly RegExp[]> = {
  binding: [/^time waited for it, h$/],
  bottleneck: [/^clock time \(h:min\)$/, /^55 % alone$/],
  chiller: [/^carcasses in the chiller, heads$/, /^heat out of carcasses, kW$/, /^clock time \(h:min\)$/],
  chances: [/^best in so many worlds, of 100$/],
  cost: [/^cost, EUR\/head$/, /^throughput, heads\/h$/],
  crews: [/^people: /, /^clock time \(h:min\)$/],
  curve: [/^Throughput, heads\/h$/],
  curves: [/^Throughput, heads\/h$/, /^6\.0 s$/],
  difference: [/, heads\/h$/],
  headsOut: [/, heads$/, /^clock time \(h:min\)$/],
  heatMap: [/ heads\/h$/],
  histogram: [/, %$/, /, s$/],
  killStops: [/^most \(heads\)$/, /^clock time \(h:min\)$/],
  layout: [/ m²/, /^10 m$|^20 m$/],
  limit: [/, heads$/, /, s$/],
  loads: [/^crates in lairage$/, /^clock time \(h:min\)$/],
  mass: [/ kg$/],
  observed: [/, heads$/, /^clock time \(h:min\)$/],
  probability: [/^fitted .*, s$/, /^observed, s$/],
  queues: [/^heads: /, /^clock time \(h:min\)$/],
  response: [/, heads\/h$/],
  screening: [/^mean size .*, heads\/h$/, /^spread .*, heads\/h$/],
  slopes: [/, s$/],
  spans: [/, clock time$/],
  states: [/^clock time \(h:min\)$/, /^working 60 %; on break 30 %$/],
  tornado: [/^narrower if it were known, min$/],
  weekBoard: [/^people$/, /heads$/, /^clock time \(h\)$/],
  wip: [/, heads$/, /^clock time \(h:min\)$/],
};

test("every axis of every kind of chart has its unit", () => {
  expect(Object.keys(UNITS).sort()).toEqual([...CHARTS].sort());
  const missing = CHARTS.flatMap((name) => {
    const texts = [...stored(name).matchAll(/>([^<>]+)<\/text>/g)].map(([, text]) => text!);
    return UNITS[name]!.filter((unit) => !texts.some((text) => unit.test(text))).map((unit) => `${name}: ${unit}`);
  });
  expect(missing).toEqual([]);
});

test("a chart of every kind looks as it was stored", async ({ skip }) => {
  if (font === null) skip(OTHER_BROWSER);
  const page = await browser.newPage({ viewport: { width: 760, height: 400 } });
  const faults: string[] = [];
  for (const name of CHARTS) faults.push(await chartFault(page, name, stored(name)));
  await page.close();
  expect(faults.filter((fault) => fault !== "")).toEqual([]);
}, 60_000);

async function chartFault(page: Page, name: string, svg: string): Promise<string> {
  await page.setContent(`<style>${font}</style><body style="margin:0">${svg}</body>`);
  await page.evaluate(() => document.fonts.ready.then(() => {}));
  return pictureFault(name, await page.locator("svg").screenshot());
}

test.for([
  ["states", "dark"],
  ["states", "print"],
  ["wip", "dark"],
  ["loads", "print"],
] as [string, ThemeName][])("%s in %s look as they were stored", async ([kind, theme], { skip }) => {
  if (font === null) skip(OTHER_BROWSER);
  const { svg } = chartFiles(syntheticStudy(), { theme }).find(({ name }) => name === `base-${kind}`)!;
  const page = await browser.newPage({ viewport: { width: 760, height: 400 } });
  expect(await chartFault(page, `${kind}-${theme}`, svg)).toBe("");
  await page.close();
});

test.for([
  ["light", "screen"],
  ["dark", "screen"],
  ["light", "print"],
] as const)("the first screen of a report looks as it was stored: %s, %s", async ([colorScheme, media], { skip }) => {
  if (font === null) skip(OTHER_BROWSER);
  const context = await browser.newContext({ bypassCSP: true, viewport: { width: 1280, height: 800 }, colorScheme });
  const page = await context.newPage();
  if (media === "print") await page.setViewportSize(A4);
  await page.emulateMedia({ media, colorScheme });
  await page.setContent(renderReport(syntheticFactorial()));
  await page.addStyleTag({ content: font! });
  await page.evaluate(() => document.fonts.ready.then(() => {}));
  expect(pictureFault(`report-${media === "print" ? "print" : colorScheme}`, await page.screenshot())).toBe("");
  await context.close();
});

test("axe finds nothing serious in a report, light and dark", async () => {
  for (const report of [renderReport(await whyStudy()), doubtReport()]) {
    const { page } = await open("axe.html", report);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page)).toEqual([]);
    }
    await page.close();
  }
}, 60_000);

test("one time cursor goes through all pictures of a day, moved by pointer, arrow keys or slider", async () => {
  const { page, complaints } = await open("cursor.html", renderDayReport(whyDay()));
  const clocks = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("[data-over-time]")].map(
        (plot) => plot.parentElement!.querySelector(".reading")!.textContent!.split(" ")[0],
      ),
    );
  await openParts(page);
  const plot = page.locator(".day .wide[data-over-time]").nth(1);
  await plot.scrollIntoViewIfNeeded();
  const at = await plot.locator("svg").evaluate((svg: SVGSVGElement) => {
    const box = svg.getBoundingClientRect();
    const [left, right] = [Number(svg.dataset.timeLeft), Number(svg.dataset.timeRight)];
    const start = Number(svg.closest<HTMLElement>(".day")!.dataset.start);
    const end = Number(svg.dataset.timeEnd);
    // An hour and half a minute after the day's start: rounding to whole pixels cannot reach another minute.
    const x = left + ((right - left) * 3630) / end;
    return { x: box.left + (x * box.width) / svg.viewBox.baseVal.width, y: box.top + box.height / 2, start };
  });
  await page.mouse.move(at.x, at.y);
  const clock = (seconds: number) => new Date(seconds * 1000).toISOString().slice(11, 16);
  const pointed = await clocks();
  expect(pointed.length).toBeGreaterThan(4);
  expect(new Set(pointed)).toEqual(new Set([clock(at.start + 3600)]));
  await plot.focus();
  await page.keyboard.press("Shift+ArrowRight");
  await page.keyboard.press("ArrowLeft");
  const stepped = (await clocks())[0]!;
  expect(new Set(await clocks()).size).toBe(1);
  // The slider holds whole minutes: the half minute goes up or down with the first step.
  expect([clock(at.start + 3600 + 540), clock(at.start + 3600 + 600)]).toContain(stepped);
  await page.locator(".cursor input").fill("1200");
  expect(new Set(await clocks())).toEqual(new Set([clock(at.start + 1200)]));
  expect(await page.locator(".time-cursor[visibility=visible]").count()).toBe(pointed.length);
  expect(complaints).toEqual([]);
  await page.close();
}, 60_000);

test("a picture that is not over the clock tells the value that is pointed at or stepped to", async () => {
  const { page } = await open("marks.html", renderReport(await whyStudy()));
  await openParts(page);
  const figure = page.locator("figure", { hasText: "What the line waited for" }).first();
  const reading = figure.locator(".reading");
  await figure.locator(".plot.wide").focus();
  await page.keyboard.press("ArrowDown");
  expect(await reading.textContent()).toMatch(/^hanging, its work: [\d.]+ min/);
  await page.keyboard.press("Escape");
  expect(await reading.textContent()).toBe("");
  await figure.scrollIntoViewIfNeeded();
  const bar = (await figure.locator(".plot.wide [data-value] rect").nth(1).boundingBox())!;
  await page.mouse.move(bar.x + bar.width / 2, bar.y + bar.height / 2);
  expect(await reading.textContent()).toMatch(/^skinning, planned stops: /);
  await page.close();
}, 60_000);
