import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { group, linkVertical, sum } from "d3";
import { type ChartFrame, chartFrame, drawText, type Group } from "../../viz/frame/index.ts";
import { serverDocument, svgText } from "../../viz/index.ts";
import { FILES, IMPORTS, roomOf } from "./importGraph.ts";

/**
 * Draws the house from the imports into `house.svg` beside this file: `npx tsx tests/structure/drawHouse.ts`. Columns are
 * wings, rows are floors: a room stands one above the highest room that it imports.
 */
const STORED = join(import.meta.dirname, "house.svg");

interface Room {
  /** "sim/asked/plan", "sim/cli", "viz/words". */
  path: string;
  wing: string;
  name: string;
  files: number;
  floor: number;
}

/** Room `from` imports `count` times from room `to`. */
interface Arrow {
  from: Room;
  to: Room;
  count: number;
}

const WIDTH = 900;
const COLUMN = 104;
const BOX = { width: 92, height: 32 };
/** Between two rooms on one floor, and between two floors. */
const GAP = { room: 5, floor: 22 };
/** For the arrows along a box's edge. */
const EDGE = BOX.width - 16;

const WINGS = ["text", "maths", "asked", "day", "days", "questions", "cli", "viz"];

/** The room of a file, "" for a door at the top; the contract is a room of its own, since all of viz/ reads sim/ through it. */
function pathOf(file: string): string {
  if (file === "viz/contract.ts") return "viz/contract";
  const room = roomOf(file);
  return room === "" ? "" : `${file.split("/")[0]}/${room}`;
}

function countsBetweenRooms(): Map<string, Map<string, number>> {
  const counts = new Map<string, Map<string, number>>();
  for (const { file, target } of [...IMPORTS.values()].flat()) {
    const [from, to] = [pathOf(file), pathOf(target)];
    if (from === "" || to === "" || from === to) continue;
    const row = counts.get(from) ?? new Map<string, number>();
    counts.set(from, row.set(to, (row.get(to) ?? 0) + 1));
  }
  return counts;
}

function houseOf(): { rooms: Room[]; arrows: Arrow[] } {
  const counts = countsBetweenRooms();
  const floors = new Map<string, number>();
  const floorOf = (path: string): number => {
    const known = floors.get(path);
    if (known !== undefined) return known;
    const below = [...(counts.get(path)?.keys() ?? [])].map(floorOf);
    const floor = below.length === 0 ? 0 : 1 + Math.max(...below);
    floors.set(path, floor);
    return floor;
  };
  const rooms = [...group(FILES, pathOf)].flatMap(([path, files]): Room[] => {
    if (path === "") return [];
    const [top, ...names] = path.split("/") as [string, ...string[]];
    const wing = top === "viz" ? "viz" : names[0]!;
    return [{ path, wing, name: names.at(-1)!, files: files.length, floor: floorOf(path) }];
  });
  const byPath = new Map(rooms.map((room) => [room.path, room]));
  const uses = (room: Room) => sum([...counts.values()], (row) => row.get(room.path) ?? 0);
  // Of rooms on one floor of a wing the one that most lean on stands uppermost, where its arrows are seen.
  rooms.sort((a, b) => uses(b) - uses(a));
  const arrows = [...counts].flatMap(([from, row]) =>
    [...row].map(([to, count]) => ({ from: byPath.get(from)!, to: byPath.get(to)!, count })),
  );
  return { rooms, arrows };
}

/** Middle of the upper edge of each room's box; rooms of one wing on one floor stand above each other. */
function placesOf(rooms: readonly Room[], left: number, top: number) {
  const places = new Map<Room, { x: number; y: number }>();
  const byFloor = group(rooms, ({ floor }) => floor);
  let y = top;
  for (let floor = Math.max(...byFloor.keys()); floor >= 0; floor--) {
    const byWing = group(byFloor.get(floor) ?? [], ({ wing }) => wing);
    const most = Math.max(...[...byWing.values()].map((stack) => stack.length));
    for (const [wing, stack] of byWing) {
      const x = left + (WINGS.indexOf(wing) + 0.5) * COLUMN;
      stack.forEach((room, index) => {
        places.set(room, { x, y: y + index * (BOX.height + GAP.room) });
      });
    }
    y += most * (BOX.height + GAP.room) - GAP.room + GAP.floor;
  }
  return { places, bottom: y - GAP.floor };
}

type Places = ReturnType<typeof placesOf>["places"];

