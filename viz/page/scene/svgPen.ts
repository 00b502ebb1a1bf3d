import { FONT_FAMILY, type Paint, paint, safeText, type ThemeName } from "../../frame/index.ts";
import type { Box, LetterStyle, Pen, ShapeStyle } from "./pen.ts";

const SPACE = "http://www.w3.org/2000/svg";

/** Draws the same strokes into an SVG group: for the picture that is saved, and for tests. */
export class SvgPen implements Pen {
  private readonly group: SVGGElement;
  private readonly theme: ThemeName;

  constructor(group: SVGGElement, theme: ThemeName) {
    this.group = group;
    this.theme = theme;
  }

  shape(path: string, x: number, y: number, style: ShapeStyle, enlarge = 1): void {
    const element = this.add("path", style);
    element.setAttribute("d", path);
    const scale = enlarge === 1 ? "" : `scale(${round(enlarge)})`;
    element.setAttribute("transform", `translate(${round(x)},${round(y)})${scale}`);
  }

  rect({ x, y, width, height }: Box, style: ShapeStyle, radius = 0): void {
    const element = this.add("rect", style);
    for (const [name, value] of Object.entries({ x, y, width, height })) element.setAttribute(name, round(value));
    if (radius > 0) element.setAttribute("rx", round(radius));
  }

  text(x: number, y: number, content: string, style: LetterStyle = {}): void {
    const element = this.group.ownerDocument.createElementNS(SPACE, "text");
    element.setAttribute("x", round(x));
    element.setAttribute("y", round(y));
    element.setAttribute("font-size", String(style.size ?? 12));
    element.setAttribute("font-family", FONT_FAMILY);
    if (style.bold) element.setAttribute("font-weight", "600");
    if (style.anchor && style.anchor !== "start") element.setAttribute("text-anchor", style.anchor);
    element.setAttribute("fill", this.colour(style.fill ?? "ink"));
    element.textContent = safeText(content);
    this.group.appendChild(element);
  }

  private add(name: "path" | "rect", { fill = "none", stroke, width = 1, dash, opacity = 1 }: ShapeStyle): SVGElement {
    const element = this.group.ownerDocument.createElementNS(SPACE, name);
    element.setAttribute("fill", fill === "none" ? "none" : this.colour(fill));
    if (stroke !== undefined) {
      element.setAttribute("stroke", this.colour(stroke));
      element.setAttribute("stroke-width", String(width));
    }
    if (dash !== undefined && dash.length > 0) element.setAttribute("stroke-dasharray", dash.join(" "));
    if (opacity !== 1) element.setAttribute("opacity", String(opacity));
    this.group.appendChild(element);
    return element as SVGElement;
  }

  private colour(role: Paint): string {
    return paint(this.theme, role);
  }
}

function round(value: number): string {
  return String(Math.round(value * 100) / 100);
}
