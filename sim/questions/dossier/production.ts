import { CRATE_STEP_NAMES, type Dwell, type LineRoom, type Plan, siteFigure } from "../../asked/plan/index.ts";
import type { ChillerFloor, FloorItem, LayoutDoor, LayoutRoom, RoomKind, WorkPlace } from "./layout.ts";
import { dispatchKilograms, type LayoutNeeds, peopleInRoom } from "./layoutNeeds.ts";
import { type LaidRail, layRail, type RailRoom } from "./layRail.ts";
import { passageMetres, workRoomSquareMetres } from "./passages.ts";
import type { RailLine, Tables } from "./railLine.ts";

/** The rooms that the product goes through, side by side from dirty to clean, and what stands in them; x from the left wall's inner face, y from the upper one's. */
export interface Production {
  rooms: LayoutRoom[];
  items: FloorItem[];
  laid: LaidRail;
  workPlaces: WorkPlace[];
  doors: LayoutDoor[];
  chiller: ChillerFloor | null;
  /** From the first inner face to the last. */
  width: number;
}

const KIND: Record<LineRoom, RoomKind> = {
  "live animals": "live side",
  kill: "unclean side",
  skinning: "unclean side",
  evisceration: "clean side",
  chilling: "cold room",
  "cutting and packing": "clean side",
};
const NAME: Record<LineRoom, string> = {
  "live animals": "hanging",
  kill: "kill",
  skinning: "skinning",
  evisceration: "evisceration",
  chilling: "chilling",
  "cutting and packing": "cutting and packing",
};

const MIN_WIDTH = 3;
/** Between stacks of one row, metres; width of a crate conveyor with the way beside it. */
const GAP = 0.1;
const CONVEYOR = 1;
const DISPATCH = "dispatch";
const LAIRAGE = "lairage";
const TABLE_DEPTH = 1.8;

interface Asked {
  plan: Plan;
  line: RailLine;
  needs: LayoutNeeds;
  depth: number;
}

/** Lays out the row of production rooms for one depth. */
export function production(asked: Asked): Production {
  const row = new Row(asked);
  row.lairage();
  row.railRooms();
  for (const chiller of asked.line.chillers) row.chiller(chiller);
  row.packing();
  row.dispatch();
  return row.made;
}

class Row {
  readonly made: Production;
  private readonly asked: Asked;
  private readonly wall: number;
  /** Left inner face of the next room. */
  private x = 0;
  private before: string | null = null;

  constructor(asked: Asked) {
    this.asked = asked;
    this.wall = siteFigure(asked.plan, "rooms.wall");
    const laid = { rooms: [], rail: [], workPlaces: [], openings: [] };
    this.made = { rooms: [], items: [], laid, workPlaces: [], doors: [], chiller: null, width: 0 };
  }

  lairage(): void {
    const { plan, needs, depth } = this.asked;
    if (needs.crates === null) return;
    const figure = (key: Parameters<typeof siteFigure>[1]) => siteFigure(plan, key);
    const [along, wide, aisle] = [figure("rooms.crateLength"), figure("rooms.crateWidth"), figure("rooms.stackAisle")];
    const high = Math.max(1, Math.floor(figure("rooms.cratesInStack")));
    const stacks = Math.ceil(needs.crates.lairage / high);
    const inColumn = Math.max(1, Math.floor((depth - 2 * aisle + GAP) / (wide + GAP)));
    const columns = Math.ceil(stacks / inColumn);
    let x = aisle;
    for (let column = 0; column < columns; column++) {
      const count = Math.min(inColumn, stacks - column * inColumn);
      for (let stack = 0; stack < count; stack++)
        this.made.items.push({
          ...{ room: LAIRAGE, what: "crate stack", x, y: aisle + stack * (wide + GAP), width: along, depth: wide },
          holds: Math.min(high, needs.crates.lairage - (column * inColumn + stack) * high),
        });
      x += along + (column % 2 === 1 || column === columns - 1 ? aisle : 0);
    }
    this.room(LAIRAGE, "live side", Math.max(MIN_WIDTH, x), {
      lineRoom: "live animals",
      why: `${needs.crates.lairage} crates in ${stacks} stacks of ${high}, ${metres(along)} x ${metres(wide)} each, rows two deep between aisles of ${metres(aisle)}`,
      people: this.people((name) => crateStepsBefore(plan).includes(name)),
    });
  }

