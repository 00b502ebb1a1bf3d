import { select } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { PlantLayout, RoomKind } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawText,
  FONT_FAMILY,
  type Group,
  isolated,
  type Paint,
  paint,
  type Svg,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import type { ChartTable } from "./chartTable.ts";
import { DOOR_PAINT, drawArrow, drawFloor, type FloorKey, type FloorStyle, ROOM_FILL } from "./floorDrawing.ts";

export const LAYOUT_CAUTION =
  "A schematic for talking, not for building: sizes follow the plan and assumed figures; no wall, drain, fire or escape rule was checked.";

const KINDS: Record<RoomKind, string> = {
  "live side": "live animals",
  "unclean side": "unclean side",
  "clean side": "clean side",
  "cold room": "cold room",
  "by-products": "by-products",
  people: "people",
  corridor: "corridor",
  services: "crates and services",
  yard: "yard",
};

function layoutWords(layout: PlantLayout): ChartWords {
  const { width, depth } = layout.building;
  const floor = layout.areas.at(-1)!.squareMetres;
  return {
    title: `Layout: ${formatDecimals(floor, 0)} m², ${formatDecimals(width, 0)} m x ${formatDecimals(depth, 0)} m`,
    caption:
      "Animals come in on the left, meat leaves on the right. People come from above, by-products and crates leave below.",
    subtitle: LAYOUT_CAUTION,
    description: `Floor plan of ${layout.rooms.length} rooms from dirty to clean: ${layout.rooms
      .filter(({ lineRoom }) => lineRoom !== null)
      .map(({ name }) => name)
      .join(", ")}.`,
  };
}

/** The layout as a picture of a report, as wide as that is; what has no room in it is named by number and letter below. */
export function layoutChart(layout: PlantLayout, context: ChartContext): SVGSVGElement {
  const frame = chartFrame(layoutWords(layout), context);
  // A telephone has room for the building alone.
  const bounds = frame.narrow ? layout.building : layout.bounds;
  const perMetre = (frame.right - frame.left) / bounds.width;
  const kinds = (Object.keys(KINDS) as RoomKind[]).filter((kind) => layout.rooms.some((room) => room.kind === kind));
  const fills = kinds.map((kind) => ({ name: KINDS[kind], fill: frame.colour(ROOM_FILL[kind]) }));
  const top = drawKey(frame, fills, frame.top) + 12;
  const style: FloorStyle = {
    ...{ perMetre, left: frame.left - bounds.x * perMetre, top: top - bounds.y * perMetre },
    ...{ textSize: 11, letterSize: 11, stroke: 0.8, colour: frame.colour },
  };
  const shown = frame.narrow ? withoutYard(layout) : layout;
  const key = drawFloor(frame.body, shown, style);
  const lower = top + bounds.depth * perMetre;
  const arrows = drawArrowKey(frame, lower + 16, style);
  const bar = drawScale(frame.body, { x: frame.left, y: arrows + 12, metres: barMetres(bounds.width), style });
  return frame.finish(bar, ...keyNotes(key));
}

function withoutYard(layout: PlantLayout): PlantLayout {
  const rooms = layout.rooms.filter(({ kind }) => kind !== "yard");
  const isIn = (name: string | null) => rooms.some((room) => room.name === name);
  return {
    ...layout,
    rooms,
    items: layout.items.filter(({ room }) => isIn(room)),
    doors: layout.doors.filter(({ from, to }) => (from === null || isIn(from)) && (to === null || isIn(to))),
  };
}

/** What goes through the doors, on as many lines as it takes; returns the lower edge. */
function drawArrowKey({ body, left, right }: ChartFrame, top: number, style: FloorStyle): number {
  let [x, y] = [left, top];
  for (const use of Object.keys(DOOR_PAINT) as (keyof typeof DOOR_PAINT)[]) {
    const width = 26 + textWidth(use, style.textSize) + 14;
    if (x > left && x + width > right) [x, y] = [left, y + 16];
    drawArrow(body, use, { x: x + 10, y, turn: 0 }, { ...style, perMetre: 12 });
    drawText(body, x + 26, y + style.textSize * 0.35, use, { size: style.textSize });
    x += width;
  }
  return y;
}

