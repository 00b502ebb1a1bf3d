// What surrounds the data
export type { ChartContext } from "./chartContext.ts";
export { type ChartFrame, type ChartWords, chartFrame, emptyChart, LINE_HEIGHT, TEXT_SIZE } from "./chartFrame.ts";
export {
  clockAt,
  clockTicksFor,
  drawClockAxis,
  drawClockGrid,
  drawPauses,
  type PauseBand,
  type TimeScale,
} from "./clockAxis.ts";
// Text
export { drawText, type TextStyle } from "./drawText.ts";
export { type Quantity, quantityLabel, quantityTicks } from "./quantity.ts";
export { readable } from "./readable.ts";
export { isolated, safeText } from "./safeText.ts";
export type { Defs, Group, Svg } from "./selections.ts";
export { spreadLabels } from "./spreadLabels.ts";
export { svgText } from "./svgText.ts";
export { type Texture, textureFill } from "./textures.ts";
export { textWidth } from "./textWidth.ts";
// Colours and textures
export {
  CHART_CLASS,
  chartStyleSheet,
  FILLS,
  FONT_FAMILY,
  type Paint,
  paint,
  SERIES,
  type ThemeName,
  themeColours,
} from "./theme.ts";
export { timePlot, timeScale } from "./timeScale.ts";
export { drawBottomAxis, drawLeftAxis } from "./valueAxis.ts";
export { wrapText } from "./wrapText.ts";
