import type { ColumnFit, FitPicture } from "../contract.ts";
import { svgText, type ThemeName } from "../frame/index.ts";
import { histogramChart, histogramView, probabilityChart, probabilityView } from "../pictures/index.ts";
import { serverDocument } from "./serverDocument.ts";
import { slug } from "./studyCharts.ts";

/** The pictures of measured times as stand-alone SVG files, named as `chartFiles` does. */
export function fitChartFiles(
  columns: readonly { fit: ColumnFit; picture: FitPicture }[],
  options: { theme?: ThemeName; document?: Document } = {},
): { name: string; svg: string }[] {
  const document = options.document ?? serverDocument();
  const theme = options.theme ?? "light";
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
