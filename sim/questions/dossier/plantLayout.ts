import { type Plan, siteFigure } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import type {
  AreaRow,
  FloorItem,
  LayoutDoor,
  LayoutRoom,
  PlantLayout,
  Rectangle,
  RoomKind,
  StageLength,
  WayCheck,
} from "./layout.ts";
import { ROOM_KINDS } from "./layout.ts";
import { dispatchKilograms, type LayoutNeeds, layoutNeeds } from "./layoutNeeds.ts";
import { doorMetres, passageMetres } from "./passages.ts";
import { metres, type Production, production } from "./production.ts";
import { type RailLine, railLine } from "./railLine.ts";
import { siteFiguresUsed } from "./siteFiguresUsed.ts";
import { walkChecks } from "./walks.ts";

/** Depths of the production rooms that are tried, metres. */
const DEPTHS = { from: 8, to: 60, step: 1 } as const;
/** Width by depth of a building that is cheap to roof and short to walk: common practice, no source. */
const ASPECT = 1.8;
/** How much a building of another shape counts as larger. */
const SHAPE = 0.25;
const MIN_BAND = 3.5;
const MIN_WIDTH = 1.8;
const YARD = 1;
/** From a door to the corner of the room, metres. */
const BESIDE = 0.6;
const ROUNDING = 1e-9;

/** A room of a band: what it needs, and how the rest is told. */
interface Wanted {
  name: string;
  kind: RoomKind;
  needed: number;
  why: string;
  people?: number;
}

/**
 * A schematic of the plant of a plan: rooms from dirty to clean side by side, people's rooms above them with a corridor for each side, by-products,
 * crates and services below, the rail with every place and position at its length. The depth of the rooms is the one that makes the smallest
 * and most compact building of those tried. `days` (at least one) say how heavy a day is, and how many lorries stand in the yard. Throws a
 * RangeError without a day. Metres; nothing random, so the same plan and days give the same drawing.
 *
 * @example plantLayout(plan, [runDay(compileLine(plan), { seed: "1", replication: 0 })])
 */
export function plantLayout(plan: Plan, days: readonly DayRecord[]): PlantLayout {
  if (days.length === 0) throw new RangeError("plantLayout: a layout needs a simulated day at least");
  const [line, needs] = [railLine(plan), layoutNeeds(plan, days)];
  let best: { drawn: Drawn; score: number } | null = null;
  for (let depth = DEPTHS.from; depth <= DEPTHS.to; depth += DEPTHS.step) {
    const drawn = drawnAt(plan, { line, needs, depth });
    const { width, depth: whole } = drawn.building;
    const score = width * whole * (1 + SHAPE * Math.abs(Math.log(width / whole / ASPECT)));
    if (best === null || score < best.score) best = { drawn, score };
  }
  return finished(plan, line, best!.drawn);
}

interface Drawn {
  building: Rectangle;
  bounds: Rectangle;
  rooms: LayoutRoom[];
  doors: LayoutDoor[];
  items: FloorItem[];
  row: Production;
}

function drawnAt(plan: Plan, asked: { line: RailLine; needs: LayoutNeeds; depth: number }): Drawn {
  const wall = siteFigure(plan, "rooms.wall");
  const narrow = production({ plan, ...asked });
  const row = widened(narrow, new Bands(plan, narrow, asked.needs).leastWidth);
  const width = row.width + 2 * wall;
  const bands = new Bands(plan, row, asked.needs);
  const top = bands.top();
  const corridors = bands.corridors(wall + top.depth + wall);
  const y = corridors[0]!.y + corridors[0]!.depth + wall;
  const down = <Thing extends { x: number; y: number }>(thing: Thing): Thing => ({
    ...thing,
    x: thing.x + wall,
    y: thing.y + y,
  });
  const bottom = bands.bottom(y + asked.depth + wall);
  const building = { x: 0, y: 0, width, depth: y + asked.depth + wall + bottom.depth + wall };
  const moved = {
    ...row,
    workPlaces: row.workPlaces.map(down),
    laid: {
      ...row.laid,
      rail: row.laid.rail.map((stretch) => ({ ...stretch, points: stretch.points.map(down) })),
    },
  };
  const rooms = [...top.rooms, ...corridors, ...row.rooms.map(down), ...bottom.rooms];
  const yard = yardOf(plan, { rooms, building, needs: asked.needs });
  const doors = [...row.doors.map(down), ...bands.doors(rooms)];
  return {
    ...{ building, rooms: [...rooms, ...yard.rooms], row: moved },
    doors: [...doors, ...yard.doors],
    items: [...row.items.map(down), ...bottom.items, ...yard.items],
    bounds: around([building, ...yard.rooms]),
  };
}

