import { select } from "d3";
import { drawText, LINE_HEIGHT, TEXT_SIZE } from "./drawText.ts";
import type { Defs, Group, Svg } from "./selections.ts";
import { CHART_CLASS, chartStyleSheet, FONT_FAMILY, type Paint, paint, type ThemeName } from "./theme.ts";
import { wrapText } from "./wrapText.ts";

const TITLE_SIZE = 15;
const SUBTITLE_SIZE = 12;
const MARGIN = 12;
/** Lines that words above and below may take: where the picture is narrow they take as many as they need. */
const LINES = { title: 2, caption: 2, subtitle: 3, note: 4 };
const NARROW_LINES = { title: 6, caption: 8, subtitle: 16, note: 24 };

/** Pixels. A narrower picture has its words above and below its marks, where a wider one has them beside. */
const MIN_WIDE = 560;

/** What a chart needs from outside its data. Nothing is read from globals, so one code draws in browser, server and tests. */
export interface ChartContext {
  document: Document;
  /** Default `auto`. */
  theme?: ThemeName;
  /** Width in pixels, default 760, at least 320. Below 560 words stand above and below the marks instead of beside them. */
  width?: number;
  /** Prefix of every id inside the picture; must differ between the charts of one page. Default `chart`. */
  idPrefix?: string;
  /** Put the style sheet of the theme `auto` inside the picture (default). A page that carries it once says false. */
  styleInside?: boolean;
}

/** Words every chart carries: a heading, what to see, what is drawn in which unit, the finding for those who cannot see it. */
export interface ChartWords {
  title: string;
  /** One line that says what to look for; "" draws none. */
  caption: string;
  subtitle: string;
  /** Text alternative: says what the picture shows. */
  description: string;
}

/** An empty picture with its words in place: draw into `body` from `top` down, then call `finish` with the lower edge and what is left to say. */
export interface ChartFrame {
  svg: Svg;
  defs: Defs;
  body: Group;
  theme: ThemeName;
  width: number;
  /** There is no room for words beside the marks: they stand above and below. */
  narrow: boolean;
  /** First free pixel below the headings. */
  top: number;
  left: number;
  right: number;
  colour: (role: Paint) => string;
  id: (name: string) => string;
  /** Sets the height. Notes stand below `bottom`, each in up to four lines (more in a narrow picture); "" is none. */
  finish: (bottom: number, ...notes: readonly string[]) => SVGSVGElement;
}

export function chartFrame(words: ChartWords, context: ChartContext): ChartFrame {
  const theme = context.theme ?? "auto";
  const width = context.width ?? 760;
  const narrow = width < MIN_WIDE;
  const id = (name: string) => `${context.idPrefix ?? "chart"}-${name}`;
  const colour = (role: Paint) => paint(theme, role);
  const svg = rootElement(context.document, width, id);
  svg.append("title").attr("id", id("title")).text(words.title);
  svg.append("desc").attr("id", id("desc")).text(words.description);
  if (theme === "auto" && (context.styleInside ?? true)) svg.append("style").text(chartStyleSheet());
  const defs = svg.append("defs");
  const paper = svg.append("rect").attr("width", width).attr("fill", colour("paper"));
  const body = svg.append("g").attr("fill", colour("ink")).attr("font-size", TEXT_SIZE);
  // An axis's name may take two lines more there.
  const top = drawHeading(body, words, { width, most: linesOf(narrow) }, colour) + (narrow ? LINE_HEIGHT : 0);
  const finish = (bottom: number, ...notes: readonly string[]) => {
    let end = bottom;
    for (const line of notes.flatMap((note) => wrapText(note, width - 2 * MARGIN, TEXT_SIZE, linesOf(narrow).note))) {
      if (line === "") continue;
      end += LINE_HEIGHT;
      drawText(body, MARGIN, end, line, { fill: colour("muted") });
    }
    const height = Math.ceil(end + MARGIN);
    svg.attr("height", height).attr("viewBox", `0 0 ${width} ${height}`);
    paper.attr("height", height);
    return svg.node()!;
  };
  return { svg, defs, body, theme, width, narrow, top, left: MARGIN, right: width - MARGIN, colour, id, finish };
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

function linesOf(narrow: boolean): typeof LINES {
  return narrow ? NARROW_LINES : LINES;
}

function drawHeading(
  body: Group,
  words: ChartWords,
  { width, most }: { width: number; most: typeof LINES },
  colour: (role: Paint) => string,
): number {
  const room = width - 2 * MARGIN;
  let y = MARGIN + 4;
  for (const line of wrapText(words.title, room, TITLE_SIZE, most.title, true)) {
    y += 12;
    drawText(body, MARGIN, y, line, { size: TITLE_SIZE, bold: true });
    y += 7;
  }
  const smaller = [
    ...wrapText(words.caption, room, SUBTITLE_SIZE, most.caption).map((line) => ({ line, paint: "ink" as const })),
    ...wrapText(words.subtitle, room, SUBTITLE_SIZE, most.subtitle).map((line) => ({ line, paint: "muted" as const })),
  ];
  for (const { line, paint: role } of smaller) {
    if (line === "") continue;
    y += 10;
    drawText(body, MARGIN, y, line, { size: SUBTITLE_SIZE, fill: colour(role) });
    y += 6;
  }
  return y + 10;
}

/** A chart with nothing to show says so instead of drawing an empty frame. */
export function emptyChart(words: ChartWords, reason: string, context: ChartContext): SVGSVGElement {
  const frame = chartFrame({ ...words, caption: "", subtitle: "", description: reason }, context);
  let y = frame.top;
  for (const line of wrapText(reason, frame.right - frame.left, 13, linesOf(frame.narrow).note)) {
    y += 14;
    drawText(frame.body, frame.left, y, line, { size: 13, fill: frame.colour("muted") });
    y += 5;
  }
  return frame.finish(y);
}
