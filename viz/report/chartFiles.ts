import type { StudyResults } from "../contract.ts";
import { svgText, type ThemeName } from "../frame/index.ts";
import { serverDocument } from "./serverDocument.ts";
import { studyCharts } from "./studyCharts.ts";

/**
 * The pictures of a study as stand-alone SVG files: `name` without ending (a-z, 0-9, hyphen; unique), `svg` the whole file.
 * Theme `light` by default: word processors and image viewers do not know the CSS that `auto` needs.
 */
export function chartFiles(
  results: StudyResults,
  options: { theme?: ThemeName; document?: Document } = {},
): { name: string; svg: string }[] {
  const document = options.document ?? serverDocument();
  const theme = options.theme ?? "light";
  return studyCharts(results).map((chart) => ({
    name: chart.name,
    svg: `${svgText(chart.draw({ document, theme, idPrefix: chart.name }))}\n`,
  }));
}