type Side = "unclean" | "clean";

/** The last room takes what a short line lacks. */
function widened(row: Production, least: number): Production {
  const last = row.rooms.at(-1);
  if (last === undefined || row.width >= least) return row;
  const width = last.width + least - row.width;
  const why = `${last.why}; widened for the rooms below`;
  const wider = { ...last, width, squareMetres: width * last.depth, why };
  return { ...row, rooms: [...row.rooms.slice(0, -1), wider], width: least };
}

/** The rows above and below the production rooms. */
class Bands {
  private readonly plan: Plan;
  private readonly row: Production;
  private readonly needs: LayoutNeeds;
  private readonly wall: number;
  /** Right inner face of the last room on the unclean side, from the building's corner; 0 where there is none. */
  private readonly border: number;
  private readonly right: number;

  constructor(plan: Plan, row: Production, needs: LayoutNeeds) {
    this.plan = plan;
    this.row = row;
    this.needs = needs;
    this.wall = siteFigure(plan, "rooms.wall");
    const last = row.rooms.findLast(({ kind }) => kind === "live side" || kind === "unclean side");
    this.border = last === undefined ? 0 : last.x + last.width + this.wall;
    this.right = row.width + this.wall;
  }

  /** Whether there is a clean side behind the unclean one. */
  private get isSplit(): boolean {
    return this.border > 0 && this.border < this.right - MIN_WIDTH;
  }

  /** Of the row, so that every room below it can be as wide as a door and a person beside it. */
  get leastWidth(): number {
    const { length } = this.wantedBelow();
    return length * MIN_WIDTH + (length - 1) * this.wall;
  }

  top(): { rooms: LayoutRoom[]; depth: number } {
    const left = this.border > 0 ? [this.store("unclean"), this.lock("unclean"), this.changing("unclean")] : [];
    const hasClean = this.isSplit || this.border === 0;
    const offices = [...this.offices(), this.store("clean")];
    const first = [...left, ...this.commonRooms(), ...(hasClean ? [this.changing("clean")] : offices)];
    const second = hasClean ? [this.lock("clean"), ...offices] : [];
    const sum = (list: readonly Wanted[]) => list.reduce((total, { needed }) => total + needed, 0);
    const natural = this.wall + ((this.right - this.wall) * sum(first)) / sum([...first, ...second]);
    const split = second.length === 0 ? this.right : Math.max(natural, this.border);
    return this.tiled(this.wall, MIN_BAND, [
      { list: first, from: this.wall, to: split },
      { list: second, from: split + this.wall, to: this.right },
    ]);
  }

  private lock(side: Side): Wanted {
    const why = "hands, boots and aprons are washed on the way in and out";
    return { name: `hygiene lock, ${side} side`, kind: "people", needed: 6, why };
  }

  private store(side: Side): Wanted {
    return { name: `cleaning store, ${side} side`, kind: "people", needed: 5, why: "tools of this side alone" };
  }

  private changing(side: Side): Wanted {
    const lockers = this.needs.lockers[side];
    const each = siteFigure(this.plan, "rooms.changing");
    return {
      ...{ name: `changing room, ${side} side`, kind: "people", needed: Math.max(8, lockers * each), people: lockers },
      why: `${lockers} lockers, people of all shifts, ${each} m² each`,
    };
  }

  private commonRooms(): Wanted[] {
    const each = siteFigure(this.plan, "rooms.canteen");
    const people = this.needs.shiftPeople;
    if (people === 0) return [];
    return [
      {
        ...{ name: "break room", kind: "people", needed: Math.max(6, people * each), people },
        why: `${people} people of the largest shift, ${each} m² each; at least 1 m² a person and 6 m² (ASR A4.2, from memory)`,
      },
    ];
  }

