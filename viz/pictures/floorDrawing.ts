import type { LayoutDoor, LayoutRoom, PlantLayout, RailStretch, RoomKind } from "../contract.ts";
import { drawText, type Group, isolated, type Paint, textWidth, wrapText } from "../frame/index.ts";

/** How a floor is drawn: units of the picture for a metre, where the layout's corner lies, and what text and lines measure. */
export interface FloorStyle {
  perMetre: number;
  left: number;
  top: number;
  textSize: number;
  /** Of the letters at stations. */
  letterSize: number;
  stroke: number;
  colour: (role: Paint) => string;
}

/** What did not fit into the drawing and has to stand below it. */
export interface FloorKey {
  rooms: { number: number; name: string; squareMetres: number }[];
  stages: { letter: string; name: string }[];
}

export const ROOM_FILL: Record<RoomKind, Paint> = {
  "live side": "fill1",
  "unclean side": "fill2",
  "clean side": "fill0",
  "cold room": "fill3",
  "by-products": "fill5",
  people: "base",
  corridor: "paper",
  services: "fill4",
  yard: "pause",
};

export const DOOR_PAINT: Record<LayoutDoor["use"], Paint> = {
  product: "series0",
  people: "series3",
  "by-products": "series1",
  crates: "series2",
  goods: "muted",
};
/** Each use has a stroke of its own, so that colour is never alone. */
const DOOR_DASH: Record<LayoutDoor["use"], string> = {
  product: "",
  people: "2 1",
  "by-products": "1 1",
  crates: "4 1",
  goods: "3 1 1 1",
};

/** A label has so much of the upper edge of a room in which the rail runs; metres. */
const LABEL_STRIP = 1.15;
/** Of the aisle beside a work place that its name may reach into; metres. */
const AISLE = 1.3;
/** Beside the rail, of the name of places where heads stay; metres. */
const STAY_WIDTH = 1.9;
/** Lines of text stand so far apart, by their size. */
const LEADING = 1.25;

/** Draws rooms, rail, work places and doors; every room and rail stretch is one element with its name as title, so that a program can read it back. */
export function drawFloor(group: Group, layout: PlantLayout, style: FloorStyle): FloorKey {
  const building = group.append("g").attr("id", "building");
  box(building, layout.building, style).attr("fill", style.colour("rule")).append("title").text("building");
  const rooms = group.append("g").attr("id", "rooms");
  for (const room of layout.rooms) drawRoom(rooms, room, style);
  drawItems(group, layout, style);
  drawRail(group, layout, style);
  const doors = group.append("g").attr("id", "doors");
  for (const door of layout.doors) drawDoor(doors, door, layout, style);
  return drawLabels(group, layout, style);
}

interface Box {
  x: number;
  y: number;
  width: number;
  depth: number;
}

function box(group: Group, { x, y, width, depth }: Box, style: FloorStyle) {
  return group
    .append("rect")
    .attr("x", exact(style.left + x * style.perMetre))
    .attr("y", exact(style.top + y * style.perMetre))
    .attr("width", exact(width * style.perMetre))
    .attr("height", exact(depth * style.perMetre));
}

/** A thousandth of a unit: of a millimetre at 1:100, a tenth of a millimetre in the plant. */
function exact(value: number): number {
  return Math.round(value * 1000) / 1000;
}

function drawRoom(group: Group, room: LayoutRoom, style: FloorStyle): void {
  const rect = box(group, room, style).attr("fill", style.colour(ROOM_FILL[room.kind]));
  if (room.kind === "yard") rect.attr("stroke", style.colour("rule")).attr("stroke-width", style.stroke);
  rect.append("title").text(isolated(room.name));
}

function drawItems(group: Group, { items, workPlaces }: PlantLayout, style: FloorStyle): void {
  const floor = group.append("g").attr("id", "items").attr("stroke", style.colour("muted"));
  floor.attr("stroke-width", style.stroke / 2).attr("fill", "none");
  for (const item of items) {
    if (item.what === "chiller rail") {
      const x = exact(style.left + (item.x + item.width / 2) * style.perMetre);
      const [from, to] = [item.y, item.y + item.depth].map((y) => exact(style.top + y * style.perMetre));
      const line = floor.append("line").attr("x1", x).attr("x2", x).attr("y1", from!).attr("y2", to!);
      line.append("title").text(`${item.what}, ${item.holds} hooks`);
      continue;
    }
    const rect = box(floor, item, style).attr("fill", style.colour("paper"));
    if (item.what === "lorry") rect.attr("stroke-dasharray", dashes("3 1", style));
    rect.append("title").text(item.what);
  }
  const places = group.append("g").attr("id", "work-places").attr("stroke", style.colour("ink"));
  places.attr("stroke-width", style.stroke / 2);
  for (const place of workPlaces) {
    const rect = box(places, place, style).attr("fill", style.colour(place.machine ? "working" : "paper"));
    rect.append("title").text(`${isolated(place.stage)}${place.machine ? ", machine" : ""}`);
  }
}