/** Rooms and stations that have no room for their names, a few on a line. */
function keyNotes({ rooms, stages }: FloorKey): string[] {
  const named = rooms.map(
    ({ number, name, squareMetres }) => `${number} ${isolated(name)} ${Math.round(squareMetres)} m²`,
  );
  const lettered = stages.map(({ letter, name }) => `${letter} ${isolated(name)}`);
  return [...inLines("Rooms: ", named), ...inLines("Stations: ", lettered)];
}

function inLines(first: string, items: readonly string[]): string[] {
  const each = 8;
  const count = Math.ceil(items.length / each);
  return Array.from({ length: count }, (_, line) => {
    const part = items.slice(line * each, (line + 1) * each).join("; ");
    return line === 0 ? `${first}${part}` : part;
  });
}

/** A bar of about a fifth of the width: 1, 2, 5, 10, 20, 50 m. */
function barMetres(width: number): number {
  return [50, 20, 10, 5, 2].find((metres) => metres <= width / 4) ?? 1;
}

/** Five equal parts, black and white in turns, with its ends named; returns its lower edge. */
function drawScale(
  group: Group,
  { x, y, metres, style }: { x: number; y: number; metres: number; style: FloorStyle },
): number {
  const bar = group.append("g").attr("id", "scale-bar");
  const { perMetre, textSize: size } = style;
  const [part, height] = [(metres / 5) * perMetre, size * 0.4];
  for (let index = 0; index < 5; index++) {
    const rect = bar
      .append("rect")
      .attr("x", x + index * part)
      .attr("y", y)
      .attr("width", part)
      .attr("height", height);
    rect.attr("fill", style.colour(index % 2 === 0 ? "ink" : "paper")).attr("stroke", style.colour("ink"));
    rect
      .attr("stroke-width", style.stroke / 2)
      .append("title")
      .text(`${metres / 5} m`);
  }
  drawText(bar, x, y + height + size * 1.1, "0", { size });
  drawText(bar, x + 5 * part, y + height + size * 1.1, `${metres} m`, { size, anchor: "middle" });
  return y + height + size * 1.2;
}

/** The rooms as a table; numbers are those of the drawing. */
export function layoutTable({ rooms }: PlantLayout): ChartTable {
  const metres = (name: string) => ({ name, unit: "m" });
  return {
    columns: [
      { name: "number", unit: "" },
      { name: "room", unit: "" },
      { name: "floor", unit: "m²" },
      ...[metres("width"), metres("depth")],
      { name: "people", unit: "" },
      { name: "worked out from", unit: "" },
    ],
    rows: rooms.map(({ name, squareMetres, width, depth, people, why }, index) => [
      ...[index + 1, isolated(name), squareMetres, width, depth],
      ...[people === 0 ? null : people, isolated(why)],
    ]),
  };
}

/** Sheets of ISO 216, landscape, in millimetres. */
const SHEETS: readonly (readonly [name: string, width: number, height: number])[] = [
  ["A3", 420, 297],
  ["A2", 594, 420],
  ["A1", 841, 594],
  ["A0", 1189, 841],
];
/** At 1:100 ten millimetres of paper are a metre of the plant. */
const MM_PER_METRE = 10;
const MARGIN = 10;
/** A sheet that would be emptier than this is cut to the drawing. */
const LEAST_FILLED = 0.65;
const FOOT = 46;

export interface LayoutSheet {
  /** "A1", or "own size" where none of them is filled by two thirds, or the plant is larger than A0. */
  sheet: string;
  widthMillimetres: number;
  heightMillimetres: number;
  svg: SVGSVGElement;
}

/**
 * The layout at 1:100, in millimetres, on the smallest sheet that holds it: one unit of the picture is one millimetre of paper. Colours are those
 * of print, without style sheets, so that drawing programs read it.
 */