  private offices(): Wanted[] {
    const needed = siteFigure(this.plan, "rooms.office");
    return [
      {
        ...{ name: "official veterinarian, locked", kind: "people", needed },
        why: "a room that can be locked (Regulation (EC) 853/2004, Annex III, Section II, Chapter II 7)",
      },
      { name: "office", kind: "people", needed, why: "one office" },
    ];
  }

  corridors(y: number): LayoutRoom[] {
    const least = siteFigure(this.plan, "rooms.corridor");
    const depth = Math.max(least, passageMetres(this.needs.shiftPeople));
    const corridor = (name: string, x: number, to: number): LayoutRoom => ({
      ...{ name, kind: "corridor", lineRoom: null, x, y, width: to - x, depth, squareMetres: (to - x) * depth },
      ...{ neededSquareMetres: (to - x) * depth, people: this.needs.shiftPeople },
      why: `${metres(least)}, at least ${metres(passageMetres(this.needs.shiftPeople))} for ${this.needs.shiftPeople} people (ASR A1.8)`,
    });
    if (!this.isSplit)
      return [corridor(this.border > 0 ? "corridor, unclean side" : "corridor, clean side", this.wall, this.right)];
    return [
      corridor("corridor, unclean side", this.wall, this.border),
      corridor("corridor, clean side", this.border + this.wall, this.right),
    ];
  }

  bottom(y: number): { rooms: LayoutRoom[]; depth: number; items: FloorItem[] } {
    const wanted = this.wantedBelow();
    const { depth, rooms } = below(wanted, { row: this.row, wall: this.wall, y });
    return { depth, rooms, items: rooms.flatMap((room) => this.itemsOf(room)) };
  }

  /** The rooms of the lower row in their order. */
  private wantedBelow(): Below[] {
    const clean = (room: LayoutRoom) => room.lineRoom === "evisceration";
    return [
      ...this.crateRooms(),
      ...this.byProductRooms(3, ({ kind }) => kind === "unclean side"),
      ...this.byProductRooms(2, clean),
      ...this.lockedStores(clean),
      ...this.serviceRooms(),
    ];
  }

  private crateRooms(): Below[] {
    const { crates } = this.needs;
    if (crates === null) return [];
    const figure = (key: Parameters<typeof siteFigure>[1]) => siteFigure(this.plan, key);
    const stacks = Math.ceil(crates.ofLorry / Math.max(1, Math.floor(figure("rooms.cratesInStack"))));
    const clean = 2 * stacks * figure("rooms.crateLength") * figure("rooms.crateWidth");
    return [
      {
        ...{ name: "clean crates", kind: "services", needed: Math.max(6, clean), under: null },
        why: `the ${crates.ofLorry} crates of a lorry in ${stacks} stacks, and as much again to move them`,
      },
      ...(crates.washers > 0
        ? [
            {
              ...{ name: "crate washing", kind: "services" as const, needed: figure("rooms.washer") * crates.washers },
              under: ({ kind }: LayoutRoom) => kind === "live side",
              why: "crates are cleaned, washed and disinfected when they are empty (Regulation (EC) 853/2004, Annex III, Section II, Chapter I 3)",
            },
          ]
        : []),
    ];
  }

  private byProductRooms(category: number, under: Below["under"]): Below[] {
    const rows = this.needs.byProducts.filter((row) => (category === 3) === (row.category === 3));
    const containers = rows.reduce((sum, row) => sum + row.containers, 0);
    const each = siteFigure(this.plan, "rooms.container");
    if (containers === 0) return [];
    return [
      {
        ...{ name: byProductRoom(category), kind: "by-products", needed: Math.max(6, containers * each), under },
        why: `${containers} containers, ${each} m² each: ${rows.map((row) => `${row.name} ${row.containers}`).join(", ")}`,
      },
    ];
  }

