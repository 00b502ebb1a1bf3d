import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../support/browser.ts";
import { figuresThere, linkTo, openPage, updates } from "../support/openPage.ts";
import { SMALL_PLAN } from "../support/smallPlan.ts";

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
}, 60_000);
afterAll(async () => {
  await browser.close();
});

describe("the live page, opened from the disk", () => {
  it("draws the example line, plays it and brings figures, without a complaint and without asking for anything", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    await page.getByLabel("Go to").fill("06:50");
    await page.getByRole("button", { name: "Go", exact: true }).click();
    const picture = page.getByRole("img", { name: /The line at 06:50:00/ }).first();
    expect(await picture.getAttribute("aria-label")).toMatch(/skinning: \d of 6 waiting, /);
    await page.getByRole("button", { name: "Play" }).click();
    await page.waitForTimeout(400);
    await page.getByRole("button", { name: "Pause" }).click();
    expect(await page.locator(".clock").textContent()).not.toBe("06:50:00");
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("changes the variant alone when a control is moved, and says what it comes to", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    await page.getByLabel("Where").selectOption("skinning");
    const before = await updates(page);
    await page.getByRole("button", { name: "More: Positions" }).click();
    await page.getByRole("button", { name: "More: People in crew “dressing”" }).click();
    await figuresThere(page, before);
    const throughput = page.locator('[data-response="headsPerHour"]');
    await throughput.locator(".verdict").waitFor();
    expect(await throughput.locator(".verdict").textContent()).toMatch(/\+.*carcasses\/h.*shown/);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