/** Where along a box's edge each arrow stands, so that neighbours do not cross: in the order of their other ends. */
function portsOf(arrows: readonly Arrow[], places: Places, end: "from" | "to"): Map<Arrow, number> {
  const other = end === "from" ? "to" : "from";
  const ports = new Map<Arrow, number>();
  for (const [room, own] of group(arrows, (arrow) => arrow[end])) {
    const ordered = [...own].sort((a, b) => places.get(a[other])!.x - places.get(b[other])!.x);
    const x = places.get(room)!.x - EDGE / 2;
    ordered.forEach((arrow, index) => {
      ports.set(arrow, x + ((index + 0.5) * EDGE) / ordered.length);
    });
  }
  return ports;
}

function thickness({ count }: Arrow): number {
  return Math.round(6 * Math.sqrt(count)) / 10;
}

function drawArrows(frame: ChartFrame, arrows: readonly Arrow[], places: Places): void {
  const [starts, ends] = [portsOf(arrows, places, "from"), portsOf(arrows, places, "to")];
  const layer = frame.body.append("g");
  for (const arrow of [...arrows].sort((a, b) => a.count - b.count)) {
    const source = [starts.get(arrow)!, places.get(arrow.from)!.y + BOX.height] as [number, number];
    const target = [ends.get(arrow)!, places.get(arrow.to)!.y - 5] as [number, number];
    const path = linkVertical()({ source, target })!.replace(/\d+\.\d+/g, (text) => Number(text).toFixed(1));
    const colour = frame.colour(arrow.from.wing === "viz" ? "series1" : "line");
    const line = layer.append("path").attr("d", path).attr("fill", "none").attr("stroke", colour);
    line.attr("stroke-width", thickness(arrow)).attr("stroke-opacity", arrow.count < 5 ? 0.35 : 0.6);
    const half = 1.6 + thickness(arrow) / 2;
    const head = layer.append("path").attr("d", `M${target[0].toFixed(1)},${target[1] + 5}l-${half},-6h${2 * half}Z`);
    head.attr("fill", colour).attr("fill-opacity", 0.8);
  }
}

function drawRoom(layer: Group, frame: ChartFrame, room: Room, { x, y }: { x: number; y: number }): void {
  const box = layer
    .append("rect")
    .attr("x", x - BOX.width / 2)
    .attr("y", y);
  box.attr("width", BOX.width).attr("height", BOX.height).attr("rx", 3);
  box.attr("fill", frame.colour("paper")).attr("stroke", frame.colour("ink")).attr("stroke-width", 1);
  drawText(layer, x, y + 13, room.name, { anchor: "middle", bold: true });
  const files = room.files === 1 ? "1 file" : `${room.files} files`;
  drawText(layer, x, y + 26, files, { anchor: "middle", fill: frame.colour("muted") });
}

/** A pale column for each wing with its name and its files. */
function drawWings(frame: ChartFrame, rooms: readonly Room[], left: number, bottom: number): void {
  WINGS.forEach((wing, index) => {
    const x = left + index * COLUMN;
    const files = sum(rooms, (room) => (room.wing === wing ? room.files : 0));
    const column = frame.body
      .append("rect")
      .attr("x", x + 2)
      .attr("y", frame.top)
      .attr("width", COLUMN - 4);
    column.attr("height", bottom - frame.top).attr("fill", frame.colour("pause"));
    const name = wing === "viz" ? "viz" : `sim/${wing}`;
    drawText(frame.body, x + COLUMN / 2, frame.top + 15, name, { anchor: "middle", bold: true, size: 12 });
    drawText(frame.body, x + COLUMN / 2, frame.top + 29, `${files} files`, {
      anchor: "middle",
      fill: frame.colour("muted"),
    });
  });
}

export function houseSvg(): string {
  const { rooms, arrows } = houseOf();
  const imports = sum(arrows, ({ count }) => count);
  const words = {
    title: "What each room imports",
    caption: "A room stands above all that it imports. The thicker the arrow, the more imports",
    subtitle: `${rooms.length} rooms in ${WINGS.length} wings; ${imports} imports from room to room; the doors sim/index.ts and viz/index.ts are left out`,
    description: `Floors from the ground: ${[
      ...group(
        [...rooms].sort((a, b) => a.floor - b.floor),
        ({ floor }) => floor,
      ).values(),
    ]
      .map((floor) => floor.map(({ path }) => path).join(", "))
      .join("; ")}.`,
  };
  const frame = chartFrame(words, { document: serverDocument(), width: WIDTH, idPrefix: "house" });
  const left = (WIDTH - WINGS.length * COLUMN) / 2;
  const { places, bottom } = placesOf(rooms, left, frame.top + 46);
  drawWings(frame, rooms, left, bottom + 10);
  drawArrows(frame, arrows, places);
  const layer = frame.body.append("g");
  for (const room of rooms) drawRoom(layer, frame, room, places.get(room)!);
  return `${svgText(frame.finish(bottom + 10))}\n`;
}

if (process.argv[1] === import.meta.filename) writeFileSync(STORED, houseSvg());
