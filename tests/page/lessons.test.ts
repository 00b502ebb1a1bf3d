import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { readLesson } from "../../viz/page/lessons/lesson.ts";
import { openBrowser } from "../support/browser.ts";
import { figuresStand, figuresThere, type OpenedPage, openPage, updates } from "../support/openPage.ts";

// A browser starts workers, builds tables and simulates: on a busy machine that takes its time.
vi.setConfig({ testTimeout: 150_000 });

const FOLDER = resolve(import.meta.dirname, "../../experiments/lessons");
const LESSONS = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json"))
  .map((name) => readLesson(name.replace(".json", ""), readFileSync(join(FOLDER, name), "utf8")));

let browser: Browser;
let opened: OpenedPage;
beforeAll(async () => {
  browser = await openBrowser();
  opened = await openPage(browser, { hash: `#lesson=${LESSONS[0]!.id}` });
}, 120_000);
afterAll(async () => {
  await browser.close();
});

describe("every lesson is played", () => {
  it.each(LESSONS.map((lesson) => [lesson.title, lesson] as const))("%s", async (_, lesson) => {
    const { page, complaints } = opened;
    // As by a link that is followed while the page is open.
    await page.evaluate((id) => {
      location.hash = `#lesson=${id}`;
    }, lesson.id);
    const panel = page.getByRole("region", { name: "Lesson", exact: true });
    await panel.getByRole("heading", { level: 2, name: lesson.title }).waitFor();
    await page.waitForFunction((at) => document.querySelector(".clock")?.textContent === at, `${lesson.startAt}:00`);
    await figuresStand(page);
    expect(await panel.getByText("The answer", { exact: true }).count()).toBe(0);
    await panel.getByLabel(`Hands up for: ${lesson.options[lesson.right]}`).fill("3");
    for (const [index, { moves }] of lesson.steps.filter(({ moves }) => Object.keys(moves).length > 0).entries()) {
      const before = await updates(page);
      await panel.getByRole("button", { name: "Do it" }).nth(index).click();
      await figuresThere(page, before);
      for (const id of Object.keys(moves)) {
        expect(await panel.locator(`.moved[data-control=${JSON.stringify(id)}]`).count()).toBe(1);
      }
    }
    const shown = await updates(page);
    await panel.getByRole("button", { name: "Show the answer", exact: true }).click();
    // The figures are those of what was asked, whatever was moved last.
    const asked = lesson.steps[lesson.askedStep]!.moves;
    if (JSON.stringify(asked) !== JSON.stringify(lesson.steps.at(-1)!.moves)) await figuresThere(page, shown);
    expect((await panel.locator(".moved").count()) > 0).toBe(Object.keys(asked).length > 0);
    expect(await panel.locator(".right").textContent()).toContain(lesson.options[lesson.right]);
    expect(await panel.locator(".answer li").count()).toBe(lesson.evidence.length);
    if (Object.keys(asked).length > 0) {
      expect(await panel.locator(".answer .verdict").first().textContent()).toMatch(/shown|the same/);
    }
    await page.getByRole("slider", { name: "Time of the day" }).focus();
    await page.keyboard.press("End");
    await page
      .getByText(Object.keys(asked).length > 0 ? /ended work (at|.* (earlier|later): )/ : "Nothing is changed")
      .waitFor();
    await panel.getByRole("button", { name: "Leave the lesson" }).click();
    expect(new URL(page.url()).hash).toBe("");
    expect(complaints).toEqual([]);
  });
});