  private lockedStores(under: Below["under"]): Below[] {
    const law = "853/2004, Annex III, Section II, Chapter II 5";
    return [
      {
        name: "unfit meat, locked",
        kind: "by-products",
        needed: 6,
        under,
        why: `a place that can be locked (Regulation (EC) ${law})`,
      },
      {
        name: "detained meat, locked",
        kind: "cold room",
        needed: 6,
        under,
        why: `a cold place that can be locked (Regulation (EC) ${law})`,
      },
    ];
  }

  private serviceRooms(): Below[] {
    const floor = this.row.rooms.reduce((sum, { squareMetres }) => sum + squareMetres, 0);
    const share = siteFigure(this.plan, "rooms.machineRoom");
    return [
      {
        ...{ name: "workshop", kind: "services", needed: 12, under: null },
        why: "who repairs has it here",
      },
      {
        ...{
          name: "refrigeration, hot water, air",
          kind: "services",
          needed: Math.max(10, share * floor),
          under: null,
        },
        why: `${Math.round(100 * share)} % of ${Math.round(floor)} m² of production rooms`,
      },
      {
        ...{ name: "packaging", kind: "services", needed: 12, why: "packaging is kept apart from meat" },
        under: ({ name, lineRoom }) => name === "dispatch" || lineRoom === "cutting and packing",
      },
    ];
  }

  private itemsOf(room: LayoutRoom): FloorItem[] {
    const rows = this.needs.byProducts.filter(({ category }) => byProductRoom(category) === room.name);
    const containers = rows.reduce((sum, row) => sum + row.containers, 0);
    return gridOf(room, { what: "container", width: 1.2, depth: 1, count: containers });
  }

  /** Rooms side by side over stretches of the band, shared out by what they need; the depth is the least that gives each of them that. */
  private tiled(
    y: number,
    least: number,
    groups: readonly { list: readonly Wanted[]; from: number; to: number }[],
  ): { rooms: LayoutRoom[]; depth: number } {
    const used = groups.filter(({ list }) => list.length > 0);
    let depth = least;
    for (const { list, from, to } of used) {
      const clear = to - from - (list.length - 1) * this.wall;
      depth = Math.max(depth, ...[shares(list, clear)].flat().map(({ needed, width }) => needed / width));
    }
    const rooms = used.flatMap(({ list, from, to }) => {
      let x = from;
      return shares(list, to - from - (list.length - 1) * this.wall).map(({ width, needed, ...wanted }) => {
        const room = { ...wanted, people: wanted.people ?? 0, lineRoom: null, x, y, width, depth };
        x += width + this.wall;
        return { ...room, squareMetres: width * depth, neededSquareMetres: needed };
      });
    });
    return { rooms, depth };
  }

  doors(rooms: readonly LayoutRoom[]): LayoutDoor[] {
    return doorsOf(rooms, { wall: this.wall, people: this.needs.shiftPeople });
  }
}

function byProductRoom(category: number): string {
  return category === 3 ? "by-products, category 3" : "by-products, category 2";
}

/** A room of the lower row, and which production rooms it has to have a wall with; null for any. */
interface Below extends Wanted {
  under: ((room: LayoutRoom) => boolean) | null;
}

/** Of a wall that two rooms must share for a door, metres. */
const SHARED_WALL = 1.8;
const HALVINGS = 40;
const MAX_BAND = 200;

/**
 * The lower row as shallow as can be: rooms in their order, each below a production room that it belongs to; what is left over between two of
 * them widens the left one. Where no depth makes that possible, they stand as they come.
 */
