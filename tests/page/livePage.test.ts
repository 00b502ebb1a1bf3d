import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { formatFault, readPlan } from "../../sim/asked/plan/index.ts";
import { BadInput } from "../../sim/cli/faults.ts";
import { loadPlan, readInputFile } from "../../sim/cli/inputs.ts";
import type { StudyResults } from "../../sim/days/results/index.ts";
import { openBrowser } from "../support/browser.ts";
import { callCli } from "../support/callCli.ts";
import { cliFolder } from "../support/cliFolder.ts";
import { NAMED_DANGERS } from "../support/dangers.ts";
import { HOSTILE } from "../support/hostileStudy.ts";
import { figuresThere, linkTo, openPage, updates } from "../support/openPage.ts";
import { SMALL_PLAN } from "../support/smallPlan.ts";
import { temporaryFolder } from "../support/temporaryFolder.ts";

// A browser starts workers, builds tables and simulates: on a busy machine that takes its time.
vi.setConfig({ testTimeout: 150_000 });

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
}, 60_000);
afterAll(async () => {
  await browser.close();
});

/** Moves a control by its buttons and waits for the figures. */
async function more(page: Page, group: string, ...labels: string[]): Promise<void> {
  await page.getByLabel("Where").selectOption(group);
  for (const label of labels) {
    const before = await updates(page);
    await page.getByRole("button", { name: `More: ${label}` }).click();
    await figuresThere(page, before);
  }
}

/** Text of the file that an entry of "Save and share" gives. */
async function saved(page: Page, entry: string): Promise<{ name: string; text: string }> {
  await page.getByRole("button", { name: "Save and share" }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: entry }).click(),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
}

/** What `gambrel day` says of a plan that is not sound. */
function faultsOfCommandLine(folder: string, name: string): string[] {
  try {
    loadPlan(readInputFile(join(folder, name)));
  } catch (error) {
    if (error instanceof BadInput) return error.lines.map((line) => line.replace(join(folder, name), name));
    throw error;
  }
  return [];
}

const goTo = async (page: Page, clock: string) => {
  await page.getByLabel("Go to").fill(clock);
  await page.getByRole("button", { name: "Go", exact: true }).click();
};