export function layoutSheet(layout: PlantLayout, document: Document): LayoutSheet {
  const { bounds } = layout;
  const need = [bounds.width * MM_PER_METRE + 2 * MARGIN, bounds.depth * MM_PER_METRE + 2 * MARGIN + FOOT] as const;
  const own = ["own size", Math.max(420, Math.ceil(need[0])), Math.ceil(need[1])] as const;
  const [sheet, width, height] = SHEETS.find(([, wide, high]) => fits(need, [wide, high])) ?? own;
  const svg = select(document.createElementNS("http://www.w3.org/2000/svg", "svg") as SVGSVGElement) as Svg;
  svg.attr("width", `${width}mm`).attr("height", `${height}mm`).attr("viewBox", `0 0 ${width} ${height}`);
  svg
    .attr("font-family", FONT_FAMILY)
    .append("title")
    .text(`Layout of ${isolated(layout.name)}, 1:100`);
  const colour = (role: Paint) => paint("print", role);
  svg.append("rect").attr("width", width).attr("height", height).attr("fill", colour("paper"));
  const left = (width - bounds.width * MM_PER_METRE) / 2 - bounds.x * MM_PER_METRE;
  const style: FloorStyle = {
    ...{ perMetre: MM_PER_METRE, left, top: MARGIN - bounds.y * MM_PER_METRE },
    ...{ textSize: 3, letterSize: 2.55, stroke: 0.35, colour },
  };
  const key = drawFloor(svg.append("g").attr("id", "plan"), layout, style);
  drawFoot(svg.append("g").attr("id", "foot"), layout, { sheet, width, y: height - FOOT, style, key });
  return { sheet, widthMillimetres: width, heightMillimetres: height, svg: svg.node()! };
}

function fits([width, height]: readonly [number, number], [wide, high]: readonly [number, number]): boolean {
  return width <= wide && height <= high && width * height >= LEAST_FILLED * wide * high;
}

interface Foot {
  sheet: string;
  width: number;
  y: number;
  style: FloorStyle;
  key: FloorKey;
}

/** Title, scale and key at the foot of the sheet. */
function drawFoot(group: Group, layout: PlantLayout, { sheet, width, y, style, key }: Foot): void {
  const rule = group
    .append("line")
    .attr("x1", MARGIN)
    .attr("x2", width - MARGIN)
    .attr("y1", y)
    .attr("y2", y);
  rule.attr("stroke", style.colour("ink")).attr("stroke-width", style.stroke);
  const room = width / 2 - 2 * MARGIN;
  let line = y + 7;
  const title = `${isolated(layout.name)}: layout 1:100${sheet === "own size" ? "" : ` on ${sheet}`}`;
  for (const words of wrapText(title, room, 5, 2, true)) {
    drawText(group, MARGIN, line, words, { size: 5, bold: true });
    line += 6;
  }
  const floor = layout.areas.at(-1)!.squareMetres;
  const told = [
    LAYOUT_CAUTION,
    `Building ${formatDecimals(layout.building.width, 1)} x ${formatDecimals(layout.building.depth, 1)} m, ${formatDecimals(floor, 0)} m². Every length of the rail is drawn as the plan has it; dashed rail joins bends and walls.`,
  ];
  for (const words of told.flatMap((each) => wrapText(each, room, 3, 3))) {
    drawText(group, MARGIN, line, words, { size: 3 });
    line += 4.2;
  }
  drawScale(group, { x: MARGIN, y: y + FOOT - 14, metres: 10, style });
  const lower = drawSheetKey(group, { x: width / 2, y: y + 6, right: width - MARGIN, style });
  const names = key.rooms.map(({ number, name }) => `${number} ${isolated(name)}`).join("; ");
  for (const [index, words] of (names === "" ? [] : wrapText(names, width / 2 - MARGIN, 3, 3)).entries())
    drawText(group, width / 2, lower + 6 + index * 4.2, words, { size: 3 });
}

/** Samples of fills and arrows in rows; returns their lower edge. */
function drawSheetKey(
  group: Group,
  { x: left, y: top, right, style }: { x: number; y: number; right: number; style: FloorStyle },
): number {
  let [x, y] = [left, top];
  const next = (name: string, sample: (x: number, y: number) => void): void => {
    const width = 12 + textWidth(name, 3) + 5;
    if (x > left && x + width > right) [x, y] = [left, y + 6];
    sample(x, y);
    drawText(group, x + 11, y + 3.2, name, { size: 3 });
    x += width;
  };
  for (const kind of Object.keys(KINDS) as RoomKind[])
    next(KINDS[kind], (at, line) => {
      const rect = group.append("rect").attr("x", at).attr("y", line).attr("width", 9).attr("height", 4);
      rect.attr("fill", style.colour(ROOM_FILL[kind])).attr("stroke", style.colour("muted"));
      rect.attr("stroke-width", style.stroke / 2);
    });
  [x, y] = [left, y + 8];
  const small = { ...style, perMetre: 5 };
  for (const use of Object.keys(DOOR_PAINT) as (keyof typeof DOOR_PAINT)[])
    next(use, (at, line) => drawArrow(group, use, { x: at + 4.5, y: line + 2, turn: 0 }, small));
  return y + 4;
}