function below(
  wanted: readonly Below[],
  { row, wall, y }: { row: Production; wall: number; y: number },
): { rooms: LayoutRoom[]; depth: number } {
  const right = row.width + wall;
  const spans = wanted.map(({ under }) => {
    const own = under === null ? [] : row.rooms.filter(under);
    if (own.length === 0) return { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
    return { from: own[0]!.x + wall, to: own.at(-1)!.x + own.at(-1)!.width + wall };
  });
  const place = (depth: number, strict: boolean): number[] | null => {
    const lefts: number[] = [];
    let x = wall;
    for (const [index, { needed }] of wanted.entries()) {
      const width = Math.max(MIN_WIDTH, needed / depth);
      const { from, to } = spans[index]!;
      if (strict) x = Math.max(x, Math.min(from + SHARED_WALL, to) - width);
      if (strict && x > Math.max(to - SHARED_WALL, from)) return null;
      lefts.push(x);
      x += width + wall;
    }
    return x - wall > right + ROUNDING ? null : lefts;
  };
  const strict = place(MAX_BAND, true) !== null;
  let [low, high] = [MIN_BAND, MAX_BAND];
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (low + high) / 2;
    if (place(middle, strict) === null) low = middle;
    else high = middle;
  }
  const depth = place(MIN_BAND, strict) === null ? high : MIN_BAND;
  const lefts = place(depth, strict) ?? wanted.map((_, index) => wall + index * (MIN_WIDTH + wall));
  const rooms = wanted.map(({ under: _, needed, people = 0, ...rest }, index): LayoutRoom => {
    const x = index === 0 ? wall : lefts[index]!;
    const width = (lefts[index + 1] ?? right + wall) - wall - x;
    const size = { x, y, width, depth, squareMetres: width * depth, neededSquareMetres: needed };
    return { ...rest, people, lineRoom: null, ...size };
  });
  return { rooms, depth };
}

/** Widths in proportion to what each needs, none below the least width. */
function shares(list: readonly Wanted[], clear: number): (Wanted & { width: number })[] {
  const least = Math.min(MIN_WIDTH, clear / list.length);
  const narrow = new Set<Wanted>();
  for (;;) {
    const free = list.filter((each) => !narrow.has(each));
    const left = clear - narrow.size * least;
    const total = free.reduce((sum, { needed }) => sum + needed, 0);
    const slim = free.filter(({ needed }) => (needed / total) * left < least);
    if (slim.length === 0)
      return list.map((each) => ({ ...each, width: narrow.has(each) ? least : (each.needed / total) * left }));
    for (const each of slim) narrow.add(each);
  }
}

/** Kept free at the upper wall, for the door and the room's name; metres. */
const NAME_STRIP = 1.2;

/** As many as fit in rows, a hand's width from the walls. */
function gridOf(
  room: LayoutRoom,
  { what, width, depth, count }: { what: FloorItem["what"]; width: number; depth: number; count: number },
): FloorItem[] {
  const gap = 0.2;
  const columns = Math.max(1, Math.floor((room.width - gap) / (width + gap)));
  const rows = Math.max(0, Math.floor((room.depth - gap - NAME_STRIP) / (depth + gap)));
  return Array.from({ length: Math.min(count, columns * rows) }, (_, index) => ({
    ...{ room: room.name, what, width, depth, holds: 1 },
    x: room.x + gap + (index % columns) * (width + gap),
    y: room.y + NAME_STRIP + gap + Math.floor(index / columns) * (depth + gap),
  }));
}