  railRooms(): void {
    const { plan, line, depth } = this.asked;
    const rooms = railRoomsOf(line, (room) => this.peopleOn(room), this.asked.needs.crates !== null);
    if (rooms.length === 0) return;
    const laid = layRail(
      rooms.map(({ room }) => room),
      {
        ...{ depth, wall: this.wall, product: siteFigure(plan, "line.product"), place: siteFigure(plan, "line.depth") },
        position: siteFigure(plan, "line.position"),
      },
    );
    const from = this.x;
    this.made.laid = shifted(laid, from);
    this.made.workPlaces.push(...this.made.laid.workPlaces);
    for (const [index, { name, width }] of laid.rooms.entries()) {
      const { lineRoom, room } = rooms[index]!;
      const rail = laid.rail
        .filter((stretch) => stretch.room === name)
        .reduce((sum, stretch) => sum + stretch.metres, 0);
      const people = this.peopleOn(lineRoom);
      this.room(name, KIND[lineRoom], width, {
        ...{ lineRoom, people },
        why: `${metres(rail)} of rail in lanes, work places ${metres(siteFigure(plan, "line.depth"))} deep, aisles of ${metres(room.aisle)} (ASR A1.8 for ${people} people); no less than ${Math.round(room.minSquareMetres)} m² (8 for the first person, 6 for each other: ASR A1.2, from memory)`,
      });
      if (index === 0 && this.asked.needs.crates !== null) this.conveyor(name);
    }
  }

  /** Crates come from lairage along the first lane and go down to the washer. */
  private conveyor(room: string): void {
    const own = this.made.rooms.at(-1)!;
    this.made.items.push({
      ...{
        room,
        what: "crate conveyor",
        x: own.x + GAP,
        y: GAP,
        width: CONVEYOR - 2 * GAP,
        depth: own.depth - 2 * GAP,
      },
      holds: this.asked.needs.crates!.atHanging,
    });
  }

  chiller(stage: Dwell): void {
    const { plan, needs, depth } = this.asked;
    const figure = (key: Parameters<typeof siteFigure>[1]) => siteFigure(plan, key);
    const [pitch, spacing] = [figure("rooms.hookPitch"), figure("rooms.hookRails")];
    const together = Math.max(1, Math.floor(figure("rooms.railsTogether")));
    const hooks = needs.hooks.get(stage.name)!;
    const aisle = passageMetres(0);
    const length = depth - 2 * aisle;
    const perRail = Math.max(1, Math.floor(length / pitch));
    const rails = Math.max(1, Math.ceil(hooks / perRail));
    const aisles = Math.ceil(rails / together) + 1;
    let x = aisle;
    for (let rail = 0; rail < rails; rail++) {
      this.made.items.push({
        ...{ room: stage.name, what: "chiller rail", x: this.x + x, y: aisle, width: spacing, depth: length },
        holds: Math.min(perRail, hooks - rail * perRail),
      });
      x += spacing + ((rail + 1) % together === 0 || rail === rails - 1 ? aisle : 0);
    }
    const width = Math.max(MIN_WIDTH, x);
    this.room(stage.name, "cold room", width, {
      ...{ lineRoom: "chilling", people: 0 },
      why: `${hooks} hooks of ${stage.headsPerHook} every ${metres(pitch)} on ${rails} rails ${metres(spacing)} apart, ${together} between two aisles of ${metres(aisle)} (ASR A1.8, up to 5 people)`,
    });
    const floor = width * depth;
    const sum = this.made.chiller ?? {
      hooks: 0,
      hooksDrawn: 0,
      rails: 0,
      aisles: 0,
      squareMetres: 0,
      hooksPerSquareMetre: 0,
    };
    const total = { hooks: sum.hooks + hooks, squareMetres: sum.squareMetres + floor };
    this.made.chiller = {
      ...{ ...total, hooksDrawn: sum.hooksDrawn + hooks, rails: sum.rails + rails, aisles: sum.aisles + aisles },
      hooksPerSquareMetre: total.hooks / total.squareMetres,
    };
  }

  packing(): void {
    const { plan, line, depth } = this.asked;
    const tables = line.tables.filter(({ room }) => room === "cutting and packing");
    const count = tables.reduce((sum, { positions }) => sum + positions, 0);
    if (count === 0) return;
    const each = siteFigure(plan, "rooms.packing");
    const position = siteFigure(plan, "line.position");
    const side = Math.max(Math.sqrt(each), position, TABLE_DEPTH);
    const inColumn = Math.max(1, Math.floor(depth / side));
    const columns = Math.ceil(count / inColumn);
    const people = this.peopleOn("cutting and packing");
    const width = Math.max(MIN_WIDTH, columns * side, workRoomSquareMetres(people) / depth);
    const spots = Array.from({ length: count }, (_, index) => ({
      x: this.x + Math.floor(index / inColumn) * side + (side - TABLE_DEPTH) / 2,
      y: (index % inColumn) * side + (side - position) / 2,
    }));
    const name = NAME["cutting and packing"];
    for (const { stage, positions, machine } of tables)
      for (const { x, y } of spots.splice(0, positions))
        this.made.workPlaces.push({ stage, room: name, machine, x, y, width: TABLE_DEPTH, depth: position });
    this.room(name, "clean side", width, {
      ...{ lineRoom: "cutting and packing", people },
      why: `${count} places of ${each} m²; meat at 4 °C needs the room at 12 °C or an equal effect (Regulation (EC) 853/2004, Annex III, Section II, Chapter V)`,
    });
  }

