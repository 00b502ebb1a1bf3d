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
export type { Defs, Group, Svg } from "./selections.ts";
export { timePlot, timeScale } from "./timeScale.ts";
export { drawBottomAxis, drawLeftAxis } from "./valueAxis.ts";

// Quantities and text

export { drawText, type TextStyle } from "./drawText.ts";
export { type Quantity, quantityLabel, quantityTicks } from "./quantity.ts";
export { readable } from "./readable.ts";
export { isolated, safeText } from "./safeText.ts";
export { spreadLabels } from "./spreadLabels.ts";
export { svgText } from "./svgText.ts";
export { textWidth } from "./textWidth.ts";
export { wrapText } from "./wrapText.ts";

// Colours and textures

export { type Texture, textureFill } from "./textures.ts";
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