function drawRail(group: Group, { rail }: PlantLayout, style: FloorStyle): void {
  const lines = group.append("g").attr("id", "rail").attr("fill", "none").attr("stroke", style.colour("line"));
  for (const stretch of rail) {
    const line = lines.append("polyline").attr("points", pointsOf(stretch, style));
    line.attr("stroke-width", style.stroke * (stretch.use === "positions" ? 2.5 : 1.5));
    if (stretch.use === "joins") line.attr("stroke-dasharray", dashes("3 2", style));
    line.append("title").text(`${isolated(stretch.stage)}, ${stretch.use}`);
  }
}

function pointsOf({ points }: RailStretch, { left, top, perMetre }: FloorStyle): string {
  return points.map(({ x, y }) => `${exact(left + x * perMetre)},${exact(top + y * perMetre)}`).join(" ");
}

function dashes(pattern: string, { stroke }: FloorStyle): string {
  return pattern
    .split(" ")
    .map((part) => exact(Number(part) * stroke * 2))
    .join(" ");
}

/** A gap in the wall, and an arrow in the direction in which it is mostly gone through. */
function drawDoor(group: Group, door: LayoutDoor, { rooms, wallMetres }: PlantLayout, style: FloorStyle): void {
  const { x, y, upright, clearMetres } = door;
  const [across, along] = upright ? [wallMetres, clearMetres] : [clearMetres, wallMetres];
  const gap = box(group, { x: x - across / 2, y: y - along / 2, width: across, depth: along }, style);
  gap.attr("fill", style.colour("paper"));
  gap.append("title").text(`${door.from ?? "outdoors"} to ${door.to ?? "outdoors"}, ${door.use}`);
  const turn = (upright ? 0 : 90) + (goesBack(door, rooms) ? 180 : 0);
  drawArrow(group, door.use, { x: style.left + x * style.perMetre, y: style.top + y * style.perMetre, turn }, style);
}

/** An arrow about its middle, as long as a step or as a letter is high. */
export function drawArrow(
  group: Group,
  use: LayoutDoor["use"],
  { x, y, turn }: { x: number; y: number; turn: number },
  style: FloorStyle,
): void {
  const half = Math.max(0.8 * style.perMetre, style.textSize * 0.5);
  const head = style.textSize * 0.35;
  const arrow = group.append("g").attr("transform", `translate(${exact(x)},${exact(y)}) rotate(${turn})`);
  const shaft = arrow
    .append("line")
    .attr("x1", exact(-half))
    .attr("x2", exact(half - head));
  shaft.attr("stroke", style.colour(DOOR_PAINT[use])).attr("stroke-width", style.stroke * 1.5);
  if (DOOR_DASH[use] !== "") shaft.attr("stroke-dasharray", dashes(DOOR_DASH[use], style));
  const tip = `M${exact(half)},0l${exact(-head * 1.6)},${exact(-head)}v${exact(2 * head)}z`;
  arrow.append("path").attr("d", tip).attr("fill", style.colour(DOOR_PAINT[use]));
}

/** Up the sheet, or to the left. */
function goesBack({ from, to, x, y, upright }: LayoutDoor, rooms: readonly LayoutRoom[]): boolean {
  const named = rooms.find(({ name }) => name === (from ?? to))!;
  const beyond = upright ? named.x + named.width / 2 > x : named.y + named.depth / 2 > y;
  return from === null ? !beyond : beyond;
}

