import type { Group } from "./selections.ts";

export const TEXT_SIZE = 11;
export const LINE_HEIGHT = 14;

export interface TextStyle {
  anchor?: "start" | "middle" | "end";
  size?: number;
  bold?: boolean;
  fill?: string;
  /** Colour of an outline that keeps the text readable over lines and fills. */
  halo?: string;
}

/** One line of text with its baseline at (x, y). */
export function drawText(group: Group, x: number, y: number, content: string, style: TextStyle = {}): void {
  const text = group.append("text").attr("x", rounded(x)).attr("y", rounded(y));
  if (style.anchor && style.anchor !== "start") text.attr("text-anchor", style.anchor);
  if (style.size && style.size !== TEXT_SIZE) text.attr("font-size", style.size);
  if (style.bold) text.attr("font-weight", 600);
  if (style.fill) text.attr("fill", style.fill);
  if (style.halo) {
    text
      .attr("stroke", style.halo)
      .attr("stroke-width", 3)
      .attr("stroke-linejoin", "round")
      .attr("paint-order", "stroke");
  }
  text.text(content);
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}

/** A group whose figures a page shows when somebody points at it or steps to it with the keyboard. */
export function readable(group: Group, words: string): Group {
  return group.append("g").attr("data-value", words.replace(/\s+/g, " "));
}
