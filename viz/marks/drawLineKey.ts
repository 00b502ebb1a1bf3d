import { type ChartFrame, drawText, LINE_HEIGHT, wrapText } from "../frame/index.ts";

export interface LineSample {
  name: string;
  stroke: string;
  width: number;
  /** Dashes as SVG has them; "" for an unbroken line. */
  dash: string;
}

const SAMPLE = 26;
const MAX_LINES = 4;

/** Samples of lines with their names, one below the other, from `top` down; returns the lower edge. */
export function drawLineKey(frame: ChartFrame, samples: readonly LineSample[], top: number): number {
  const at = frame.left + SAMPLE + 8;
  let y = top;
  for (const { name, stroke, width, dash } of samples) {
    const line = frame.body.append("path").attr("d", `M${frame.left},${y + 8}h${SAMPLE}`);
    line.attr("fill", "none").attr("stroke", stroke).attr("stroke-width", width);
    if (dash !== "") line.attr("stroke-dasharray", dash);
    for (const words of wrapText(name, frame.right - at, 11, MAX_LINES)) {
      drawText(frame.body, at, y + 12, words);
      y += LINE_HEIGHT;
    }
    y += 4;
  }
  return y;
}
