import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { openBrowser } from "/work/wt/record/tests/support/browser.ts";
import { textFaults } from "/work/wt/record/tests/support/textFaults.ts";
import { chartFiles, renderReport } from "/work/wt/record/viz/index.ts";
import { readResults } from "/work/wt/record/sim/results/index.ts";
const [folder, out] = process.argv.slice(2) as [string, string];
const { results } = readResults(readFileSync(`${folder}/results.json`, "utf8"));
writeFileSync(`${out}.html`, renderReport(results!));
const browser = await openBrowser();
for (const theme of ["light", "dark"] as const) {
  const { svg } = chartFiles(results!, { theme }).find(({ name }) => name === "base-kill-stops")!;
  const page = await browser.newPage({ viewport: { width: 760, height: 400 }, deviceScaleFactor: 1.3 });
  await page.setContent(`<body style="margin:0">${svg}</body>`);
  for (const fault of await textFaults(page)) console.log(theme, fault);
  await page.locator("svg").screenshot({ path: `${out}-chart-${theme}.png` });
  await page.close();
  const report = await browser.newPage({ viewport: { width: 900, height: 1100 }, colorScheme: theme });
  await report.goto(pathToFileURL(`${out}.html`).href);
  for (const fault of await textFaults(report)) console.log("report", fault);
  await report.screenshot({ path: `${out}-top-${theme}.png` });
  const section = report.locator("section", { has: report.locator("h2", { hasText: "Stops of the kill line" }) });
  await section.screenshot({ path: `${out}-section-${theme}.png` });
  await report.close();
}
await browser.close();
