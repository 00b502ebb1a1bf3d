import type { StudyResults } from "../contract.ts";
import { svgText, type ThemeName } from "../frame/index.ts";
import type { ReportOptions } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";
import { studyCharts, tradeOffChart, worthChart } from "./studyCharts.ts";

/**
 * The pictures of a study as stand-alone SVG files: `name` without ending (a-z, 0-9, hyphen; unique), `svg` the whole file.
 * Those of a search's or a line-up's answer come first. Theme `light` by default: word processors and image viewers do
 * not know the CSS that `auto` needs.
 */
export function chartFiles(
  results: StudyResults,
  options: { theme?: ThemeName; document?: Document } & Pick<ReportOptions, "improvement" | "offers"> = {},
): { name: string; svg: string }[] {
  const document = options.document ?? serverDocument();
  const theme = options.theme ?? "light";
  const { improvement, offers } = options;
  const answers = [
    improvement === undefined ? null : tradeOffChart(improvement),
    offers === undefined ? null : worthChart(offers),
  ].filter((chart) => chart !== null);
  return [...answers, ...studyCharts(results)].map((chart) => ({
    name: chart.name,
    svg: `${svgText(chart.draw({ document, theme, idPrefix: chart.name }))}\n`,
  }));
}
