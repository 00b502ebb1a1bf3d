import type { RailStretch, RailUse, Spot, WorkPlace } from "./layout.ts";
import type { RailPiece, Tables } from "./railLine.ts";

/** A room that the rail goes through, metres. */
export interface RailRoom {
  name: string;
  /** In line order; a way stands in the room that heads leave. */
  pieces: RailPiece[];
  tables: Tables[];
  /** Clear width for people to pass. */
  aisle: number;
  /** Floor that the people in it need at least. */
  minSquareMetres: number;
  /** Kept free at the left for what brings heads here: the crate conveyor. */
  strip: number;
}

export interface RailFigures {
  /** Of all the rooms, clear. */
  depth: number;
  wall: number;
  /** Width kept free for what hangs; depth of a work place; length of a place at a table. */
  product: number;
  place: number;
  position: number;
}

export interface LaidRail {
  /** The rooms side by side, the first one from x = 0, y from 0 to the depth. */
  rooms: { name: string; x: number; width: number }[];
  rail: RailStretch[];
  workPlaces: WorkPlace[];
  /** Where the rail goes through walls. */
  openings: { from: string; to: string | null; x: number; y: number }[];
}

const TABLE = 0.8;
const MIN_ROOM = 3;
const NOTHING = 1e-9;

/**
 * Lays the rail to and fro through rooms that stand side by side: upright lanes joined at their ends, people on the right of each lane, an aisle
 * beyond them. Positions stand on straight stretches only, so the rail may have to be longer than the plan's lengths together; what is added is
 * a stretch of its own ("joins"). Lengths of all other stretches are kept to the last digit of the sum.
 */
export function layRail(rooms: readonly RailRoom[], figures: RailFigures): LaidRail {
  const laying = new Laying(rooms, figures);
  for (const [index, room] of rooms.entries()) laying.fill(room, index);
  return laying.laid;
}

class Laying {
  readonly laid: LaidRail = { rooms: [], rail: [], workPlaces: [], openings: [] };
  private readonly rooms: readonly RailRoom[];
  private readonly figures: RailFigures;
  private at: Spot = { x: 0, y: 0 };
  private down = true;
  /** Left of the way over to the next lane; 0 on a lane. */
  private across = 0;
  private room = "";
  private edge = 0;
  private spacing = 0;

  constructor(rooms: readonly RailRoom[], figures: RailFigures) {
    this.rooms = rooms;
    this.figures = figures;
  }

  fill(room: RailRoom, index: number): void {
    if (index === 0) this.begin(room);
    const own = room.pieces;
    for (const [number, piece] of own.entries()) {
      if (number === own.length - 1 && piece.use === "way") break;
      if (piece.use === "positions") this.position(piece);
      else this.stretch(piece.stage, piece.use, this.forward(piece.metres));
    }
    const last = own.at(-1);
    this.leave(room, { index, way: last?.use === "way" ? last : null });
  }

  private begin(room: RailRoom): void {
    this.enter(room, 0);
    this.at = { x: this.firstLane(room), y: this.edge };
    this.down = true;
  }

  private enter(room: RailRoom, x: number): void {
    const { product, place } = this.figures;
    this.room = room.name;
    this.edge = product / 2 + room.aisle;
    this.spacing = product + place + room.aisle;
    this.laid.rooms.push({ name: room.name, x, width: 0 });
  }

  private firstLane({ aisle, strip }: RailRoom): number {
    return this.laid.rooms.at(-1)!.x + strip + aisle + this.figures.product / 2;
  }

  private get end(): number {
    return this.down ? this.figures.depth - this.edge : this.edge;
  }

  private get left(): number {
    return Math.abs(this.end - this.at.y);
  }

  /** Goes on for so many metres, round as many bends as need be; the broken line that was gone. */
  private forward(metres: number): Spot[] {
    const points = [this.at];
    let rest = metres;
    while (rest > NOTHING) {
      if (this.across === 0 && this.left <= NOTHING) this.across = this.spacing;
      const step = Math.min(rest, this.across > 0 ? this.across : this.left);
      this.step(step);
      rest -= step;
      points.push(this.at);
    }
    return points;
  }

  private step(metres: number): void {
    const { x, y } = this.at;
    if (this.across > 0) {
      this.at = { x: x + metres, y };
      this.across = Math.max(0, this.across - metres);
      if (this.across > NOTHING) return;
      this.across = 0;
      this.down = !this.down;
    } else this.at = { x, y: y + (this.down ? metres : -metres) };
  }

  private position({ stage, metres, machine, straightMetres }: RailPiece): void {
    const { product, place } = this.figures;
    this.join(stage, this.across);
    const clear = product / 2;
    const run = this.figures.depth - 2 * this.edge - clear;
    const straight = straightMetres === undefined || straightMetres > run ? metres : straightMetres;
    if (this.left < straight + clear - NOTHING) this.join(stage, this.left + this.spacing);
    const points = this.forward(metres);
    this.stretch(stage, "positions", points);
    const [from, to] = [points[0]!, points.at(-1)!];
    const x = from.x + (machine ? -product / 2 : product / 2);
    this.laid.workPlaces.push({
      ...{ stage, room: this.room, machine, x, y: Math.min(from.y, to.y) },
      ...{ width: machine ? product + place : place, depth: metres },
    });
  }

