import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { rebuiltFiles } from "../../../../sim/days/results/index.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const bytes = new Uint8Array([1, 2]);

function folder(): string {
  const made = temporaryFolder();
  mkdirSync(join(made, "charts"));
  for (const name of ["results.json", "plan.json", "report.html", "report.pdf", "tables.xlsx", "charts/old.svg"])
    writeFileSync(join(made, name), name);
  return made;
}

test("data are taken over byte for byte, what was drawn before goes", () => {
  const files = rebuiltFiles(folder(), { reportHtml: "new", charts: [{ name: "a chart", svg: "<svg/>" }] });
  expect(files.map(({ path }) => path).sort()).toEqual([
    "charts/a-chart.svg",
    "plan.json",
    "report.html",
    "results.json",
  ]);
  const results = files.find(({ path }) => path === "results.json") as { bytes: Uint8Array };
  expect(Buffer.from(results.bytes).toString()).toBe("results.json");
});

test("what was asked for besides is added, a PNG under the name of its chart", () => {
  const charts = [
    { name: "a", svg: "<svg/>", png: bytes },
    { name: "A", svg: "<svg/>", png: bytes },
  ];
  const files = rebuiltFiles(folder(), { reportHtml: "new", charts, reportPdf: bytes, tables: bytes });
  const paths = files.map(({ path }) => path);
  expect(paths).toEqual(expect.arrayContaining(["report.pdf", "tables.xlsx", "charts/a.svg", "charts/a.png"]));
  expect(new Set(paths).size).toBe(paths.length);
});
