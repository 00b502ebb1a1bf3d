import type { Paint } from "../../frame/index.ts";

export interface ShapeStyle {
  fill?: Paint | "none";
  stroke?: Paint;
  width?: number;
  dash?: readonly number[];
  /** 0..1, of the whole shape. */
  opacity?: number;
}

export interface LetterStyle {
  size?: number;
  bold?: boolean;
  fill?: Paint;
  anchor?: "start" | "middle" | "end";
}

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/**
 * What the line is drawn with. One drawing serves the moving picture (canvas) and the picture that is saved (SVG): both
 * pens take the same strokes. Lengths in pixels, colours by role.
 */
export interface Pen {
  /** A path in SVG's notation, moved to (x, y) and enlarged. */
  shape(path: string, x: number, y: number, style: ShapeStyle, enlarge?: number): void;
  rect(box: Box, style: ShapeStyle, radius?: number): void;
  text(x: number, y: number, content: string, style?: LetterStyle): void;
}