function drawLabels(group: Group, layout: PlantLayout, style: FloorStyle): FloorKey {
  const key: FloorKey = { rooms: [], stages: [] };
  const labels = group.append("g").attr("id", "labels").attr("fill", style.colour("ink"));
  labels.attr("font-size", style.textSize);
  for (const [index, room] of layout.rooms.entries()) {
    const busy = [...layout.workPlaces, ...layout.items].some((each) => each.room === room.name);
    if (!labelRoom(labels, room, { number: index + 1, busy, style }))
      key.rooms.push({ number: index + 1, name: room.name, squareMetres: room.squareMetres });
  }
  for (const [index, stage] of [...new Set(layout.workPlaces.map((place) => place.stage))].entries())
    key.stages.push({ letter: labelStage(labels, layout, { stage, index, style }), name: stage });
  for (const stage of layout.stages) labelPlaces(labels, stage, style);
  return key;
}

/** Places where heads stay stand along the rail without anybody: their name stands beside its middle. */
function labelPlaces(
  group: Group,
  { stage, positions, places, middle }: PlantLayout["stages"][number],
  style: FloorStyle,
): void {
  const { perMetre, letterSize: size } = style;
  if (positions > 0 || places === 0) return;
  const lines = fitting(`${isolated(stage)}, ${places} places`, { width: STAY_WIDTH * perMetre, size, most: 3 });
  if (lines === null) return;
  const [x, y] = [style.left + middle.x * perMetre + size * 0.5, style.top + middle.y * perMetre];
  for (const [line, words] of lines.entries())
    drawText(group, x, y + (line + 1) * size * LEADING, words, { size, bold: true });
}

/** Name and floor where they fit, else the number alone; false where the name has to stand below. */
function labelRoom(
  group: Group,
  room: LayoutRoom,
  { number, busy, style }: { number: number; busy: boolean; style: FloorStyle },
): boolean {
  const { perMetre, textSize: size } = style;
  const pad = size * 0.35;
  const width = room.width * perMetre - 2 * pad;
  const depth = (busy ? Math.min(room.depth, LABEL_STRIP) : room.depth) * perMetre;
  const most = Math.floor((depth - pad) / (size * LEADING));
  const name = fitting(`${number} ${isolated(room.name)}`, { width, size, most });
  const shown = name ?? [String(number)];
  const floor = `${Math.round(room.squareMetres)} m²`;
  const withFloor = shown.length < most && textWidth(floor, size) <= width;
  const [x, y] = [style.left + room.x * perMetre + pad, style.top + room.y * perMetre + pad * 0.6];
  for (const [index, line] of [...shown, ...(withFloor ? [floor] : [])].entries())
    drawText(group, x, y + (index + 0.8) * size * LEADING, line, { size, bold: index < shown.length });
  return name !== null;
}

/** The text in lines that break between words only; null where it does not fit. */
function fitting(text: string, { width, size, most }: { width: number; size: number; most: number }): string[] | null {
  if (most < 1 || text.split(" ").some((word) => textWidth(word, size, true) > width)) return null;
  const lines = wrapText(text, width, size, most, true);
  return lines.at(-1)!.endsWith("…") ? null : lines;
}

/** The name at its work places where there is room for it, else a letter in the first one. */
function labelStage(
  group: Group,
  layout: PlantLayout,
  { stage, index, style }: { stage: string; index: number; style: FloorStyle },
): string {
  const letter = letterOf(index);
  const own = layout.workPlaces.filter((place) => place.stage === stage);
  const { perMetre } = style;
  const size = style.letterSize;
  const first = own[0]!;
  const beside = own.filter(({ x }) => Math.abs(x - first.x) < 0.01);
  const upper = Math.min(...beside.map(({ y }) => y));
  const depth = Math.max(...beside.map((each) => each.y + each.depth)) - upper;
  const y = style.top + upper * perMetre;
  const room = {
    width: (first.width + AISLE) * perMetre,
    size,
    most: Math.floor((depth * perMetre) / (size * LEADING)),
  };
  const name = fitting(`${letter} ${isolated(stage)}`, room);
  if (name === null && size > depth * perMetre + 2) return letter;
  // Letters of stations close to each other stand in turns on and beside them.
  const aside = name === null && index % 2 === 1 ? first.width * perMetre : 0;
  const x = style.left + first.x * perMetre + aside + size * 0.3;
  for (const [line, words] of (name ?? [letter]).entries())
    drawText(group, x, y + (line + 0.85) * size * LEADING, words, { size, bold: true });
  return letter;
}

/** a, b, ... z, aa, ab ... */
export function letterOf(index: number): string {
  const own = String.fromCharCode(97 + (index % 26));
  return index < 26 ? own : `${letterOf(Math.floor(index / 26) - 1)}${own}`;
}
