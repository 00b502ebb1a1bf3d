import { FONT_FAMILY, type Paint, themeColours } from "../../frame/index.ts";
import type { Box, LetterStyle, Pen, ShapeStyle } from "./pen.ts";

const paths = new Map<string, Path2D>();
/** Paths with figures in them would pile up; the glyphs that every frame needs are far fewer. */
const MAX_PATHS = 2000;

/** Draws on a canvas of `ratio` device pixels to one of ours, in the colours of a fixed theme. */
export class CanvasPen implements Pen {
  private readonly context: CanvasRenderingContext2D;
  private readonly ratio: number;
  private readonly colours: Record<Paint, string>;

  constructor(context: CanvasRenderingContext2D, ratio: number, theme: "light" | "dark") {
    this.context = context;
    this.ratio = ratio;
    this.colours = themeColours(theme);
  }

  shape(path: string, x: number, y: number, style: ShapeStyle, enlarge = 1): void {
    const { context, ratio } = this;
    context.setTransform(ratio * enlarge, 0, 0, ratio * enlarge, ratio * x, ratio * y);
    this.paint(style, path2d(path));
  }

  rect({ x, y, width, height }: Box, style: ShapeStyle, radius = 0): void {
    const { context, ratio } = this;
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.beginPath();
    if (radius === 0) context.rect(x, y, width, height);
    else context.roundRect(x, y, width, height, radius);
    this.paint(style, null);
  }

  text(x: number, y: number, content: string, style: LetterStyle = {}): void {
    const { context, ratio } = this;
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.font = `${style.bold ? 600 : 400} ${style.size ?? 12}px ${FONT_FAMILY}`;
    context.textAlign = style.anchor === "middle" ? "center" : (style.anchor ?? "start");
    context.fillStyle = this.colours[style.fill ?? "ink"];
    context.globalAlpha = 1;
    context.fillText(content, x, y);
  }

  private paint({ fill = "none", stroke, width = 1, dash = [], opacity = 1 }: ShapeStyle, path: Path2D | null): void {
    const { context, colours } = this;
    context.globalAlpha = opacity;
    if (fill !== "none") {
      context.fillStyle = colours[fill];
      if (path === null) context.fill();
      else context.fill(path);
    }
    if (stroke === undefined) return;
    context.strokeStyle = colours[stroke];
    context.lineWidth = width;
    context.setLineDash(dash as number[]);
    if (path === null) context.stroke();
    else context.stroke(path);
  }
}

function path2d(path: string): Path2D {
  const known = paths.get(path);
  if (known !== undefined) return known;
  if (paths.size > MAX_PATHS) paths.clear();
  const made = new Path2D(path);
  paths.set(path, made);
  return made;
}
