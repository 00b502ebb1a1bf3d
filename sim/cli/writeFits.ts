import { fitChartFiles } from "../../viz/index.ts";
import { type RunFile, stableJson } from "../days/results/index.ts";
import { fitPicture } from "../questions/fit/index.ts";
import type { FitResults } from "./commands/fit.ts";
import { writeFolder } from "./runFolder.ts";

/** Draws the pictures of all columns and writes the folder, whole or not at all. */
export async function writeFits(folder: string, results: FitResults, overwrite: boolean): Promise<void> {
  const charts = fitChartFiles(results.columns.map((fit) => ({ fit, picture: fitPicture(fit, results.seed) })));
  const files: RunFile[] = [
    { path: "results.json", text: stableJson(results) },
    { path: "fragment.json", text: `${JSON.stringify(results.fragment, null, 2)}\n` },
    ...charts.map(({ name, svg }) => ({ path: `charts/${name}.svg`, text: svg })),
  ];
  await writeFolder(folder, files, overwrite);
}