  private join(stage: string, metres: number): void {
    if (metres > NOTHING) this.stretch(stage, "joins", this.forward(metres));
  }

  private stretch(stage: string, use: RailUse, points: Spot[]): void {
    const metres = lengthOf(points);
    if (metres > NOTHING) this.laid.rail.push({ stage, room: this.room, use, metres, points });
  }

  /** Out of the room to the right and into the next one, or up to the wall where there is none. */
  private leave(room: RailRoom, { index, way }: { index: number; way: RailPiece | null }): void {
    const stage = way?.stage ?? room.pieces.at(-1)?.stage ?? room.name;
    const { product, place, wall } = this.figures;
    const next = this.rooms[index + 1];
    this.join(stage, this.across);
    const clear = Math.min(product / 2, this.left);
    const strip = this.tableStrip(room);
    const right = product / 2 + place + room.aisle + strip;
    const own = this.laid.rooms.at(-1)!;
    const wide = Math.max(right, Math.max(MIN_ROOM, room.minSquareMetres / this.figures.depth) - (this.at.x - own.x));
    const planned = way?.metres ?? 0;
    // What is left of a long way is laid where there are lanes for it: in the next room, else in this one.
    const toWall = this.forward(next === undefined ? Math.max(clear, planned - wide) : clear);
    const turn = this.forward(this.across);
    const exit = this.at;
    own.width = exit.x + wide - own.x;
    const wallSpot = { x: own.x + own.width, y: exit.y };
    this.addTables(room, { x: exit.x + right - strip, exitY: exit.y });
    this.laid.openings.push({ from: room.name, to: next?.name ?? null, x: wallSpot.x + wall / 2, y: exit.y });
    let points = [...toWall, ...turn, wallSpot];
    if (next !== undefined) {
      this.enter(next, wallSpot.x + wall);
      this.at = { x: this.firstLane(next), y: Math.min(Math.max(exit.y, this.edge), this.figures.depth - this.edge) };
      this.down = this.at.y <= this.figures.depth / 2;
      points = [...points, { x: this.at.x, y: exit.y }, this.at];
      points = [...points, ...this.forward(Math.max(0, planned - lengthOf(points)))];
    }
    this.way(stage, points, planned);
  }

  /** The plan's part of it, then what had to be added. */
  private way(stage: string, points: Spot[], planned: number): void {
    const line = points.filter((spot, index) => index === 0 || !same(spot, points[index - 1]!));
    const [first, second] = cut(line, planned);
    this.stretch(stage, "way", first);
    this.stretch(stage, "joins", second);
  }

  private tableStrip({ tables, aisle }: RailRoom): number {
    const count = tables.reduce((sum, { positions }) => sum + positions, 0);
    return Math.ceil(count / this.tablesInColumn()) * (TABLE + this.figures.place + aisle);
  }

  /** Beside the way out there is no table. */
  private tablesInColumn(): number {
    const { depth, product, position } = this.figures;
    return Math.max(1, Math.floor((depth - 2 * this.edge - product - position) / position));
  }

  private addTables({ tables, aisle, name }: RailRoom, { x, exitY }: { x: number; exitY: number }): void {
    const { product, place, position } = this.figures;
    const width = TABLE + place;
    const spots: Spot[] = [];
    const count = tables.reduce((sum, { positions }) => sum + positions, 0);
    for (let column = 0; spots.length < count; column++)
      for (let row = 0; row < this.tablesInColumn() && spots.length < count; row++) {
        const y = this.edge + row * position;
        const beyond = y + position > exitY - product / 2 ? product + position : 0;
        spots.push({ x: x + column * (width + aisle), y: y + beyond });
      }
    for (const { stage, positions, machine } of tables)
      for (const { x, y } of spots.splice(0, positions))
        this.laid.workPlaces.push({ stage, room: name, machine, x, y, width, depth: position });
  }
}

function same(a: Spot, b: Spot): boolean {
  return Math.abs(a.x - b.x) < NOTHING && Math.abs(a.y - b.y) < NOTHING;
}

/** Length of a broken line. */
export function lengthOf(points: readonly Spot[]): number {
  return points
    .slice(1)
    .reduce((sum, { x, y }, index) => sum + Math.hypot(x - points[index]!.x, y - points[index]!.y), 0);
}

/** The broken line up to so many metres, and the rest of it. */
function cut(points: readonly Spot[], metres: number): [Spot[], Spot[]] {
  const first: Spot[] = [points[0]!];
  let rest = metres;
  for (let index = 1; index < points.length; index++) {
    const [from, to] = [points[index - 1]!, points[index]!];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (rest >= length - NOTHING) {
      first.push(to);
      rest -= length;
      continue;
    }
    const share = rest / length;
    const here = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
    return [
      [...first, here],
      [here, ...points.slice(index)],
    ];
  }
  return [first, []];
}
