import { type ChartFrame, drawText, LINE_HEIGHT, wrapText } from "../frame/index.ts";

const MAX_LINES = 4;

/**
 * What the numbers beside the points of a narrow picture stand for, from `top` down, each with what is to be read at its
 * point; returns the lower edge.
 */
export function drawNumbered(
  frame: ChartFrame,
  points: readonly { name: string; text: string }[],
  top: number,
): number {
  const at = frame.left + 22;
  let y = top + 6;
  points.forEach(({ name, text }, index) => {
    drawText(frame.body, at - 6, y + LINE_HEIGHT, String(index + 1), { anchor: "end", bold: true });
    for (const [words, fill] of [
      [name, "ink"],
      [text, "muted"],
    ] as const) {
      if (words === "") continue;
      for (const line of wrapText(words, frame.right - at, 11, MAX_LINES)) {
        y += LINE_HEIGHT;
        drawText(frame.body, at, y, line, { fill: frame.colour(fill) });
      }
    }
    y += 4;
  });
  return y;
}
