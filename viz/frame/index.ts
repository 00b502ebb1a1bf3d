// What surrounds the data

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

// Text

export { drawText, LINE_HEIGHT, readable, type TextStyle } from "./drawText.ts";
export { type Quantity, quantityLabel, quantityTicks } from "./quantity.ts";
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
export { drawBottomAxis, drawLeftAxis } from "./valueAxis.ts";
export { wrapText } from "./wrapText.ts";
