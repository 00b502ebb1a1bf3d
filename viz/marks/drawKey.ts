import { type ChartFrame, drawText, textWidth } from "../frame/index.ts";

/** Samples of fills with their names, on one line (more where the room is short), from `top` down; returns the lower edge. */
export function drawKey(frame: ChartFrame, items: readonly { name: string; fill: string }[], top: number): number {
  let x = frame.left;
  let y = top;
  for (const { name, fill } of items) {
    const width = 22 + textWidth(name, 11) + 16;
    if (x + width > frame.right) {
      x = frame.left;
      y += 20;
    }
    const sample = frame.body.append("rect").attr("x", x).attr("y", y).attr("width", 18).attr("height", 13);
    sample.attr("fill", fill).attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    drawText(frame.body, x + 23, y + 10.5, name);
    x = Math.ceil(x + width + 6);
  }
  return y + 13;
}
