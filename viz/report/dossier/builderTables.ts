import type { KindTold } from "../../contract.ts";
import type { DossierTable } from "./tables.ts";

const words = (name: string) => ({ name, unit: "" });
const figure = (name: string, unit: string, decimals = 0) => ({ name, unit, decimals });

type Layout = KindTold["built"]["layout"];

/** Rooms with their floor; numbers are those of the drawing. */
export function roomTable({ rooms }: Layout): DossierTable {
  return {
    name: "Rooms",
    columns: [
      ...[figure("Number", ""), words("Room"), words("Zone"), figure("Floor", "m2"), figure("Width", "m", 1)],
      ...[figure("Depth", "m", 1), figure("People", ""), words("Worked out from")],
    ],
    rows: rooms.map(({ name, kind, squareMetres, width, depth, people, why }, at) => [
      ...[at + 1, name, kind, squareMetres, width, depth],
      ...[people === 0 ? null : people, why],
    ]),
    notes: [],
  };
}

/** The floor of all kinds of rooms, and of the building. */
export function areaTable({ areas }: Layout): DossierTable {
  return {
    name: "Floor by zone",
    columns: [words("Zone"), figure("Rooms", ""), figure("Floor", "m2")],
    rows: areas.map(({ kind, rooms, squareMetres }) => [kind, rooms, squareMetres]),
    notes: [],
  };
}

/** Walks of crews beside the time that the plan has for them, and ways of heads that are drawn longer than the plan has them. */
export function wayTables({ walks, ways, findings }: Layout): DossierTable[] {
  return [
    {
      name: "Walks of the crews",
      columns: [
        ...[words("Crew"), words("From"), words("To"), figure("Farthest", "m"), figure("Mean", "m")],
        ...[figure("Farthest", "s", 1), figure("In the plan", "s", 1), words("Time in the plan")],
      ],
      rows: walks.map((each) => [
        ...[each.crew, each.from, each.to, each.farthestMetres, each.meanMetres],
        ...[each.farthestSeconds, each.plannedSeconds, each.verdict],
      ]),
      notes: findings,
    },
    {
      name: "Ways from step to step",
      columns: [
        ...[words("From"), words("To"), figure("In the plan", "m", 1), figure("Drawn", "m", 1)],
        ...[figure("In the plan", "s", 1), figure("Drawn", "s", 1)],
      ],
      rows: ways.map((each) => [
        ...[each.from, each.to, each.plannedMetres, each.drawnMetres],
        ...[each.plannedSeconds, each.drawnSeconds],
      ]),
      notes: ["Drawn: with what joins the rail round bends and through walls, for which no head has time in the plan."],
    },
  ];
}
