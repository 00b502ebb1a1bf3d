import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { chartPaths, type RunFile } from "./runFiles.ts";

/** What is drawn from a run's results, and can be drawn again. */
export interface Drawn {
  reportHtml: string;
  charts: readonly { name: string; svg: string; png?: Uint8Array }[];
  reportPdf?: Uint8Array;
  tables?: Uint8Array;
}

const DRAWN = new Set(["report.html", "report.pdf", "tables.xlsx", "charts"]);

/**
 * The files of a run folder with everything drawn anew; its data are taken over byte for byte, and with `keepPrints` so
 * are the PDF and the PNG charts that are there, for a machine that cannot draw them anew.
 */
export function rebuiltFiles(
  folder: string,
  { reportHtml, charts, reportPdf, tables }: Drawn,
  keepPrints = false,
): RunFile[] {
  const paths = chartPaths(charts);
  const kept = readdirSync(folder).filter((name) => !DRAWN.has(name));
  const prints = keepPrints ? ["report.pdf", ...paths.map((path) => `${path}.png`)] : [];
  kept.push(...prints.filter((name) => existsSync(join(folder, name))));
  return [
    ...kept.map((name) => ({ path: name, bytes: new Uint8Array(readFileSync(join(folder, name))) })),
    { path: "report.html", text: reportHtml },
    ...(reportPdf === undefined ? [] : [{ path: "report.pdf", bytes: reportPdf }]),
    ...(tables === undefined ? [] : [{ path: "tables.xlsx", bytes: tables }]),
    ...charts.flatMap(({ svg, png }, index): RunFile[] => [
      { path: `${paths[index]!}.svg`, text: svg },
      ...(png === undefined ? [] : [{ path: `${paths[index]!}.png`, bytes: png }]),
    ]),
  ];
}
