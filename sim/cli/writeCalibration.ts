import { observedChart, observedView, serverDocument, svgText } from "../../viz/index.ts";
import { stableJson } from "../days/results/index.ts";
import type { CalibrationResults } from "./commands/calibrate.ts";
import { writeFolder } from "./runFolder.ts";

/** Draws the picture and writes the folder, whole or not at all. */
export async function writeCalibration(folder: string, results: CalibrationResults, overwrite: boolean): Promise<void> {
  const svg = observedChart(observedView(results), {
    document: serverDocument(),
    theme: "light",
    idPrefix: "observed",
  });
  const files = [
    { path: "results.json", text: stableJson(results) },
    { path: "charts/observed.svg", text: `${svgText(svg)}\n` },
  ];
  await writeFolder(folder, files, overwrite);
}
