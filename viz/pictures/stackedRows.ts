import { type ChartFrame, drawText, LINE_HEIGHT, wrapText } from "../frame/index.ts";

/** Words of one row of a narrow picture. */
export interface StackedWords {
  /** Who or what the row is about, and below it what more is to be said of that. */
  name: string;
  detail?: string;
  /** Figures, in one or more lines. */
  text: string;
}

/** Where the rows of a narrow picture lie, pixels. */
export interface StackedRows {
  /** Ends of what is drawn below the words. */
  left: number;
  right: number;
  /** Middles of the bars, in the order of the rows. */
  middles: readonly number[];
  bottom: number;
  /** Writes the words: call it after the grid, which they cover. */
  drawWords: () => void;
}

/** A label of an axis is centred at its tick, and an interval ends in a dot. */
const INSET = 20;
const AIR = 14;
const MAX_LINES = 8;

/** Rows whose words stand above their bars, from `top` down; a bar is `bar` pixels high. */
export function stackedRows(frame: ChartFrame, rows: readonly StackedWords[], top: number, bar: number): StackedRows {
  const room = frame.right - frame.left;
  const middles: number[] = [];
  const lines: { y: number; text: string; bold: boolean; muted: boolean }[] = [];
  let y = top;
  const write = (text: string, look: { bold: boolean; muted: boolean }) => {
    for (const line of wrapText(text, room, 11, MAX_LINES, look.bold)) {
      y += LINE_HEIGHT;
      lines.push({ y: y - 3, text: line, ...look });
    }
  };
  for (const { name, detail, text } of rows) {
    y += AIR / 2;
    write(name, { bold: true, muted: false });
    if (detail !== undefined) write(detail, { bold: false, muted: true });
    for (const part of text.split("\n")) write(part, { bold: false, muted: false });
    middles.push(y + 3 + bar / 2);
    y += 3 + bar + AIR / 2;
  }
  const halo = frame.colour("paper");
  const drawWords = () => {
    for (const { y, text, bold, muted } of lines)
      drawText(frame.body, frame.left, y, text, { bold, halo, ...(muted ? { fill: frame.colour("muted") } : {}) });
  };
  return { left: frame.left + INSET, right: frame.right - INSET, middles, bottom: y, drawWords };
}
