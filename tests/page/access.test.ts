import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { axeFaults } from "../support/axeFaults.ts";
import { openBrowser } from "../support/browser.ts";
import { figuresThere, linkTo, openPage } from "../support/openPage.ts";
import { SMALL_PLAN } from "../support/smallPlan.ts";

// A browser starts workers, builds tables and simulates: on a busy machine that takes its time.
vi.setConfig({ testTimeout: 150_000 });

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
}, 60_000);
afterAll(async () => {
  await browser.close();
});

describe("for whoever comes with other eyes, hands or screens", () => {
  it("axe finds nothing serious in light and dark: lesson with its answer, menus, editor, help", async () => {
    const { page, complaints } = await openPage(browser, { hash: "#lesson=1-where-the-queue-grows" });
    await figuresThere(page);
    await page.getByRole("button", { name: "Show the answer without a guess" }).click();
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      await page.getByRole("button", { name: "Save and share" }).click();
      expect(await axeFaults(page)).toEqual([]);
      await page.keyboard.press("Escape");
    }
    await page.getByRole("button", { name: "Help" }).click();
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Edit the plan" }).click();
    await page.getByText("line (8)").click();
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page)).toEqual([]);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("at a phone's, a laptop's and a projector's width nothing reaches beyond the screen's edge or is cut off", async () => {
    const uncertain = [{ name: "skinning's cycle time", paths: ["line.skinning.cycle"], guess: "a third" }];
    const { page, complaints } = await openPage(browser, { hash: await linkTo({ ...SMALL_PLAN, uncertain }) });
    await figuresThere(page);
    expect(await page.getByText("One figure of this plan is uncertain, by guess").isVisible()).toBe(true);
    await page.getByRole("radio", { name: "as well as we know them" }).check();
    await page.getByText(/^On these 20 days work ends between .* and .* as well as we know them\.$/).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    // Pictures follow the new width a frame or two later.
    const fits = () =>
      page.waitForFunction(() => document.documentElement.scrollWidth <= window.innerWidth, null, { timeout: 30_000 });
    for (const width of [390, 1366, 1920]) {
      await page.setViewportSize({ width, height: 900 });
      await fits();
      await page.getByRole("button", { name: "Edit the plan" }).click();
      await page.getByText("line (4)").click();
      await fits();
      await page.getByRole("button", { name: "Close the plan" }).click();
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("button, label, h2, h3, summary")]
          .filter((element) => element.offsetParent !== null && element.scrollWidth > element.clientWidth + 1)
          .filter((element) => getComputedStyle(element).display !== "inline")
          .map((element) => element.outerHTML.slice(0, 120)),
      );
      expect(cut).toEqual([]);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });
});