describe("the live page, opened from the disk", () => {
  it("says what hurts and who decides on the first screen, above the line, on a phone, a laptop and a wide screen", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    const said = page.getByRole("region", { name: "Cautions" });
    const short = said.locator("p");
    for (const danger of NAMED_DANGERS) expect(await short.textContent()).toMatch(danger);
    for (const width of [390, 1366, 1920]) {
      await page.setViewportSize({ width, height: 800 });
      const [whole, words, clock] = await Promise.all(
        [said, short, page.locator(".transport")].map(async (part) => (await part.boundingBox())!),
      );
      expect(words!.y + words!.height).toBeLessThan(300);
      expect(whole!.y + whole!.height).toBeLessThanOrEqual(clock!.y + 1);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await said.getByText("What to do about each").click();
    expect(await said.getByText(/locked off/).isVisible()).toBe(true);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("draws the line, plays it and brings figures, without a complaint and without asking for anything", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    const limits = await page.locator(".limits li").allTextContents();
    expect(limits.map((words) => words.replace(/ (kept|broken by .*)$/, "")).sort()).toEqual(
      SMALL_PLAN.limits.map(({ name }) => name).sort(),
    );
    await goTo(page, "06:50");
    const picture = page.getByRole("img", { name: /The line at 06:50:00/ }).first();
    expect(await picture.getAttribute("aria-label")).toMatch(/skinning: \d of 6 waiting, /);
    await page.getByRole("button", { name: "Play" }).click();
    await page.locator(".clock:not(:text-is('06:50:00'))").waitFor();
    await page.getByRole("button", { name: "Pause" }).click();
    expect(await page.locator(".clock").textContent()).not.toBe("06:50:00");
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("gives the same figures as the command line on the same seed, to the last digit", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    await more(page, "skinning", "Positions", "People in crew “dressing”", "Cycle time, mean");
    const verdict = page.locator('[data-response="headsPerHour"] .verdict');
    expect(await verdict.textContent()).toMatch(/carcasses\/h.*shown/);
    const study = await saved(page, "Save as a study for the command line");
    const figures = JSON.parse((await saved(page, "Save the figures (JSON)")).text) as StudyResults;
    const run = await callCli(cliFolder({ "study.json": study.text }), ["study", "study.json", "--json"]);
    expect(run.code).toBe(0);
    const told = JSON.parse(run.out) as StudyResults;
    expect(figures.variants).toHaveLength(2);
    for (const [index, variant] of told.variants.entries()) {
      const { name, set, estimates, differences, values } = variant;
      expect(figures.variants[index]).toMatchObject({ name, set, estimates, differences, values });
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("says of a bad file what the command line says of it, line by line, and keeps the lines of the last sound plan", async () => {
    const bad = JSON.stringify({
      ...SMALL_PLAN,
      crews: [{ name: "dresing", people: 3 }],
      line: SMALL_PLAN.line.slice(0, 3),
      oops: 1,
    });
    const folder = cliFolder({
      "bad.json": bad,
      "torn.json": '{ "name": "torn",\n  "line": [ }',
      "study.json": { plan: "plan.json", question: "?" },
    });
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    for (const name of ["bad.json", "torn.json", "study.json"]) {
      const told = faultsOfCommandLine(folder, name);
      expect(told.length).toBeGreaterThan(0);
      await page.getByLabel("Plan file, and the CSV files it names").first().setInputFiles(join(folder, name));
      await page.getByRole("button", { name: new RegExp(`Edit the plan ${told.length} to fix`) }).click();
      const dialog = page.getByRole("dialog", { name: "The plan" });
      // The file before had as many faults: its verdict may still stand there.
      await expect.poll(() => dialog.locator(".verdicts li").allTextContents(), { timeout: 20_000 }).toEqual(told);
      expect(await page.locator(".unsound").textContent()).toMatch(
        /^\d+ faults? in this plan\. The page still shows the last valid plan/,
      );
      await dialog.getByRole("button", { name: "Close the plan" }).click();
    }
    expect(await page.getByRole("img", { name: /skinning: / }).count()).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("shows hostile names as text and lets none of them do anything", async () => {
    // Characters that cannot be seen are refused by the plan's own check; what is left is as bad as a sound plan can be.
    const hostile = HOSTILE.map((name) =>
      name
        .replace(/\p{Cc}|\p{Cf}|\p{Surrogate}/gu, "")
        .slice(0, 58)
        .trim(),
    );
    const line = SMALL_PLAN.line.map((stage, index) => ({ ...stage, name: `${index}${hostile[index]}` }));
    const limit = {
      ...SMALL_PLAN.limits[0]!,
      name: hostile[1],
      from: `end of ${line[1]!.name}`,
      to: `start of ${line[3]!.name}`,
    };
    const crews = [{ name: hostile[2], people: 3 }];
    const breaks = [{ ...SMALL_PLAN.day.breaks[0], name: hostile[0], crews: [hostile[2]] }];
    const plan = {
      ...SMALL_PLAN,
      ...{ name: hostile[4], notes: hostile.join(" "), crews, limits: [limit], day: { ...SMALL_PLAN.day, breaks } },
      line: line.map((stage) => ("crew" in stage ? { ...stage, crew: hostile[2] } : stage)),
    };
    expect(readPlan(plan, { readText: () => "" }).faults.map(formatFault)).toEqual([]);
    const { page, complaints } = await openPage(browser, { hash: await linkTo(plan) });
    await figuresThere(page);
    await page.getByLabel("Where").selectOption({ index: 2 });
    await goTo(page, "06:50");
    await page.getByRole("button", { name: "On to the next event" }).click();
    await page.getByRole("button", { name: "Edit the plan" }).click();
    await page.getByRole("dialog", { name: "The plan" }).getByText("line (4)").click();
    await page.waitForTimeout(300);
    expect(await page.title()).toBe("Gambrel: the line, live");
    expect(await page.locator("img, #page script").count()).toBe(0);
    expect(await page.evaluate(() => getComputedStyle(document.body).display)).toBe("block");
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("carries plan and changes in a link, and refuses one that is cut short", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    await more(page, "skinning", "Positions");
    await page.getByRole("button", { name: "Save and share" }).click();
    await page.getByRole("button", { name: "Copy a link with plan and changes" }).click();
    await page.waitForFunction(() => document.querySelector(".notice")?.textContent?.includes("link"));
    const hash = new URL(page.url()).hash;
    await page.close();
    const again = await openPage(browser, { hash });
    await figuresThere(again.page);
    expect(await again.page.locator(".title").textContent()).toBe(SMALL_PLAN.name);
    expect(await again.page.getByText("skinning: Positions 4").count()).toBe(1);
    await again.page.close();
    const cut = await openPage(browser, { hash: hash.slice(0, 200) });
    await cut.page.getByText("The plan in this link cannot be read: it is cut short").waitFor();
    await cut.page.close();
    expect([...complaints, ...again.complaints, ...cut.complaints]).toEqual([]);
  });

  it("edits the plan as form and as text, each following the other, with faults in both", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    await page.getByRole("button", { name: "Edit the plan" }).click();
    const dialog = page.getByRole("dialog", { name: "The plan" });
    const form = dialog.getByRole("region", { name: "The plan as a form" });
    const text = dialog.getByRole("textbox", { name: "Text of the plan" });
    await form.getByRole("textbox", { name: "target" }).fill("320");
    await form.getByRole("textbox", { name: "target" }).press("Tab");
    await dialog.getByText("plan.json: target: ").waitFor();
    expect(await form.locator(".faults").textContent()).toContain("no unit");
    expect(await dialog.locator(".cm-lintRange-error").count()).toBeGreaterThan(0);
    await form.getByRole("textbox", { name: "target" }).fill("320 /h");
    await form.getByRole("textbox", { name: "target" }).press("Tab");
    await dialog.getByText("The plan is valid.").waitFor();
    expect(await text.textContent()).toContain('"target": "320 /h"');
    await text.focus();
    await page.keyboard.press("Control+Home");
    // Faster than the page can follow letter by letter.
    await page.keyboard.type("typed at once");
    await dialog.getByText("plan.json: line 1, column 1").waitFor();
    expect(await text.textContent()).toMatch(/^typed at once\{/);
    for (const _ of "typed at once") await page.keyboard.press("Backspace");
    await dialog.getByText("The plan is valid.").waitFor();
    await form.getByText("crews (1)").click();
    await form.locator("summary", { hasText: "dressing" }).click();
    await form.getByLabel("Add to crews[0]").selectOption("rule");
    await form.getByRole("combobox", { name: "rule" }).waitFor();
    await dialog.getByText("The plan is valid.").waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("is worked by keys alone: play, step, jump, speed, the day's slider, the help", async () => {
    const { page, complaints } = await openPage(browser, { hash: await linkTo(SMALL_PLAN) });
    await figuresThere(page);
    const clock = page.locator(".clock");
    await page.keyboard.press("g");
    await page.keyboard.type("06:30");
    await page.keyboard.press("Enter");
    await page.getByRole("slider", { name: "Time of the day" }).focus();
    await page.keyboard.press("PageUp");
    await page.keyboard.press("ArrowLeft");
    expect(await clock.textContent()).toBe("06:39:00");
    await page.keyboard.press(".");
    expect(await page.locator(".notice").textContent()).toMatch(/^06:39:\d\d: /);
    await page.keyboard.press(",");
    await page.keyboard.press("]");
    expect(await page.locator(".speed output").textContent()).toBe("200×");
    await page.keyboard.press(" ");
    expect(await page.getByRole("button", { name: "Pause" }).count()).toBe(1);
    await page.keyboard.press(" ");
    const lessons = page.getByRole("button", { name: "Lessons" });
    await lessons.press("Enter");
    const [button, sheet] = await Promise.all([lessons.boundingBox(), page.locator("#menu-lessons").boundingBox()]);
    expect(sheet!.y - (button!.y + button!.height)).toBeCloseTo(4, 0);
    expect(Math.abs(sheet!.x - button!.x)).toBeLessThan(button!.width);
    await page.keyboard.press("Escape");
    await page.keyboard.press("?");
    await page.getByRole("dialog", { name: "Help" }).waitFor();
    await page.keyboard.press("Escape");
    await page.keyboard.press("0");
    expect(await clock.textContent()).toBe("05:30:00");
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("saves the picture of the moment as SVG that a browser opens, and as PNG", async () => {
    const { page, complaints } = await openPage(browser, {
      hash: await linkTo(SMALL_PLAN, { "line.skinning.positions": 4 }),
    });
    await figuresThere(page);
    await goTo(page, "06:50");
    await page.waitForFunction(() => document.querySelectorAll(".rail canvas").length === 2);
    const svg = await saved(page, "Save the picture (SVG)");
    expect(svg.name).toBe("small-plant-065000.svg");
    const png = await saved(page, "Save the picture (PNG)");
    expect(png.text.slice(1, 4)).toBe("PNG");
    expect(complaints).toEqual([]);
    await page.close();
    const file = join(temporaryFolder(), svg.name);
    writeFileSync(file, svg.text);
    const view = await browser.newPage();
    await view.goto(`file://${file}`);
    const found = await view.evaluate(() =>
      [...document.querySelectorAll("text")].map(({ textContent }) => textContent),
    );
    expect(found).toContain("Small plant, 06:50:00");
    expect(found.some((words) => words?.startsWith("The variant: skinning: Positions 4"))).toBe(true);
    await view.close();
  });
});