/** People from the corridors, by-products down and out, crates to their washing; nothing else joins two sides. */
function doorsOf(rooms: readonly LayoutRoom[], { wall, people }: { wall: number; people: number }): LayoutDoor[] {
  const doors: LayoutDoor[] = [];
  const find = (name: string) => rooms.find((room) => room.name === name);
  const clearMetres = doorMetres(people);
  /** In the flat wall between two rooms, or to outdoors, in the middle of what they share. */
  const flat = (from: LayoutRoom, to: LayoutRoom | null, use: LayoutDoor["use"], clear = clearMetres): void => {
    const [upper, lower] = to !== null && to.y < from.y ? [to, from] : [from, to];
    const [left, right] = [Math.max(upper.x, lower?.x ?? 0), Math.min(end(upper), end(lower))];
    if (right - left < clear) return;
    const y = lower === null ? upper.y + upper.depth + wall / 2 : lower.y - wall / 2;
    // Away from the left corner, where names stand.
    const at = { x: Math.max((left + right) / 2, right - BESIDE - clear / 2), y };
    doors.push({ from: from.name, to: to?.name ?? null, ...at, upright: false, clearMetres: clear, use });
  };
  const beside = (from: LayoutRoom, to: LayoutRoom, use: LayoutDoor["use"]): void => {
    const x = from.x < to.x ? from.x + from.width + wall / 2 : from.x - wall / 2;
    const y = from.y + Math.max(from.depth / 2, from.depth - BESIDE - clearMetres / 2);
    doors.push({ from: from.name, to: to.name, x, y, upright: true, clearMetres, use });
  };
  const from = (one: LayoutRoom | undefined, other: LayoutRoom | undefined, use: LayoutDoor["use"]): void => {
    if (one !== undefined && other !== undefined) flat(one, other, use, 1.2);
  };
  const corridors = rooms.filter(({ kind }) => kind === "corridor");
  const bandAbove = rooms.filter(({ kind }) => kind === "people");
  for (const corridor of corridors) {
    for (const room of bandAbove) {
      const side = corridor.name.replace("corridor, ", "");
      const isLock = room.name === `hygiene lock, ${side}`;
      const isStore = room.name === `cleaning store, ${side}`;
      const isVet = room.name.startsWith("official veterinarian") && side === "clean side";
      if (isLock || isStore || isVet) flat(room, corridor, "people");
    }
    for (const room of rooms) if (isProduction(room) && isOver(corridor, room)) flat(corridor, room, "people");
  }
  for (const [index, room] of bandAbove.entries()) {
    const next = bandAbove[index + 1];
    const isChanging = room.name.startsWith("changing");
    if (isChanging || room.name === "office") outdoors(doors, room, { wall, clearMetres });
    if (next === undefined) continue;
    const names = [room.name, next.name];
    const joins =
      names.some((name) => name.startsWith("changing")) && !names.some((name) => name.startsWith("cleaning"));
    // On the way in: from the changing room through the lock.
    if (joins)
      beside(
        ...((room.name.startsWith("hygiene lock") ? [next, room] : [room, next]) as [LayoutRoom, LayoutRoom]),
        "people",
      );
  }
  const lowest = Math.max(...rooms.filter(isProduction).map(({ y }) => y));
  for (const room of rooms.filter(({ y }) => y > lowest)) {
    const above = rooms.filter((each) => isProduction(each) && shared(each, room) >= 1.2);
    const alongMost = (fits: (each: LayoutRoom) => boolean) =>
      above.filter(fits).toSorted((a, b) => shared(b, room) - shared(a, room))[0];
    const isClean = ({ kind, lineRoom }: LayoutRoom) => kind === "clean side" && lineRoom === "evisceration";
    const isUnclean = ({ kind }: LayoutRoom) => kind === "unclean side";
    if (room.name === "crate washing")
      from(
        alongMost(({ kind }) => kind === "live side"),
        room,
        "crates",
      );
    else if (room.name === byProductRoom(3))
      for (const each of above.filter(isUnclean)) from(each, room, "by-products");
    else if (room.kind === "by-products") from(alongMost(isClean) ?? alongMost(() => true), room, "by-products");
    else if (room.kind === "cold room") from(alongMost(isClean) ?? alongMost(() => true), room, "product");
    else if (room.name === "packaging")
      from(
        room,
        alongMost(({ kind }) => kind !== "live side"),
        "goods",
      );
    if (room.kind === "by-products") flat(room, null, "by-products", 1.6);
    if (room.kind === "services" && room.name !== "crate washing")
      flat(room, null, room.name === "clean crates" ? "crates" : "goods", 1.6);
  }
  const [washing, clean] = [find("crate washing"), find("clean crates")];
  if (washing !== undefined && clean !== undefined) {
    beside(washing, clean, "crates");
    doors.at(-1)!.clearMetres = 1.2;
  }
  return doors;
}

function outdoors(
  doors: LayoutDoor[],
  room: LayoutRoom,
  { wall, clearMetres }: { wall: number; clearMetres: number },
): void {
  const at = {
    x: Math.max(room.x + room.width / 2, room.x + room.width - BESIDE - clearMetres / 2),
    y: room.y - wall / 2,
  };
  doors.push({ from: null, to: room.name, ...at, upright: false, clearMetres, use: "people" });
}

function end(room: LayoutRoom | null): number {
  return room === null ? Number.POSITIVE_INFINITY : room.x + room.width;
}

