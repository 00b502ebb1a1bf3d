import { CRATE_STEP_NAMES, type Plan, siteFigure } from "../../asked/plan/index.ts";
import { steps, workplace } from "../../day/line/index.ts";
import type { LayoutDoor, LayoutRoom, RoomKind, Spot, WalkCheck, WorkPlace } from "./layout.ts";

interface Drawing {
  rooms: readonly LayoutRoom[];
  doors: readonly LayoutDoor[];
  workPlaces: readonly WorkPlace[];
}

/** Where somebody works: a spot in a room. */
interface Stand extends Spot {
  step: string;
  room: LayoutRoom;
}

/**
 * Of every crew with more than one place: how far these lie apart on foot, along the walls' directions (|dx| + |dy|), from room to room through
 * the doors of the corridor, and from the unclean to the clean side through both hygiene locks. Against the walking time of the plan.
 */
export function walkChecks(plan: Plan, drawing: Drawing): WalkCheck[] {
  const speed = siteFigure(plan, "line.walking");
  return plan.crews.flatMap((crew) => {
    const stands = standsOf(plan, crew.name, drawing);
    const pairs = stands.flatMap((from, index) => stands.slice(index + 1).map((to) => ({ from, to })));
    if (pairs.length === 0) return [];
    const walks = pairs.map(({ from, to }) => ({ from: from.step, to: to.step, metres: walk(from, to, drawing) }));
    const farthest = walks.reduce((best, each) => (each.metres > best.metres ? each : best));
    const meanMetres = walks.reduce((sum, { metres }) => sum + metres, 0) / walks.length;
    const [farthestSeconds, meanSeconds] = [farthest.metres / speed, meanMetres / speed];
    const plannedSeconds = crew.walkSeconds;
    const verdict =
      plannedSeconds >= farthestSeconds ? "enough" : plannedSeconds >= meanSeconds ? "mean only" : "too short";
    return [
      {
        ...{ crew: crew.name, from: farthest.from, to: farthest.to, farthestMetres: farthest.metres, meanMetres },
        ...{ farthestSeconds, meanSeconds, plannedSeconds, verdict },
        zones: [...new Set(stands.map(({ room }) => sideOfRoom(room)))],
      },
    ];
  });
}

/** Live and unclean are one side for people; cold rooms belong to the clean side. */
function sideOfRoom({ kind }: LayoutRoom): RoomKind {
  if (kind === "cold room") return "clean side";
  return kind === "live side" || kind === "services" ? "unclean side" : kind;
}

function standsOf(plan: Plan, crew: string, { rooms, workPlaces }: Drawing): Stand[] {
  return steps(plan)
    .filter((step) => workplace(step).crews.includes(crew))
    .flatMap(({ name }) => {
      const own = workPlaces.filter(({ stage }) => stage === name);
      const room = rooms.find((each) => each.name === (own[0]?.room ?? crateRoomOf(name, plan)));
      if (room === undefined) return [];
      const mean = (of: (place: WorkPlace) => number) => own.reduce((sum, place) => sum + of(place), 0) / own.length;
      const spot =
        own.length === 0
          ? { x: room.x + room.width / 2, y: room.y + room.depth / 2 }
          : { x: mean(({ x, width }) => x + width / 2), y: mean(({ y, depth }) => y + depth / 2) };
      return [{ step: name, room, ...spot }];
    });
}

/** The room of a step on crates. */
function crateRoomOf(step: string, { liveHandling }: Plan): string | undefined {
  if (liveHandling === null) return undefined;
  const names = CRATE_STEP_NAMES[liveHandling.way];
  const rooms: Record<string, string> = {
    [names.unloading]: "lairage",
    [names.feeding]: "lairage",
    [names.washing]: "crate washing",
    [names.restacking]: "clean crates",
    [names.palletsOut]: "clean crates",
  };
  return rooms[step];
}

function walk(from: Stand, to: Stand, { rooms, doors }: Drawing): number {
  if (from.room === to.room) return apart(from, to);
  const direct = doors.find(
    (door) =>
      [door.from, door.to].includes(from.room.name) && [door.from, door.to].includes(to.room.name) && !isRail(door),
  );
  if (direct !== undefined) return apart(from, direct) + apart(direct, to);
  const [out, into] = [corridorDoor(from.room, doors), corridorDoor(to.room, doors)];
  if (out === undefined || into === undefined) return apart(from, to);
  const through = [from, out.door, ...locksBetween(out.corridor, into.corridor, doors, rooms), into.door, to];
  return through.slice(1).reduce((sum, spot, index) => sum + apart(through[index]!, spot), 0);
}

/** Nobody walks where carcasses go through the wall. */
function isRail({ use, clearMetres }: LayoutDoor): boolean {
  return use === "product" && clearMetres < 1;
}

function corridorDoor(
  room: LayoutRoom,
  doors: readonly LayoutDoor[],
): { door: LayoutDoor; corridor: string } | undefined {
  const door = doors.find(({ from, to }) => from?.startsWith("corridor") === true && to === room.name);
  if (door !== undefined) return { door, corridor: door.from! };
  // Rooms below are reached through the production room above them.
  const up = doors.find(
    ({ from, to, use }) => (to === room.name || from === room.name) && use !== "people" && from !== null && to !== null,
  );
  const above = up === undefined ? undefined : up.from === room.name ? up.to : up.from;
  const via = doors.find(({ from, to }) => from?.startsWith("corridor") === true && to === above);
  return via === undefined ? undefined : { door: via, corridor: via.from! };
}

function locksBetween(from: string, to: string, doors: readonly LayoutDoor[], rooms: readonly LayoutRoom[]): Spot[] {
  if (from === to) return [];
  const lock = (corridor: string) =>
    doors.find((door) => door.to === corridor && door.from?.startsWith("hygiene lock"));
  const changing = (corridor: string) => {
    const room = rooms.find(({ name }) => name === corridor.replace("corridor", "changing room"));
    return room === undefined ? undefined : { x: room.x + room.width / 2, y: room.y + room.depth / 2 };
  };
  return [lock(from), changing(from), changing(to), lock(to)].filter((spot) => spot !== undefined);
}

function apart(a: Spot, b: Spot): number {
  return Math.abs(a.x - b.x) + Math.abs(a.y - b.y);
}
