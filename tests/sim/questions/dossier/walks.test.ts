import { describe, expect, it } from "vitest";
import type { LayoutDoor, LayoutRoom, RoomKind, WorkPlace } from "../../../../sim/questions/dossier/index.ts";
import { walkChecks } from "../../../../sim/questions/dossier/walks.ts";
import { crew, planOf, saturated, station } from "../../../support/plans.ts";

function room(name: string, kind: RoomKind, [x, y, width, depth]: [number, number, number, number]): LayoutRoom {
  const floor = width * depth;
  return {
    name,
    kind,
    lineRoom: null,
    x,
    y,
    width,
    depth,
    squareMetres: floor,
    neededSquareMetres: floor,
    why: "",
    people: 0,
  };
}
function place(stage: string, inRoom: string, x: number, y: number): WorkPlace {
  return { stage, room: inRoom, machine: false, x: x - 0.5, y: y - 0.5, width: 1, depth: 1 };
}
function door(from: string, to: string, x: number, y: number): LayoutDoor {
  return { from, to, x, y, upright: false, clearMetres: 1, use: "people" };
}
const ROOMS = [
  room("changing room, unclean side", "people", [0, -12, 10, 4]),
  room("hygiene lock, unclean side", "people", [0, -8, 4, 4]),
  room("changing room, clean side", "people", [10, -12, 10, 4]),
  room("hygiene lock, clean side", "people", [16, -8, 4, 4]),
  room("corridor, unclean side", "corridor", [0, -2, 10, 2]),
  room("corridor, clean side", "corridor", [10, -2, 10, 2]),
  room("kill", "unclean side", [0, 0, 5, 10]),
  room("skinning", "unclean side", [5, 0, 5, 10]),
  room("evisceration", "clean side", [10, 0, 10, 10]),
];
const DOORS = [
  door("hygiene lock, unclean side", "corridor, unclean side", 2, -2),
  door("hygiene lock, clean side", "corridor, clean side", 18, -2),
  door("corridor, unclean side", "kill", 4, 0),
  door("corridor, unclean side", "skinning", 7, 0),
  door("corridor, clean side", "evisceration", 15, 0),
];
const PLACES = [
  place("a", "kill", 1, 2),
  place("b", "kill", 3, 6),
  place("c", "skinning", 8, 5),
  place("d", "evisceration", 12, 4),
];

function checkOf(stages: string[], walkSeconds: number) {
  const line = stages.map((name) => station(name, 5, { crews: ["one"], peoplePerPosition: 1 }));
  const plan = planOf(saturated(1), line, { crews: [crew("one", 1, { walkSeconds })] });
  return walkChecks(plan, { rooms: ROOMS, doors: DOORS, workPlaces: PLACES })[0];
}

describe("walks, worked by hand at 1.2 m/s", () => {
  it("in one room are |dx| + |dy|", () => {
    expect(checkOf(["a", "b"], 6)).toMatchObject({
      farthestMetres: 6,
      farthestSeconds: 5,
      verdict: "enough",
      zones: ["unclean side"],
    });
    expect(checkOf(["a", "b"], 4)!.verdict).toBe("too short");
  });

  it("from room to room go out by one door of the corridor and in by the other", () => {
    // b (3, 6) to (4, 0): 7; to (7, 0): 3; to c (8, 5): 6.
    expect(checkOf(["b", "c"], 0)!.farthestMetres).toBeCloseTo(16, 12);
  });

  it("from the unclean to the clean side go through both locks and changing rooms, and say so", () => {
    // c (8, 5) - (7, 0) 6 - (2, -2) 7 - (5, -10) 11 - (15, -10) 10 - (18, -2) 11 - (15, 0) 5 - d (12, 4) 7.
    const check = checkOf(["c", "d"], 0)!;
    expect(check.farthestMetres).toBeCloseTo(57, 12);
    expect(check.zones).toEqual(["unclean side", "clean side"]);
  });

  it("are held against the farthest pair, and against the mean of all pairs", () => {
    // a-b 6, a-c: (1, 2)-(4, 0) 5, 3, 6 = 14, b-c 16: mean 12 m, 10 s; farthest 13.3 s.
    expect(checkOf(["a", "b", "c"], 11)).toMatchObject({
      from: "b",
      to: "c",
      meanMetres: 12,
      meanSeconds: 10,
      verdict: "mean only",
    });
  });

  it("are none for a crew with one place", () => {
    expect(checkOf(["a"], 0)).toBeUndefined();
  });
});
