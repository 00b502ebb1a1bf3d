import { type ChartFrame, drawText, LINE_HEIGHT, textWidth, wrapText } from "../frame/index.ts";

/** A name in a narrow picture takes as many lines as it needs. */
const MAX_NAME = 3;

/** Samples of fills with their names, on one line (more where the room is short), from `top` down; returns the lower edge. */
export function drawKey(frame: ChartFrame, items: readonly { name: string; fill: string }[], top: number): number {
  let x = frame.left;
  let y = top;
  let lower = 0;
  for (const { name, fill } of items) {
    const lines = wrapText(name, frame.right - frame.left - 23, 11, frame.narrow ? MAX_NAME : 1);
    const width = 22 + Math.max(...lines.map((line) => textWidth(line, 11))) + 16;
    if (x > frame.left && x + width > frame.right) {
      x = frame.left;
      y += 20 + lower;
      lower = 0;
    }
    const sample = frame.body.append("rect").attr("x", x).attr("y", y).attr("width", 18).attr("height", 13);
    sample.attr("fill", fill).attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    lines.forEach((line, i) => {
      drawText(frame.body, x + 23, y + 10.5 + i * LINE_HEIGHT, line);
    });
    lower = Math.max(lower, (lines.length - 1) * LINE_HEIGHT);
    x = Math.ceil(x + width + 6);
  }
  return y + 13 + lower;
}
