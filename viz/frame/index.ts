/** What surrounds the data of every picture. */

// The frame and its axes

export { type ChartContext, type ChartFrame, type ChartWords, chartFrame, emptyChart } from "./chartFrame.ts";
export {
  clockAt,
  clockTicksFor,
  drawClockAxis,
  drawClockGrid,
  drawPauses,
  type PauseBand,
  type TimeScale,
} from "./clockAxis.ts";
export { type DayFrame, type DayScene, dayFrame, drawDayPlot, finishDay } from "./dayFrame.ts";
export type { Defs, Group, Svg } from "./selections.ts";
export { drawBottomAxis, drawLeftAxis } from "./valueAxis.ts";

// Quantities and text

export { drawText, LINE_HEIGHT, readable, type TextStyle } from "./drawText.ts";
export { type Quantity, quantityLabel, quantityTicks } from "./quantity.ts";
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
