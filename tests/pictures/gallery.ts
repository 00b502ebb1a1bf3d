import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chartFiles, renderDayReport, renderReport, type ThemeName } from "../../viz/index.ts";
import { openBrowser } from "../support/browser.ts";
import { syntheticCurve, syntheticFactorial, syntheticSingleDay, syntheticStudy } from "../support/syntheticStudy.ts";
import { textFaults } from "../support/textFaults.ts";

/**
 * Draws every chart in every theme, and the reports, as PNG into a folder, to be looked at:
 * `npx tsx tests/pictures/gallery.ts FOLDER`. Prints faults of reading as it goes.
 */
const folder = resolve(process.argv[2] ?? "runs/gallery");
mkdirSync(folder, { recursive: true });
const studies = { study: syntheticStudy(), curve: syntheticCurve(), factorial: syntheticFactorial() };
const reports = {
  study: renderReport(studies.study),
  factorial: renderReport(studies.factorial),
  day: renderDayReport(syntheticSingleDay()),
};
const browser = await openBrowser();
for (const theme of ["light", "dark", "print"] as ThemeName[]) {
  for (const [study, results] of Object.entries(studies)) {
    const files = chartFiles(results, { theme }).filter(
      (file) => study === "study" || /response|difference/.test(file.name),
    );
    for (const { name, svg } of files) {
      const page = await browser.newPage({ viewport: { width: 760, height: 400 }, deviceScaleFactor: 1.5 });
      await page.setContent(`<body style="margin:0">${svg}</body>`);
      for (const fault of await textFaults(page)) console.log(theme, study, name, fault);
      await page.locator("svg").screenshot({ path: join(folder, `${study}-${name}-${theme}.png`) });
      await page.close();
    }
  }
}
for (const [name, text] of Object.entries(reports)) {
  const path = join(folder, `${name}.html`);
  writeFileSync(path, text);
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await browser.newPage({ viewport: { width: 900, height: 1200 }, colorScheme });
    await page.goto(pathToFileURL(path).href);
    for (const fault of await textFaults(page)) console.log("report", name, fault);
    await page.screenshot({ path: join(folder, `report-${name}-${colorScheme}.png`), fullPage: true });
    if (colorScheme === "dark") await page.pdf({ path: join(folder, `report-${name}.pdf`), preferCSSPageSize: true });
    await page.close();
  }
}
await browser.close();