function isProduction({ lineRoom, name }: LayoutRoom): boolean {
  return lineRoom !== null || name === "dispatch";
}

function isOver(upper: LayoutRoom, lower: LayoutRoom): boolean {
  return shared(upper, lower) > 0;
}

/** Of the flat wall between two rooms, metres. */
function shared(upper: LayoutRoom, lower: LayoutRoom): number {
  return Math.min(end(upper), end(lower)) - Math.max(upper.x, lower.x);
}

/** Places of the lorries: live animals on the left, meat on the right. */
function yardOf(
  plan: Plan,
  { rooms, building, needs }: { rooms: readonly LayoutRoom[]; building: Rectangle; needs: LayoutNeeds },
): { rooms: LayoutRoom[]; doors: LayoutDoor[]; items: FloorItem[] } {
  const [length, wide] = [siteFigure(plan, "rooms.lorryLength"), siteFigure(plan, "rooms.lorryWidth")];
  const found: ReturnType<typeof yardOf> = { rooms: [], doors: [], items: [] };
  const add = (name: string, inside: LayoutRoom, left: boolean, lorries: number, why: string): void => {
    const [width, depth] = [length + 2 * YARD, lorries * wide];
    const x = left ? building.x - width : building.x + building.width;
    const y = Math.max(0, Math.min(inside.y + (inside.depth - depth) / 2, building.depth - depth));
    const room: LayoutRoom = {
      ...{ name, kind: "yard", lineRoom: null, x, y, width, depth, squareMetres: width * depth },
      ...{ neededSquareMetres: width * depth, why, people: 0 },
    };
    found.rooms.push(room);
    for (let lorry = 0; lorry < lorries; lorry++)
      found.items.push({
        ...{
          room: name,
          what: "lorry",
          x: x + YARD,
          y: y + lorry * wide + (wide - 2.5) / 2,
          width: length,
          depth: 2.5,
          holds: 1,
        },
      });
    const door = { x: left ? building.x + siteFigure(plan, "rooms.wall") / 2 : x - siteFigure(plan, "rooms.wall") / 2 };
    const at = {
      ...door,
      y: Math.max(inside.y + 1, Math.min(y + depth / 2, inside.y + inside.depth - 1)),
      upright: true,
    };
    const way = left ? { from: name, to: inside.name } : { from: inside.name, to: name };
    found.doors.push({ ...way, ...at, clearMetres: 1.6, use: left ? "crates" : "product" });
  };
  const lairage = rooms.find(({ name }) => name === "lairage");
  if (lairage !== undefined)
    add(
      "live lorries, covered",
      lairage,
      true,
      needs.lorries,
      `most lorries at once in the simulated days: ${needs.lorries}; under cover (Regulation (EC) 853/2004, Annex III, Section II, Chapter II 1)`,
    );
  const dispatch = rooms.find(({ name }) => name === "dispatch");
  if (dispatch !== undefined)
    add("meat lorries", dispatch, false, meatLorries(plan, needs), "a place for each 6 t that stand in dispatch");
  return found;
}

const LORRY_KILOGRAMS = 6000;

function meatLorries(plan: Plan, needs: LayoutNeeds): number {
  return Math.max(1, Math.ceil(dispatchKilograms(plan, needs) / LORRY_KILOGRAMS));
}

function around(all: readonly Rectangle[]): Rectangle {
  const x = Math.min(...all.map((each) => each.x));
  const y = Math.min(...all.map((each) => each.y));
  const right = Math.max(...all.map((each) => each.x + each.width));
  const lower = Math.max(...all.map((each) => each.y + each.depth));
  return { x, y, width: right - x, depth: lower - y };
}

