import { select } from "d3";
import type { ChartContext } from "./chartContext.ts";
import type { Defs, Group, Svg } from "./selections.ts";
import { CHART_CLASS, chartStyleSheet, FONT_FAMILY, type Paint, paint, type ThemeName } from "./theme.ts";
import { wrapText } from "./wrapText.ts";

export const TEXT_SIZE = 11;
export const LINE_HEIGHT = 14;
const TITLE_SIZE = 15;
const SUBTITLE_SIZE = 12;
const MARGIN = 12;

/** Words every chart carries: a heading, what to see, what is drawn in which unit, the finding for those who cannot see it. */
export interface ChartWords {
  title: string;
  /** One line that says what to look for; "" draws none. */
  caption: string;
  subtitle: string;
  /** Text alternative: says what the picture shows. */
  description: string;
}

/** An empty picture with its words in place: draw into `body` from `top` down, then call `finish` with the lower edge. */
export interface ChartFrame {
  svg: Svg;
  defs: Defs;
  body: Group;
  theme: ThemeName;
  width: number;
  /** First free pixel below the headings. */
  top: number;
  left: number;
  right: number;
  colour: (role: Paint) => string;
  id: (name: string) => string;
  finish: (bottom: number) => SVGSVGElement;
}

export function chartFrame(words: ChartWords, context: ChartContext): ChartFrame {
  const theme = context.theme ?? "auto";
  const width = context.width ?? 760;
  const id = (name: string) => `${context.idPrefix ?? "chart"}-${name}`;
  const colour = (role: Paint) => paint(theme, role);
  const svg = rootElement(context.document, width, id);
  svg.append("title").attr("id", id("title")).text(words.title);
  svg.append("desc").attr("id", id("desc")).text(words.description);
  if (theme === "auto" && (context.styleInside ?? true)) svg.append("style").text(chartStyleSheet());
  const defs = svg.append("defs");
  const paper = svg.append("rect").attr("width", width).attr("fill", colour("paper"));
  const body = svg.append("g").attr("fill", colour("ink")).attr("font-size", TEXT_SIZE);
  const top = drawHeading(body, words, width, colour);
  const finish = (bottom: number) => {
    const height = Math.ceil(bottom + MARGIN);
    svg.attr("height", height).attr("viewBox", `0 0 ${width} ${height}`);
    paper.attr("height", height);
    return svg.node()!;
  };
  return { svg, defs, body, theme, width, top, left: MARGIN, right: width - MARGIN, colour, id, finish };
}

function rootElement(document: Document, width: number, id: (name: string) => string): Svg {
  const element = document.createElementNS("http://www.w3.org/2000/svg", "svg") as SVGSVGElement;
  return select(element)
    .attr("class", CHART_CLASS)
    .attr("role", "img")
    .attr("aria-labelledby", `${id("title")} ${id("desc")}`)
    .attr("width", width)
    .attr("font-family", FONT_FAMILY) as Svg;
}

function drawHeading(body: Group, words: ChartWords, width: number, colour: (role: Paint) => string): number {
  const room = width - 2 * MARGIN;
  let y = MARGIN + 4;
  for (const line of wrapText(words.title, room, TITLE_SIZE, 2, true)) {
    y += 12;
    body
      .append("text")
      .attr("x", MARGIN)
      .attr("y", y)
      .attr("font-size", TITLE_SIZE)
      .attr("font-weight", 600)
      .text(line);
    y += 7;
  }
  const smaller = [
    ...wrapText(words.caption, room, SUBTITLE_SIZE, 2).map((line) => ({ line, paint: "ink" as const })),
    ...wrapText(words.subtitle, room, SUBTITLE_SIZE, 3).map((line) => ({ line, paint: "muted" as const })),
  ];
  for (const { line, paint: role } of smaller) {
    if (line === "") continue;
    y += 10;
    const text = body.append("text").attr("x", MARGIN).attr("y", y).attr("font-size", SUBTITLE_SIZE);
    text.attr("fill", colour(role)).text(line);
    y += 6;
  }
  return y + 10;
}

/** A chart with nothing to show says so instead of drawing an empty frame. */
export function emptyChart(words: ChartWords, reason: string, context: ChartContext): SVGSVGElement {
  const frame = chartFrame({ ...words, caption: "", subtitle: "", description: reason }, context);
  let y = frame.top;
  for (const line of wrapText(reason, frame.right - frame.left, 13, 4)) {
    y += 14;
    const text = frame.body.append("text").attr("x", frame.left).attr("y", y).attr("font-size", 13);
    text.attr("fill", frame.colour("muted")).text(line);
    y += 5;
  }
  return frame.finish(y);
}
