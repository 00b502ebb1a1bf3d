import type { ColumnFit, Doubt, FitPicture, StudyResults } from "../contract.ts";
import { svgText, type ThemeName } from "../frame/index.ts";
import { histogramChart, histogramView, probabilityChart, probabilityView } from "../pictures/index.ts";
import { doubtCharts } from "./doubtReport.ts";
import type { ReportOptions } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";
import { type PlannedChart, seasonPicture, slug, studyCharts, tradeOffChart, worthChart } from "./studyCharts.ts";

/**
 * The pictures of a study as stand-alone SVG files: `name` without ending (a-z, 0-9, hyphen; unique), `svg` the whole file.
 * Those of a search's or a line-up's answer come first. Theme `light` by default: word processors and image viewers do
 * not know the CSS that `auto` needs.
 */
export function chartFiles(
  results: StudyResults,
  options: DrawingOptions & Pick<ReportOptions, "improvement" | "offers" | "season"> = {},
): { name: string; svg: string }[] {
  const { improvement, offers, season } = options;
  const answers = [
    improvement === undefined ? null : tradeOffChart(improvement),
    offers === undefined ? null : worthChart(offers),
    season === undefined ? null : seasonPicture(season),
  ].filter((chart) => chart !== null);
  return drawnFiles([...answers, ...studyCharts(results)], options);
}

/** The pictures of what is luck and what is not known as stand-alone SVG files, named as `chartFiles` does. */
export function doubtChartFiles(doubt: Doubt, options: DrawingOptions = {}): { name: string; svg: string }[] {
  return drawnFiles(doubtCharts(doubt), options);
}

interface DrawingOptions {
  theme?: ThemeName;
  document?: Document;
}

function drawnFiles(charts: readonly PlannedChart[], options: DrawingOptions): { name: string; svg: string }[] {
  const { document = serverDocument(), theme = "light" } = options;
  return charts.map((chart) => ({
    name: chart.name,
    svg: `${svgText(chart.draw({ document, theme, idPrefix: chart.name, ...widthOf(chart) }))}\n`,
  }));
}

function widthOf({ width }: PlannedChart): { width?: number } {
  return width === undefined ? {} : { width };
}

/** The pictures of measured times as stand-alone SVG files, named as `chartFiles` does. */
export function fitChartFiles(
  columns: readonly { fit: ColumnFit; picture: FitPicture }[],
  options: DrawingOptions = {},
): { name: string; svg: string }[] {
  const { document = serverDocument(), theme = "light" } = options;
  return columns.flatMap(({ fit, picture }, index) => {
    const stem = `${index + 1}-${slug(fit.heading)}`;
    const context = (name: string) => ({ document, theme, idPrefix: name });
    const times = `times-${stem}`;
    const probability = `probability-${stem}`;
    const view = probabilityView(fit, picture);
    const first = { name: times, svg: histogramChart(histogramView(fit, picture), context(times)) };
    const second = view === null ? [] : [{ name: probability, svg: probabilityChart(view, context(probability)) }];
    return [first, ...second].map(({ name, svg }) => ({ name, svg: `${svgText(svg)}\n` }));
  });
}
