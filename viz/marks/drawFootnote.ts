import { type ChartFrame, drawText, LINE_HEIGHT, wrapText } from "../frame/index.ts";

/** What was left out of a picture, in up to four lines below `bottom`; returns the lower edge. */
export function drawFootnote(frame: ChartFrame, words: string, bottom: number): number {
  let end = bottom;
  for (const line of wrapText(words, frame.right - frame.left, 11, 4)) {
    if (line === "") continue;
    end += LINE_HEIGHT;
    drawText(frame.body, frame.left, end, line, { fill: frame.colour("muted") });
  }
  return end;
}