  dispatch(): void {
    const { plan, needs, depth } = this.asked;
    if (needs.carcassKilograms === 0) return;
    const kilograms = dispatchKilograms(plan, needs);
    const needed = kilograms / siteFigure(plan, "rooms.dispatchLoad");
    this.room(DISPATCH, "cold room", Math.max(MIN_WIDTH, needed / depth), {
      ...{ lineRoom: null, people: 0 },
      why: `${Math.round(kilograms)} kg, ${siteFigure(plan, "rooms.dispatchLoad")} kg on a square metre with aisles`,
    });
  }

  /** Puts the room to the right of the one before, with the way of the product between them. */
  private room(
    name: string,
    kind: RoomKind,
    width: number,
    rest: { lineRoom: LineRoom | null; people: number; why: string },
  ): void {
    const { depth } = this.asked;
    const squareMetres = width * depth;
    this.made.rooms.push({
      ...{ name, kind, x: this.x, y: 0, width, depth, squareMetres, neededSquareMetres: squareMetres },
      ...rest,
    });
    if (this.before !== null) this.opening(this.before, name);
    this.before = name;
    this.made.width = this.x + width;
    this.x += width + this.wall;
  }

  private opening(from: string, to: string): void {
    const rail = this.made.laid.openings.find((each) => each.from === from);
    this.made.doors.push({
      ...{ from, to, x: this.x - this.wall / 2, y: rail?.y ?? this.asked.depth / 2, upright: true },
      clearMetres: rail === undefined ? 1.6 : siteFigure(this.asked.plan, "line.product"),
      use: from === LAIRAGE ? "crates" : "product",
    });
  }

  private people(inRoom: (stage: string) => boolean): number {
    return peopleInRoom(this.asked.plan, inRoom);
  }

  private peopleOn(room: LineRoom): number {
    const { line } = this.asked;
    const stages = new Set(
      [...line.needs, ...line.tables].filter((each) => each.room === room).map(({ stage }) => stage),
    );
    return this.people((name) => stages.has(name));
  }
}

/** Steps on crates up to the hanging point. */
function crateStepsBefore({ liveHandling }: Plan): string[] {
  if (liveHandling === null) return [];
  const names = CRATE_STEP_NAMES[liveHandling.way];
  return [names.unloading, names.feeding];
}

/** The line's rooms in their order, each with its pieces; tables without a room of their own on the rail stand in the last one. */
function railRoomsOf(
  { pieces, tables }: RailLine,
  peopleOn: (room: LineRoom) => number,
  withCrates: boolean,
): { lineRoom: LineRoom; room: RailRoom }[] {
  const order = [...new Set(pieces.filter(({ use }) => use !== "way").map(({ room }) => room))];
  const beside = (lineRoom: LineRoom, index: number): Tables[] =>
    tables.filter(({ room }) => {
      if (room === lineRoom) return room !== "cutting and packing";
      return index === order.length - 1 && !order.includes(room) && room !== "cutting and packing";
    });
  return order.map((lineRoom, index) => ({
    lineRoom,
    room: {
      name: NAME[lineRoom] === "cutting and packing" ? "cutting, warm" : NAME[lineRoom],
      pieces: pieces.filter(({ room }) => room === lineRoom),
      tables: beside(lineRoom, index),
      aisle: passageMetres(peopleOn(lineRoom)),
      minSquareMetres: workRoomSquareMetres(peopleOn(lineRoom)),
      strip: index === 0 && withCrates ? CONVEYOR : 0,
    },
  }));
}

function shifted({ rooms, rail, workPlaces, openings }: LaidRail, by: number): LaidRail {
  const moved = <Thing extends { x: number }>(thing: Thing): Thing => ({ ...thing, x: thing.x + by });
  return {
    rooms: rooms.map(moved),
    rail: rail.map((stretch) => ({ ...stretch, points: stretch.points.map(moved) })),
    workPlaces: workPlaces.map(moved),
    openings: openings.map(moved),
  };
}

export function metres(value: number): string {
  return `${Number(value.toFixed(2))} m`;
}