function finished(plan: Plan, line: RailLine, { row, ...drawn }: Drawn): PlantLayout {
  const { rail } = row.laid;
  const ways = line.ways.map((way) => wayCheck(way, line, rail));
  const walks = walkChecks(plan, { ...drawn, workPlaces: row.workPlaces });
  return {
    name: plan.name,
    wallMetres: siteFigure(plan, "rooms.wall"),
    ...drawn,
    rail,
    workPlaces: row.workPlaces,
    stages: line.needs.map((need): StageLength => {
      const own = rail.filter(({ stage, use }) => stage === need.stage && (use === "places" || use === "positions"));
      const plannedMetres = need.places * need.placeMetres + need.positions * need.positionMetres;
      const { room: lineRoom, ...rest } = need;
      return {
        ...{ ...rest, plannedMetres, drawnMetres: own.reduce((sum, each) => sum + each.metres, 0) },
        room: own[0]?.room ?? lineRoom,
        middle: own[Math.floor(own.length / 2)]?.points[0] ?? { x: 0, y: 0 },
      };
    }),
    ways,
    walks,
    chiller: row.chiller,
    areas: areasOf(drawn),
    findings: findingsOf(line, ways, walks),
    figures: siteFiguresUsed(plan),
  };
}

/** The stretch between the last place or position of the one and the first of the other. */
function wayCheck(way: RailLine["ways"][number], line: RailLine, rail: PlantLayout["rail"]): WayCheck {
  const isBody = ({ use }: PlantLayout["rail"][number]) => use === "places" || use === "positions";
  const ends = rail.findLastIndex((each) => each.stage === way.from && isBody(each));
  const begins = rail.findIndex((each) => each.stage === way.to && isBody(each));
  const drawnMetres = rail.reduce((sum, { stage, use, metres: length }, index) => {
    const after = stage === way.from && (use === "way" || (use === "joins" && index > ends));
    const before = stage === way.to && use === "joins" && index < begins;
    return after || before ? sum + length : sum;
  }, 0);
  return {
    ...{ from: way.from, to: way.to, plannedSeconds: way.seconds, plannedMetres: way.metres },
    ...{ metresPerSecond: line.metresPerSecond, drawnMetres, drawnSeconds: drawnMetres / line.metresPerSecond },
  };
}

function areasOf({ rooms, building }: Pick<Drawn, "rooms" | "building">): AreaRow[] {
  const inside = ROOM_KINDS.filter((kind) => kind !== "yard").map((kind): AreaRow => {
    const own = rooms.filter((room) => room.kind === kind);
    return { kind, rooms: own.length, squareMetres: own.reduce((sum, room) => sum + room.squareMetres, 0) };
  });
  const floor = inside.reduce((sum, { squareMetres }) => sum + squareMetres, 0);
  const all = building.width * building.depth;
  const count = inside.reduce((sum, row) => sum + row.rooms, 0);
  return [
    ...inside.filter((row) => row.rooms > 0),
    { kind: "walls", rooms: 0, squareMetres: all - floor },
    { kind: "building", rooms: count, squareMetres: all },
  ];
}

/** Seconds that the plan may be out by before it is told. */
const TELL_SECONDS = 5;

function findingsOf(line: RailLine, ways: PlantLayout["ways"], walks: PlantLayout["walks"]): string[] {
  const late = ways
    .filter(({ plannedSeconds, drawnSeconds }) => drawnSeconds > plannedSeconds + TELL_SECONDS)
    .sort((a, b) => b.drawnSeconds - b.plannedSeconds - (a.drawnSeconds - a.plannedSeconds))
    .map(
      (way) =>
        `From ${way.from} to ${way.to} the plan gives ${Math.round(way.plannedSeconds)} s; the way drawn is ${metres(way.drawnMetres)} and takes ${Math.round(way.drawnSeconds)} s at ${metres(way.metresPerSecond * 60)}/min. Set its travel to that, or make it shorter or faster.`,
    );
  const short = walks
    .filter(({ farthestSeconds, plannedSeconds }) => farthestSeconds > plannedSeconds + TELL_SECONDS)
    .map(
      (walk) =>
        `${walk.crew}: the plan gives ${walk.plannedSeconds} s to walk between its places; from ${walk.from} to ${walk.to} are ${Math.round(walk.farthestMetres)} m, ${Math.round(walk.farthestSeconds)} s on foot.`,
    );
  const mixed = walks
    .filter(({ zones }) => zones.length > 1)
    .map(
      ({ crew, zones }) => `${crew} works on more than one side (${zones.join(", ")}): they have to change in between.`,
    );
  return [...mixed, ...short, ...late, ...line.findings];
}
