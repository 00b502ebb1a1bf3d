import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chartFiles, renderDayReport, renderReport } from "../../../viz/index.ts";
import { openBrowser } from "../../support/browser.ts";
import { hostileStudy } from "../../support/hostileStudy.ts";
import {
  syntheticCurve,
  syntheticFactorial,
  syntheticSingleDay,
  syntheticStudy,
} from "../../support/syntheticStudy.ts";
import { textFaults } from "../../support/textFaults.ts";

const folder = mkdtempSync(join(tmpdir(), "gambrel-report-"));
let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
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

const REPORTS = {
  "a study of variants": () => renderReport(syntheticStudy()),
  "one numeric factor": () => renderReport(syntheticCurve()),
  "two numeric factors": () => renderReport(syntheticFactorial()),
  "a single day": () => renderDayReport(syntheticSingleDay()),
  "hostile names": () => renderReport(hostileStudy()),
};

test.each(Object.entries(REPORTS))(
  "the report of %s opens offline: no complaint, no text under 11 px, none overlapping, nothing cut off",
  async (name, render) => {
    const { page, complaints } = await open(`${name.replaceAll(" ", "-")}.html`, render());
    expect(complaints).toEqual([]);
    expect(await textFaults(page)).toEqual([]);
    expect(await page.title()).not.toBe("taken");
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await page.close();
  },
  60_000,
);

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
